namespace ShopJobs.Domain.Logbook;

/// <summary>The places of the shop in the shop's own order; equal where every place is.</summary>
public sealed class ShopPlaces(IEnumerable<ShopPlace> inOrder) : IEquatable<ShopPlaces>
{
    /// <summary>Of a shop that has none, or where none are known.</summary>
    public static ShopPlaces None { get; } = new([]);

    /// <summary>Every place, the retired ones too.</summary>
    public IReadOnlyList<ShopPlace> All { get; } = [.. inOrder];

    /// <summary>Those that a car may be put on.</summary>
    public IEnumerable<ShopPlace> InUse => All.Where(place => place.InUse);

    /// <summary>The place with this key; null where the shop never had it.</summary>
    public ShopPlace? Find(string key) => All.FirstOrDefault(place => place.Key == key);

    /// <summary>What a place is called now; its key where the shop never had it.</summary>
    public string NameOf(string key) => Find(key)?.Name ?? key;

    /// <summary>How many places come before it; a place the shop never had comes after all.</summary>
    public int RankOf(string key) => All.TakeWhile(place => place.Key != key).Count();

    public bool Equals(ShopPlaces? other) => other is not null && All.SequenceEqual(other.All);

    public override bool Equals(object? obj) => Equals(obj as ShopPlaces);

    public override int GetHashCode() => All.Aggregate(0, HashCode.Combine);
}
