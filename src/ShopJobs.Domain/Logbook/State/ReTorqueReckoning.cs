using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// When the re-torque after the drive is due: reckoned from the first release after the joint's final pull under which the car may have
/// been driven. A later release starts nothing again.
/// </summary>
public static class ReTorqueReckoning
{
    /// <summary>The first release that a position's re-torque is reckoned from; null while the car was not let out since.</summary>
    public static ReleaseBook? FirstDrive(this CarState state, PositionBook book)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(book);
        return book.Last is { } last ? state.FirstDriveAfter(last.Number) : null;
    }

    /// <summary>The odometer at which it is overdue; null without a first drive.</summary>
    public static decimal? LatestKm(this CarState state, PositionBook book) =>
        state.FirstDrive(book)?.Fact.OdometerKm + Rule(book)?.LatestKm;

    /// <summary>The new interval that the lead gave for this pull and this drive; null where he gave none.</summary>
    public static IntervalBook? IntervalOf(this CarState state, PositionBook book) =>
        state.FirstDrive(book) is { } drive && state.Intervals.TryGetValue(book.Position, out var interval)
            && interval.Pull == book.Last!.Number && interval.Drive == drive.Number
            ? interval
            : null;

    /// <summary>The last day on which it is not overdue; null without a first drive or a date limit.</summary>
    public static DateOnly? LatestDay(this CarState state, Circumstances now, PositionBook book)
    {
        ArgumentNullException.ThrowIfNull(now);
        return state.FirstDrive(book) is { } drive && Rule(book)?.WithinDays is { } days
            ? (state.IntervalOf(book) is { } interval ? now.DayOf(interval) : now.DayOf(drive)).AddDays(days)
            : null;
    }

    /// <summary>True when it is overdue by distance or by date.</summary>
    public static bool IsOverdue(this CarState state, Circumstances now, PositionBook book, decimal? odometerKm)
    {
        ArgumentNullException.ThrowIfNull(now);
        return odometerKm > state.LatestKm(book) || now.DayShown > state.LatestDay(now, book);
    }

    /// <summary>
    /// True below the distance that the rule asks to settle. At the date limit, by a clock that is not in doubt, the lead may settle it early.
    /// </summary>
    public static bool IsTooEarly(this CarState state, Circumstances now, PositionBook book, decimal? odometerKm)
    {
        ArgumentNullException.ThrowIfNull(now);
        return state.IsBelowItsDistance(book, odometerKm) && !(now.May(Right.Lead) && state.IsAtItsLastDay(now, book));
    }

    /// <summary>True below the distance that the rule asks to settle.</summary>
    public static bool IsBelowItsDistance(this CarState state, PositionBook book, decimal? odometerKm) =>
        odometerKm < state.FirstDrive(book)?.Fact.OdometerKm + Rule(book)?.AfterKm;

    /// <summary>True from its last day on, by a clock that is not in doubt.</summary>
    public static bool IsAtItsLastDay(this CarState state, Circumstances now, PositionBook book)
    {
        ArgumentNullException.ThrowIfNull(now);
        return !now.Shop.ClockInDoubt && now.DayShown >= state.LatestDay(now, book);
    }

    /// <summary>True where the lead may give it a new interval: owed, at its last day, not driven far enough to settle, and none given yet.</summary>
    public static bool MayBeExtended(this CarState state, Circumstances now, PositionBook book, decimal odometerKm) =>
        state.OwesReTorque(book) && state.IsAtItsLastDay(now, book) && state.IsBelowItsDistance(book, odometerKm) && state.IntervalOf(book) is null;

    private static ReTorque? Rule(PositionBook book) => book.Last?.Fact.Spec.ReTorque;
}
