namespace ShopJobs.Domain.Logbook;

/// <summary>What becomes of a pull by what is wrong with it.</summary>
public enum PullOutcome
{
    /// <summary>Nothing is wrong with it.</summary>
    Counts,

    /// <summary>Short of the range, and nothing else wrong: the procedure says what to do, nobody need decide.</summary>
    Short,

    /// <summary>Made by somebody without the right, and nothing else wrong: whoever stood by countersigns it.</summary>
    AwaitsCountersign,

    /// <summary>It holds its position until somebody with the right decides.</summary>
    Held,
}

/// <summary>Sorts pulls by what is wrong with them.</summary>
public static class PullOutcomes
{
    /// <summary>The outcome of these problems, in the order in which they were found.</summary>
    public static PullOutcome Of(IReadOnlyList<HoldReason> problems) => problems switch
    {
        [] => PullOutcome.Counts,
        [HoldReason.UnderRange] => PullOutcome.Short,
        [HoldReason.NoRightToRecord] => PullOutcome.AwaitsCountersign,
        _ => PullOutcome.Held,
    };
}
