using CsCheck;
using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Tests.Fasteners;

public class RunDownTests
{
    private static readonly TorqueRange Permitted = new(Nm(54), Nm(61));
    private static readonly RunDownTorque Nylon = new(Nm(2), Nm(8));

    /// <summary>NASA-STD-5020B: greatest effective = greatest less least run-down, least effective = least less greatest run-down.</summary>
    [Theory]
    [InlineData(RunDown.Includes, 46, 59)]
    [InlineData(RunDown.Add, 54, 61)]
    [InlineData(RunDown.NotStated, 46, 61)]
    public void What_clamps_depends_on_what_the_instruction_means(RunDown rule, double least, double greatest)
    {
        var clamping = Nylon.Clamping(Permitted, rule);

        Assert.Equal(((decimal)least, (decimal)greatest), (clamping.Least.Value, clamping.Greatest.Value));
    }

    /// <summary>FAA AC 43.13-1B 7-40: friction drag is added to the table torque.</summary>
    [Fact]
    public void A_measured_run_down_torque_is_added_in_the_stated_unit()
    {
        Assert.Equal("63 N·m", RunDownTorque.ToSet(Nm(58), RunDown.Add, Nm(5)).ToString());
        Assert.Equal("58 N·m", RunDownTorque.ToSet(Nm(58), RunDown.Includes, Nm(5)).ToString());
        Assert.Equal(43, (double)RunDownTorque.ToSet(EnteredTorque.Parse("40 ft-lb"), RunDown.Add, EnteredTorque.Parse("36 in-lb")).Value, 1e-9);
    }

    [Fact]
    public void Not_stated_holds_both_readings() => Gen.Select(Gen.Decimal[10, 100], Gen.Decimal[0, 30], Gen.Decimal[0, 10], Gen.Decimal[0, 10]).Sample((min, width, low, more) =>
    {
        var stated = new TorqueRange(Nm(min), Nm(min + width));
        var runDown = new RunDownTorque(Nm(low), Nm(low + more));
        var both = runDown.Clamping(stated, RunDown.NotStated);
        return new[] { RunDown.Includes, RunDown.Add }.Select(rule => runDown.Clamping(stated, rule))
            .All(one => both.Least.NewtonMetres <= one.Least.NewtonMetres && one.Greatest.NewtonMetres <= both.Greatest.NewtonMetres);
    });

    /// <summary>FAA AC 43.13-1B (9/8/98) Table 7-2: 1/2-20 keeps 10 lbf·in.</summary>
    [Theory]
    [InlineData("9 in-lb", "below the least")]
    [InlineData("0", "turns with the fingers")]
    [InlineData("90 in-lb", "above the greatest")]
    public void A_nut_that_no_longer_locks_or_binds_is_discarded(string measured, string words)
    {
        var least = PrevailingTorque.LeastOfUsedNut(ThreadSize.Parse("1/2-20 UNF"));

        Assert.Contains(words, PrevailingTorque.WhyDiscard(EnteredTorque.Parse(measured), least, EnteredTorque.Parse("80 in-lb")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_nut_at_its_least_torque_stays() => Assert.Null(
        PrevailingTorque.WhyDiscard(EnteredTorque.Parse("10 in-lb"), PrevailingTorque.LeastOfUsedNut(ThreadSize.Parse("1/2-20"))));

    [Fact]
    public void Sizes_outside_the_table_have_no_published_least() => Assert.Null(PrevailingTorque.LeastOfUsedNut(ThreadSize.Parse("M10x1.25")));

    [Fact]
    public void A_least_above_the_greatest_is_refused() => Assert.Throws<ArgumentException>(() => new RunDownTorque(Nm(3), Nm(2)));

    private static EnteredTorque Nm(decimal value) => new(value, TorqueUnit.NewtonMetre);
}
