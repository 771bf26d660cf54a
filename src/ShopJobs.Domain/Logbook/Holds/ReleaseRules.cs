using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>What is asked of a car: may it be released to this.</summary>
public sealed record ReleaseQuestion(CarState State, Circumstances Now, ReleaseKind Kind, bool CustomerAccepted, IReadOnlyList<PositionRule> PositionRules)
{
    /// <summary>The odometer as it is read for this release; null where it is not.</summary>
    public decimal? OdometerKm { get; init; }

    /// <summary>Whether the customer was told in writing that a result which only a drive gives is missing; asked for the road alone.</summary>
    public Func<string, bool> Told { get; init; } = _ => CustomerAccepted;

    /// <summary>True where this release may be given without the result: a road test goes out to get it, the road may where the customer was told.</summary>
    public bool GoesWithout(string result) =>
        Now.Register.ResultOf(result).AfterDrive && Kind switch
        {
            ReleaseKind.RoadTest => true,
            ReleaseKind.Road => Told(result),
            _ => false,
        };
}

/// <summary>One reason why a release waits.</summary>
public sealed record ReleaseRule(HoldReason Reason, Func<ReleaseQuestion, IEnumerable<HoldPoint>> Find);

/// <summary>The rules that hold a release, each one element of a list. A release is the AND over every joint of the car.</summary>
public static class ReleaseRules
{
    public static readonly IReadOnlyList<ReleaseRule> All =
    [
        new(HoldReason.NoRegister, NoRegister),
        new(HoldReason.NotAtStage, Joints),
        new(HoldReason.JointNotMadeHere, NotMadeHere),
        new(HoldReason.TemporaryFitted, TemporaryFitted),
        new(HoldReason.NothingCloses, NothingCloses),
        new(HoldReason.ResultVoid, ResultsVoid),
        new(HoldReason.AwaitsDrive, ResultsAwaitingDrive),
        new(HoldReason.ResultInDoubt, ResultsInDoubt),
        new(HoldReason.ResultHeld, ResultsHeld),
        new(HoldReason.StepHeld, StepsHeld),
        new(HoldReason.StepToReconfirm, StepsToReconfirm),
        new(HoldReason.StepNotSigned, StepsNotSigned),
        new(HoldReason.ReTorqueDue, ReTorqueDue),
        new(HoldReason.ReTorqueOverdue, ReTorqueOverdue),
        new(HoldReason.MovedAnyway, MovedAnyway),
    ];

    /// <summary>
    /// Every lasting position of the car: by its list in the register, by the list that a running job was started with, which takes
    /// additions and nothing less, and any other that the logbook names.
    /// </summary>
    public static IEnumerable<JointPosition> PositionsOf(CarState state, Circumstances now)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        var ofJobs = state.RunningJobs.Select(job => now.Placed(job).Register).Where(register => !ReferenceEquals(register, now.Register));
        return ofJobs.Prepend(now.Register).SelectMany(register => register.Kinds.Values).Where(kind => !kind.Temporary).SelectMany(kind => kind.AllPositions())
            .Union(state.Positions.Keys.Where(position => !now.Register.Kinds.TryGetValue(position.Key, out var kind) || !kind.Temporary));
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
        from position in PositionsOf(q.State, q.Now)
        let book = q.State.Of(position)
        let least = q.Now.KindOf(q.State, position.Key)?.LeastFor(q.Kind) ?? LeastState.Counts
        where !book.IsAsFound || !book.Holds.IsEmpty
        where !(least == LeastState.HandTight && book.Fitting == Fitting.HandTight && book.Holds.IsEmpty)
        from rule in q.PositionRules
        from found in rule.Find(new PositionQuestion(q.State, q.Now, book, null, null, null))
        select found with { Job = book.InForce };

    private static IEnumerable<HoldPoint> NotMadeHere(ReleaseQuestion q) =>
        from position in PositionsOf(q.State, q.Now)
        let kind = q.Now.KindOf(q.State, position.Key)
        where kind?.LeastFor(q.Kind) == LeastState.MadeHere && q.State.Of(position).IsAsFound
        group position by position.Joint into joint
        select new HoldPoint(HoldReason.JointNotMadeHere) { Position = joint.First() };

    private static IEnumerable<HoldPoint> TemporaryFitted(ReleaseQuestion q) =>
        from kind in q.Now.Register.Kinds.Values
        where kind.Temporary
        from position in kind.AllPositions().Union(q.State.Positions.Keys.Where(touched => touched.Key == kind.Key))
        let book = q.State.Of(position)
        where q.State.IsOn(position) || !book.Holds.IsEmpty
        select new HoldPoint(HoldReason.TemporaryFitted)
        {
            Job = book.InForce,
            Position = position,
            Because = book.Holds is [var hold, ..] ? new HoldPoint(hold.Reason) : null,
        };

    /// <summary>Lasting positions that no running job works on.</summary>
    public static IEnumerable<PositionBook> LeftAlone(CarState state, Circumstances now)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        var worked = state.RunningJobs.SelectMany(job => now.Placed(job).Groups).Select(group => group.Joint).ToHashSet();
        return state.Positions.Values.Where(book => !worked.Contains(book.Position.Joint) && now.Register.Kinds.TryGetValue(book.Position.Key, out var kind) && !kind.Temporary);
    }

    private static IEnumerable<HoldPoint> NothingCloses(ReleaseQuestion q) =>
        from book in LeftAlone(q.State, q.Now)
        where book.Fitting is Fitting.Open or Fitting.NewHardware
        group book by book.Position.Joint into joint
        select new HoldPoint(HoldReason.NothingCloses) { Position = joint.First().Position };

    private static IEnumerable<HoldPoint> ResultsVoid(ReleaseQuestion q) =>
        Undone(q).Where(name => IsAsked(q, name) && !q.Now.Register.ResultOf(name).AfterDrive).Select(name => new HoldPoint(HoldReason.ResultVoid) { Name = name });

    // To be rolled by hand a car waits only for what the register names for it.
    private static bool IsAsked(ReleaseQuestion q, string name) => q.Kind != ReleaseKind.Move || q.Now.Register.ResultOf(name).HoldsMove;

    private static IEnumerable<HoldPoint> ResultsAwaitingDrive(ReleaseQuestion q) =>
        q.Kind == ReleaseKind.Move
            ? []
            : Undone(q).Where(name => q.Now.Register.ResultOf(name).AfterDrive && !q.GoesWithout(name))
                .Select(name => new HoldPoint(HoldReason.AwaitsDrive) { Name = name });

    private static IEnumerable<HoldPoint> ResultsInDoubt(ReleaseQuestion q) =>
        from result in q.State.Results.OrderBy(result => result.Key, StringComparer.Ordinal)
        where IsAsked(q, result.Key) && result.Value.VoidBy == 0 && result.Value.DoubtsOn(q.Now.Tool).Any()
        select new HoldPoint(HoldReason.ResultInDoubt) { Name = result.Key, Tool = null };

    private static IEnumerable<string> Undone(ReleaseQuestion q) => q.State.Undone.Keys.Order(StringComparer.Ordinal);

    // As good as void, until it is decided.
    private static IEnumerable<HoldPoint> ResultsHeld(ReleaseQuestion q) =>
        from hold in q.State.UndecidedWork()
        where hold.Fact.Result is not null
        let held = q.State.Correctables[hold.Fact.Result!.Value].Entry as ResultRecorded
        where held is not null && IsAsked(q, held.Name)
        select new HoldPoint(HoldReason.ResultHeld) { Name = held.Name, Entry = hold.Number };

    private static IEnumerable<HoldPoint> StepsHeld(ReleaseQuestion q) =>
        q.State.UndecidedWork().Where(hold => hold.Fact.Step is not null).Select(hold =>
        {
            var job = q.State.Jobs[hold.Fact.Job!.Value];
            var placed = q.Now.Placed(job);
            return new HoldPoint(HoldReason.StepHeld)
            {
                Job = job.Id,
                Step = hold.Fact.Step,
                Entry = hold.Number,
                Unsigned = placed.Step(hold.Fact.Step!) is { } step ? new UnsignedStep(step, q.State.StandingOf(job, placed, step)) : null,
            };
        });

    private static IEnumerable<HoldPoint> StepsToReconfirm(ReleaseQuestion q) =>
        from found in Steps(q)
        where found.Standing is StepStanding.Void or StepStanding.ToReconfirm
        select Unsigned(HoldReason.StepToReconfirm, found.Job, found.Step, found.Standing);

    private static IEnumerable<HoldPoint> StepsNotSigned(ReleaseQuestion q) =>
        q.Kind == ReleaseKind.Move
            ? []
            : from found in Steps(q)
              where found.Job.Begun && found.Standing is (StepStanding.NotSigned or StepStanding.AwaitsCountersign)
              where !OnlyRecords(found.Step) || !q.Now.Placed(found.Job).RecordsAt(found.Step).All(q.GoesWithout)
              select Unsigned(HoldReason.StepNotSigned, found.Job, found.Step, found.Standing);

    private static IEnumerable<HoldPoint> ReTorqueDue(ReleaseQuestion q) =>
        q.Kind != ReleaseKind.Track || q.CustomerAccepted
            ? []
            : from book in q.State.Positions.Values
              where q.State.OwesReTorque(book)
              group book by book.Position.Joint into joint
              select new HoldPoint(HoldReason.ReTorqueDue) { Position = joint.First().Position };

    private static IEnumerable<HoldPoint> ReTorqueOverdue(ReleaseQuestion q) =>
        q.Kind == ReleaseKind.Move || q.CustomerAccepted
            ? []
            : from book in q.State.Positions.Values
              where q.State.OwesReTorque(book) && q.State.IsOverdue(q.Now, book, q.OdometerKm ?? q.State.Odometer)
              group book by book.Position.Joint into joint
              select new HoldPoint(HoldReason.ReTorqueOverdue) { Position = joint.First().Position };

    // It was moved, or left, while its gate said no: nobody drives before somebody has looked it over.
    private static IEnumerable<HoldPoint> MovedAnyway(ReleaseQuestion q) =>
        q.Kind == ReleaseKind.Move
            ? []
            : q.State.ToLookOver.Select(move => new HoldPoint(HoldReason.MovedAnyway) { Entry = move.Number, At = move.At });

    // Without a register nothing is known of the car: no driver is let go by it.
    private static IEnumerable<HoldPoint> NoRegister(ReleaseQuestion q) =>
        q.Kind != ReleaseKind.Move && q.Now.Register.Kinds.Count == 0 ? [new HoldPoint(HoldReason.NoRegister)] : [];

    private static bool OnlyRecords(StepInstance step) => step.Step is { Records.Count: > 0, Work.Count: 0, Opens.Count: 0 };

    private static HoldPoint Unsigned(HoldReason reason, JobBook job, StepInstance step, StepStanding standing) =>
        new(reason) { Job = job.Id, Step = step.Id, Unsigned = new UnsignedStep(step, standing) };

    private static IEnumerable<(JobBook Job, StepInstance Step, StepStanding Standing)> Steps(ReleaseQuestion q) =>
        from job in q.State.RunningJobs
        let placed = q.Now.Placed(job)
        from step in placed.Steps
        select (job, step, q.State.StandingOf(job, placed, step));
}
