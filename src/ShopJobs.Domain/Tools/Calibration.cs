namespace ShopJobs.Domain.Tools;

/// <summary>
/// One calibration of a torque tool: the day it was made, the last day it is valid, the certificate (laboratory and number,
/// no person), and the points as found and as left.
/// </summary>
public sealed record Calibration(
    DateOnly Date, DateOnly Due, string Certificate, IReadOnlyList<CalibrationPoint> AsFound, IReadOnlyList<CalibrationPoint> AsLeft)
{
    /// <summary>The day the calibration was made.</summary>
    public DateOnly Date { get; } = Date;

    /// <summary>Last day of validity, not before <see cref="Date"/>.</summary>
    public DateOnly Due { get; } = Due >= Date
        ? Due
        : throw new ArgumentOutOfRangeException(nameof(Due), Due, "A calibration cannot be due before it was made.");

    /// <summary>Valid from its date to the end of its due day, in the shop's own days.</summary>
    public bool IsValidOn(DateOnly day) => day >= Date && day <= Due;
}
