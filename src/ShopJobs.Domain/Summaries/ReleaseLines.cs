using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Summaries;

/// <summary>The valid releases and their limits, and plainly which are not given.</summary>
internal static class ReleaseLines
{
    public static IReadOnlyList<ReleaseLine> Of(SummarySubject car)
    {
        var driven = Line(car, ReleaseKind.Road);
        var track = Line(car, ReleaseKind.Track);
        return driven.Given || track.Given ? [driven, track] : [Line(car, ReleaseKind.Move), driven, track];
    }

    /// <summary>True when the release stands and has not lapsed.</summary>
    public static bool IsGiven(SummarySubject car, ReleaseKind kind) =>
        car.Standing(kind) is { IsGood: true, Release: { } release } && !HasLapsed(car, release);

    public static string Word(ReleaseKind kind) => kind switch
    {
        ReleaseKind.Move => "move by hand in the shop",
        ReleaseKind.RoadTest => "a road test",
        ReleaseKind.Road => "road",
        _ => "track",
    };

    private static ReleaseLine Line(SummarySubject car, ReleaseKind kind)
    {
        var standing = car.Standing(kind);
        if (standing.Release is not { } release)
        {
            return new ReleaseLine(false, $"Not released to {Word(kind)}.{NotMadeHere(car, kind)}");
        }

        var day = SummarySubject.Words(release.Day);
        return standing.Kind switch
        {
            ReleaseStandingKind.Ended => Not("ended because of later work or a finding."),
            ReleaseStandingKind.Withdrawn => Not("was taken back."),
            ReleaseStandingKind.Suspended => Not("is suspended until we have looked at the car again."),
            _ when HasLapsed(car, release) => Not($"has expired{Limits(car, release.Fact)}."),
            _ => new ReleaseLine(true, Given(car, kind, release, day)),
        };

        ReleaseLine Not(string words) => new(false, $"Not released to {Word(kind)}: the release of {day} {words}");
    }

    /// <summary>Joints that are as found, where the register asks that the shop itself tightens them for this release.</summary>
    private static string NotMadeHere(SummarySubject car, ReleaseKind kind)
    {
        var joints = car.Joints
            .Where(joint => car.Now.Register.Kinds.GetValueOrDefault(joint.Key.Key)?.LeastFor(kind) == LeastState.MadeHere
                && joint.Any(book => book.IsAsFound))
            .Select(joint => car.Name(joint.Key)).ToList();
        return joints.Count == 0 ? "" : $" Before that we would have to tighten what is as found: {string.Join("; ", joints)}.";
    }

    private static bool HasLapsed(SummarySubject car, ReleaseBook release) =>
        car.Standing(release.Fact.Kind).Kind == ReleaseStandingKind.Lapsed || release.Fact.LapsesAtKm < car.Facts.OdometerKm;

    private static string Given(SummarySubject car, ReleaseKind kind, ReleaseBook release, string day)
    {
        var at = release.Fact.OdometerKm is { } km ? $" at {car.Km(km)}" : "";
        var limits = Limits(car, release.Fact) is { Length: > 0 } words ? $" It expires{words}." : "";
        var rest = release.Fact.NotChecked > 0 ? $" {SummarySubject.Count(release.Fact.NotChecked, "joint")} as found, not checked by us." : "";
        return $"Released to {Word(kind)} on {day}{at}, signed by {car.Facts.Initials(release.Person)}.{limits}{rest}";
    }

    private static string Limits(SummarySubject car, Released fact) => (fact.LapsesAtKm, fact.LapsesOn) switch
    {
        ({ } km, { } day) => $" at {car.Km(km)} or after {SummarySubject.Words(day)}, whichever comes first",
        ({ } km, null) => $" at {car.Km(km)}",
        (null, { } day) => $" after {SummarySubject.Words(day)}",
        _ => "",
    };
}
