using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>What is asked of a car: may it be released to this.</summary>
public sealed record ReleaseQuestion(CarState State, Circumstances Now, ReleaseKind Kind, bool CustomerAccepted, IReadOnlyList<PositionRule> PositionRules);

/// <summary>One reason why a release waits.</summary>
public sealed record ReleaseRule(HoldReason Reason, Func<ReleaseQuestion, IEnumerable<HoldPoint>> Find);

/// <summary>The rules that hold a release, each one element of a list. A release is the AND over every joint of the car.</summary>
public static class ReleaseRules
{
    public static readonly IReadOnlyList<ReleaseRule> All =
    [
        new(HoldReason.NotAtStage, Joints),
        new(HoldReason.JointNotMadeHere, NotMadeHere),
        new(HoldReason.TemporaryFitted, TemporaryFitted),
        new(HoldReason.NothingCloses, NothingCloses),
        new(HoldReason.ResultVoid, ResultsVoid),
        new(HoldReason.StepToReconfirm, StepsToReconfirm),
        new(HoldReason.StepNotSigned, StepsNotSigned),
        new(HoldReason.ReTorqueDue, ReTorqueDue),
    ];

    /// <summary>Every lasting position of the car by the register, and any other that the logbook names.</summary>
    public static IEnumerable<JointPosition> PositionsOf(CarState state, JointRegister register)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(register);
        return register.Kinds.Values.Where(kind => !kind.Temporary).SelectMany(kind => kind.AllPositions())
            .Union(state.Positions.Keys.Where(position => !register.Kinds.TryGetValue(position.Key, out var kind) || !kind.Temporary));
    }

    /// <summary>Jobs whose steps are all signed: a road or track release ends them.</summary>
    public static IReadOnlyList<JobId> Finished(CarState state, Circumstances now)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        return
        [
            .. from job in state.RunningJobs
               let placed = now.Placed(job)
               where placed.Steps.All(step => state.StandingOf(job, placed, step) == StepStanding.Signed)
               select job.Id,
        ];
    }

    private static IEnumerable<HoldPoint> Joints(ReleaseQuestion q) =>
        from position in PositionsOf(q.State, q.Now.Register)
        let book = q.State.Of(position)
        let least = q.Now.Register.Kinds.GetValueOrDefault(position.Key)?.LeastFor(q.Kind) ?? LeastState.Counts
        where !book.IsAsFound || !book.Holds.IsEmpty
        where !(least == LeastState.HandTight && book.Fitting == Fitting.HandTight && book.Holds.IsEmpty)
        from rule in q.PositionRules
        from found in rule.Find(new PositionQuestion(q.State, q.Now, book, null, null, null))
        select new HoldPoint(rule.Reason, book.InForce, null, position, $"{q.Now.Name(position)}: {found.Words}", found.Next);

    private static IEnumerable<HoldPoint> NotMadeHere(ReleaseQuestion q) =>
        from position in PositionsOf(q.State, q.Now.Register)
        let kind = q.Now.Register.Kinds.GetValueOrDefault(position.Key)
        where kind?.LeastFor(q.Kind) == LeastState.MadeHere && q.State.Of(position).IsAsFound
        group position by position.Joint into joint
        select new HoldPoint(
            HoldReason.JointNotMadeHere, null, null, joint.First(),
            $"{q.Now.Register.Kinds[joint.Key.Key].Name} {joint.Key.Place}: as found, not torqued by us", "put a procedure on the car that torques it");

    private static IEnumerable<HoldPoint> TemporaryFitted(ReleaseQuestion q) =>
        from kind in q.Now.Register.Kinds.Values
        where kind.Temporary
        from position in kind.AllPositions()
        where q.State.IsOn(position) || !q.State.Of(position).Holds.IsEmpty
        select new HoldPoint(
            HoldReason.TemporaryFitted, q.State.Of(position).InForce, null, position,
            $"{q.Now.Name(position)} is still on the car or held", "take it off");

    private static IEnumerable<HoldPoint> NothingCloses(ReleaseQuestion q)
    {
        var closing = q.State.RunningJobs.SelectMany(job => q.Now.Placed(job).Groups).Select(group => group.Joint).ToHashSet();
        return from book in q.State.Positions.Values
               where book.Fitting is Fitting.Open or Fitting.NewHardware
               where q.Now.Register.Kinds.TryGetValue(book.Position.Key, out var kind) && !kind.Temporary
               where !closing.Contains(book.Position.Joint)
               group book by book.Position.Joint into joint
               select new HoldPoint(
                   HoldReason.NothingCloses, null, null, joint.First().Position,
                   $"Nothing closes {q.Now.Register.Kinds[joint.Key.Key].Name} {joint.Key.Place}", "add a procedure");
    }

    private static IEnumerable<HoldPoint> ResultsVoid(ReleaseQuestion q) =>
        q.Kind == ReleaseKind.Move
            ? []
            : q.State.Undone.Keys.Order(StringComparer.Ordinal).Select(name => new HoldPoint(
                HoldReason.ResultVoid, null, null, null, $"“{name}” is void: a joint it hangs on was opened", "do it again and record it"));

    private static IEnumerable<HoldPoint> StepsToReconfirm(ReleaseQuestion q) =>
        from found in Steps(q)
        where found.Standing is StepStanding.Void or StepStanding.ToReconfirm
        select new HoldPoint(
            HoldReason.StepToReconfirm, found.Job.Id, found.Step.Id, null,
            $"“{found.Step.Title()}” is {found.Standing.Words()}", "look again and sign it");

    private static IEnumerable<HoldPoint> StepsNotSigned(ReleaseQuestion q) =>
        q.Kind == ReleaseKind.Move
            ? []
            : from found in Steps(q)
              where found.Job.Begun && found.Standing == StepStanding.NotSigned
              select new HoldPoint(
                  HoldReason.StepNotSigned, found.Job.Id, found.Step.Id, null, $"“{found.Step.Title()}” is not signed", "finish and sign it");

    private static IEnumerable<HoldPoint> ReTorqueDue(ReleaseQuestion q) =>
        q.Kind != ReleaseKind.Track || q.CustomerAccepted
            ? []
            : from book in q.State.Positions.Values
              where q.State.OwesReTorque(book)
              group book by book.Position.Joint into joint
              select new HoldPoint(
                  HoldReason.ReTorqueDue, null, null, joint.First().Position,
                  $"{q.Now.Register.Kinds.GetValueOrDefault(joint.Key.Key)?.Name ?? joint.Key.Key} {joint.Key.Place}: re-torque after the first drive is not done",
                  "re-torque after the drive, or record the customer's written acceptance");

    private static IEnumerable<(JobBook Job, StepInstance Step, StepStanding Standing)> Steps(ReleaseQuestion q) =>
        from job in q.State.RunningJobs
        let placed = q.Now.Placed(job)
        from step in placed.Steps
        select (job, step, q.State.StandingOf(job, placed, step));
}
