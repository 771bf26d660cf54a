using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.CustomerData;

/// <summary>What the logbooks hold of a customer on one car.</summary>
/// <param name="State">The car as it stands.</param>
/// <param name="Entries">Entries of the time when it was the customer's, oldest first.</param>
/// <param name="Told">Words about a tool in doubt, from the tools' logbooks, of the same time.</param>
/// <param name="Unreadable">Why the car's logbook can't be read to its end; null where it can.</param>
internal sealed record OwnedEntries(OwnedCar Car, CarState State, IReadOnlyList<Recorded> Entries, IReadOnlyList<ToldOwner> Told, string? Unreadable)
{
    /// <summary>Texts, pages and pictures that are the customer's, in the order of their entries.</summary>
    public IEnumerable<ContentDigest> Contents =>
        Entries.SelectMany(recorded => recorded.Entry.Facets().OfCustomer).Concat(Told.SelectMany(told => told.Fact.Facets().OfCustomer));

    /// <summary>Photographs of the car in that time, those that were voided too.</summary>
    public IEnumerable<ContentDigest> Photos => Entries.Select(recorded => recorded.Entry).OfType<PhotoTaken>().Select(taken => taken.Photo);

    /// <summary>Contents that are read as text.</summary>
    public IEnumerable<ContentDigest> Texts => Contents.Except(Photos);

    public static OwnedEntries Of(LogbookReader reader, OwnedCar car, IReadOnlyDictionary<ToolId, ToolState> tools)
    {
        var logbook = Folders.LogbookOf(car.Car);
        var folded = reader.FoldAsFarAsReadable(logbook, Folders.Car);
        return new OwnedEntries(
            car,
            folded.State,
            [.. reader.Entries(logbook, 0, checked((int)folded.State.Number)).Select(Folders.Read).Where(recorded => car.Covers(recorded.At))],
            [.. tools.Values.SelectMany(tool => tool.Told).Where(told => told.Fact.Car == car.Car && car.Covers(told.At)).OrderBy(told => told.At)],
            folded.Unreadable?.Message);
    }
}
