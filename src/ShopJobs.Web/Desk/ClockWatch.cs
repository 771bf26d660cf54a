using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Desk;

/// <summary>
/// Looks at the clock at every reading. Where it went back or jumped while the program ran, or stands behind the newest entry, the shop's
/// logbook says so with the next record of anybody; screens and rules go by it from the first look on.
/// </summary>
public sealed class ClockWatch(TimeProvider time)
{
    private readonly Lock anchored = new();
    private readonly long started = time.GetTimestamp();
    private ClockAnchor? anchor;

    /// <summary>The shop as it is known at this reading.</summary>
    internal SeenClock Look(LogbookReader reader)
    {
        var folded = reader.FoldAsFarAsReadable(LogbookId.Shop, Folders.Shop);
        IReadOnlyList<ClockStepped> unsaid;
        lock (anchored)
        {
            var ran = time.GetElapsedTime(started);
            anchor ??= ClockAnchor.First(folded.State, reader.Newest, reader.Clock, ran);
            anchor = anchor.Look(folded.State, reader.Clock, ran);
            unsaid = anchor.Unsaid(folded.State);
        }

        return new SeenClock(
            unsaid.Aggregate(folded.State, (shop, step) => shop.Apply(new Recorded(shop.Number + 1, reader.At, default, step))),
            folded.Unreadable is null ? unsaid : []);
    }
}

/// <summary>How the clock went.</summary>
/// <param name="Shop">The shop's state, with the steps of the clock that its logbook does not say yet.</param>
/// <param name="Unsaid">Those steps, to be written into the shop's logbook before anything else is recorded.</param>
internal sealed record SeenClock(ShopState Shop, IReadOnlyList<Entry> Unsaid);
