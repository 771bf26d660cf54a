using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>What was done to a joint.</summary>
public enum JointWork
{
    Opened,
    FittedNew,
    RunDown,

    /// <summary>The final stage was pulled, and nothing was against the pull.</summary>
    Torqued,

    /// <summary>A pull that did not count.</summary>
    PulledInVain,
    LookedAt,
    ReTorqued,
    Held,
    Decided,
}

/// <summary>One kind of work on a joint during a visit.</summary>
/// <param name="Numbers">Fasteners of the joint it was done to.</param>
/// <param name="From">The first of it, UTC.</param>
/// <param name="To">The last of it, UTC.</param>
public sealed record WorkDone(JointWork Work, IReadOnlyList<int> Numbers, DateTime From, DateTime To);

/// <summary>What was done to one joint during a visit, in the order in which it began.</summary>
public sealed record JointVisit(Joint Joint, IReadOnlyList<WorkDone> Done);

/// <summary>What was done to each joint during a visit, and when. Entries voided since are left out: the joint's own history has them.</summary>
public static class VisitWork
{
    /// <param name="entries">The car's logbook, oldest first.</param>
    public static IReadOnlyList<JointVisit> Of(CarState state, IEnumerable<Recorded> entries, VisitBook visit)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(entries);
        ArgumentNullException.ThrowIfNull(visit);
        var voided = state.Corrections.Values
            .Where(correction => correction.Fact.Restated is null && (correction.Confirmed || state.Correctables[correction.Fact.Target].Entry is not Opened))
            .Select(correction => correction.Fact.Target).ToHashSet();
        return
        [
            .. from recorded in entries
               where visit.Holds(recorded.Number) && !voided.Contains(recorded.Number)
               from done in WorkOf(recorded.Entry)
               group (Recorded: recorded, done.Work, done.At.Number) by done.At.Joint into joint
               select new JointVisit(
                   joint.Key,
                   [
                       .. from one in joint
                          group one by one.Work into same
                          orderby same.Min(one => one.Recorded.Number)
                          select new WorkDone(
                              same.Key,
                              [.. same.Select(one => one.Number).Where(number => number > 0).Distinct().Order()],
                              same.Min(one => one.Recorded.At),
                              same.Max(one => one.Recorded.At)),
                   ]),
        ];
    }

    private static IEnumerable<(JointWork Work, JointPosition At)> WorkOf(Entry entry) => entry switch
    {
        Opened fact => fact.Positions.Concat(fact.AlsoOpened).Except(fact.Late ?? []).Select(at => (JointWork.Opened, at)),
        FittedNew { Problems: null or [] } fact => fact.Positions.Select(at => (JointWork.FittedNew, at)),
        HandTightened { Problems: [] } fact => fact.Positions.Select(at => (JointWork.RunDown, at)),
        TorqueRecorded { Problems.Count: > 0 } fact => [(JointWork.PulledInVain, fact.Position)],
        TorqueRecorded fact when fact.Stage == fact.Spec.Stages => [(JointWork.Torqued, fact.Position)],
        Witnessed { Accepted: true } fact => [(JointWork.LookedAt, fact.Joint.At(0))],
        Settled { Problems: [] } fact => fact.Positions.Select(at => (JointWork.ReTorqued, at)),
        PositionHeld fact => fact.Positions.Select(at => (JointWork.Held, at)),
        Decided fact => [(JointWork.Decided, fact.Position)],
        _ => [],
    };
}
