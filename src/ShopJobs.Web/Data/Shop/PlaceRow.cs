using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Shop;

/// <summary>A place of the shop where a car is put. It is renamed or retired, never deleted: entries and cars hold its key.</summary>
public sealed class PlaceRow : TrackedRow
{
    public const int KeyLength = 20;
    public const int NameLength = 30;

    /// <summary>What entries and cars hold; it never changes.</summary>
    public required string Key { get; init; }

    public required string Name { get; set; }

    public PlaceKind Kind { get; set; }

    /// <summary>Where it comes among the shop's places, from 1.</summary>
    public int Rank { get; set; }

    /// <summary>When it was taken out of use, UTC; null while cars are put there.</summary>
    public DateTime? RetiredAt { get; set; }
}
