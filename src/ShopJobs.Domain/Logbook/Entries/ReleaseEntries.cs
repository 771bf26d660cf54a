using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>The car was released.</summary>
/// <param name="NotChecked">Joints as found, not checked by us.</param>
/// <param name="LapsesAtKm">Odometer at which a road release lapses because a re-torque is due.</param>
/// <param name="LapsesOn">Day after which it lapses.</param>
/// <param name="Acceptance">The customer's written acceptance of a re-torque still due.</param>
/// <param name="Closes">Jobs that ended with a road or track release: all their steps were signed.</param>
public sealed record Released(
    ReleaseKind Kind,
    IReadOnlyList<JobId> Closes,
    int NotChecked,
    decimal? OdometerKm,
    decimal? LapsesAtKm,
    DateOnly? LapsesOn,
    ContentDigest? Acceptance,
    string Shown) : Entry
{
    /// <summary>Why the odometer is lower than at the last release; null where it is not.</summary>
    public ContentDigest? OdometerWhy { get; init; }

    /// <summary>The odometer as it was entered; null in older records, and where none was read.</summary>
    public OdometerReading? Odometer { get; init; }

    /// <summary>The shop's day; null in older records.</summary>
    public DateOnly? On { get; init; }

    /// <summary>Who drives a road test; null for any other release.</summary>
    public PersonId? Driver { get; init; }

    /// <summary>How far the road test may go; null for any other release.</summary>
    public decimal? DistanceKm { get; init; }

    /// <summary>The closing check that was signed with it; null for a release to move, and in older records.</summary>
    public IReadOnlyList<ClosingItem>? Closing { get; init; }

    /// <summary>Results that only a drive gives and that were missing when it was given; null where none was.</summary>
    public IReadOnlyList<string>? Without { get; init; }

    // What was shown to the signer has the acceptance in it.
    public override EntryFacets Facets() => new()
    {
        Texts = KeptText.Given(("Customer's acceptance", Acceptance), ("Why the odometer is lower", OdometerWhy)),
        OfCustomer = Acceptance is { } given ? ShownAs is { } shown ? [given, shown] : [given] : [],
    };
}

/// <summary>A suspended release is valid again: all its rules were asked again.</summary>
/// <param name="Release">Number of the release.</param>
public sealed record ReleaseUpheld(ReleaseKind Kind, long Release, string Shown) : Entry
{
    public override EntryFacets Facets() => new() { About = [Release] };
}

/// <summary>A release was taken back.</summary>
/// <param name="Release">Number of the release.</param>
/// <param name="Driven">False when the car was not driven under it: then it starts no re-torque.</param>
public sealed record ReleaseWithdrawn(ReleaseKind Kind, long Release, bool Driven, ContentDigest Reason, string Shown) : Entry
{
    public override EntryFacets Facets() => new() { About = [Release], Texts = KeptText.Given(("Reason", Reason)) };
}

/// <summary>The car came back from its road test.</summary>
/// <param name="Release">Number of the road test's release.</param>
/// <param name="Finding">What the driver noticed; null where nothing was.</param>
public sealed record RoadTestEnded(long Release, OdometerReading Odometer, ContentDigest? Finding) : Entry
{
    /// <summary>Why the odometer is lower than it was; null where it is not.</summary>
    public ContentDigest? OdometerWhy { get; init; }

    public override EntryFacets Facets() =>
        new() { About = [Release], Texts = KeptText.Given(("What the driver noticed", Finding), ("Why the odometer is lower", OdometerWhy)) };
}

/// <summary>A version of the work summary was issued. The snapshot never changes.</summary>
public sealed record SummaryIssued(int Version, int? Replaces, ContentDigest Snapshot, long AsOf, string Shown) : Entry
{
    public override EntryFacets Facets() => new() { OfCustomer = [Snapshot] };
}
