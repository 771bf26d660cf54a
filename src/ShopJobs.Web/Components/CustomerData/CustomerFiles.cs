using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Data.Summaries;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.CustomerData;

/// <summary>Writes the file with everything the shop holds about a customer.</summary>
public sealed class CustomerFiles(IDbContextFactory<ShopDbContext> database, LogbookSnapshots snapshots, ShopSettings settings, ShopClock clock)
{
    private const int Format = 1;

    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web) { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The file in UTF-8; null when there is no such customer.</summary>
    public async Task<byte[]?> WriteAsync(CustomerId id, CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        if (await shop.Customers.AsNoTracking().FirstOrDefaultAsync(row => row.Id == id, cancellation) is not { } customer)
        {
            return null;
        }

        var books = snapshots.Read(reader =>
        {
            var tools = Surroundings.AllTools(reader);
            return OwnedCar.Of(reader, id).Select(car => OwnedEntries.Of(reader, car, tools)).Select(held => (Held: held, Texts: Texts(reader, held), Photos: Photos(reader, held))).ToList();
        });
        var said = await shop.Acknowledgements.AsNoTracking().Where(read => read.CustomerId == id).ToListAsync(cancellation);
        var cars = new List<FileCar>();
        foreach (var (held, texts, photos) in books)
        {
            var row = await shop.Cars.AsNoTracking().SingleAsync(car => car.Id == held.Car.Car, cancellation);
            var jobs = await shop.Jobs.AsNoTracking().Where(job => job.CarId == row.Id).OrderBy(job => job.StartedAt).ToListAsync(cancellation);
            var links = await shop.CustomerLinks.AsNoTracking().Where(link => link.CarId == row.Id).OrderBy(link => link.CreatedAt).ToListAsync(cancellation);
            cars.Add(CarOf(row, held, texts, said) with
            {
                Jobs = [.. jobs.Where(job => held.Car.Covers(job.StartedAt)).Select(job => new FileJob(job.Title, job.Places, job.AskedFor, job.StartedAt))],
                Photographs = photos,
                Links = [.. links.Where(link => held.Car.Covers(link.CreatedAt)).Select(link => new FileLink(link.CreatedAt, link.ExpiresAt, link.RevokedAt))],
            });
        }

        var file = new CustomerFile(
            Format, settings.Current.Name, clock.Now, new FileCustomer(customer.Name, customer.Contact, customer.ChangedAt, customer.ErasedAt), cars);
        return JsonSerializer.SerializeToUtf8Bytes(file, Json);
    }

    private static FileCar CarOf(
        Car row, OwnedEntries held, IReadOnlyDictionary<ContentDigest, string?> texts, IReadOnlyList<SummaryAcknowledgement> said) => new(
        row.Name,
        row.Model,
        held.Car.IsTheirs ? row.Mark : null,
        held.Car.IsTheirs ? row.Chassis : null,
        held.Car.IsTheirs ? row.Colour : null,
        held.Car.IsTheirs ? row.Note : null,
        held.Car.From,
        held.Car.Until,
        [],
        [.. held.State.Visits.Where(visit => (visit.At ?? visit.End?.At) is { } at && held.Car.Covers(at)).Select(visit => VisitOf(visit, texts))],
        [.. from recorded in held.Entries
            let issued = recorded.Entry as SummaryIssued
            where issued is not null
            let read = said.FirstOrDefault(one => one.CarId == row.Id && one.Version == issued.Version)
            select new FileSummary(issued.Version, recorded.At, PageOf(texts[issued.Snapshot]), read?.At, read?.Words)],
        [.. from recorded in held.Entries
            let given = (recorded.Entry as Released)?.Acceptance
            where given is not null
            select new FileText(recorded.At, texts[given.Value] ?? "(erased)")],
        [.. held.Told.Select(told => new FileText(told.At, texts[told.Fact.Words] ?? "(erased)"))],
        [],
        []);

    private static FileVisit VisitOf(VisitBook visit, IReadOnlyDictionary<ContentDigest, string?> texts) => new(
        visit.At,
        visit.Arrived?.Odometer?.ToString(),
        visit.Arrived is { } came ? texts.GetValueOrDefault(came.Why) ?? "(erased)" : null,
        visit.End?.At,
        visit.Left?.Odometer?.ToString(),
        visit.Left is { } went ? went.Way == WayOut.Driven ? "driven" : "on a trailer" : null,
        visit.Left is { } left ? texts.GetValueOrDefault(left.TakenBy) ?? "(erased)" : null);

    private static JsonElement? PageOf(string? text) => text is null ? null : JsonElement.Parse(text);

    private static Dictionary<ContentDigest, string?> Texts(LogbookReader reader, OwnedEntries held) => held.Texts.Distinct().ToDictionary(
        digest => digest, digest => TextOf(reader, digest));

    private static List<FilePhoto> Photos(LogbookReader reader, OwnedEntries held) =>
    [
        .. from recorded in held.Entries
           let photo = recorded.Entry as PhotoTaken
           where photo is not null
           select new FilePhoto(
               recorded.At,
               photo.View is { } view ? PhotoWords.Of(view) : null,
               photo.Caption is { } caption ? TextOf(reader, caption) : null,
               reader.Content(photo.Photo) is StoredContent.Present present ? present.Bytes.ToArray() : null),
    ];

    private static string? TextOf(LogbookReader reader, ContentDigest digest) =>
        reader.Content(digest) is StoredContent.Present present ? Encoding.UTF8.GetString(present.Bytes.Span) : null;
}
