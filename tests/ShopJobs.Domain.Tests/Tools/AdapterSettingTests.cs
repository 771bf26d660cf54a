using CsCheck;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Tools;

/// <summary>S = T L/(L + E cos a); figures are own arithmetic.</summary>
public class AdapterSettingTests
{
    [Theory]
    [InlineData("95", 400, 50, 84.4)]
    [InlineData("16", 320, 30, 14.6)]
    public void Straight_out_the_setting_is_less_than_the_torque(string torque, double wrench, double adapter, double setting) =>
        Assert.Equal(setting, (double)Adapter(wrench, adapter, 0).SettingFor(EnteredTorque.Parse(torque)).Value, 0.05);

    [Fact]
    public void To_the_side_the_setting_is_the_torque_exactly() =>
        Assert.Equal(EnteredTorque.Parse("50"), Adapter(400, 50, 90).SettingFor(EnteredTorque.Parse("50")));

    [Fact]
    public void Back_towards_the_hand_is_the_same_as_a_lever_taken_off() =>
        Assert.Equal(Adapter(400, -50, 0).Ratio, Adapter(400, 50, 180).Ratio);

    [Fact]
    public void The_unit_stays_as_entered() =>
        Assert.Equal(TorqueUnit.PoundForceFoot, Adapter(400, 50, 0).SettingFor(EnteredTorque.Parse("60 ft-lb")).Unit);

    [Theory]
    [InlineData(0, 50, 0)]
    [InlineData(400, 50, -1)]
    [InlineData(400, 50, 181)]
    [InlineData(400, -400, 0)]
    [InlineData(400, 500, 180)]
    public void A_lever_that_cannot_be_is_refused(double wrench, double adapter, double angle) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Adapter(wrench, adapter, angle));

    [Fact]
    public void On_another_wrench_the_lever_is_another()
    {
        // F7: 320/350 on the one, 400/430 on the other.
        Assert.Equal(320m / 350, Adapter(320, 30, 0).Ratio, 12);
        Assert.Equal(400m / 430, Adapter(320, 30, 0).On(Length.FromMillimeters(400))!.Ratio, 12);
    }

    [Theory]
    [InlineData(50)]
    [InlineData(50.5)]
    [InlineData(40)]
    public void A_wrench_too_short_for_an_adapter_turned_back_leaves_no_lever(double wrench) =>
        Assert.Null(Adapter(320, 50, 180).On(Length.FromMillimeters(wrench)));

    [Fact]
    public void The_torque_at_the_fastener_leads_back() => Gen.Select(Gen.Double[100, 900], Gen.Double[0, 90], Gen.Double[0, 180], Gen.Decimal[1, 500])
        .Sample((wrench, adapter, angle, torque) =>
        {
            var setting = Adapter(wrench, adapter, angle);
            var entered = new EnteredTorque(torque, TorqueUnit.NewtonMetre);
            return Math.Abs(setting.AtFastener(setting.SettingFor(entered)).Value - torque) < 1e-12m;
        });

    private static AdapterSetting Adapter(double wrench, double adapter, double angle) =>
        new(Length.FromMillimeters(wrench), Length.FromMillimeters(adapter), Angle.FromDegrees(angle));
}
