namespace ShopJobs.Domain.Logbook;

/// <summary>What became of an entry. It stays readable for good; struck entries no longer hold.</summary>
/// <param name="Struck">True when it does not stand.</param>
/// <param name="Words">What became of it; null when nothing did.</param>
public sealed record EntryStanding(bool Struck, string? Words)
{
    /// <summary>Nothing happened to it.</summary>
    public static readonly EntryStanding Stands = new(false, null);
}

/// <summary>Derives what became of entries.</summary>
public static class EntryStandings
{
    /// <summary>The standing of an entry of this car's logbook.</summary>
    public static EntryStanding StandingOf(this CarState state, Recorded recorded)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(recorded);
        var corrections = state.Corrections.Values.Where(correction => correction.Fact.Target == recorded.Number).OrderBy(c => c.Number).ToList();
        if (corrections.Find(correction => correction.Fact.Restated is null) is { } voided)
        {
            // An opening stands until a second person has said that it was never done.
            return new EntryStanding(
                recorded.Entry is not Opened || voided.Confirmed,
                $"{(recorded.Entry is Opened ? "taken back as never done" : "void")} by entry {voided.Number}{(recorded.Entry is TorqueRecorded or Opened ? Waiting(voided) : "")}");
        }

        if (corrections.Count > 0)
        {
            var last = corrections[^1];
            return new EntryStanding(false, $"corrected to {last.Fact.Restated} by entry {last.Number}{Waiting(last)}");
        }

        return recorded.Entry switch
        {
            WorkHeld when state.WorkHolds[recorded.Number].Decision is { } made => new EntryStanding(false, $"decided by entry {made.Number}"),
            WorkHeld => new EntryStanding(false, "waits for its decision"),
            ResultRecorded when state.UndecidedWork().Any(hold => hold.Fact.Result == recorded.Number) => new EntryStanding(false, "held until it is decided"),
            ResultRecorded fact when state.Results.GetValueOrDefault(fact.Name) is { } result && result.Number == recorded.Number && result.VoidBy > 0 =>
                new EntryStanding(true, $"void from entry {result.VoidBy} on"),
            ResultRecorded fact when state.Results.GetValueOrDefault(fact.Name)?.Number > recorded.Number =>
                new EntryStanding(true, $"recorded again in entry {state.Results[fact.Name].Number}"),
            Released fact when state.Releases[fact.Kind] is var release && release.Number > recorded.Number =>
                new EntryStanding(true, $"released again in entry {release.Number}"),
            Released fact when state.Releases[fact.Kind].VoidBy is > 0 and var by => new EntryStanding(true, $"ended by entry {by}"),
            SummaryIssued when state.Summaries.Find(summary => summary.Number == recorded.Number) is { SupersededBy: > 0 and var by } =>
                new EntryStanding(false, $"out of date since entry {by}"),
            StepConfirmed fact when state.Jobs[fact.Job].SignOffs[fact.Step].Number is var newest && newest > recorded.Number =>
                new EntryStanding(true, $"signed again in entry {newest}"),
            StepFinished fact when state.Jobs[fact.Job].SignOffs.GetValueOrDefault(fact.Step) is { Number: var signed } && signed > recorded.Number =>
                new EntryStanding(false, $"signed in entry {signed}"),
            FewerJointsAsked when state.FewerAsked.ContainsKey(recorded.Number) => new EntryStanding(false, "waits for a second person who looked"),
            CarMoved or Left when state.ToLookOver.Exists(move => move.Number == recorded.Number) => new EntryStanding(false, "waits to be looked over"),
            StepConfirmed fact when state.Jobs[fact.Job].SignOffs[fact.Step] is { AwaitsCountersign: true } && !state.Fallen.ContainsKey(recorded.Number) =>
                new EntryStanding(false, "waits for its countersignature"),
            _ when state.Fallen.TryGetValue(recorded.Number, out var by) => new EntryStanding(true, $"void from entry {by} on"),
            StepConfirmed fact when fact.RestsOn.Where(on => state.Fallen.GetValueOrDefault(on) > recorded.Number).ToList() is { Count: > 0 } gone =>
                new EntryStanding(true, $"void: it relies on {EntryNames.Numbers(gone)}, which is no longer valid"),
            _ => EntryStanding.Stands,
        };
    }

    /// <summary>The standing of an entry of a tool's logbook.</summary>
    public static EntryStanding StandingOf(this ToolState state, Recorded recorded)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(recorded);
        return recorded.Entry is Doubted && state.Doubts.TrueForAll(doubt => doubt.Number != recorded.Number)
            ? new EntryStanding(false, "lifted since")
            : EntryStanding.Stands;
    }

    /// <summary>The standing of an entry of the shop's logbook.</summary>
    public static EntryStanding StandingOf(this ShopState state, Recorded recorded)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(recorded);
        return state.Steps.Find(step => step.Number == recorded.Number) is { } said
            ? new EntryStanding(false, said.IsOpen ? "waits for the lead's signature of the time" : $"answered by entry {said.SignedBy}")
            : EntryStanding.Stands;
    }

    private static string Waiting(CorrectionBook correction) =>
        correction.Confirmed ? ", confirmed by a second person" : "; waits for a second person to confirm it";
}
