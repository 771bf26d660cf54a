using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Tools;

public sealed class WrenchStepTests
{
    [Theory]
    [InlineData("1", "101.538", "102 N·m")]
    [InlineData("0.5", "101.3", "101.5 N·m")]
    [InlineData("5", "112.5", "115 N·m")]
    [InlineData("5", "1", "5 N·m")]
    [InlineData("5 lbf·ft", "74.57", "55 lbf·ft")]
    public void Nearest_mark_is_in_the_wrenchs_own_unit_and_never_nothing(string step, string torque, string mark) =>
        Assert.Equal(mark, new WrenchStep(EnteredTorque.Parse(step)).Nearest(EnteredTorque.Parse(torque)).ToString());

    [Theory]
    [InlineData("1", "110", true)]
    [InlineData("5", "112", false)]
    [InlineData("0.5", "101.5", true)]
    [InlineData("5 lbf·ft", "80 lbf·ft", true)]
    [InlineData("5 lbf·ft", "110", false)]
    public void A_torque_is_a_mark_or_it_is_not(string step, string torque, bool isMark) =>
        Assert.Equal(isMark, new WrenchStep(EnteredTorque.Parse(step)).IsMark(EnteredTorque.Parse(torque)));

    [Fact]
    public void A_step_of_nothing_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => new WrenchStep(new EnteredTorque(0, TorqueUnit.NewtonMetre)));
}
