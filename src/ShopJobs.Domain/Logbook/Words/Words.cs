using System.Globalization;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>The trade's words for reasons and positions. Each reason says what is wrong; its next action says what to do.</summary>
public static class Words
{
    /// <summary>What is wrong, as the end of "held: …" or "does not count: …".</summary>
    public static string Of(HoldReason reason) => reason switch
    {
        HoldReason.JobClosed => "its job has ended",
        HoldReason.CellMoved => "the position was opened after this pull was shown",
        HoldReason.NotOpened => "it was not recorded as opened",
        HoldReason.NotHandTight => "it was not run down by hand first",
        HoldReason.HardwareNotNew => "new hardware is asked and none is recorded",
        HoldReason.StepBefore => "the step before it is not signed",
        HoldReason.LowerStageMissing => "the stage below is not done on every position",
        HoldReason.OutOfOrder => "pulled out of order",
        HoldReason.JamPairMissing => "the two jam nuts are not at their torque",
        HoldReason.WrongCarCondition => "the car was not in the condition asked",
        HoldReason.ToolUnknown => "the tool is not known",
        HoldReason.ToolOverdue => "the tool is past its calibration",
        HoldReason.ToolQuarantined => "the tool is out of use",
        HoldReason.ToolOutOfRange => "outside the tool's range",
        HoldReason.EvidenceNotAllowed => "this tool cannot give the evidence asked",
        HoldReason.SettingNotInstructed => "the tool was not set to the instructed value",
        HoldReason.UnderRange => "under the permitted range",
        HoldReason.OverRange => "over the permitted maximum",
        HoldReason.TurnOutside => "turned outside the permitted angle",
        HoldReason.TurnVoided => "the record of its angle was voided, and the bolt may be turned already",
        HoldReason.SecondPull => "pulled again when already done",
        HoldReason.PositionHeld => "pulled while held",
        HoldReason.BackOffFirst => "pulled again without backing off after a short pull",
        HoldReason.WitnessRejected => "not accepted by the witness",
        HoldReason.ReTorqueNotDue => "no re-torque is due on it",
        HoldReason.ToolInDoubt => "its tool is in doubt",
        HoldReason.OtherSpecification => "torqued to another job's specification",
        HoldReason.ValueMissing => "the run-down torque was not recorded",
        HoldReason.ValueOutside => "the run-down torque is not what the nut's maker permits",
        HoldReason.Held => "stopped by hand",
        _ => reason.ToString(),
    };

    /// <summary>The next action for somebody standing at the car.</summary>
    public static string NextFor(HoldReason reason) => reason switch
    {
        HoldReason.OverRange or HoldReason.TurnOutside => "do not touch it; call the lead, who decides: use as is, rework or replace",
        HoldReason.TurnVoided => "do not turn it again before it is decided: a second person confirms the void where it was never turned, else the lead decides rework or replace",
        HoldReason.HardwareNotNew => "record FITTED NEW, then HAND-TIGHT",
        HoldReason.NotOpened => "call the lead, then back it off, record OPEN, then HAND-TIGHT",
        HoldReason.JobClosed => "ask the lead to put a procedure on the car for it",
        HoldReason.UnderRange => "do what the step says for a short pull",
        HoldReason.ToolUnknown or HoldReason.ToolOverdue or HoldReason.ToolQuarantined or HoldReason.ToolOutOfRange
            or HoldReason.EvidenceNotAllowed => "take another tool; call the lead, then back off, inspect and redo",
        _ => "call the lead, then back off, inspect and redo",
    };

    /// <summary>The joint as people say it: "wheel nut front-left".</summary>
    public static string Name(this Circumstances now, Joint joint)
    {
        ArgumentNullException.ThrowIfNull(now);
        var name = now.Register.Kinds.TryGetValue(joint.Key, out var kind) ? kind.Name : joint.Key;
        return $"{name} {joint.Place}";
    }

    /// <summary>The position as people say it: "wheel nut front-left 3".</summary>
    public static string Name(this Circumstances now, JointPosition position) =>
        string.Create(CultureInfo.InvariantCulture, $"{now.Name(position.Joint)} {position.Number}");
}
