using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>What somebody wants to decide about a held position, and the lines that are signed with it.</summary>
/// <param name="Acceptance">Written acceptance by the maker or a named engineer; empty where none is given.</param>
/// <param name="Shown">What was on the screen.</param>
/// <param name="Covers">The holds and doubts that were on the screen.</param>
public sealed record HoldDecision(Disposition Disposition, string Reason, string Acceptance, IReadOnlyList<string> Shown, Covering Covers);
