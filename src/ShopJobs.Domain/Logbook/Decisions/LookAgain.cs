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

        var said = current.Entries.Except(command.Covers.Entries).Concat(command.Covers.Entries.Except(current.Entries))
            .Select(number => state.Corrections.GetValueOrDefault(number)?.Fact.Target ?? number).Distinct()
            .Select(number => Say(state, number)).OfType<HoldPoint>().ToList();
        return said.Count > 0 ? said : [new HoldPoint(HoldReason.LookAgain)];
    }

    private static HoldPoint? Say(CarState state, long number)
    {
        if (!state.Correctables.TryGetValue(number, out var shown) || shown.Entry is not TorqueRecorded pull)
        {
            return state.Positions.Values.FirstOrDefault(book => book.Holds.Exists(hold => hold.Number == number)) is { } held
                ? Changed(held.Position, Change.Held, held.Holds.Find(hold => hold.Number == number)!.At, number)
                : null;
        }

        var book = state.Of(pull.Position);
        var corrected = state.Corrections.Values.Where(correction => correction.Fact.Target == number).MaxBy(correction => correction.Number);
        return book.Pulls.Exists(now => now.Number == number)
            ? corrected is null
                ? Changed(pull.Position, book.Last?.Number == number ? Change.Pulled : Change.Looked, shown.At, number)
                : Changed(pull.Position, Change.Corrected, shown.At, corrected.Number)
            : Changed(pull.Position, Change.Opened, book.Since, book.OpenedBy);
    }

    private static HoldPoint Changed(JointPosition position, Change change, DateTime at, long entry) =>
        new(HoldReason.LookAgain) { Position = position, About = change, At = at, Entry = entry };
}
