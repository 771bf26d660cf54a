using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>The car's joints are other ones from now on: it follows another kind of car, or has its own count somewhere.</summary>
/// <param name="Follows">The kind of car it follows now; null where that stays.</param>
/// <param name="Counts">Joints with their own count from now on; the others stay as they are.</param>
/// <param name="Asked">The entry that asked for it, where fewer joints needed a second person; null where nothing was lost.</param>
/// <param name="Reason">Why; for what was asked before, what the second person saw.</param>
public sealed record JointListChanged(string? Follows, IReadOnlyList<JointCount> Counts, long? Asked, ContentDigest Reason) : Entry
{
    /// <summary>Digest of the lines that were shown to the signer; null where nobody signed: more joints were found.</summary>
    public string? Shown { get; init; }

    public override EntryFacets Facets() => new()
    {
        About = Asked is { } asked ? [asked] : [],
        Texts = KeptText.Given((Asked is null ? "Reason" : "What was seen", Reason)),
    };
}

/// <summary>The lead says that the car has fewer joints than its list. It changes nothing until a second person has looked.</summary>
/// <param name="Follows">The kind of car it should follow; null where that stays.</param>
/// <param name="Counts">Joints with the count they should have.</param>
public sealed record FewerJointsAsked(string? Follows, IReadOnlyList<JointCount> Counts, ContentDigest Reason, string Shown) : Entry
{
    public override EntryFacets Facets() => new() { Texts = KeptText.Given(("Reason", Reason)) };
}

/// <summary>A second person looked, and the car has the joints of its list: it stays as it is.</summary>
/// <param name="Asked">The entry that asked for fewer.</param>
public sealed record JointListKept(long Asked, ContentDigest Finding, string Shown) : Entry
{
    public override EntryFacets Facets() => new() { About = [Asked], Texts = KeptText.Given(("What was seen", Finding)) };
}
