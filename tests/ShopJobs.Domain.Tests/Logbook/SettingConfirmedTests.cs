using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>A confirmed setting measures nothing: it was the instructed one, within half a graduation, or it was not.</summary>
public class SettingConfirmedTests
{
    [Theory]
    [InlineData("110", null)]
    [InlineData("110.5", null)]
    [InlineData("109.5", null)]
    [InlineData("110.51", HoldReason.SettingNotInstructed)]
    [InlineData("109.49", HoldReason.SettingNotInstructed)]
    [InlineData("100", HoldReason.SettingNotInstructed)]
    [InlineData("115.01", HoldReason.OverRange)]
    public void A_setting_is_the_instructed_one_within_half_a_graduation(string set, HoldReason? problem) => Assert.Equal(
        problem, Judging.ValueProblem(TorqueKind.SettingConfirmed, EnteredTorque.Parse(set).NewtonMetres, ToolBook.Spec));
}
