using ShopJobs.Domain.Procedures;

namespace ShopJobs.Web.Components.Releases;

/// <summary>A release somebody wants to sign, and the lines that are signed with it.</summary>
/// <param name="Acceptance">The customer's written acceptance of a re-torque still due; empty where none is given.</param>
public sealed record AskedRelease(ReleaseKind Kind, decimal? OdometerKm, string Acceptance, IReadOnlyList<string> Shown);
