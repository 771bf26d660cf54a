using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>Every reason why something waits or does not count.</summary>
public enum HoldReason
{
    // why a pull or a hand-tight does not count
    JobClosed,
    CellMoved,
    NotOpened,
    NotHandTight,
    HardwareNotNew,
    LowerStageMissing,
    OutOfOrder,
    WrongCarCondition,
    ToolUnknown,
    ToolOverdue,
    ToolQuarantined,
    ToolOutOfRange,
    EvidenceNotAllowed,
    SettingNotInstructed,
    UnderRange,
    OverRange,
    TurnOutside,
    TurnVoided,
    SecondPull,
    PositionHeld,
    BackOffFirst,
    JamPairMissing,
    ReTorqueNotDue,

    // why a position does not count
    Held,
    ToolInDoubt,
    NotAtStage,
    NotWitnessed,
    WitnessRejected,
    OtherSpecification,

    // why a step is not signed
    StepBefore,
    GroupBefore,
    ResultMissing,
    ResultJointLoose,
    Cure,
    TickMissing,
    ValueMissing,
    ValueOutside,
    TemporaryFitted,
    NotYetOpened,
    AlreadySigned,

    // why a car is not released
    JointNotMadeHere,
    NothingCloses,
    ResultVoid,
    StepNotSigned,
    StepToReconfirm,
    ReTorqueDue,

    // permissions
    NoRight,
    OwnWork,
    AcceptanceMissing,
    ReuseNotAllowed,
    UnknownJob,
    UnknownPosition,
    NothingToDecide,
    NothingToWitness,
    NotCorrectable,
    ReasonMissing,
    Superseded,
}

/// <summary>One reason why something waits, with the next action in words.</summary>
/// <param name="Reason">The typed reason.</param>
/// <param name="Job">The job it belongs to, if any.</param>
/// <param name="Step">The step instance it belongs to, if any.</param>
/// <param name="Position">The position, if it is about one.</param>
/// <param name="Words">What is wrong, in plain words.</param>
/// <param name="Next">What to do next.</param>
public sealed record HoldPoint(
    HoldReason Reason, JobId? Job, string? Step, JointPosition? Position, string Words, string Next)
{
    public override string ToString() => $"{Words}: {Next}";
}
