using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>What somebody wants to decide about what is held, and the lines that are signed with it.</summary>
/// <param name="Acceptance">Acceptance by the maker or a named engineer; null where none is given.</param>
/// <param name="Shown">What was decided and why, as lines.</param>
public sealed record HoldDecision(Disposition Disposition, string Reason, Acceptance? Acceptance, IReadOnlyList<string> Shown);
