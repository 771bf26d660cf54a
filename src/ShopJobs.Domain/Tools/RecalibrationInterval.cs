namespace ShopJobs.Domain.Tools;

/// <summary>
/// When a torque tool is to be recalibrated: 12 months from first use or 5000 cycles, whichever comes first, unless the shop asks
/// sooner; at once after overload or a drop (ISO 6789-1:2017, 5.3, from memory). A tool found outside gets half the interval
/// (practice of laboratories).
/// </summary>
/// <param name="Months">Months, at least 1.</param>
/// <param name="Cycles">Cycles, at least 1.</param>
public sealed record RecalibrationInterval(int Months, int Cycles)
{
    /// <summary>12 months or 5000 cycles.</summary>
    public static RecalibrationInterval Iso6789 { get; } = new(12, 5000);

    /// <summary>Months, at least 1.</summary>
    public int Months { get; } = Months >= 1 ? Months : throw new ArgumentOutOfRangeException(nameof(Months), Months, "At least one month.");

    /// <summary>Cycles, at least 1.</summary>
    public int Cycles { get; } = Cycles >= 1 ? Cycles : throw new ArgumentOutOfRangeException(nameof(Cycles), Cycles, "At least one cycle.");

    /// <summary>Last day of validity by time: the day before the same day of the month the interval ends.</summary>
    public DateOnly LastDay(DateOnly firstUse) => firstUse.AddMonths(Months).AddDays(-1);

    /// <summary>True when the tool is due on a day, after a count of cycles since calibration, or because it was overloaded or dropped.</summary>
    public bool IsDue(DateOnly firstUse, DateOnly today, int cycles, bool overloadedOrDropped = false) =>
        overloadedOrDropped || today > LastDay(firstUse) || cycles >= Cycles;

    /// <summary>Half of it, rounded down to whole months and cycles, at least one of each.</summary>
    public RecalibrationInterval Halved() => new(Math.Max(1, Months / 2), Math.Max(1, Cycles / 2));
}
