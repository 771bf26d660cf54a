using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Summaries;

/// <summary>The first thing that a customer asks: may I drive?</summary>
internal static class DriveAnswers
{
    public static IReadOnlyList<DriveAnswer> Of(SummarySubject car) =>
        [Of(car, ReleaseKind.Road, "Drive on the road"), Of(car, ReleaseKind.Track, "Track")];

    private static DriveAnswer Of(SummarySubject car, ReleaseKind kind, string question)
    {
        var standing = car.Standing(kind);
        return ReleaseLines.IsGiven(car, kind)
            ? new DriveAnswer(kind, question, true, $"yes{Until(car, standing.Release!.Fact)}")
            : new DriveAnswer(kind, question, false, standing.Kind switch
            {
                ReleaseStandingKind.NotGiven => "not yet",
                ReleaseStandingKind.Suspended => "no, speak to us first",
                ReleaseStandingKind.Stands or ReleaseStandingKind.Lapsed => "no longer, its time is over",
                _ => "no longer",
            });
    }

    private static string Until(SummarySubject car, Released fact) => (fact.LapsesAtKm, fact.LapsesOn) switch
    {
        ({ } km, { } day) => $", until {car.Km(km)} or {SummarySubject.Words(day)}",
        ({ } km, null) => $", until {car.Km(km)}",
        (null, { } day) => $", until {SummarySubject.Words(day)}",
        _ => "",
    };
}
