namespace ShopJobs.Domain.Tools;

/// <summary>
/// Days that a calibration or check may bear (common practice, no source). A tool is calibrated every year (ISO 6789-1:2017, 5.3,
/// from memory), an instrument every one to three: a date further back or ahead is a slip in typing.
/// </summary>
public static class CalibrationDates
{
    /// <summary>So many years back at most.</summary>
    public const int MostYearsBack = 5;

    /// <summary>Good for so many years at most.</summary>
    public const int MostYearsGood = 3;

    /// <summary>The earliest day of a calibration that is entered today.</summary>
    public static DateOnly Earliest(DateOnly today) => today.AddYears(-MostYearsBack);

    /// <summary>The latest day on which a calibration of a day is good.</summary>
    public static DateOnly LatestDue(DateOnly date) => date.Year + MostYearsGood > DateOnly.MaxValue.Year ? DateOnly.MaxValue : date.AddYears(MostYearsGood);
}
