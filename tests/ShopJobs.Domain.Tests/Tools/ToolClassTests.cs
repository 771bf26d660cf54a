using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Tools;

/// <summary>ISO 6789-1:2017, from memory of the standard.</summary>
public class ToolClassTests
{
    [Theory]
    [InlineData(ToolClass.SettingGraduated, "10", 6)]
    [InlineData(ToolClass.SettingGraduated, "11", 4)]
    [InlineData(ToolClass.IndicatingElectronic, "100", 4)]
    [InlineData(ToolClass.IndicatingBar, "100", 6)]
    [InlineData(ToolClass.SettingScrewdriver, "12", 6)]
    public void A_class_permits_its_deviation(ToolClass toolClass, string torque, int percent) =>
        Assert.Equal(percent, toolClass.PermittedPercent(EnteredTorque.Parse(torque)));

    [Fact]
    public void Steps_and_reading_devices_are_a_quarter_of_the_deviation() =>
        Assert.Equal("1 N·m", Plain(ToolClasses.QuarterOfDeviation(EnteredTorque.Parse("100"), 4)));

    [Fact]
    public void A_tool_is_due_by_time_by_cycles_or_after_a_drop()
    {
        var first = new DateOnly(2026, 3, 2);
        var interval = RecalibrationInterval.Iso6789;

        Assert.Equal(new DateOnly(2027, 3, 1), interval.LastDay(first));
        Assert.False(interval.IsDue(first, new DateOnly(2027, 3, 1), 4999));
        Assert.True(interval.IsDue(first, new DateOnly(2027, 3, 2), 0));
        Assert.True(interval.IsDue(first, first, 5000));
        Assert.True(interval.IsDue(first, first, 0, overloadedOrDropped: true));
        Assert.Equal(new RecalibrationInterval(6, 2500), interval.Halved());
        Assert.Throws<ArgumentOutOfRangeException>(() => new RecalibrationInterval(0, 5000));
    }

    private static string Plain(EnteredTorque torque) => FormattableString.Invariant($"{torque.Value:0.##} {torque.Unit.Symbol()}");
}
