using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Tools;

/// <summary>Days that a calibration may bear. Common practice, no source.</summary>
public class CalibrationDateTests
{
    [Fact]
    public void A_calibration_is_at_most_five_years_old_when_it_is_entered() =>
        Assert.Equal(new DateOnly(2021, 3, 2), CalibrationDates.Earliest(new DateOnly(2026, 3, 2)));

    [Theory]
    [InlineData("2026-03-02", "2029-03-02")]
    [InlineData("2024-02-29", "2027-02-28")]
    [InlineData("9998-01-01", "9999-12-31")]
    public void It_is_good_for_at_most_three_years(string date, string latest) =>
        Assert.Equal(DateOnly.Parse(latest, System.Globalization.CultureInfo.InvariantCulture), CalibrationDates.LatestDue(DateOnly.Parse(date, System.Globalization.CultureInfo.InvariantCulture)));
}
