using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Fasteners;

/// <summary>Figures are own computation; friction bands common practice without a source.</summary>
public class ClampStandingTests
{
    private static readonly TorqueSpecification WheelNut = new()
    {
        Thread = ThreadSize.Parse("M12x1.5"),
        Class = StrengthClass.Parse("10.9"),
        Seat = new FlatSeat(Length.FromMillimeters(19), Length.FromMillimeters(13.5)),
        Condition = ThreadCondition.Dry,
        Permitted = new(Nm(105), Nm(115)),
        Target = Nm(110),
        Risk = RiskClass.A,
    };

    [Fact]
    public void The_stated_condition_comes_first_and_each_other_once()
    {
        var standing = ClampStanding.Of(WheelNut, Nm(110), ThreadCondition.Oiled, ThreadCondition.Dry, ThreadCondition.Locker);

        Assert.Equal([ThreadCondition.Dry, ThreadCondition.Oiled, ThreadCondition.Locker], standing.Rows.Select(row => row.Condition!.Value));
    }

    [Fact]
    public void Permitted_range_spans_the_band_of_the_torque_inside_it()
    {
        var row = Assert.Single(ClampStanding.Of(WheelNut, Nm(110)).Rows);

        var band = Assert.IsType<ClampBand.Computed>(row.Band);
        Assert.True(row.Permitted!.Value.Least < band.Minimum && row.Permitted.Value.Greatest > band.Maximum);
        Assert.Null(ClampStanding.Of(WheelNut with { Permitted = new(Nm(110), Nm(110)) }, Nm(110)).Rows[0].Permitted);
    }

    [Fact]
    public void Top_of_the_band_passes_the_yield_line_exactly_when_its_stress_passes_yield()
    {
        foreach (var torque in new[] { 100m, 110m, 120m, 130m })
        {
            foreach (var row in ClampStanding.Of(WheelNut, Nm(torque), ThreadCondition.Oiled, ThreadCondition.AntiSeize).Rows)
            {
                var band = Assert.IsType<ClampBand.Computed>(row.Band);
                Assert.Equal(band.Maximum.Newtons / row.Yield!.Value.Newtons, band.WhileTightening!.Value.Maximum, 1e-9);
            }
        }
    }

    [Fact]
    public void Limits_are_those_that_are_known_of_the_joint()
    {
        var whole = WheelNut with
        {
            Engaged = Length.FromMillimeters(10),
            PartTensile = Pressure.FromMegapascals(240),
            BearingLimit = Pressure.FromMegapascals(260),
        };

        Assert.Equal(
            [ClampLimitKind.Proof, ClampLimitKind.Bearing, ClampLimitKind.Stripping],
            ClampStanding.Of(whole, Nm(110)).Limits.Select(limit => limit.Kind));
        Assert.Empty(ClampStanding.Of(WheelNut with { Class = null }, Nm(110)).Limits);
    }

    [Fact]
    public void Friction_of_the_maker_without_a_condition_makes_its_own_row()
    {
        var friction = new FrictionBand(0.08, 0.12, 0.16, "the maker");

        var standing = ClampStanding.Of(WheelNut with { Condition = null, StatedFriction = friction }, Nm(110), ThreadCondition.Oiled);

        Assert.Equal([null, ThreadCondition.Oiled], standing.Rows.Select(row => row.Condition));
        Assert.Equal(friction, standing.Rows[0].Friction);
        Assert.NotEqual(friction, standing.Rows[1].Friction);
    }

    [Fact]
    public void A_row_that_is_not_computed_says_why_beside_the_others()
    {
        var row = Assert.Single(ClampStanding.Of(WheelNut with { Seat = null }, Nm(110)).Rows);

        Assert.Equal("no seat is given", Assert.IsType<ClampBand.NotComputed>(row.Band).Reason);
        Assert.Null(row.Permitted);
    }

    private static EnteredTorque Nm(decimal value) => new(value, TorqueUnit.NewtonMetre);
}
