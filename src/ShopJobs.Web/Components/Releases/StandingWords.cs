using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.CarPage;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.Releases;

/// <summary>How a release stands, in the words of every screen.</summary>
/// <param name="Names">People's names.</param>
/// <param name="Ended">The entries that ended releases, by number.</param>
public sealed record StandingWords(
    CarReading Reading, ShopClock Clock, IReadOnlyDictionary<PersonId, string> Names, IReadOnlyDictionary<long, Recorded> Ended)
{
    /// <summary>Said of a release to road or track whose re-torque was not done in time.</summary>
    public const string Lapsed = "Expired: do not drive";

    /// <summary>"Suspended: do not drive".</summary>
    public static string Suspended(ReleaseKind kind) => kind == ReleaseKind.Move ? "Suspended: do not move" : "Suspended: do not drive";

    /// <summary>"Released 14:02 by Jorn."; where it is no longer valid, what became of it.</summary>
    public string Of(ReleaseKind kind)
    {
        var standing = Reading.StandingOf(kind);
        if (standing.Release is not { } release)
        {
            return "Not released.";
        }

        var given = $"Released {Clock.Words(release.At)} by {Names.GetValueOrDefault(release.Person, "somebody")}";
        return standing.Kind switch
        {
            ReleaseStandingKind.Lapsed when kind == ReleaseKind.RoadTest => $"{given}. Its day is over: do not drive.",
            ReleaseStandingKind.Lapsed when !Reading.State.OwesAnyReTorque() => $"{given}. Expired{Limit(release)}: its re-torque is done, release it again.",
            ReleaseStandingKind.Lapsed => $"{given}. Expired{Limit(release)}: its re-torque is overdue. Do not drive.",
            ReleaseStandingKind.Withdrawn => $"{given}; taken back{Since(release)}. The car was {(release.Withdrawn!.Driven ? "" : "not ")}driven under it.",
            ReleaseStandingKind.Ended => $"{given}; ended{Since(release)}{Why(release)}.",
            _ => $"{given}.",
        };
    }

    private string Limit(ReleaseBook release) => release.Fact.LapsesAtKm is { } km && Reading.State.Odometer > km
        ? $" at {Reading.Now.Distance.Say(km)}"
        : release.Fact.LapsesOn is { } day ? $" after {WallTime.Day(day)}" : "";

    private string Since(ReleaseBook release) => Ended.TryGetValue(release.VoidBy, out var entry) ? $" {Clock.Words(entry.At)}" : "";

    private string Why(ReleaseBook release) =>
        Ended.TryGetValue(release.VoidBy, out var entry) ? $": {EndedBy.Words(entry, Reading.Now)}" : "";
}
