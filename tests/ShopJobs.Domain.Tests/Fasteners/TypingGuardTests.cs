using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Tests.Fasteners;

public sealed class TypingGuardTests
{
    private static readonly EnteredTorque Target = new(110, TorqueUnit.NewtonMetre);
    private readonly TypingGuard guard = TypingGuard.For(Target, TorqueUnit.NewtonMetre);

    // 110 / 1.3558179483314004 = 81.13 lbf·ft by the factor of NIST SP 811, appendix B.
    [Theory]
    [InlineData(81)]
    [InlineData(79)]
    [InlineData(83.5)]
    public void Number_of_the_target_in_pounds_feet_is_taken_for_it(double typed)
    {
        Assert.Equal(TorqueUnit.PoundForceFoot, guard.TakenFor((decimal)typed)?.Unit);
    }

    [Theory]
    [InlineData(78.6)]
    [InlineData(83.7)]
    [InlineData(110)]
    public void Number_farther_than_three_percent_is_not(double typed)
    {
        Assert.Null(guard.TakenFor((decimal)typed));
    }

    [Theory]
    [InlineData(11, true)]
    [InlineData(1100, true)]
    [InlineData(1.1, true)]
    [InlineData(32.9, true)]
    [InlineData(33, false)]
    [InlineData(165, false)]
    [InlineData(165.1, true)]
    public void Number_under_thirty_or_over_a_hundred_and_fifty_percent_is_far(double typed, bool far)
    {
        Assert.Equal(far, guard.IsFar((decimal)typed));
    }

    [Fact]
    public void Tool_in_another_unit_is_guarded_in_its_own()
    {
        var feet = TypingGuard.For(Target, TorqueUnit.PoundForceFoot);

        Assert.False(feet.IsFar(81));
        Assert.Equal(TorqueUnit.NewtonMetre, feet.TakenFor(110)?.Unit);
    }
}
