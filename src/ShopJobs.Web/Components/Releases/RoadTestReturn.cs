using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.Releases;

/// <summary>A car that came back from its road test.</summary>
/// <param name="OdometerWhy">Why the odometer is lower than it was; empty where it is not.</param>
/// <param name="Noticed">What the driver noticed; empty where nothing was.</param>
public sealed record RoadTestReturn(OdometerReading Odometer, string OdometerWhy, string Noticed);
