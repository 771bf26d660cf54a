using System.Text.Json.Serialization;

namespace ShopJobs.Domain.Logbook;

/// <summary>How one system of the car was found when it came in, before anything of it was opened.</summary>
/// <param name="System">The system, as the joint register calls it.</param>
/// <param name="Values">What was measured, of what its sheet asks; what is missing was not seen.</param>
public sealed record AsFoundRecorded(string System, IReadOnlyList<MeasuredValue> Values) : Entry
{
    /// <summary>What was written down, of what its sheet asks; null where nothing was.</summary>
    public IReadOnlyList<WrittenNote>? Notes { get; init; }

    /// <summary>What else was seen, in words.</summary>
    public ContentDigest? Words { get; init; }

    /// <summary>How the customer was told that nobody knows how it was found; null where it was looked at.</summary>
    public ContentDigest? Told { get; init; }

    /// <summary>Number of the opening before which nothing was recorded; null where it was recorded in time.</summary>
    public long? After { get; init; }

    /// <summary>True where it is unknown, and the customer was told so.</summary>
    [JsonIgnore]
    public bool IsUnknown => Told is not null;

    public override EntryFacets Facets() => new()
    {
        About = After is { } opening ? [opening] : [],
        Texts = KeptText.Given(("What was seen", Words), ("How the customer was told", Told)),
        OfCustomer = Told is { } told ? [told] : [],
    };
}
