namespace ShopJobs.Domain.Logbook;

/// <summary>May a tool be used, worst first.</summary>
public enum ToolUse
{
    /// <summary>Out of use for good.</summary>
    Retired,

    /// <summary>Taken out of use: dropped, in doubt, or not left good by its last calibration.</summary>
    OutOfUse,

    /// <summary>No calibration with good readings as left is entered.</summary>
    NotCalibrated,

    /// <summary>Past its due day.</summary>
    Overdue,

    /// <summary>In date, and it has made as many pulls since its calibration as it may.</summary>
    AtItsLimit,

    /// <summary>In date, and due within <see cref="ToolStanding.SoonDays"/> days or the last tenth of its pulls.</summary>
    DueSoon,

    /// <summary>In date.</summary>
    InDate,
}

/// <summary>The state of a tool on a day. Whether its earlier work is in doubt is a matter of its own: a tool in date may carry one.</summary>
/// <param name="DaysLeft">Days to its due day: 0 on the day itself, below zero after it; null without a good calibration.</param>
/// <param name="WorkInDoubt">A doubt stands on what it tightened.</param>
public readonly record struct ToolStanding(ToolUse Use, int? DaysLeft, bool WorkInDoubt)
{
    /// <summary>A calibration due within so many days is announced (common practice, no source).</summary>
    public const int SoonDays = 30;

    /// <summary>Pulls it may make until it is calibrated again; null for an instrument, which is counted by days alone.</summary>
    public int? PullsLeft { get; init; }

    /// <summary>True when a pull with it counts, as far as the tool is concerned.</summary>
    public bool MayBeUsed => Use is ToolUse.InDate or ToolUse.DueSoon;

    /// <summary>In words: "in date", "due in 12 days", "overdue by 3 days", "out of use".</summary>
    public string Words => Use switch
    {
        ToolUse.Retired => "out of use for good",
        ToolUse.OutOfUse => "out of use",
        ToolUse.NotCalibrated => "not calibrated",
        ToolUse.Overdue => $"overdue by {Days(-DaysLeft ?? 0)}",
        ToolUse.AtItsLimit => "its pulls are used up",
        ToolUse.DueSoon when DaysLeft == 0 => "due today",
        ToolUse.DueSoon when DaysLeft > SoonDays => FormattableString.Invariant($"due in {PullsLeft} {(PullsLeft == 1 ? "pull" : "pulls")}"),
        ToolUse.DueSoon => $"due in {Days(DaysLeft ?? 0)}",
        _ => "in date",
    };

    private static string Days(int days) => FormattableString.Invariant($"{days} {(days == 1 ? "day" : "days")}");
}

/// <summary>Derives the state of a tool.</summary>
public static class ToolStandings
{
    /// <summary>The standing of a tool on a day of the shop.</summary>
    /// <param name="pulls">Pulls made with it since its last good calibration.</param>
    public static ToolStanding StandingOn(this ToolState state, DateOnly day, int pulls = 0)
    {
        ArgumentNullException.ThrowIfNull(state);
        var left = state.LastGood is { } good ? good.Due.DayNumber - day.DayNumber : (int?)null;
        var pullsLeft = state.Tool is { } tool ? Math.Max(0, tool.CycleLimit - pulls) : (int?)null;
        var use = state.RetiredBy > 0 ? ToolUse.Retired
            : state.OutOfUseBy > 0 ? ToolUse.OutOfUse
            : left is null ? ToolUse.NotCalibrated
            : !state.IsCalibratedOn(day) ? ToolUse.Overdue
            : pullsLeft == 0 ? ToolUse.AtItsLimit
            : left <= ToolStanding.SoonDays || pullsLeft <= state.Tool?.CycleLimit / 10 ? ToolUse.DueSoon
            : ToolUse.InDate;
        return new ToolStanding(use, left, !state.Doubts.IsEmpty) { PullsLeft = pullsLeft };
    }
}
