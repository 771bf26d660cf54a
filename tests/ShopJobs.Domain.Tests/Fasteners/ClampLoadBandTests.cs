using CsCheck;
using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Fasteners;

/// <summary>Figures are own computation with the long form of VDI 2230 and the dry band 0.10 / 0.14 / 0.18 (common practice, no source).</summary>
public class ClampLoadBandTests
{
    private static readonly FrictionBand Dry = FrictionBand.Assumed(ThreadCondition.Dry);

    [Fact]
    public void Small_bolt_at_24_newton_metres_may_pass_its_proof_load()
    {
        var band = Computed("24", "M8", Flat(11.6, 9), "8.8");

        Near(band, 12.3, 16.0, 22.1, 58, 75, 104);
        Assert.Equal(1.80, band.TighteningFactor, 0.005);
    }

    /// <summary>Bearing diameters taken so that they fit the expected figures; the percentages follow from Sp 600 MPa above 16 mm.</summary>
    [Fact]
    public void Hub_nut_at_250_newton_metres_is_far_below_its_proof_load() =>
        Near(Computed("250", "M24x1.5", Flat(33, 25), "8.8"), 45.8, 60.6, 86.2, 19, 25, 36, loadTolerance: 0.15);

    [Fact]
    public void Wheel_nut_on_a_flat_seat() => Near(Computed("110", "M12x1.5", Flat(19, 13.5), "10.9"), 37, 49, 68, 51, 66, 93, loadTolerance: 0.5);

    /// <summary>Oil on a bolt whose torque was meant dry: the top of the band goes to 125 % of the proof load.</summary>
    [Fact]
    public void Oil_on_a_dry_torque_raises_the_band()
    {
        var oiled = ClampLoadBand.For(
            EnteredTorque.Parse("24"), 4, ThreadSize.Parse("M8"), Flat(11.6, 9), FrictionBand.Assumed(ThreadCondition.Oiled), StrengthClass.Parse("8.8"));

        Assert.Equal(125, Assert.IsType<ClampBand.Computed>(oiled).Utilisation!.Value.Maximum * 100, 0.5);
    }

    [Fact]
    public void Without_a_class_the_band_has_no_proof_load()
    {
        var band = Assert.IsType<ClampBand.Computed>(
            ClampLoadBand.For(EnteredTorque.Parse("45"), 4, ThreadSize.Parse("7/16-20 UNF"), Flat(16, 11.5), Dry, null));

        Assert.Null(band.ProofLoad);
        Assert.Null(band.Utilisation);
    }

    [Fact]
    public void What_is_not_known_is_said_and_not_guessed()
    {
        Assert.Contains("no seat", Reason("110", null, Dry), StringComparison.Ordinal);
        Assert.Contains("condition", Reason("110", Flat(19, 13.5), null), StringComparison.Ordinal);
        Assert.Contains("zero", Reason("0", Flat(19, 13.5), Dry), StringComparison.Ordinal);
    }

    [Fact]
    public void A_band_contains_its_nominal() => Gen.Select(
        Gen.Decimal[1, 500], Gen.Decimal[0, 20], Gen.Enum<ThreadCondition>(), Gen.Double[30, 170]).Sample((torque, deviation, condition, angle) =>
        {
            var cone = new ConeSeat(Angle.FromDegrees(angle), Length.FromMillimeters(16));
            var band = (ClampBand.Computed)ClampLoadBand.For(
                new EnteredTorque(torque, TorqueUnit.NewtonMetre), deviation, ThreadSize.Parse("M12x1.5"), cone, FrictionBand.Assumed(condition), null);
            return band.Minimum > Force.Zero && band.Minimum < band.Nominal && band.Nominal < band.Maximum && band.TighteningFactor > 1;
        });

    [Fact]
    public void A_better_tool_gives_a_band_inside_that_of_a_worse_one() => Gen.Select(Gen.Decimal[1, 500], Gen.Decimal[0, 10]).Sample((torque, deviation) =>
    {
        var better = Figures((double)torque, (double)deviation / 100);
        var worse = Figures((double)torque, ((double)deviation + 1) / 100);
        return worse.Minimum < better.Minimum && worse.Maximum > better.Maximum && worse.Nominal == better.Nominal;

        static ClampFigures Figures(double t, double w) => ClampFigures.For(new JointGeometry(1.5, 11.03, 8.1), t, w, 0.1, 0.14, 0.18);
    });

    [Fact]
    public void The_plain_arithmetic_allocates_nothing()
    {
        Assert.True(JointFigures.TryFor(ThreadSize.Parse("M12x1.5"), Flat(19, 13.5), StrengthClass.Parse("10.9"), out var joint, out _));
        var sum = Top(110);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 1; i <= 1000; i++)
        {
            sum += Top(i);
        }

        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
        Assert.True(sum > 0);

        double Top(double torque)
        {
            var band = joint.Band(torque, 0.04, Dry);
            return band.Proof!.Value.Maximum + band.WhileTightening!.Value.Maximum;
        }
    }

    [Fact]
    public void The_band_of_stress_while_tightening_contains_its_nominal() => Gen.Select(
        Gen.Decimal[1, 500], Gen.Decimal[0, 20], Gen.Enum<ThreadCondition>(), Gen.Double[30, 170]).Sample((torque, deviation, condition, angle) =>
        {
            var cone = new ConeSeat(Angle.FromDegrees(angle), Length.FromMillimeters(16));
            var u = ((ClampBand.Computed)ClampLoadBand.For(
                new EnteredTorque(torque, TorqueUnit.NewtonMetre), deviation, ThreadSize.Parse("M12x1.5"), cone,
                FrictionBand.Assumed(condition), StrengthClass.Parse("10.9"))).WhileTightening!.Value;
            return u.Minimum < u.Nominal && u.Nominal < u.Maximum;
        });

    [Fact]
    public void A_bigger_bolt_or_a_wider_seat_clamps_less_at_one_torque() => Gen.Select(Gen.Double[6, 30], Gen.Double[1.01, 1.5], Gen.Double[0.05, 0.3]).Sample((d2, more, friction) =>
        ClampFigures.For(new JointGeometry(1.5, d2 * more, d2 * 0.7), 50, 0.04, friction, friction, friction).Nominal
            < ClampFigures.For(new JointGeometry(1.5, d2, d2 * 0.7), 50, 0.04, friction, friction, friction).Nominal
        && ClampFigures.For(new JointGeometry(1.5, d2, d2 * 0.7 * more), 50, 0.04, friction, friction, friction).Nominal
            < ClampFigures.For(new JointGeometry(1.5, d2, d2 * 0.7), 50, 0.04, friction, friction, friction).Nominal);

    [Fact]
    public void The_unit_a_torque_is_written_in_does_not_change_its_band() => Gen.Select(Gen.Decimal[1, 300], Gen.Enum<TorqueUnit>()).Sample((value, unit) =>
    {
        var written = new EnteredTorque(Math.Round(value, 3), unit);
        var metric = new EnteredTorque(written.NewtonMetres, TorqueUnit.NewtonMetre);
        return Of(written) == Of(metric);

        static ClampBand Of(EnteredTorque torque) =>
            ClampLoadBand.For(torque, 4, ThreadSize.Parse("M12x1.5"), Flat(19, 13.5), Dry, StrengthClass.Parse("10.9"));
    });

    private static string Reason(string torque, Seat? seat, FrictionBand? friction) => Assert.IsType<ClampBand.NotComputed>(
        ClampLoadBand.For(EnteredTorque.Parse(torque), 4, ThreadSize.Parse("M12x1.5"), seat, friction, null)).Reason;

    private static FlatSeat Flat(double head, double hole) => new(Length.FromMillimeters(head), Length.FromMillimeters(hole));

    private static ClampBand.Computed Computed(string torque, string thread, Seat seat, string strength) => Assert.IsType<ClampBand.Computed>(
        ClampLoadBand.For(EnteredTorque.Parse(torque), 4, ThreadSize.Parse(thread), seat, Dry, StrengthClass.Parse(strength)));

    private static void Near(
        ClampBand.Computed band, double least, double nominal, double most, double leastPercent, double nominalPercent, double mostPercent,
        double loadTolerance = 0.05, double percentTolerance = 0.5)
    {
        Assert.Equal(least, band.Minimum.Kilonewtons, loadTolerance);
        Assert.Equal(nominal, band.Nominal.Kilonewtons, loadTolerance);
        Assert.Equal(most, band.Maximum.Kilonewtons, loadTolerance);
        Assert.Equal(leastPercent, band.Utilisation!.Value.Minimum * 100, percentTolerance);
        Assert.Equal(nominalPercent, band.Utilisation.Value.Nominal * 100, percentTolerance);
        Assert.Equal(mostPercent, band.Utilisation.Value.Maximum * 100, percentTolerance);
    }
}
