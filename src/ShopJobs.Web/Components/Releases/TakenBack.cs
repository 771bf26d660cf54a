using ShopJobs.Domain.Procedures;

namespace ShopJobs.Web.Components.Releases;

/// <summary>A release that somebody wants to take back.</summary>
/// <param name="Driven">Whether the car was driven under it.</param>
public sealed record TakenBack(ReleaseKind Kind, bool Driven, string Reason);
