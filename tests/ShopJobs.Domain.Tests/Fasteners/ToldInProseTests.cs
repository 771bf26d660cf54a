using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tests.Reference.Statements;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Fasteners;

/// <summary>Examples that the trade tells in words; figures are own computation with the long form of VDI 2230.</summary>
public class ToldInProseTests
{
    private static readonly ThreadSize Wheel = ThreadSize.Parse("M12x1.5");

    /// <summary>Anti-seize on a wheel stud with the dry torque of 110 N·m: 48.5 kN become 65.2 kN, 34 % more, 89 % of proof of 10.9.</summary>
    [Fact]
    public void Anti_seize_under_a_dry_torque_clamps_a_third_more()
    {
        var joint = JointGeometry.For(Wheel, new FlatSeat(Length.FromMillimeters(19), Length.FromMillimeters(13.5)));
        var torque = Torque.FromNewtonMeters(110);
        var (dry, wet) = (ClampLoad.FromTorque(joint, torque, 0.14, 0.14), ClampLoad.FromTorque(joint, torque, 0.10, 0.10));

        Assert.Equal(48.5, dry.Kilonewtons, 0.05);
        Assert.Equal(65.2, wet.Kilonewtons, 0.05);
        Assert.Equal(1.34, wet / dry, 0.005);
        Assert.Equal(0.89, wet / StrengthClass.Parse("10.9").ProofLoad(Wheel)!.Value, 0.005);
    }

    /// <summary>A jam of 70 lbf·ft over a driving torque of 65 is too thin with 4 % wrenches: 94.9 x 0.96 = 91.1 under 88.1 x 1.04 = 91.7 N·m.</summary>
    [Fact]
    public void A_jam_of_70_over_a_drive_of_65_pound_feet_is_too_thin()
    {
        var jam = EnteredTorque.Parse("70 lbf·ft");
        var drive = EnteredTorque.Parse("65 lbf·ft");
        var choice = TargetChooser.Choose(new TargetQuestion
        {
            Permitted = new(drive, drive),
            DeviationPercent = 4,
            Graduation = new(1, TorqueUnit.PoundForceFoot),
            Jam = jam,
            JamDeviationPercent = 4,
        });

        Assert.Equal(91.1m, Math.Round(jam.NewtonMetres * 0.96m, 1));
        Assert.Equal(91.7m, Math.Round(drive.NewtonMetres * 1.04m, 1));
        Assert.StartsWith("not above 87.6", Assert.Single(Assert.IsType<TargetChoice.Stated>(choice).Conflicts), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("50", 67.8)]
    [InlineData("65", 88.1)]
    [InlineData("70", 94.9)]
    [InlineData("80", 108.5)]
    public void Pound_feet_in_newton_metres(string feet, double metres) =>
        Assert.Equal(metres, (double)EnteredTorque.Parse($"{feet} lbf·ft").NewtonMetres, 0.05);

    /// <summary>Shigley's Mechanical Engineering Design, table 8-15: K 0.20 dry to 0.12 anti-seize, so 40 % less torque for the same preload.</summary>
    [Fact]
    public void Anti_seize_needs_forty_percent_less_torque_for_the_same_preload() =>
        Assert.Equal(0.6, NutFactors.TorqueShare(0.20, 0.12), 1e-9);

    /// <summary>A torque wrench with estimated friction scatters 1.6 to 2.0 (VDI 2230 table A8, from memory); the shop's dry band lies inside.</summary>
    [Fact]
    public void The_assumed_dry_band_scatters_as_a_torque_wrench_does()
    {
        var band = Assert.IsType<ClampBand.Computed>(ClampLoadBand.For(
            EnteredTorque.Parse("24"), 4, ThreadSize.Parse("M8"), HexagonFace.On(ThreadSize.Parse("M8")), FrictionBand.Assumed(ThreadCondition.Dry), null));
        var (low, high) = TighteningFactor.Usual(TighteningMethod.TorqueFrictionEstimated);

        Assert.InRange(band.TighteningFactor, low, high);
    }

    [Fact]
    public void Published_rules_carry_their_source() => Assert.All(PublishedRules.All, rule =>
    {
        Assert.NotEmpty(rule.Topic);
        Assert.NotEmpty(rule.Statement);
        Assert.NotEmpty(rule.Source);
    });
}
