using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.Shop;

namespace ShopJobs.Web.Components.PeopleAndPlaces;

/// <summary>A place as the lead types it. The key is made with the form, so sending twice makes one place.</summary>
public sealed class PlaceForm
{
    public string Key { get; init; } = Guid.NewGuid().ToString("N")[..16];

    /// <summary>Revision of the row the form was filled from; empty for a new place.</summary>
    public Guid Revision { get; set; }

    public string Name { get; set; } = "";

    /// <summary>A <see cref="PlaceKind"/> as text, as a select gives it; empty until one is picked.</summary>
    public string Kind { get; set; } = "";

    /// <summary>Key of the place it comes after; empty where it is the first.</summary>
    public string After { get; set; } = "";

    /// <summary>A new place, after all that are in use.</summary>
    public static PlaceForm New(IEnumerable<PlaceRow> inUse) => new() { After = inUse.LastOrDefault()?.Key ?? "" };

    /// <summary>Of a place, between those in use.</summary>
    public static PlaceForm Of(PlaceRow place, IEnumerable<PlaceRow> inUse)
    {
        ArgumentNullException.ThrowIfNull(place);
        return new()
        {
            Key = place.Key,
            Revision = place.Revision,
            Name = place.Name,
            Kind = place.Kind.ToString(),
            After = inUse.LastOrDefault(other => other.Rank < place.Rank)?.Key ?? "",
        };
    }
}
