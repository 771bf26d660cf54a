using System.Collections.Immutable;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>What an opening changed, so that one that was never done can be taken back whole.</summary>
/// <param name="Before">The positions as they stood before it.</param>
/// <param name="After">The same positions as it left them.</param>
/// <param name="Fell">Records that fell by it, each with the entry it had fallen by before; 0 where it was valid.</param>
/// <param name="Undid">Results and settings that it undid, each with the entry that had undone it before; 0 where it was valid.</param>
public sealed record OpeningBook(
    IReadOnlyList<PositionBook> Before,
    IReadOnlyList<PositionBook> After,
    IReadOnlyList<KeyValuePair<long, long>> Fell,
    IReadOnlyList<KeyValuePair<string, long>> Undid)
{
    internal static OpeningBook Of(CarState before, CarState after, long number, IReadOnlyList<PositionBook> books, Opened fact) => new(
        books,
        [.. books.Select(book => after.Of(book.Position))],
        [.. after.Fallen.Where(fell => fell.Value == number).Select(fell => KeyValuePair.Create(fell.Key, before.Fallen.GetValueOrDefault(fell.Key)))],
        [.. fact.Undid.Select(undone => undone.ToString()).Distinct().Select(name => KeyValuePair.Create(name, before.Undone.GetValueOrDefault(name)))]);

    /// <summary>The same where another opening, that came before, was never done: what had fallen by that had fallen by what was before it.</summary>
    internal OpeningBook Without(long number, OpeningBook other) => this with
    {
        Fell = [.. Fell.Select(fell => fell.Value == number ? KeyValuePair.Create(fell.Key, Earlier(other.Fell, fell.Key)) : fell)],
        Undid = [.. Undid.Select(undid => undid.Value == number ? KeyValuePair.Create(undid.Key, Earlier(other.Undid, undid.Key)) : undid)],
    };

    private static long Earlier<T>(IReadOnlyList<KeyValuePair<T, long>> was, T key) =>
        was.FirstOrDefault(one => EqualityComparer<T>.Default.Equals(one.Key, key)).Value;
}

/// <summary>Openings that were never done: OPEN on the wrong corner or car.</summary>
public static class TakenBackOpenings
{
    /// <summary>
    /// True while an opening can be taken back: it was the only thing that anybody recorded on what it opened since, nothing but other
    /// openings was corrected after it, and the car was not released. Then the joint is closed as it was; else it is closed as the procedure says.
    /// </summary>
    public static bool CanBeTakenBack(this CarState state, long number)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Openings.TryGetValue(number, out var opening)
            && state.Correctables[number].Entry is Opened { Late: null or { Count: 0 }, BySetting: not true }
            && opening.After.Count > 0
            && opening.After.All(book => book.OpenedBy == number && state.Of(book.Position) == book)
            && !state.Corrections.Values.Any(other => other.Fact.Target != number && state.Correctables[other.Fact.Target].Entry is not (Opened or PhotoTaken)
                && (other.Number > number || other.ConfirmedBy > number))
            && !state.ReleaseHistory.Exists(release => release.Number > number);
    }
}
