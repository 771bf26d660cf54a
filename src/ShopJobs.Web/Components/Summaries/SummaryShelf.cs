using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Summaries;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>Where issued versions are read. A version that named a release asks its rules again; nobody has to be signed in for it.</summary>
public sealed class SummaryShelf(LogbookSnapshots snapshots, Surroundings surroundings)
{
    /// <summary>Every issued version of a car, newest first.</summary>
    public IReadOnlyList<IssuedVersion> Of(CarId car) => snapshots.Read(reader =>
    {
        var logbook = Folders.LogbookOf(car);
        var folded = reader.FoldAsFarAsReadable(logbook, Folders.Car);
        var summaries = folded.State.Summaries;
        if (summaries.IsEmpty)
        {
            return [];
        }

        var after = summaries[^1].Number;
        var since = reader.Entries(logbook, after, (int)(folded.State.Number - after)).Select(Folders.Read).ToList();
        var tools = Surroundings.AllTools(reader);
        var now = surroundings.Of(reader, default).For(folded.State) with { Tool = tool => tools.GetValueOrDefault(tool, ToolState.Empty) };
        var issued = summaries.Reverse().Select(book => new IssuedVersion(
            book,
            folded.State.StandingOf(now, book, since),
            reader.Content(book.Fact.Snapshot),
            folded.Unreadable is not null)).ToList();
        return issued.Select((version, at) => version with { Since = SinceVersion.Of(issued.ElementAtOrDefault(at + 1), version.Page) }).ToList();
    });
}
