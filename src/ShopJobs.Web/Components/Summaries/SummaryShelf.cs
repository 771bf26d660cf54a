using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Summaries;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>Where issued versions are read. It needs no procedure, so that an old page opens whatever became of one.</summary>
public sealed class SummaryShelf(LogbookSnapshots snapshots, Documents documents)
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
        var kinds = Documents.CurrentRegister(reader) is { } digest ? documents.Register(reader, digest) : null;
        var tools = Surroundings.AllTools(reader);
        return summaries.Reverse().Select(book => new IssuedVersion(
            book,
            folded.State.StandingOf(book, since, kinds ?? NoRegister, tool => tools.GetValueOrDefault(tool, ToolState.Empty)),
            reader.Content(book.Fact.Snapshot),
            folded.Unreadable is not null)).ToList();
    });

    private static readonly JointRegister NoRegister = new(
        "none", false, new Dictionary<string, JointKind>(), new Dictionary<string, IReadOnlyList<string>>(), new Dictionary<string, IReadOnlyList<Undone>>());
}
