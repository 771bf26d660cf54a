using System.Text;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Desk;

/// <summary>The entries of a car one by one, and the texts kept beside them. For histories; a state comes from <see cref="CarDesk"/>.</summary>
public sealed class CarEntries(LogbookSnapshots snapshots)
{
    /// <summary>The entries up to a number, oldest first.</summary>
    /// <param name="upTo">Number of the newest entry that can be read, as the car's state has it.</param>
    public IReadOnlyList<Recorded> Read(CarId car, long upTo) => snapshots.Read(reader =>
        reader.Entries(Folders.LogbookOf(car), 0, checked((int)upTo)).Select(Folders.Read).ToList());

    /// <summary>One entry; null when there is none of that number.</summary>
    public Recorded? Find(CarId car, long number) => number < 1
        ? null
        : snapshots.Read(reader => reader.Entries(Folders.LogbookOf(car), number - 1, 1).Select(Folders.Read).FirstOrDefault());

    /// <summary>The texts behind digests; what was erased or altered says so.</summary>
    public IReadOnlyDictionary<ContentDigest, string> Texts(IEnumerable<ContentDigest> digests) => snapshots.Read(reader =>
        digests.Distinct().ToDictionary(digest => digest, digest => reader.Content(digest) switch
        {
            StoredContent.Present present => Encoding.UTF8.GetString(present.Bytes.Span),
            StoredContent.Erased => "(erased)",
            StoredContent.Altered => "(changed outside the program)",
            _ => "(missing)",
        }));
}
