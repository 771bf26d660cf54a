using static ShopJobs.Domain.Logbook.HoldSentences;

namespace ShopJobs.Domain.Logbook;

// The words of why a report of work does not count.
internal static class ReportSentences
{
    private const string OtherTool = "take another tool; call the lead, then back off, inspect and redo";

    public static (string Words, string Next)? Of(HoldPoint point, HoldSubject on) => point.Reason switch
    {
        HoldReason.JobClosed => (on.With("its job has ended"), "ask the lead to start a job for it"),
        HoldReason.JobOnHold => (on.With("its job was on hold"), "the lead resumes the job; then back off, inspect and redo"),
        HoldReason.ReportedByAnother => (on.With("reported by another for somebody who does not work here any more"), Redo),
        HoldReason.EarlierSession => (on.With("reported before its person last signed in: nobody knows what happened since"), Redo),
        HoldReason.SaidEarlier => ("This was said of the car before you last signed in", "look at the car, and say how it is now"),
        HoldReason.CellMoved => (on.With("the position was opened after this pull was shown"), Redo),
        HoldReason.NotOpened => (on.With("it was not recorded as opened"), "call the lead, then back it off, record OPEN, then HAND-TIGHT"),
        HoldReason.NotHandTight => (on.With("it was not run down by hand first"), Redo),
        HoldReason.HardwareNotNew => (on.With("new hardware is asked and none is recorded"), "record FITTED NEW, then HAND-TIGHT"),
        HoldReason.LowerStageMissing => (on.With("the stage below is not done on every position"), Redo),
        HoldReason.OutOfOrder => (on.With("pulled out of order"), Redo),
        HoldReason.WrongCarCondition => (on.With("the car was not in the condition asked"), Redo),
        HoldReason.ToolUnknown => (on.With("the tool is not known"), OtherTool),
        HoldReason.ToolAtItsLimit => (on.With("the tool has made as many pulls since its calibration as it may"), OtherTool),
        HoldReason.ToolOverdue => (on.With("the tool is past its calibration"), OtherTool),
        HoldReason.CalibrationUnknown => (
            on.With("the clock is in doubt, and the tool's calibration may have ended"), "the lead signs the time; then back off and redo, or the lead decides"),
        HoldReason.ThreadOtherwise => (
            on.With("its thread carries something else than this torque is for"), "back it off, clean the thread or put on what the step says, record that, redo"),
        HoldReason.ToolQuarantined => (on.With("the tool is out of use"), OtherTool),
        HoldReason.ToolOutOfRange => (on.With("outside the tool's range"), OtherTool),
        HoldReason.EvidenceNotAllowed => (on.With("this tool can't give the record this step asks for"), OtherTool),
        HoldReason.SettingNotInstructed => (on.With("not set to the instructed value: with a click tool only that one counts"), Redo),
        HoldReason.UnderRange => (on.With("under the permitted range"), "do what the step says for a short pull"),
        HoldReason.OverRange => (on.With("over the permitted maximum"), "do not touch it; call the lead, who decides: use as is, rework or replace"),
        HoldReason.TurnOutside => (on.With("turned outside the permitted angle"), "do not touch it; call the lead, who decides: use as is, rework or replace"),
        HoldReason.TurnVoided => (
            on.With("the record of its angle was voided, and the bolt may be turned already"),
            "do not turn it again before it is decided: a second person confirms the void where it was never turned, else the lead decides rework or replace"),
        HoldReason.SecondPull => (on.With("pulled again when already done"), Redo),
        HoldReason.PositionHeld => (on.With("pulled while held"), Redo),
        HoldReason.BackOffFirst => (on.With("pulled again without backing off after a short pull"), Redo),
        HoldReason.JamPairMissing => (on.With("the two jam nuts are not at their torque"), Redo),
        HoldReason.ReTorqueNotDue => (on.With("no re-torque is due on it"), Redo),
        HoldReason.ValueMissing => (on.With("the run-down torque was not recorded"), Redo),
        HoldReason.ValueOutside => (on.With("the run-down torque is not what the nut's maker permits"), Redo),
        HoldReason.NoRightToRecord => (
            on.With("pulled by somebody without the right to record"), "whoever has the right and stood by countersigns it; else back off and redo"),
        HoldReason.RidesOnLoose when point.Because is { Position: { } ridden } behind
            && HoldSentences.Of(behind, new HoldSubject(on.Names, ridden.Joint, [ridden.Number])) is var loose => (on.With($"it sits on {loose.Words}"), loose.Next),
        HoldReason.RidesOnLoose => (on.With("what it sits on was not finished"), Redo),
        HoldReason.StillOn when point.Because is { Position: { } before } => (
            on.With($"it is behind {new HoldSubject(on.Names, before.Joint, [before.Number]).Joint}, which is still on in the book"), "press OPEN on that first"),
        HoldReason.StillOn => (on.With("what is before it was still on in the book"), $"press OPEN on that; {Redo}"),
        HoldReason.UnfinishedBehind when point.Because is { Position: { } ahead } behind
            && HoldSentences.Of(behind, new HoldSubject(on.Names, ahead.Joint, [ahead.Number])) is var undone => (on.With($"behind it: {undone.Words}"), undone.Next),
        HoldReason.UnfinishedBehind => (on.With("what is behind it was not finished"), Redo),
        HoldReason.CureNotSigned => (on.With("its cure is not signed"), "wait for the cure and sign its step"),
        HoldReason.TooLate => (on.With("done later after hand-tight than the instruction allows"), Redo),
        HoldReason.ReTorqueEarly => (on.With("not driven far enough to settle"), "drive on and re-torque again"),
        HoldReason.MovedTooFar => (on.With($"it moved further than the {Procedures.ReTorque.LargestMove:0}° that a joint settles"), "do not drive; call the lead, then back off, inspect and redo"),
        HoldReason.ToolLengthMissing => (
            on.With("what the adapter makes of the tool's setting is not known: the tool's own length is not entered, or too short for it"),
            "the lead enters the tool's length, or take another tool; call the lead, then back off, inspect and redo"),
        _ => null,
    };
}
