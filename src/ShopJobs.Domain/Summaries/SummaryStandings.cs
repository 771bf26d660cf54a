using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Summaries;

/// <summary>Derives whether an issued version is still true.</summary>
public static class SummaryStandings
{
    private static readonly ReleaseKind[] Driven = [ReleaseKind.Road, ReleaseKind.Track];

    /// <summary>The standing of a version.</summary>
    /// <param name="state">The car as it is now.</param>
    /// <param name="now">Register, procedures and tools as they are now.</param>
    /// <param name="summary">The issued version.</param>
    /// <param name="entries">Entries of the car's logbook; those before the version are passed over.</param>
    public static SummaryStanding StandingOf(this CarState state, Circumstances now, SummaryBook summary, IEnumerable<Recorded> entries)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(summary);
        ArgumentNullException.ThrowIfNull(entries);
        IReadOnlyList<ReleaseKind> noLonger = [.. Driven.Where(kind => WasNamed(state, summary, kind) && HasFallen(state, now, kind))];
        var next = state.Summaries.Find(other => other.Fact.Version > summary.Fact.Version);
        return next is not null
            ? new SummaryStanding.Replaced(next.Fact.Version, next.At) { NoLonger = noLonger }
            : Newest(state, now, summary, [.. entries.Where(entry => entry.Number > summary.Number && !IsOfPhotos(state, entry.Entry))], noLonger);
    }

    private static SummaryStanding Newest(
        CarState state, Circumstances now, SummaryBook summary, List<Recorded> since, IReadOnlyList<ReleaseKind> noLonger)
    {
        var against = since.Select(entry => (entry.At, Words: Against(entry.Entry, now.Register))).Where(found => found.Words is not null)
            .Concat(Doubts(state, now, summary, lifted: noLonger.Count > 0)).ToList();
        if (against.Count > 0 || noLonger.Count > 0)
        {
            var opened = since.Select(entry => entry.Entry).OfType<Opened>().SelectMany(fact => Lasting(fact, now.Register))
                .Select(position => position.Joint).Distinct().Select(joint => Name(now.Register, joint)).ToList();
            return new SummaryStanding.Overtaken(
                against.Count > 0 ? against.Min(found => found.At) : null,
                opened,
                [
                    .. against.Select(found => found.Words!).Where(words => words.Length > 0).Distinct(),
                    .. noLonger.Any(kind => IsOverdue(state, now, kind)) ? ["its re-torque is not recorded in time"] : Array.Empty<string>(),
                ],
                Grave: true)
            { NoLonger = noLonger };
        }

        var good = since.Where(entry => entry.Entry is not (JobStarted or CarConditionDeclared or Arrived or CarMoved or Left or LookedOver)).ToList();
        return good.Count > 0
            ? new SummaryStanding.Overtaken(good[0].At, [], [], Grave: false)
            : new SummaryStanding.Current();
    }

    // A photograph, and one that was taken by mistake, says nothing about what the version tells.
    private static bool IsOfPhotos(CarState state, Entry entry) => entry is PhotoTaken
        || (entry is Corrected correction && state.Correctables.TryGetValue(correction.Target, out var target) && target.Entry is PhotoTaken);

    // The newest release of the kind when the version was issued, where it had not ended by then.
    private static bool WasNamed(CarState state, SummaryBook summary, ReleaseKind kind) =>
        state.ReleaseHistory.FindLast(release => release.Fact.Kind == kind && release.Number < summary.Number) is { } release
        && (release.VoidBy == 0 || release.VoidBy > summary.Number);

    private static bool HasFallen(CarState state, Circumstances now, ReleaseKind kind) =>
        state.StandingOf(now, kind).Kind is ReleaseStandingKind.Suspended or ReleaseStandingKind.Ended or ReleaseStandingKind.Withdrawn
        || IsOverdue(state, now, kind);

    private static bool IsOverdue(CarState state, Circumstances now, ReleaseKind kind) =>
        state.StandingOf(now, kind).Kind == ReleaseStandingKind.Lapsed && state.OwesAnyReTorque();

    /// <summary>What an entry says against an earlier summary; empty for an opening, null when nothing.</summary>
    private static string? Against(Entry entry, JointRegister register) => entry switch
    {
        Opened fact => Lasting(fact, register).Any() ? "" : null,
        TorqueRecorded { Problems: [HoldReason.UnderRange] } or Settled { Problems: [HoldReason.ReTorqueEarly] } => null,
        PositionHeld or TorqueRecorded { Problems.Count: > 0 } or Settled { Problems.Count: > 0 } or Witnessed { Accepted: false } => "a joint is held",
        Corrected => "a record was corrected",
        Decided => "a held joint was decided",
        ResultRecorded { Undid.Count: > 0 } => "a setting was changed",
        ReleaseWithdrawn => "a release was taken back",
        _ => null,
    };

    private static IEnumerable<JointPosition> Lasting(Opened fact, JointRegister register) => fact.Positions.Concat(fact.AlsoOpened)
        .Where(position => !register.Kinds.TryGetValue(position.Key, out var kind) || !kind.Temporary);

    private static IEnumerable<(DateTime At, string? Words)> Doubts(CarState state, Circumstances now, SummaryBook summary, bool lifted)
    {
        var standing =
            from book in state.Positions.Values
            from found in state.DoubtsOn(book, now.Tool)
            let doubt = now.Tool(found.Tool).Doubts.Find(raised => raised.Number == found.Number)
            where doubt is not null && doubt.Until > summary.At
            select (doubt.Until, (string?)"a tool that was used is in doubt");
        var over =
            from use in lifted ? state.Positions.Values.SelectMany(state.ToolWorkOn) : []
            from doubt in now.Tool(use.Tool).Lifted
            where doubt.Until > summary.At && doubt.Covers(use)
            select (doubt.Until, (string?)"a tool that was used was in doubt");
        return standing.Concat(over);
    }

    private static string Name(JointRegister register, Joint joint) =>
        $"{(register.Kinds.TryGetValue(joint.Key, out var kind) ? kind.Name : joint.Key)}, {joint.Place}";
}
