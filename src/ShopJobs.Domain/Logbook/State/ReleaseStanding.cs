using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>What a release amounts to now.</summary>
public enum ReleaseStandingKind
{
    /// <summary>Never given.</summary>
    NotGiven,

    Stands,

    /// <summary>It could not be given now: nobody drives before it was looked at and signed as valid again.</summary>
    Suspended,

    /// <summary>Its re-torque is overdue by date or by distance; a road test's day is over.</summary>
    Lapsed,

    /// <summary>Ended for good by an opening or a pull.</summary>
    Ended,

    /// <summary>Taken back.</summary>
    Withdrawn,
}

/// <summary>A release and its state, with why where it is not valid.</summary>
/// <param name="Release">The newest release of the kind; null when none was given.</param>
/// <param name="Why">What is against it now; empty where it is valid, or where only its signature is missing.</param>
public sealed record ReleaseStanding(ReleaseStandingKind Kind, ReleaseBook? Release, IReadOnlyList<HoldPoint> Why)
{
    /// <summary>True when the car may go by it.</summary>
    public bool IsGood => Kind == ReleaseStandingKind.Stands;
}

/// <summary>Derives the state of releases.</summary>
public static class ReleaseStandings
{
    /// <summary>The state of the newest release of a kind.</summary>
    /// <remarks>
    /// A release stands while its rules find nothing but what it was given with. Steps of jobs that were put on the car after it
    /// count against the next release, not against this one.
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

    // A doubt that was raised under the release, lifted, decided or not: the lead looks and signs before it is valid again.
    private static bool WasDoubtedSince(this CarState state, Circumstances now, ReleaseBook release) =>
        state.Positions.Values.SelectMany(state.ToolWorkOn).Concat(state.Results.Values.Select(result => result.Work()).OfType<ToolWork>()).Any(use =>
            now.Tool(use.Tool).Doubts.Concat(now.Tool(use.Tool).Lifted).Any(doubt => now.Shop.OnThisClock(doubt.Until, doubt.Raised) > now.Shop.OnThisClock(release.StandsSince, release.StandsBy) && doubt.Covers(use)));
}
