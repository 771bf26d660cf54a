using CsCheck;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Tools;

public class CalibrationTests
{
    private static readonly CalibrationPoint[] NinePercentLow = [new(40, 36.4m), new(120, 109.2m), new(200, 182)];

    private static readonly Calibration Certificate = new(
        new DateOnly(2026, 3, 2), new DateOnly(2027, 3, 1), "Certificate 26-0311", NinePercentLow, [new(40, 40.4m), new(120, 119), new(200, 203)]);

    /// <summary>Own computation: 110 x 0.91 = 100.1, outside 105..115.</summary>
    [Fact]
    public void A_wrench_nine_percent_low_gave_100_when_110_was_set() => Assert.Equal(100.1m, NinePercentLow.TrueTorque(110));

    [Theory]
    [InlineData(39.9)]
    [InlineData(200.1)]
    public void Outside_the_points_the_true_torque_is_unknown(double shown) => Assert.Null(NinePercentLow.TrueTorque((decimal)shown));

    [Fact]
    public void Without_points_the_true_torque_is_unknown() => Assert.Null(Array.Empty<CalibrationPoint>().TrueTorque(110));

    [Fact]
    public void Both_end_points_are_known()
    {
        Assert.Equal(36.4m, NinePercentLow.TrueTorque(40));
        Assert.Equal(182, NinePercentLow.TrueTorque(200));
    }

    [Fact]
    public void Repeated_readings_of_one_value_are_averaged() =>
        Assert.Equal(101, new CalibrationPoint[] { new(100, 100), new(100, 102), new(200, 200) }.TrueTorque(100));

    [Fact]
    public void A_wrench_that_delivers_too_little_has_a_positive_deviation()
    {
        var point = new CalibrationPoint(110, 100.1m);

        Assert.Equal(9.89m, Math.Round(point.DeviationPercent, 2));
        Assert.Equal(-9m, point.DeliveredPercent);
    }

    [Theory]
    [InlineData("2026-03-01", false)]
    [InlineData("2026-03-02", true)]
    [InlineData("2027-03-01", true)]
    [InlineData("2027-03-02", false)]
    public void It_is_valid_to_the_end_of_its_due_day(string day, bool valid) =>
        Assert.Equal(valid, Certificate.IsValidOn(DateOnly.ParseExact(day, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)));

    [Fact]
    public void A_due_day_before_the_calibration_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(
        () => new Calibration(new DateOnly(2026, 3, 2), new DateOnly(2026, 3, 1), "", [], []));

    [Fact]
    public void True_torque_stays_between_the_readings_on_both_sides() =>
        Gen.Select(Gen.Decimal[41, 199], Gen.Decimal[36, 44], Gen.Decimal[110, 130], Gen.Decimal[180, 220]).Sample((shown, low, middle, high) =>
        {
            var truth = new CalibrationPoint[] { new(200, high), new(40, low), new(120, middle) }.TrueTorque(shown)!.Value;
            var (from, to) = shown < 120 ? (low, middle) : (middle, high);
            return truth >= from && truth <= to;
        });
}
