using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>All rules that hold something, in one place. The button and the command ask the same functions.</summary>
public sealed record HoldRules(
    IReadOnlyList<PullRule> HandTight,
    IReadOnlyList<PullRule> Pull,
    IReadOnlyList<PullRule> Settling,
    IReadOnlyList<PositionRule> Position,
    IReadOnlyList<StepRule> Step,
    IReadOnlyList<ReleaseRule> Release,
    IReadOnlyList<PermissionRule> Permission)
{
    /// <summary>What has to be known before a step is begun.</summary>
    public IReadOnlyList<StepRule> Start { get; init; } = StartRules.All;

    /// <summary>The rules in force.</summary>
    public static readonly HoldRules Standard = new(
        PullRules.HandTight, PullRules.Pull, PullRules.Settling, PositionRules.All, StepRules.All, ReleaseRules.All, PermissionRules.All);

    /// <summary>Why a step instance may not be signed, all reasons.</summary>
    public IReadOnlyList<HoldPoint> OnStep(StepQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        var asked = question with { PositionRules = Position };
        return [.. Step.SelectMany(rule => rule.Find(asked)), .. OnPositions(asked)];
    }

    /// <summary>Why work on a step instance should not start: what it waits for, and what has to be known before.</summary>
    public IReadOnlyList<HoldPoint> BeforeStart(StepQuestion question) => [.. WaitsFor(question), .. Start.SelectMany(rule => rule.Find(question))];

    /// <summary>What a step instance waits for, without its own ticks and joints. A pull made before that does not count.</summary>
    public IReadOnlyList<HoldPoint> WaitsFor(StepQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        HoldReason[] gates = [HoldReason.StepHeld, HoldReason.StepBefore, HoldReason.GroupBefore, HoldReason.Cure];
        var asked = question with { PositionRules = Position };
        return [.. Step.Where(rule => gates.Contains(rule.Reason)).SelectMany(rule => rule.Find(asked))];
    }

    /// <summary>Why a car may not be released, all reasons.</summary>
    /// <param name="odometerKm">As it is read for this release; null where it is not.</param>
    public IReadOnlyList<HoldPoint> OnRelease(CarState state, Circumstances now, ReleaseKind kind, bool customerAccepted, decimal? odometerKm = null) =>
        OnRelease(new ReleaseQuestion(state, now, kind, customerAccepted, Position) { OdometerKm = odometerKm });

    /// <summary>True where only the customer's written acceptance lets the car go: a re-torque is due, or a result is missing that only a drive gives.</summary>
    public bool NeedsWriting(CarState state, Circumstances now, ReleaseKind kind, decimal? odometerKm) => OnRelease(state, now, kind, customerAccepted: false, odometerKm)
        .Any(point => point.Reason is HoldReason.ReTorqueDue or HoldReason.ReTorqueOverdue || (point.Reason == HoldReason.AwaitsDrive && kind == ReleaseKind.Road));

    /// <summary>As the other, with everything that is asked.</summary>
    public IReadOnlyList<HoldPoint> OnRelease(ReleaseQuestion question) => [.. Release.SelectMany(rule => rule.Find(question))];

    private IEnumerable<HoldPoint> OnPositions(StepQuestion q) =>
        from step in q.Placed.AllBefore(q.Step).Reverse().Append(q.Step)
        let skipped = q.Job.SignOffs.GetValueOrDefault(step.Id)?.Fact.NotApplicable == true && step.Id != q.Step.Id
        from work in step.Work
        where !work.Instance.Group.Temporary
        from stage in work.Stages
        from position in work.Instance.Positions
        where !skipped || q.State.Of(position) is not { IsAsFound: true, Holds.IsEmpty: true }
        from rule in Position
        from found in rule.Find(new PositionQuestion(q.State, q.Now, q.State.Of(position), stage, q.Job, work.Instance))
        select found with { Job = q.Job.Id, Step = step.Id };
}
