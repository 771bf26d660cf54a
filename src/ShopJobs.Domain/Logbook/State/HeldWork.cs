namespace ShopJobs.Domain.Logbook;

/// <summary>A decision that was made: by which entry, when, by whom, and what.</summary>
public sealed record DecisionMade(long Number, DateTime At, PersonId By, Disposition Disposition);

/// <summary>A hold on a step, a result or a lot of parts. It stands until it is decided.</summary>
public sealed record WorkHold(long Number, DateTime At, PersonId By, WorkHeld Fact)
{
    /// <summary>What was decided; null while undecided.</summary>
    public DecisionMade? Decision { get; init; }
}

/// <summary>What is held on a car and is no fastener.</summary>
public static class HeldWork
{
    /// <summary>Holds that wait for a decision, oldest first.</summary>
    public static IEnumerable<WorkHold> UndecidedWork(this CarState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.WorkHolds.Values.Where(hold => hold.Decision is null).OrderBy(hold => hold.Number);
    }

    /// <summary>True while the step waits for a decision.</summary>
    public static bool IsHeld(this CarState state, JobId job, string step) =>
        state.UndecidedWork().Any(hold => hold.Fact.Step == step && hold.Fact.Job == job);

    /// <summary>True while this result waits for a decision.</summary>
    public static bool IsHeld(this CarState state, ResultBook result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return state.UndecidedWork().Any(hold => hold.Fact.Result == result.Number);
    }

    /// <summary>True while the lot waits for a decision, or was decided to be replaced: what is fitted from it doesn't count as new.</summary>
    public static bool IsBarred(this CarState state, string? lot)
    {
        ArgumentNullException.ThrowIfNull(state);
        var holds = lot is null ? [] : state.WorkHolds.Values.Where(hold => IsSameLot(hold.Fact.Lot, lot)).ToList();
        return holds.Exists(hold => hold.Decision is null)
            || holds.MaxBy(hold => hold.Decision?.Number ?? 0) is { Decision.Disposition: not Disposition.UseAsIs };
    }

    /// <summary>Positions that carry hardware of the lot.</summary>
    public static IEnumerable<PositionBook> FittedFrom(this CarState state, string lot)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Positions.Values.Where(book => IsSameLot(book.Lot, lot));
    }

    /// <summary>As it stands on the bag, whatever the case and the spaces around it.</summary>
    public static bool IsSameLot(string? one, string? other) =>
        one is not null && other is not null && string.Equals(one.Trim(), other.Trim(), StringComparison.OrdinalIgnoreCase);
}
