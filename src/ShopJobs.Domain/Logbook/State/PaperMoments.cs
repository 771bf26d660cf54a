using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>The moments that a paper gives, beside those of the logbook.</summary>
public static class PaperMoments
{
    /// <summary>Why work on these positions can't have been done in this minute; null when it can.</summary>
    /// <param name="at">The minute on the paper, UTC.</param>
    public static HoldPoint? Against(CarState state, IReadOnlyList<JointPosition> positions, DateTime at, Circumstances now)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(positions);
        ArgumentNullException.ThrowIfNull(now);
        return at > now.Shows ? new HoldPoint(HoldReason.PaperTimeAhead)
            : positions.Select(position => (Position: position, Last: LastMoment(state, state.Of(position)))).FirstOrDefault(one => at < Minute(one.Last)) is { Last: var last, Position: var on } && last != default
                ? new HoldPoint(HoldReason.PaperTimeBefore) { Position = on, At = last }
            : null;
    }

    /// <summary>
    /// How often a position had been opened when a card was printed, with the openings that were entered from that card since: the cycle of
    /// which the card speaks.
    /// </summary>
    public static int CycleOn(CarState state, JointPosition position, CardNumber printed, string card)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Of(position).Cycle - state.Openings.Count(opening => opening.Key > printed.Entry
            && opening.Value.After.Any(book => book.Position == position && book.OpenedBy == opening.Key)
            && (state.Correctables[opening.Key].Entry as Opened)?.OnPaper?.Card != card);
    }

    // When the newest record of it was made; where it came from paper, the minute that stands there.
    private static DateTime LastMoment(CarState state, PositionBook book)
    {
        var moments = book.Pulls.Select(pull => pull.Fact.OnPaper?.At ?? pull.At);
        if (book.SinceEntry is { } since)
        {
            moments = moments.Append((since switch { Opened opened => opened.OnPaper, HandTightened hand => hand.OnPaper, _ => null })?.At ?? book.Since);
        }

        if (book.FittedNewBy > book.OpenedBy && state.Correctables.TryGetValue(book.FittedNewBy, out var fitted))
        {
            moments = moments.Append((fitted.Entry as FittedNew)?.OnPaper?.At ?? fitted.At);
        }

        return moments.DefaultIfEmpty().Max();
    }

    private static DateTime Minute(DateTime at) => at.AddTicks(-(at.Ticks % TimeSpan.TicksPerMinute));
}
