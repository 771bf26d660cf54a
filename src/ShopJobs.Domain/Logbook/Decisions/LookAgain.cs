using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// A signature covers exactly the entries that were shown. Where they are no longer exactly those, nothing is signed, and what changed
/// is said: "wheel nut front-left 4 was pulled again at 14:02; look again".
/// </summary>
internal static class LookAgain
{
    /// <summary>What changed since the command's lines were drawn; null when nothing did.</summary>
    public static IReadOnlyList<HoldPoint>? At(CarState state, Circumstances now, SignedCommand command)
    {
        var current = Coverings.Of(state, now, command);
        if (current.Equals(command.Covers))
        {
            return null;
        }

        if (DecidedMeanwhile(state, now, command).ToList() is { Count: > 0 } decided)
        {
            return decided;
        }

        // A release, or the end of a job, is shown the whole logbook, up to its newest entry.
        var gone = command is Release or UpholdRelease or WithdrawRelease or JobCommand ? [] : command.Covers.Entries.Except(current.Entries);
        var said = current.Entries.Except(command.Covers.Entries).Select(number => Came(state, number))
            .Concat(gone.Select(number => Went(state, number))).OfType<HoldPoint>().Distinct().ToList();
        return said.Count > 0 ? said : [new HoldPoint(HoldReason.LookAgain)];
    }

    // What somebody else has decided meanwhile: who, what and when.
    private static IEnumerable<HoldPoint> DecidedMeanwhile(CarState state, Circumstances now, SignedCommand command) =>
        from position in command switch
        {
            DecideHold decide => [decide.Position],
            DecideRow row => row.Positions,
            _ => Array.Empty<JointPosition>(),
        }
        let made = state.Of(position).LastDecision
        where made is not null && !Deciding.IsAsked(state, now, position)
        select Deciding.DecidedBefore(made!) with { Position = position };

    // What is there now and was not shown.
    private static HoldPoint? Came(CarState state, long number)
    {
        if (state.Correctables.TryGetValue(number, out var found) && found.Entry is TorqueRecorded pull)
        {
            return Corrected(state, number, pull) ?? Changed(pull.Position, Change.Pulled, found.At, number);
        }

        if (state.Corrections.TryGetValue(number, out var correction))
        {
            return state.Correctables[correction.Fact.Target].Entry is TorqueRecorded target ? Corrected(state, correction.Fact.Target, target) : null;
        }

        if (state.Positions.Values.FirstOrDefault(book => book.Holds.Exists(hold => hold.Number == number)) is { } held)
        {
            return Changed(held.Position, Change.Held, held.Holds.Find(hold => hold.Number == number)!.At, number);
        }

        return state.Positions.Values.FirstOrDefault(book => book.OpenedBy == number) is { } opened
            ? Changed(opened.Position, Change.Opened, opened.Since, number)
            : null;
    }

    // What was shown and is there no more. A pull that a later one stands in for is told by that one.
    private static HoldPoint? Went(CarState state, long number)
    {
        if (!state.Correctables.TryGetValue(number, out var shown) || shown.Entry is not TorqueRecorded pull)
        {
            return null;
        }

        var book = state.Of(pull.Position);
        return book.Pulls.Find(now => now.Number == number) is not { } standing ? Changed(pull.Position, Change.Opened, book.Since, book.OpenedBy)
            : Corrected(state, number, pull)
            ?? (standing.WitnessedBy is { } look ? Changed(pull.Position, Change.Looked, state.Correctables[look].At, look) : null);
    }

    private static HoldPoint? Corrected(CarState state, long target, TorqueRecorded pull) =>
        state.Corrections.Values.Where(correction => correction.Fact.Target == target).MaxBy(correction => correction.Number) is { } newest
            ? new HoldPoint(HoldReason.LookAgain) { Position = pull.Position, About = Change.Corrected, Entry = newest.Number }
            : null;

    private static HoldPoint Changed(JointPosition position, Change change, DateTime at, long entry) =>
        new(HoldReason.LookAgain) { Position = position, About = change, At = at, Entry = entry };
}
