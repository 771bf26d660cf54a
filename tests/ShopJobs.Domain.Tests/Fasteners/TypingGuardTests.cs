using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Tests.Fasteners;

public sealed class TypingGuardTests
{
    private static readonly EnteredTorque Target = new(110, TorqueUnit.NewtonMetre);
    private readonly TypingGuard guard = TypingGuard.For(Target, TorqueUnit.NewtonMetre);

    // 110 / 1.3558179483314004 = 81.13 lbf·ft by the factor of NIST SP 811, appendix B; 3 % either way is 78.70 to 83.57.
    [Theory]
    [InlineData(78.6, false)]
    [InlineData(79, true)]
    [InlineData(81, true)]
    [InlineData(83.5, true)]
    [InlineData(83.7, false)]
    public void Number_within_three_percent_of_the_target_in_pounds_feet_is_taken_for_it(double typed, bool taken)
    {
        var feet = Assert.Single(guard.Alike, other => other.Target.Unit == TorqueUnit.PoundForceFoot);

        Assert.Equal(new EnteredTorque(81.1m, TorqueUnit.PoundForceFoot), feet.Target);
        Assert.Equal(taken, (decimal)typed >= feet.Least && (decimal)typed <= feet.Most);
    }

    [Fact]
    public void Number_of_the_target_itself_is_taken_for_no_other_unit() =>
        Assert.DoesNotContain(guard.Alike, other => other.Least <= 110 && 110 <= other.Most);

    [Fact]
    public void Number_under_thirty_or_over_a_hundred_and_fifty_percent_is_far() => Assert.Equal((33, 165), (guard.Least, guard.Most));

    [Fact]
    public void Tool_in_another_unit_is_guarded_in_its_own()
    {
        var feet = TypingGuard.For(Target, TorqueUnit.PoundForceFoot);

        Assert.True(feet.Least < 81 && 81 < feet.Most);
        var metres = Assert.Single(feet.Alike, other => other.Target.Unit == TorqueUnit.NewtonMetre);
        Assert.Equal((Target, 106.7m, 113.3m), (metres.Target, metres.Least, metres.Most));
    }

    [Fact]
    public void Angle_is_guarded_at_thirty_percent_and_alike_in_no_unit()
    {
        var turn = TypingGuard.ForAngle(90);

        Assert.Equal((63, 117), (turn.Least, turn.Most));
        Assert.Empty(turn.Alike);
    }
}
