namespace ShopJobs.Web.Components.Releases;

/// <summary>A car that came back from its road test.</summary>
/// <param name="Noticed">What the driver noticed; empty where nothing was.</param>
public sealed record RoadTestReturn(decimal OdometerKm, string Noticed);
