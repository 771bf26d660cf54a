using CsCheck;
using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Fasteners;

/// <summary>Stacks are invented, the arithmetic is our own.</summary>
public class WheelStudTests
{
    private static readonly WheelStudStack Stack = new()
    {
        Thread = ThreadSize.Parse("M12x1.5"),
        Stud = Mm(48),
        HubFlange = Mm(8),
        DiscHat = Mm(7),
        WheelPad = Mm(12),
        NutThread = Mm(14),
    };

    [Fact]
    public void A_stud_long_enough_fits()
    {
        Assert.Equal(21, Stack.Available.Millimeters, 1e-9);
        Assert.Equal(14, Stack.Engaged.Millimeters, 1e-9);
        Assert.Equal(7, Stack.Showing.Millimeters, 1e-9);
        Assert.Empty(WheelStudFit.Of(Stack).Problems);
    }

    [Fact]
    public void A_spacer_takes_the_thread_away()
    {
        var fit = WheelStudFit.Of(Stack with { Spacer = Mm(12) });

        Assert.Contains(fit.Problems, p => p.StartsWith("Engaged 9 mm (6 turns)", StringComparison.Ordinal) && p.Contains("12 mm", StringComparison.Ordinal));
        Assert.Contains(fit.Problems, p => p.StartsWith("0 threads show", StringComparison.Ordinal));
    }

    [Fact]
    public void A_stud_that_bottoms_in_a_closed_nut_clamps_nothing() => Assert.Contains(
        WheelStudFit.Of(Stack with { ClosedNutDepth = Mm(19) }).Problems, p => p.StartsWith("The stud bottoms in the closed nut by 2 mm", StringComparison.Ordinal));

    [Fact]
    public void A_deep_closed_nut_needs_no_thread_showing() => Assert.True(WheelStudFit.Of(Stack with { ClosedNutDepth = Mm(22) }).Fits);

    [Fact]
    public void A_stud_that_does_not_reach_the_nut_engages_nothing() => Assert.Equal(Length.Zero, (Stack with { Stud = Mm(20) }).Engaged);

    [Fact]
    public void Every_millimetre_of_stack_is_taken_from_the_stud() => Gen.Select(Gen.Double[0, 30], Gen.Double[0, 5]).Sample((spacer, washer) =>
    {
        var stack = Stack with { Spacer = Mm(spacer), Washer = Mm(washer) };
        return Math.Abs(stack.Available.Millimeters - (21 - spacer - washer)) < 1e-9
            && stack.Engaged <= Stack.NutThread && stack.Engaged >= Length.Zero
            && (stack.Showing.Millimeters == 0 || stack.Engaged.Millimeters == stack.NutThread.Millimeters);
    });

    [Fact]
    public void A_length_below_zero_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => Stack with { Spacer = Mm(-1) });

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
