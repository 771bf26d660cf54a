using System.Globalization;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

// The one place where every reason has its words. A reason without a line here is a bug, and a test finds it.
internal static class HoldSentences
{
    public const string Redo = "call the lead, then back off, inspect and redo";
    private const string Answer = "somebody who may record and stood by countersigns it";
    private const string OnScreen = "choose it on the screen";
    private const string FromCar = "go to it from the car's page";

    public static SaidHold Of(HoldPoint point, HoldSubject on)
    {
        var (words, next) = Say(point, on);
        return new SaidHold(words, next);
    }

    private static (string Words, string Next) Say(HoldPoint point, HoldSubject on) => point.Reason switch
    {
        // a fastener
        HoldReason.Held => Held(point, on),
        HoldReason.ToolInDoubt => (
            on.With(point.Tool is { } tool ? $"tightened with {tool.Name}, which is in doubt" : "its tool is in doubt"),
            "the lead decides: use as is, rework or replace"),
        HoldReason.NotAtStage => NotAtStage(point.Reached, on),
        HoldReason.NotWitnessed => (on.With("not witnessed"), "a witness checks and signs"),
        HoldReason.WitnessRejected => (on.With("not accepted by the witness"), Redo),
        HoldReason.OtherSpecification when point.Otherwise is { } other => (
            on.With($"torqued as {other.Procedure} asks ({other.Amount}, {other.Condition}), here {other.Asked} {other.AskedCondition} is asked"),
            "redo the joint, or the lead decides"),
        HoldReason.OtherSpecification => (on.With("torqued to another job's specification"), "redo the joint, or the lead decides"),

        // a step
        HoldReason.AlreadySigned => ("This step is signed already", "go on with the next step"),
        HoldReason.AsFoundMissing => (
            $"Nobody has written down how it was found: {point.Name}", "record it as found before anything is opened, or write that it is unknown and the customer told"),
        HoldReason.StepBefore when point.Unsigned is { Finished: true } done => ($"“{done.Step.Title()}” is done and not signed", "sign it first"),
        HoldReason.StepBefore when point.Unsigned is { } before => (
            $"“{before.Step.Title()}” is {before.Standing.Words()}",
            before.Standing switch
            {
                StepStanding.NotSigned => "finish and sign it first",
                StepStanding.AwaitsCountersign => Answer,
                _ => "look at it again and sign it first",
            }),
        HoldReason.StepBefore => (on.With("the step before it is not signed"), Redo),
        HoldReason.SignedByItself => ($"“{point.Name}” brings class A joints to their final torque: it is signed by itself", "sign the steps before it, then this one"),
        HoldReason.NotFinished => ("One of the steps before it is not done any more, or somebody else did it", "look again, then sign"),
        HoldReason.GroupBefore when point.Because is { } behind => Say(behind, on),
        HoldReason.GroupBefore => (on.With("not finished as far as this step needs"), "finish it first"),
        HoldReason.ResultMissing => ($"{Result(point, on)} is not measured, or no longer valid", "record it"),
        HoldReason.ResultJointLoose when point.Because is { } behind && Say(behind, on) is var loose => ($"{Result(point, on)} depends on {loose.Words}", loose.Next),
        HoldReason.ResultJointLoose => ($"{Result(point, on)} depends on a joint that is not finished", "finish it first"),
        HoldReason.Cure when point.ClockInDoubt => (
            string.Create(CultureInfo.InvariantCulture, $"The clock is in doubt, and with it the {point.Hours} h cure of {point.Name}"), "the lead signs the time"),
        HoldReason.Cure when point.Until is { } until => (
            string.Create(CultureInfo.InvariantCulture, $"{point.Name}: the locker cures until {WallTime.Minute(on.Names.OnTheWall(until))}"), "wait for the cure"),
        HoldReason.Cure => (string.Create(CultureInfo.InvariantCulture, $"The {point.Hours} h cure of {point.Name} has not begun"), "wait for the cure"),
        HoldReason.NotYetOpened => ($"{on.Joint} is not recorded as opened", "press OPEN when it is off"),
        HoldReason.NotRunDown when point.Because is not null => ($"{on.Fasteners} {on.Is} held", "the lead decides"),
        HoldReason.NotRunDown => ($"{on.Fasteners} {on.Is} not run down by hand", "press HAND-TIGHT when it is"),
        HoldReason.TemporaryFitted => ($"{on.Fasteners} {on.Is} still on the car{(point.Because is null ? "" : " or held")}", "take it off"),
        HoldReason.TickMissing => ($"Not ticked: {point.Name}", "look and tick it"),
        HoldReason.MeasureMissing => ($"No value for “{point.Measure?.Text}”", $"enter it, in {point.Measure?.Unit}"),
        HoldReason.MeasureOutside when point.Value is null => ("A value is outside its limits", "put it right and measure again, or call the lead"),
        HoldReason.MeasureOutside => (
            string.Create(CultureInfo.InvariantCulture, $"“{point.Measure?.Text}” is {point.Value?.Value} {point.Value?.Unit}, permitted: {point.Measure?.Limits()}"),
            "put it right and measure again, or call the lead"),

        // a release
        HoldReason.JointNotMadeHere => ($"{on.Joint}: as found, not torqued by us", "start a job that torques it"),
        HoldReason.NothingCloses => ($"{on.Joint} is open and no job closes it", "start a job that does"),
        HoldReason.ResultVoid => ($"{Result(point, on)} is not valid: a joint it depends on was opened, or it was not good", "do it and record it"),
        HoldReason.AwaitsDrive => ($"{Result(point, on)} is missing: only a drive gives it", "release it to a road test, then record it"),
        HoldReason.ResultInDoubt => ($"{Result(point, on)} is in doubt: so is the instrument it was measured with", "measure again with another one, or clear it"),
        HoldReason.StepToReconfirm => ($"“{point.Unsigned?.Step.Title()}” is {point.Unsigned?.Standing.Words()}", "look again and sign it"),
        HoldReason.StepNotSigned when point.Unsigned is { Standing: StepStanding.AwaitsCountersign } trainee => (
            $"“{trainee.Step.Title()}” was signed by a trainee and is not countersigned", Answer),
        HoldReason.StepNotSigned => ($"“{point.Unsigned?.Step.Title()}” is not signed", "finish and sign it"),
        HoldReason.ReTorqueDue => (
            $"{on.Joint}: re-torque after the first drive is not done", "re-torque after the drive, or record the customer's written acceptance"),
        HoldReason.ReTorqueOverdue => (
            $"{on.Joint}: its re-torque is overdue", "re-torque it, or record the customer's written acceptance"),
        HoldReason.NoRegister => ("Nobody knows which joints this car has: no list of the joint register is chosen for it", "import a register, and choose the list on the car's page"),
        HoldReason.NoSuchRelease => ("There is no such release to take back", "look at the release page again"),
        HoldReason.NotSuspended => ("This release is not suspended", "nothing to do"),

        // a person
        HoldReason.NoPersonHere => ("This person does not work here any more", "sign in as yourself"),
        HoldReason.NoRight => ($"You do not hold the right to {Verb(point.Right)}", "ask somebody who does, or the lead"),
        HoldReason.OwnWork => ("You worked on this joint: nobody witnesses or decides their own work", "ask a second person"),
        HoldReason.OthersEntry => ("Only the person who recorded it, or the lead, corrects an entry", "ask them"),
        HoldReason.LeadKeepsTools => ("Only the lead enters tools, calibrations and doubts", "ask the lead"),
        HoldReason.AcceptanceMissing => (
            "A class A joint is used as is only with a written acceptance by the maker or a named engineer", "attach it, or decide rework or replace"),
        HoldReason.ReuseNotAllowed => ("This hardware is single-use: rework would use it twice", "decide replace"),
        HoldReason.VoidedTurn => (
            "The record of an angle on it is void: it cannot be used as is", "confirm the void where it was never turned, or decide rework or replace"),
        HoldReason.NotUsableAsIs when point.Because is { Reason: var missing } => (
            $"It cannot be used as it is: {HoldWords.Of(missing)}", "decide rework or replace"),
        HoldReason.NotUsableAsIs => ("Only the record of the final stage can be used as it is", "decide rework or replace"),
        HoldReason.LookAgain when point is { About: { } change, At: { } at } => (
            string.Create(CultureInfo.InvariantCulture, $"{on.Fasteners} {Happened(change)} at {WallTime.Clock(on.Names.OnTheWall(at))}, after this was shown"), "look again, then sign"),
        HoldReason.LookAgain when point.About is { } change => ($"{on.Fasteners} {Happened(change)} after this was shown", "look again, then sign"),
        HoldReason.LookAgain => ("Something changed after this was shown", "look again, then sign"),
        HoldReason.Tied => (
            "Whoever worked here enrolled you, gave you your right or reset your PIN", "ask somebody else, or have a third person confirm you"),
        HoldReason.NeedsReadings => (
            "Readings raised this doubt: only new readings as found, taken before anybody adjusted the tool, lift it", "check it on the rig, or decide each fastener"),
        HoldReason.UsedTheTool => ("You used this tool in the time in doubt", "ask a lead who did not, or check it on the rig"),
        HoldReason.NothingToCountersign => ("None of these pulls waits for a countersignature", "look again"),
        HoldReason.NoPlaceNamed => ("Say at which place the car is so", OnScreen),
        HoldReason.ReasonMissing => ("Not applicable needs a reason", "type why"),
        HoldReason.FindingMissing => ("Not accepted needs a finding", "type what you saw"),
        HoldReason.NothingToDecide => ($"{on.Fasteners} {on.Is} not held", "go on with the work"),
        HoldReason.NothingToWitness => ($"No record of {point.Name} waits for a witness", "look again when it is torqued"),
        HoldReason.NothingToClear => ("This tool is neither in doubt nor out of use", "use it"),
        HoldReason.NotCorrectable => ($"Entry {Number(point)} cannot be corrected", "record what happened instead: OPEN, HOLD or a decision"),
        HoldReason.AlreadyVoid => ($"Entry {Number(point)} is void already", point.Because is { } turn ? Say(turn, on).Next : "record it again"),
        HoldReason.OpenedAndGoneOn => (
            "This opening can't be taken back: since then something was recorded on what it opened, or corrected, or the car was released",
            "close the joint as its procedure says"),
        HoldReason.NotRestatable => (
            "Only a torque value can be restated",
            point.Because is null ? "void the entry and record it again" : "void it: that holds the bolt until a second person has looked"),
        HoldReason.NoSuchCorrection => ($"Entry {Number(point)} is no correction that waits", "choose one from the logbook"),
        HoldReason.AlreadyStarted => ("This job is started already", "go to it on the car's page"),
        HoldReason.JobNotRunning => ("This job has ended already", "nothing to do; start a new job where there is more to do"),
        HoldReason.ResumeFirst => ("This job is on hold", "the lead resumes it on the car's page first"),
        HoldReason.NotOnHold => ("This job is not on hold", "go on with it"),
        HoldReason.WorkBegun => ($"{on.Fasteners} was opened, so its step applies", "torque it"),
        HoldReason.Superseded => ("More was recorded on this car since the summary was shown", "look at it again as it is now, then issue it"),

        // what is not known here
        HoldReason.UnknownJob => ("This car has no such job", FromCar),
        HoldReason.UnknownStep => ("This car has no such step", FromCar),
        HoldReason.UnknownGroup => ("This car has no such group", FromCar),
        HoldReason.NoJobYet => ("No job was ever started on this car", "start one first"),
        HoldReason.NoPosition => ("No joint was named", OnScreen),
        HoldReason.UnknownPosition => ($"{on.Fasteners} is not a joint of this register", OnScreen),
        HoldReason.NotInGroup => ($"The job's group “{point.Name}” has no such position or stage there", OnScreen),
        HoldReason.UnknownPlace when point.Choices.Count == 0 => (
            "This procedure works at no place of the register", "choose another procedure, or correct its steps' places and import it again"),
        HoldReason.UnknownPlace when point.Name is { } place => ($"This procedure does nothing at {place}", $"it works at {string.Join(", ", point.Choices)}"),
        HoldReason.UnknownPlace => ("Choose at least one place of the procedure", $"it works at {string.Join(", ", point.Choices)}"),
        HoldReason.UnknownCondition => ("That is not a condition the register knows", OnScreen),
        HoldReason.AsFoundEmpty => ("Nothing is written down of how it was found", "write what you saw, or that it is unknown and how the customer was told"),
        HoldReason.SeenAndUnknown => ("It was seen, and it is unknown", "keep one of them"),
        HoldReason.NotOnSheet => ($"The as-found sheet asks no such thing: {point.Name}", "load the page again and write what its sheet asks"),
        HoldReason.FuelOutside => ("A fuel gauge is read in eighths, 0 for empty to 8 for full", "choose one of them"),
        HoldReason.UnknownSystem => ($"No joint of this car is of the system “{point.Name}”", "load the page again"),
        HoldReason.ResultIncomplete => ("A result has a name and at least one value", "type the values that were measured"),
        HoldReason.NotDrivenYet => ($"{Result(point, on)}: the car was not driven since it became void", "release it to a road test first"),
        HoldReason.NoteMissing when point.Choices is { Count: > 0 } choices => ($"“{point.Name}” is not filled in", $"write one of {string.Join(", ", choices)}"),
        HoldReason.NoteMissing => ($"“{point.Name}” is not filled in", "write it down"),
        HoldReason.InstrumentMissing => ($"{Result(point, on)}: no instrument is named", "choose what it was measured with"),
        HoldReason.ToolNotEntered => ("This tool is not entered yet", "enter its range and graduation first"),
        HoldReason.ToolUnitFixed => ($"{point.Tool?.Name} has calibrations in {point.Tool?.Unit.Symbol()}", "enter a tool in another unit as a new tool"),
        HoldReason.CalibrationAhead => ($"The calibration is dated {Day(point)}, after today", "read the certificate's date again"),
        HoldReason.CalibrationTooOld => ($"The calibration is dated {Day(point)}, more than {CalibrationDates.MostYearsBack} years ago", "read the certificate's date again"),
        HoldReason.CalibrationTooLong => ($"A calibration is good for at most {CalibrationDates.MostYearsGood} years here, not until {Day(point)}", "read the certificate's dates again"),
        HoldReason.NothingToWithdraw => ("That calibration is not in this tool's logbook, or is withdrawn already", "load the page again"),
        HoldReason.ToolRetired => ("It is out of use for good", "bring it back first, if it is used again"),
        HoldReason.NotRetired => ("It is not out of use for good", "load the page again"),
        HoldReason.NameTaken => ($"“{point.Name}” reads like {string.Join(", ", point.Choices)}, the name of another tool or instrument", "give this one a name that nobody takes for it"),
        HoldReason.ProcedureRetired => ($"{point.Name} is retired and goes on no new car", "take another, or ask an author to bring it back"),
        HoldReason.SerialTaken => ($"{point.Tool?.Name} has the serial number {point.Name}", "look at both tools again"),
        HoldReason.CalibrationOlder => ($"A calibration of {Day(point)} is entered already", "enter the newest certificate"),
        HoldReason.ClockNotInDoubt => ("The clock is not in doubt", "go on; nothing waits for it"),
        _ => PaperSentences.Of(point, on) ?? ReportSentences.Of(point, on) ?? HeldSentences.Of(point, on) ?? VisitSentences.Of(point, on) ?? JointListWords.Of(point, on) ?? throw new ArgumentOutOfRangeException(nameof(point), point.Reason, "This reason has no words."),
    };

    private static (string, string) Held(HoldPoint point, HoldSubject on) => (point.Decision, point.Because) switch
    {
        (Disposition.Replace, _) => (on.With("held: to be replaced"), "back it off, fit new hardware, redo it"),
        ({ }, _) => (on.With("held: to be reworked"), "back it off, inspect, redo it"),
        (null, { } why) => (on.With($"held: {HoldWords.Of(why.Reason)}"), HoldWords.Next(why.Reason)),
        _ => (on.With("stopped by hand"), Redo),
    };

    private static (string, string) NotAtStage(StageReached? reached, HoldSubject on) => (
        on.With(reached switch
        {
            null => "not at torque",
            { Awaited: true } => "pulled by a trainee, not countersigned",
            { Declared: { } who } => $"declared from paper by {on.Names.Person(who)}, does not count",
            { Fitting: Fitting.AsFound } => "as found, not torqued here",
            { Fitting: Fitting.Open } => "open",
            { Fitting: Fitting.NewHardware } => "fitted new, not run down",
            { Done: > 0 } => string.Create(CultureInfo.InvariantCulture, $"at stage {reached.Done} of {reached.Of}"),
            _ => "hand-tight",
        }),
        reached switch
        {
            { Undecided: true } => "leave it until it is decided",
            { Declared: not null } => PaperSentences.Again,
            { Awaited: true } => "do not pull it again: whoever stood by countersigns it",
            { NextTurned: true } => "turn it on",
            _ => "torque it",
        });

    private static string Happened(Change change) => change switch
    {
        Change.Pulled => "was pulled again",
        Change.Held => "was held",
        Change.Looked => "was witnessed",
        Change.Corrected => "was corrected",
        _ => "was opened",
    };

    private static string Verb(Right? right) => right switch
    {
        Right.Record => "sign steps",
        Right.Witness => "witness",
        Right.Author => "publish procedures",
        Right.Decide => "decide held positions",
        Right.Release => "release cars",
        _ => "do the lead's work",
    };

    private static string Result(HoldPoint point, HoldSubject on) => $"“{on.Names.Result(point.Name ?? "")}”";

    private static string Number(HoldPoint point) => string.Create(CultureInfo.InvariantCulture, $"{point.Entry}");

    private static string Day(HoldPoint point) => point.Day is { } day ? WallTime.Day(day) : "";
}
