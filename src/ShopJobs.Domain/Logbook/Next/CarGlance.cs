namespace ShopJobs.Domain.Logbook;

/// <summary>A car as the lead sees it from three metres: all of it derived, nothing of it stored.</summary>
/// <param name="Counts">Fasteners by what they are counted as; kinds with none are left out.</param>
/// <param name="OldestHandTight">The fastener that has been only hand-tight for longest.</param>
/// <param name="Held">Fasteners that are held or whose tool is in doubt, oldest first.</param>
/// <param name="AgainstMoving">Why the car may not be moved, worst first; empty when it may.</param>
/// <param name="Next">The step that comes next; null when no job waits for one.</param>
/// <param name="Releases">The state of the newest release of each kind; kinds that were never given are left out.</param>
public sealed record CarGlance(
    IReadOnlyDictionary<GlanceCount, int> Counts,
    PositionGlance? OldestHandTight,
    IReadOnlyList<PositionGlance> Held,
    IReadOnlyList<GatheredHold> AgainstMoving,
    NextStep? Next,
    IReadOnlyDictionary<Procedures.ReleaseKind, ReleaseStanding> Releases)
{
    /// <summary>True when there is nothing against moving it by hand in the shop.</summary>
    public bool MayBeMoved => AgainstMoving.Count == 0;

    /// <summary>Every joint with the state of its fasteners, for a drawing.</summary>
    public IReadOnlyList<JointSeen> Joints { get; init; } = [];

    /// <summary>How many fasteners are counted as this.</summary>
    public int Count(GlanceCount kind) => Counts.GetValueOrDefault(kind);

    /// <summary>Looks over a car.</summary>
    /// <param name="tools">Every tool of the shop.</param>
    /// <param name="isManned">True when somebody is on this step instance or on its job.</param>
    public static CarGlance Of(
        CarState state, Circumstances now, IEnumerable<ToolState> tools, Func<JobId, string, bool> isManned)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        var glances = state.Glances(now);
        return new CarGlance(
            glances.CountBy(glance => glance.CountedAs).ToDictionary(),
            glances.Where(glance => glance.State == PositionState.HandTight).OrderBy(glance => glance.Since).Cast<PositionGlance?>().FirstOrDefault(),
            [.. glances.Where(glance => glance.State is PositionState.Held or PositionState.Doubted).OrderBy(glance => glance.Since)],
            now.Gather(HoldRules.Standard.OnRelease(state, now, Procedures.ReleaseKind.Move, customerAccepted: false)),
            state.NextStepOf(now, tools, isManned),
            state.Releases.Keys.ToDictionary(kind => kind, kind => state.StandingOf(now, kind)))
        {
            Joints = JointsSeen.Of(state, now, glances),
        };
    }
}
