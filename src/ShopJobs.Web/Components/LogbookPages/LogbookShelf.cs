using System.Globalization;
using System.Text;
using Microsoft.Data.Sqlite;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Cars;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.LogbookPages;

/// <summary>Reads logbooks for the page: entries in words, newest first, with what became of them.</summary>
public sealed class LogbookShelf(
    LogbookSnapshots snapshots, Surroundings surroundings, WhoIsHere here, PeopleShelf people, ShopClock clock)
{
    /// <summary>Entries on one page.</summary>
    public const int PageSize = 40;

    /// <summary>A page of a logbook; null when there is no such car or tool; the shop always has one.</summary>
    /// <param name="newest">Number of the newest entry to show; the last one when null.</param>
    public async Task<LogbookScene?> ReadAsync(LogbookId logbook, long? newest)
    {
        var looks = await here.LookingAsync();
        return logbook.Kind switch
        {
            LogbookKind.Car => OfCar(new CarId(logbook.Owner), newest, looks, await people.WithRightAsync(Right.Decide)),
            LogbookKind.Tool => OfTool(new ToolId(logbook.Owner), newest),
            _ => OfShop(newest),
        };
    }

    private LogbookScene OfShop(long? newest) => snapshots.Read(reader =>
    {
        var folded = reader.FoldAsFarAsReadable(LogbookId.Shop, Folders.Shop);
        var names = Names(reader, surroundings.Of(reader, default), new Dictionary<JobId, JobBook>());
        return Sheet(reader, LogbookId.Shop, "the shop", newest, folded.Unreadable, (entry, envelope) =>
            Line(reader, names, entry, envelope, folded.State.StandingOf(entry)));
    });

    private LogbookScene? OfCar(CarId car, long? newest, Present? looks, IReadOnlyList<PeopleShelf.Named> deciders) => snapshots.Read(reader =>
    {
        if (NameOf(reader, "Cars", car.Value) is not { } name)
        {
            return null;
        }

        var logbook = Folders.LogbookOf(car);
        var folded = reader.FoldAsFarAsReadable(logbook, Folders.Car);
        var now = Surroundings.About(surroundings.Of(reader, default), reader, car, folded.State);
        var names = Names(reader, now, folded.State.Jobs);
        return Sheet(reader, logbook, name, newest, folded.Unreadable, (entry, envelope) =>
            Line(reader, names, entry, envelope, folded.State.StandingOf(entry)) with
            {
                Use = CorrectionUse.Of(folded.State, entry, looks),
                MayConfirm = CorrectionUse.Of(folded.State, entry, looks) == EntryUse.Confirm
                    ? CorrectionUse.MayConfirm(deciders, CorrectionUse.NotBy(folded.State, entry))
                    : null,
                IsPull = entry.Entry is TorqueRecorded,
                Value = (entry.Entry as TorqueRecorded)?.Value,
                AboutTurn = CorrectionUse.AboutTurn(folded.State, entry.Entry),
                AboutOpening = CorrectionUse.AboutOpening(folded.State, entry.Entry),
                NotBy = CorrectionUse.NotBy(folded.State, entry),
                Covers = CorrectionUse.Covers(folded.State, now, entry),
            });
    });

    private LogbookScene? OfTool(ToolId tool, long? newest) => snapshots.Read(reader =>
    {
        if (NameOf(reader, "Tools", tool.Value) is not { } name)
        {
            return null;
        }

        var logbook = Folders.LogbookOf(tool);
        var folded = reader.FoldAsFarAsReadable(logbook, Folders.Tool);
        var names = Names(reader, surroundings.Of(reader, default), new Dictionary<JobId, JobBook>());
        return Sheet(reader, logbook, name, newest, folded.Unreadable, (entry, envelope) =>
            Line(reader, names, entry, envelope, folded.State.StandingOf(entry)));
    });

    private static LogbookScene Sheet(
        LogbookReader reader, LogbookId logbook, string title, long? newest, LogbookReadOnlyException? unreadable,
        Func<Recorded, Envelope, EntryLine> line)
    {
        var head = reader.Head(logbook);
        var top = Math.Clamp(newest ?? head.Number, 0, head.Number);
        var lines = new List<EntryLine>();
        for (var number = top; number > Math.Max(0, top - PageSize); number--)
        {
            lines.Add(unreadable is null || number < unreadable.Number ? Read(reader, logbook, number, line) : Unread(number));
        }

        return new LogbookScene(title, $"{head.Number}:{head.Hash}", head.Number, lines, unreadable?.Message);
    }

    private static EntryLine Read(LogbookReader reader, LogbookId logbook, long number, Func<Recorded, Envelope, EntryLine> line)
    {
        var envelope = reader.Entries(logbook, number - 1, 1)[0];
        return line(Folders.Read(envelope), envelope);
    }

    private static EntryLine Unread(long number) => new(
        number, default, "", false, "This entry can't be used by this program.", [], [], new EntryStanding(true, "not read"));

    private EntryLine Line(LogbookReader reader, EntryNames names, Recorded entry, Envelope envelope, EntryStanding standing)
    {
        var signed = entry.Entry.SignedAs is { } digest ? TextOf(reader, digest) : null;
        var facets = entry.Entry.Facets();
        return new EntryLine(
            entry.Number,
            clock.OnTheWall(envelope.At),
            signed ?? NameThen(reader, entry.Person, envelope.At) ?? names.Person(entry.Person),
            signed is not null,
            EntryWords.Of(entry.Entry, names),
            [.. facets.Texts.Select(text => (text.Label, TextOf(reader, text.Digest)))],
            facets.Problems,
            standing)
        {
            Photo = (entry.Entry as PhotoTaken)?.Photo,
            Shown = entry.Entry.ShownAs is { } shown ? Shown(TextOf(reader, shown)) : [],
        };
    }

    private static IReadOnlyList<string> Shown(string kept) =>
        ShownLines.Read(kept) is { } shown ? [shown.Title, .. shown.Lines, $"Signed with: {shown.Meaning}"] : [kept];

    private static string TextOf(LogbookReader reader, ContentDigest digest) => reader.Content(digest) switch
    {
        StoredContent.Present present => Encoding.UTF8.GetString(present.Bytes.Span),
        StoredContent.Erased => "(erased)",
        StoredContent.Altered => "(changed outside the program: run verify)",
        _ => "(taken out outside the program: run verify)",
    };

    private static EntryNames Names(LogbookReader reader, Circumstances now, IReadOnlyDictionary<JobId, JobBook> jobs) => new(
        joint => now.Name(joint),
        tool => now.Tool(tool).Tool?.Name ?? "a tool not in the book",
        job => jobs.TryGetValue(job, out var book) ? book.Fact.Procedure : "a job not in the book",
        (job, step) => jobs.TryGetValue(job, out var book) && now.Placed(book).Step(step) is { } instance ? instance.Title() : step,
        person => NameOf(reader, "People", person.Value) ?? "somebody not in the book")
    {
        Distance = now.Distance,
        Place = now.Places.NameOf,
    };

    // What somebody who was renamed was called when an entry was made; null where that is the name of today.
    private static string? NameThen(LogbookReader reader, PersonId person, DateTime at) =>
        reader.Row($"names-before:{person.Value}", "SELECT group_concat(Until || '|' || Name, char(10)) FROM (SELECT Until, Name FROM NamesBefore WHERE PersonId = $1 ORDER BY Until)", [person.Value], rows => rows as string ?? "")
            .Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(row => row.Split('|', 2))
            .FirstOrDefault(row => at < DateTime.Parse(row[0], CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal))?[1];

    private static string? NameOf(LogbookReader reader, string table, Guid id) => reader.Row($"name:{table}:{id}", connection =>
    {
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // Only this file's own text reaches it.
        command.CommandText = $"SELECT Name FROM {table} WHERE Id = $id";
#pragma warning restore CA2100
        command.Parameters.AddWithValue("$id", id);
        return command.ExecuteScalar() as string;
    });
}
