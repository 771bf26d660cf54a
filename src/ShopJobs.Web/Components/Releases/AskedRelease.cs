using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Web.Components.Releases;

/// <summary>A release somebody wants to sign, and the lines that are signed with it.</summary>
/// <param name="Acceptance">The customer's acceptance of a re-torque still due; null where none is given.</param>
/// <param name="OdometerWhy">Why the odometer is lower than it was; empty where it is not.</param>
/// <param name="Covers">The logbook as it was on the screen.</param>
public sealed record AskedRelease(
    ReleaseKind Kind, decimal? OdometerKm, Acceptance? Acceptance, string OdometerWhy, IReadOnlyList<string> Shown, Covering Covers)
{
    /// <summary>Who drives; for a road test only.</summary>
    public PersonId? Driver { get; init; }

    /// <summary>How far, in km; for a road test only.</summary>
    public decimal? DistanceKm { get; init; }

    /// <summary>The closing check; null for a release to move.</summary>
    public IReadOnlyList<ClosingItem>? Closing { get; init; }

    /// <summary>The odometer as it was typed; null where it was not.</summary>
    public OdometerReading? Odometer { get; init; }
}
