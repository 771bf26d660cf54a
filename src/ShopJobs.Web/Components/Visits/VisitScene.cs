using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.Visits;

/// <summary>One visit as it is read when it is opened.</summary>
/// <param name="Facts">How it came, was moved, was released and left, a line each.</param>
public sealed record VisitScene(IReadOnlyList<string> Facts, IReadOnlyList<JointVisit> Joints);
