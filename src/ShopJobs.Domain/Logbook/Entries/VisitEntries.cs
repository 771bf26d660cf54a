using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>One thing that was against a move or a departure which happened all the same.</summary>
/// <param name="Position">The fastener; null where it is about none.</param>
public readonly record struct SpokenAgainst(HoldReason Reason, JointPosition? Position);

/// <summary>The car came back because of work that was done here.</summary>
/// <param name="Joints">The joints the case is about.</param>
/// <param name="Records">Numbers of the records that stood on them when it came in.</param>
public sealed record WarrantyCase(IReadOnlyList<Joint> Joints, IReadOnlyList<long> Records);

/// <summary>The car came in: a visit begins.</summary>
/// <param name="Odometer">As it was read; null where it could not be read, and then <see cref="OdometerWhy"/> says why.</param>
/// <param name="Place">Where it was put, by the shop's key.</param>
/// <param name="Why">Why it comes, in words.</param>
public sealed record Arrived(OdometerReading? Odometer, string Place, ContentDigest Why) : Entry
{
    /// <summary>Why the odometer is lower than it was, or was not read; null where neither.</summary>
    public ContentDigest? OdometerWhy { get; init; }

    /// <summary>The warranty case it comes for; null where it is none.</summary>
    public WarrantyCase? Warranty { get; init; }

    /// <summary>How full the tank was by its gauge, in eighths: 0 for empty to 8 for full; null where nobody looked.</summary>
    public int? FuelEighths { get; init; }

    /// <summary>What of the customer's is in the car; null where nothing was told.</summary>
    public ContentDigest? Things { get; init; }

    /// <summary>True where each system's state as found is asked for before it is opened; null in visits from before that was asked.</summary>
    public bool? AsksAsFound { get; init; }

    public override EntryFacets Facets() => new()
    {
        About = Warranty?.Records ?? [],
        Texts = KeptText.Given(("Why it comes", Why), ("About the odometer", OdometerWhy), ("Things in the car", Things)),
        OfCustomer = Things is { } things ? [Why, things] : [Why],
    };
}

/// <summary>How a car leaves the shop.</summary>
public enum WayOut
{
    /// <summary>On its own wheels, on the road.</summary>
    Driven,

    /// <summary>On a trailer or a truck.</summary>
    OnTrailer,
}

/// <summary>The car left: its visit ends.</summary>
/// <param name="TakenBy">Who took it, in words.</param>
/// <param name="Release">Number of the road release that stood; null where none did.</param>
/// <param name="Against">What was against it where it happened all the same; empty where nothing did.</param>
public sealed record Left(WayOut Way, ContentDigest TakenBy, OdometerReading? Odometer, long? Release, IReadOnlyList<SpokenAgainst> Against) : Entry
{
    /// <summary>Why the odometer is lower than it was; null where it is not.</summary>
    public ContentDigest? OdometerWhy { get; init; }

    /// <summary>Why it happened all the same; null where it was asked first.</summary>
    public ContentDigest? Why { get; init; }

    public override EntryFacets Facets() => new()
    {
        About = Release is { } release ? [release] : [],
        Texts = KeptText.Given(("Taken by", TakenBy), ("About the odometer", OdometerWhy), ("Why it happened", Why)),
        OfCustomer = [TakenBy],
    };
}

/// <summary>The car was moved to another place of the shop.</summary>
/// <param name="From">The place it stood at, by the shop's key.</param>
/// <param name="Against">What was against it where it happened all the same; empty where nothing did.</param>
public sealed record CarMoved(string From, string To, IReadOnlyList<SpokenAgainst> Against) : Entry
{
    /// <summary>Why it happened without asking; null where it was asked first.</summary>
    public ContentDigest? Why { get; init; }

    public override EntryFacets Facets() => new() { Texts = KeptText.Given(("Why it happened", Why)) };
}

/// <summary>Somebody looked the car over after it was moved, or left, against its gate.</summary>
/// <param name="Moves">Numbers of those entries.</param>
/// <param name="Finding">What was seen, in words.</param>
public sealed record LookedOver(IReadOnlyList<long> Moves, ContentDigest Finding, string Shown) : Entry
{
    public override EntryFacets Facets() => new() { About = Moves, Texts = KeptText.Given(("What was seen", Finding)) };
}

/// <summary>At the last day of a re-torque the lead gave it a new interval: its days begin again on this one.</summary>
/// <param name="On">The shop's day on which it was given.</param>
public sealed record ReTorqueExtended(IReadOnlyList<JointPosition> Positions, DateOnly On, OdometerReading Odometer, ContentDigest Reason, string Shown) : Entry
{
    /// <summary>Why the odometer is lower than it was; null where it is not.</summary>
    public ContentDigest? OdometerWhy { get; init; }

    public override EntryFacets Facets() => new() { Positions = Positions, Texts = KeptText.Given(("Reason", Reason), ("About the odometer", OdometerWhy)) };
}
