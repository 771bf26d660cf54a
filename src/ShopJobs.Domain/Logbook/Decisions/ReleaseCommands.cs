using System.Text.Json.Serialization;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>Release the car.</summary>
public sealed record Release(
    ReleaseKind Kind, decimal? OdometerKm, Acceptance? CustomerAcceptance, string Shown) : SignedCommand(Shown)
{
    /// <summary>The odometer as it was entered: the same distance as <see cref="OdometerKm"/>.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public OdometerReading? Odometer { get; init; }

    /// <summary>Why the odometer is lower than it was; asked only where it is.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ContentDigest? OdometerWhy { get; init; }

    /// <summary>Who drives; asked for a road test only.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public PersonId? Driver { get; init; }

    /// <summary>The closing check: what the signer has seen. Asked for every release but to move.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<ClosingItem>? Closing { get; init; }

    /// <summary>How far, in km, above 0; asked for a road test only.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public decimal? DistanceKm { get; init; }
}

/// <summary>Report that the car is back from its road test. It only ends what was allowed.</summary>
/// <param name="Finding">What the driver noticed; null where nothing was.</param>
public sealed record EndRoadTest(OdometerReading Odometer, ContentDigest? Finding) : Report
{
    /// <summary>Why the odometer is lower than it was; asked only where it is.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ContentDigest? OdometerWhy { get; init; }
}

/// <summary>Make a suspended release valid again: all its rules are asked again.</summary>
public sealed record UpholdRelease(ReleaseKind Kind, string Shown) : SignedCommand(Shown);

/// <summary>Take a release back.</summary>
/// <param name="Driven">Whether the car was driven under it.</param>
public sealed record WithdrawRelease(ReleaseKind Kind, bool Driven, ContentDigest Reason, string Shown) : SignedCommand(Shown);

/// <summary>Issue the next version of the work summary.</summary>
/// <param name="AsOf">Number of the newest entry the snapshot was made from: refused once the logbook has grown.</param>
public sealed record IssueSummary(ContentDigest Snapshot, long AsOf, string Shown) : SignedCommand(Shown);
