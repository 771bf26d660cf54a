namespace ShopJobs.Domain.Logbook;

/// <summary>A photograph of the car was taken.</summary>
/// <param name="Photo">The picture, kept outside the entry.</param>
/// <param name="View">From where it shows the car; null for a photograph of anything else.</param>
public sealed record PhotoTaken(ContentDigest Photo, CarView? View) : Entry
{
    /// <summary>What it shows, in words; null where nothing was written.</summary>
    public ContentDigest? Caption { get; init; }

    // A picture shows the plate and what lies in the car: it goes with the customer's own words.
    public override EntryFacets Facets() => new() { Texts = KeptText.Given(("Caption", Caption)), OfCustomer = [Photo] };
}
