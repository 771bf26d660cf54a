using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>What is asked of one report of work on a position: a hand-tight, a pull, a re-torque.</summary>
public sealed record PullQuestion(
    CarState State, Circumstances Now, JobBook Job, PlacedProcedure Placed, GroupInstance Instance, PositionBook Book)
{
    /// <summary>The stage, for a pull.</summary>
    public Stage? Stage { get; init; }

    /// <summary>The cycle and visit that were on the screen.</summary>
    public int Cycle { get; init; }

    /// <summary>Index in the stage's order of visits.</summary>
    public int Visit { get; init; }

    public TorqueKind Kind { get; init; }

    /// <summary>The torque on the tool; null where an angle was turned.</summary>
    public EnteredTorque? Value { get; init; }

    /// <summary>The angle turned, in degrees; null where a torque is reported.</summary>
    public decimal? AngleDegrees { get; init; }

    /// <summary>Run-down torque of the position; null where the instruction does not add it, or none is recorded.</summary>
    public EnteredTorque? RunDown { get; init; }

    /// <summary>The run-down torque that came with this report; one recorded earlier was judged then.</summary>
    public EnteredTorque? RunDownGiven { get; init; }

    /// <summary>The odometer, for a re-torque.</summary>
    public decimal? OdometerKm { get; init; }

    /// <summary>What is wrong with the value by the specification in force; null when nothing is, or there is none.</summary>
    public HoldReason? ValueProblem { get; init; }

    public ToolId ToolId { get; init; }

    /// <summary>Who did it, where another reports it for him; null otherwise.</summary>
    public PersonId? ReportedFor { get; init; }

    /// <summary>The session the report was made in; null where it comes from no screen.</summary>
    public SessionId? MadeIn { get; init; }

    /// <summary>The tool, as its own logbook has it.</summary>
    public ToolState Tool => Now.Tool(ToolId);

    /// <summary>The step instance that this stage belongs to.</summary>
    public StepInstance? Step => Placed.Steps.FirstOrDefault(step => step.Work.Any(work =>
        work.Instance.Joint == Instance.Joint && work.Instance.Group.Id == Instance.Group.Id && work.Stages.Contains(Stage!.Number)));
}

/// <summary>One reason why a report does not count. A report is never refused for it.</summary>
public sealed record PullRule(HoldReason Reason, Func<PullQuestion, bool> Fails);

/// <summary>The rules by which reports of work are judged, each one element of a list.</summary>
public static class PullRules
{
    /// <summary>Rules for running down by hand.</summary>
    public static readonly IReadOnlyList<PullRule> HandTight =
    [
        new(HoldReason.JobClosed, q => !q.Job.IsRunning),
        new(HoldReason.JobOnHold, q => q.Job.OnHold is not null),
        new(HoldReason.ReportedByAnother, q => q.ReportedFor is not null),
        new(HoldReason.EarlierSession, q => q.Now.IsEarlier(q.MadeIn)),
        new(HoldReason.CellMoved, q => q.Cycle != q.Book.Cycle),
        new(HoldReason.NotOpened, q => !q.Instance.Group.Temporary && (q.Book.Fitting == Fitting.AsFound || q.Book.Last is not null)),
        new(HoldReason.HardwareNotNew, q => q.Book.NeedsNew(q.Instance.Group)),
        new(HoldReason.RidesOnLoose, RidesOnLoose),
        new(HoldReason.StillOn, StillOn),
        new(HoldReason.UnfinishedBehind, UnfinishedBehind),
    ];

    /// <summary>Rules for one pull.</summary>
    public static readonly IReadOnlyList<PullRule> Pull =
    [
        new(HoldReason.OverRange, q => q.ValueProblem == HoldReason.OverRange),
        new(HoldReason.TurnOutside, q => q is { Stage.Turn: { } turn, AngleDegrees: { } degrees } && !turn.Contains(degrees)),
        new(HoldReason.NoRightToRecord, q => !q.Now.May(Right.Record)),
        new(HoldReason.JobClosed, q => !q.Job.IsRunning),
        new(HoldReason.JobOnHold, q => q.Job.OnHold is not null),
        new(HoldReason.ReportedByAnother, q => q.ReportedFor is not null),
        new(HoldReason.EarlierSession, q => q.Now.IsEarlier(q.MadeIn)),
        new(HoldReason.SecondPull, q => q.State.IsDone(q.Book, q.Stage!.Number) || q.Book.Highest > q.Stage.Number || TurnedAlready(q)),
        new(HoldReason.PositionHeld, q => !q.Book.Holds.IsEmpty),
        new(HoldReason.BackOffFirst, q => q.Book.BackOffFirst || q.State.HasFallen(q.Book)),
        new(HoldReason.CellMoved, q => q.Cycle != q.Book.Cycle),
        new(HoldReason.NotHandTight, q => q.Book.Fitting != Fitting.HandTight && !q.Instance.Group.Temporary),
        new(HoldReason.HardwareNotNew, q => q.Book.NeedsNew(q.Instance.Group)),
        new(HoldReason.RidesOnLoose, RidesOnLoose),
        new(HoldReason.StillOn, StillOn),
        new(HoldReason.UnfinishedBehind, UnfinishedBehind),
        new(HoldReason.TooLate, q => q.Stage == q.Instance.Group.Final && q.Book.HandTightBy > 0 && IsTooLate(q)),
        new(HoldReason.StepBefore, q => q.Step is { } step && HoldRules.Standard.WaitsFor(
            new StepQuestion(q.State, q.Now, q.Job, q.Placed, step, StepAnswers.None) { ForWork = true }).Count > 0),
        new(HoldReason.LowerStageMissing, LowerStageMissing),
        new(HoldReason.OutOfOrder, OutOfOrder),
        new(HoldReason.JamPairMissing, JamPairMissing),
        new(HoldReason.WrongCarCondition, WrongCondition),
        new(HoldReason.ThreadOtherwise, q => q.Book.Thread is { Thread: var carries } && !IsFor(q.Instance.Group.Condition, carries)),
        new(HoldReason.ValueMissing, q => q.Instance.Group.RunDown == RunDown.Add && q.RunDown is null),
        new(HoldReason.ValueOutside, q => q.RunDownGiven is { } given && q.Instance.Group.RunDownPermitted?.Contains(given) == false),
        .. ToolRules,
        new(HoldReason.EvidenceNotAllowed, q => !EvidenceAllowed(q)),
        new(HoldReason.SettingNotInstructed, q => q.ValueProblem == HoldReason.SettingNotInstructed),
        new(HoldReason.UnderRange, q => q.ValueProblem == HoldReason.UnderRange),
    ];

    /// <summary>Rules for a re-torque after the drive.</summary>
    public static readonly IReadOnlyList<PullRule> Settling =
    [
        new(HoldReason.OverRange, q => q.ValueProblem == HoldReason.OverRange),
        new(HoldReason.ReTorqueNotDue, q => !q.State.OwesReTorque(q.Book) || !q.State.DrivenSince(q.Book.Last!.Number)),
        new(HoldReason.PositionHeld, q => !q.Book.Holds.IsEmpty),
        new(HoldReason.WrongCarCondition, WrongCondition),
        new(HoldReason.MovedTooFar, q => q.AngleDegrees > ReTorque.LargestMove),
        new(HoldReason.ReTorqueEarly, q => q.State.IsTooEarly(q.Now, q.Book, q.OdometerKm)),
        .. ToolRules,
        new(HoldReason.EvidenceNotAllowed, q => !EvidenceAllowed(q)),
        new(HoldReason.SettingNotInstructed, q => q.ValueProblem == HoldReason.SettingNotInstructed),
        new(HoldReason.UnderRange, q => q.ValueProblem == HoldReason.UnderRange),
    ];

    private static IEnumerable<PullRule> ToolRules =>
    [
        new(HoldReason.ToolUnknown, q => q.Tool.Tool is null),
        new(HoldReason.ToolQuarantined, q => q.Tool.OutOfUseBy > 0),
        new(HoldReason.ToolOverdue, q => q.Tool is { Tool: not null, OutOfUseBy: 0 } && !q.Tool.IsCalibratedOn(q.Now.Today)),
        new(HoldReason.CalibrationUnknown, q => q.Tool is { Tool: not null, OutOfUseBy: 0 } && q.Tool.IsCalibratedOn(q.Now.Today) && !q.Now.IsInDate(q.Tool)),
        new(HoldReason.ToolAtItsLimit, q => q.Now.IsAtItsLimit(q.Tool)),
        new(HoldReason.ToolOutOfRange, q => q is { Tool.Tool: { } tool, Value: { } torque } && !tool.IsInRange(torque)),
        new(HoldReason.ToolLengthMissing, q => q.Stage!.Turn is null && q.Tool.Tool is { } tool && !q.Instance.Group.KnowsSettingOf(tool)),
    ];

    /// <summary>True where a torque that assumes a thread in one condition may be pulled on one that carries this. New locker comes on a fastener for a clean thread.</summary>
    public static bool IsFor(ThreadCondition asked, ThreadCondition carries) =>
        asked == carries || (asked == ThreadCondition.PreAppliedLocker && carries == ThreadCondition.Dry);

    private static bool IsTooLate(PullQuestion q) =>
        q.Instance.Group.Within is { } within && q.Book.SinceEntry is { } hand && q.Now.Shop.MayHavePassed(within, q.Book.Since, hand, q.Now.Shows);

    private static bool RidesOnLoose(PullQuestion q) =>
        Riding.Against(q.State, q.Now, q.Book.Position, q.Instance.Group.Temporary) is not null;

    private static bool StillOn(PullQuestion q) => Reach.Barred(q.State, q.Now, q.Book.Position) is not null;

    private static bool UnfinishedBehind(PullQuestion q) => Reach.Unfinished(q.State, q.Now, q.Book.Position) is not null;

    private static bool WrongCondition(PullQuestion q) => !q.Stage!.Conditions.All(condition => q.State.Is(q.Now, condition, q.Instance.Place));

    // Whether the record of it still stands or not: an angle is turned once in a cycle.
    private static bool TurnedAlready(PullQuestion q) => q.Book.Pulls.Exists(pull =>
        pull is { IsTurn: true, IsGone: false } && pull.Fact.Stage == q.Stage!.Number && pull.Fact.Visit == q.Visit);

    private static bool LowerStageMissing(PullQuestion q) => Enumerable.Range(1, q.Stage!.Number - 1).Any(stage =>
        q.Instance.Positions.Any(position => !q.State.IsDone(q.State.Of(position), stage)));

    private static bool OutOfOrder(PullQuestion q) =>
        !q.Instance.Group.Temporary
        && !q.State.IsDone(q.Book, q.Stage!.Number)
        && NextActions.NextCell(q.State, q.Instance, q.Stage) is var next
        && q.Book.Holds.IsEmpty
        && next?.Visit != q.Visit;

    private static bool JamPairMissing(PullQuestion q) =>
        q.Instance.Group.Jam is { } jam
        && q.Placed.Group(jam.Group, q.Instance.Place) is { } pair
        && !q.State.IsAtTorque(q.State.Of(pair.Joint.At(q.Book.Position.Number)));

    private static bool EvidenceAllowed(PullQuestion q) =>
        (q.Kind == TorqueKind.AngleTurned ? q is { AngleDegrees: not null, Value: null } : q.Value is not null)
        && q.Stage!.Takes(q.Kind)
        && (q.Tool.Tool is null || q.Tool.Tool.Kind.Gives(q.Kind));
}
