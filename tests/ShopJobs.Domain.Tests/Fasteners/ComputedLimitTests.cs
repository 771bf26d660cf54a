using CsCheck;
using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Fasteners;

/// <summary>Computed limits: figures are own computation, friction bands common practice without a source.</summary>
public class ComputedLimitTests
{
    private static readonly TorqueSpecification TopNut = new()
    {
        Thread = ThreadSize.Parse("M8"),
        Class = StrengthClass.Parse("8.8"),
        Seat = new FlatSeat(Length.FromMillimeters(11.6), Length.FromMillimeters(9)),
        Condition = ThreadCondition.Dry,
        Permitted = new(Nm(21), Nm(25)),
        Target = Nm(24),
        Risk = RiskClass.B,
    };

    [Fact]
    public void Proof_and_yield_of_a_small_bolt_lie_just_above_its_torque()
    {
        var limits = ComputedLimits.Of(TopNut);

        Assert.Equal(["proof load", "yield while tightening"], limits.Select(l => l.Name));
        Assert.Equal(24.0, limits[0].Earliest.NewtonMeters, 0.1);
        Assert.All(limits, l => Assert.True(l.Earliest < l.Latest && l.MayBeReachedBy(Nm(24), 4)));
        Assert.Contains("the proof load of M8x1.25 8.8 (21.2 kN) is reached from 24.0 N·m at friction 0.10", limits[0].Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_known_of_the_joint_adds_its_limits()
    {
        var whole = TopNut with
        {
            Jam = Nm(30),
            Engaged = Length.FromMillimeters(8),
            PartTensile = Pressure.FromMegapascals(240),
            BearingLimit = Pressure.FromMegapascals(220),
        };

        Assert.Equal(
            ["proof load", "yield while tightening", "bearing pressure", "stripping", "creep of the nut pair"],
            ComputedLimits.Of(whole).Select(l => l.Name));
    }

    [Fact]
    public void Without_friction_or_seat_nothing_is_computed()
    {
        Assert.Empty(ComputedLimits.Of(TopNut with { Condition = null }));
        Assert.Empty(ComputedLimits.Of(TopNut with { Seat = null }));
    }

    /// <summary>At the torque that the limit names, the band's top is exactly at the limit.</summary>
    [Fact]
    public void A_band_set_at_a_limit_reaches_it() => Gen.Enum<ThreadCondition>().Sample(condition =>
    {
        var s = TopNut with { Condition = condition, ToolDeviationPercent = 0 };
        var limits = ComputedLimits.Of(s);
        var atProof = (ClampBand.Computed)s.BandAt(Nm((decimal)limits[0].Earliest.NewtonMeters));
        var atYield = (ClampBand.Computed)s.BandAt(Nm((decimal)limits[1].Earliest.NewtonMeters));
        return Math.Abs(atProof.Utilisation!.Value.Maximum - 1) < 1e-9 && Math.Abs(atYield.WhileTightening!.Value.Maximum - 1) < 1e-9;
    });

    [Fact]
    public void Dry_oiled_and_locker_stand_side_by_side_with_the_stated_one_first()
    {
        var bands = ConditionBand.Of(TopNut, Nm(24), ThreadCondition.Oiled, ThreadCondition.Dry, ThreadCondition.Locker);

        Assert.Equal([ThreadCondition.Dry, ThreadCondition.Oiled, ThreadCondition.Locker], bands.Select(b => b.Condition));
        var tops = bands.Select(b => Assert.IsType<ClampBand.Computed>(b.Band).Utilisation!.Value.Maximum).ToList();
        Assert.Equal(1.04, tops[0], 0.005);
        Assert.Equal(1.25, tops[1], 0.005);
    }

    [Fact]
    public void Friction_the_maker_states_counts_only_for_the_stated_condition()
    {
        var stated = TopNut with { StatedFriction = new FrictionBand(0.12, 0.13, 0.14, "maker's leaflet") };
        var bands = ConditionBand.Of(stated, Nm(24), ThreadCondition.Oiled);

        Assert.Equal("maker's leaflet", bands[0].Friction.Source);
        Assert.Equal(FrictionBand.Assumed(ThreadCondition.Oiled), bands[1].Friction);
    }

    /// <summary>Own computation: 22.1 kN on the ring 11.6/9 mm is 525 MPa, above the 490 MPa of steel S235 (VDI 2230 table A9, from memory).</summary>
    [Fact]
    public void A_small_face_presses_hard()
    {
        var seat = (FlatSeat)TopNut.Seat!;

        Assert.Equal(525, BearingPressure.Of(seat, Force.FromKilonewtons(22.1)).Megapascals, 1.0);
        Assert.Equal(22.1, BearingPressure.LoadAt(seat, BearingPressure.Of(seat, Force.FromKilonewtons(22.1))).Kilonewtons, 1e-9);
    }

    private static EnteredTorque Nm(decimal value) => new(value, TorqueUnit.NewtonMetre);
}
