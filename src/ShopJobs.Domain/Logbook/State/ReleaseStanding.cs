using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>What a release amounts to now.</summary>
public enum ReleaseStandingKind
{
    /// <summary>Never given.</summary>
    NotGiven,

    Stands,

    /// <summary>It could not be given now: nobody drives before it was looked at and signed to stand again.</summary>
    Suspended,

    /// <summary>Its re-torque is overdue by date or by distance; a road test's day is over.</summary>
    Lapsed,

    /// <summary>Ended for good by an opening or a pull.</summary>
    Ended,

    /// <summary>Taken back.</summary>
    Withdrawn,
}

/// <summary>A release as it stands, with why where it does not.</summary>
/// <param name="Release">The newest release of the kind; null when none was given.</param>
/// <param name="Why">What speaks against it now; empty where it stands, or where only its signature is missing.</param>
public sealed record ReleaseStanding(ReleaseStandingKind Kind, ReleaseBook? Release, IReadOnlyList<HoldPoint> Why)
{
    /// <summary>True when the car may go by it.</summary>
    public bool IsGood => Kind == ReleaseStandingKind.Stands;
}

/// <summary>Derives how releases stand.</summary>
public static class ReleaseStandings
{
    /// <summary>How the newest release of a kind stands.</summary>
    /// <remarks>
    /// A release stands while its rules find nothing but what it was given with. Steps of jobs that were put on the car after it
    /// speak against the next release, not against this one.
    /// </remarks>
    public static ReleaseStanding StandingOf(this CarState state, Circumstances now, ReleaseKind kind)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        if (!state.Releases.TryGetValue(kind, out var release))
        {
            return new ReleaseStanding(ReleaseStandingKind.NotGiven, null, []);
        }

        if (release.Withdrawn is not null || release.VoidBy > 0)
        {
            return new ReleaseStanding(release.Withdrawn is null ? ReleaseStandingKind.Ended : ReleaseStandingKind.Withdrawn, release, []);
        }

        var why = state.AgainstStanding(now, release);
        return why.Count > 0 || release.SuspendedBy > 0 || state.WasDoubtedSince(now, release)
            ? new ReleaseStanding(ReleaseStandingKind.Suspended, release, why)
            : new ReleaseStanding(state.HasLapsed(now, release) ? ReleaseStandingKind.Lapsed : ReleaseStandingKind.Stands, release, []);
    }

    /// <summary>What the rules find against a release that was given.</summary>
    internal static IReadOnlyList<HoldPoint> AgainstStanding(this CarState state, Circumstances now, ReleaseBook release) =>
    [
        .. HoldRules.Standard.OnRelease(new ReleaseQuestion(state, now, release.Fact.Kind, CustomerAccepted: true, PositionRules.All)
        {
            Told = name => release.Fact.Without?.Contains(name) == true,
        })
            .Where(point => point.Job is not { } job || point.Reason != HoldReason.StepNotSigned || state.Jobs[job].Number < release.Number),
    ];

    // Its last day or its last kilometre is over: a re-torque is overdue, or it was a road test of another day.
    private static bool HasLapsed(this CarState state, Circumstances now, ReleaseBook release) =>
        now.LapsesOn(release) < now.DayShown || state.Odometer > release.Fact.LapsesAtKm;

    // A doubt that was raised under the release, lifted, decided or not: the lead looks and signs before it stands again.
    private static bool WasDoubtedSince(this CarState state, Circumstances now, ReleaseBook release) =>
        state.Positions.Values.SelectMany(state.ToolWorkOn).Concat(state.Results.Values.Select(result => result.Work()).OfType<ToolWork>()).Any(use =>
            now.Tool(use.Tool).Doubts.Concat(now.Tool(use.Tool).Lifted).Any(doubt => now.Shop.OnThisClock(doubt.Until, doubt.Raised) > now.Shop.OnThisClock(release.StandsSince, release.StandsBy) && doubt.Covers(use)));
}
