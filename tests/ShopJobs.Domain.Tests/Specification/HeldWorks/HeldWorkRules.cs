using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.HeldWorks;

/// <summary>HOLD on what is no fastener: a step, a result, a lot of parts.</summary>
internal static class HeldWorkRules
{
    private const string Decides = "until a person with the right, not the doer, decides (use as is / rework / replace)";
    private const string Only = "A hold is cleared only by its decision: opening, voiding, undo, correction, a new job or a revised procedure leave it standing";
    private const string NewHardware = "Replace needs new hardware recorded on the position";
    private const string Counts = "No sign-off and no release while a position it depends on does not count";

    public static RuleBook<StoppedWork> Book() => Faults(Requirements(
        new RuleBook<StoppedWork>("Held steps, results and lots", StoppedWork.Start, work => work.ToString())
            .Action("Hold the step", work => !work.StepHeld, work => (work with { StepHeld = true }).Judged())
            .Action("Use the step as is", StoppedWork.Deciders, (work, _) => work.StepHeld, (work, by) => work.Decide(by, now => now with { StepHeld = false }))
            .Action("Have the step done again", StoppedWork.Deciders, (work, _) => work.StepHeld,
                (work, by) => work.Decide(by, now => now with { StepHeld = false, Signed = false }))
            .Action("Sign", work => work is { Signed: false, Off: false, NutHold: NutHold.None }, work => work.Sign())
            .Action("Hold the result", work => work is { ResultHeld: false, Result: true }, work => (work with { ResultHeld = true }).Judged())
            .Action("Use the result as is", StoppedWork.Deciders, (work, _) => work.ResultHeld, (work, by) => work.Decide(by, now => now with { ResultHeld = false }))
            .Action("Have the result done again", StoppedWork.Deciders, (work, _) => work.ResultHeld,
                (work, by) => work.Decide(by, now => now with { ResultHeld = false, Result = false }))
            .Action("Record the result", work => work is { Result: false, Off: false, NutHold: NutHold.None }, work => (work with { Result = true }).Judged())
            .Action("Hold the lot", work => work.Lot == LotIs.Free, work => work.HoldLot())
            .Action("Use the lot as is", StoppedWork.Deciders, (work, _) => work.Lot == LotIs.Held,
                (work, by) => work.Decide(by, now => now with { Lot = LotIs.Free, NutHold = NutHold.None }))
            .Action("Rework the lot", work => work.Lot == LotIs.Held, work => work.Refused())
            .Action("Replace the lot", StoppedWork.Deciders, (work, _) => work.Lot == LotIs.Held, (work, by) => work.Decide(by, now => now.Replace()))
            .Action("Open", work => !work.Off, work => work.Open())
            .Action("Fit from the lot", work => work is { Off: true, NutHold: NutHold.None, StepHeld: false }, work => work.FitFromTheLot())
            .Action("Fit from another lot", work => work is { Off: true, NutHold: NutHold.None, StepHeld: false }, work => work.Fit(Fitted.FromAnother))));

    private static RuleBook<StoppedWork> Requirements(RuleBook<StoppedWork> book) => book
        .On("Sign", "7", "HELD-STEP-UNSIGNED", Decides, (before, _) => before.StepHeld, (_, after) => after is { Granted: false, Signed: false })
        .Whenever("7", "DECIDED-BY-ANOTHER", Decides,
            (before, after) => Holds(before) > Holds(after), (_, after) => after.Granted)
        .On("Have the step done again", "7", "STEP-FALLS", Decides, (_, after) => after.Granted, (_, after) => !after.Signed)
        .On("Have the result done again", "7", "RESULT-FALLS", Decides, (_, after) => after.Granted, (_, after) => !after.Result)
        .On("Open", "7", "OPENING-LEAVES-IT", Only, (before, _) => before.NutHold == NutHold.Waits || before.StepHeld || before.ResultHeld,
            (before, after) => Holds(after) == Holds(before) && (after.NutHold == NutHold.Waits) == (before.NutHold == NutHold.Waits))
        .On("Hold the lot", "7", "LOT-HOLDS-WHAT-IT-IS-ON", Decides, (before, _) => before.Nut == Fitted.FromTheLot, (_, after) => after.NutHold == NutHold.Waits)
        .On("Fit from the lot", "7", "NOT-FROM-A-HELD-LOT", NewHardware, (before, _) => before.Lot != LotIs.Free, (_, after) => after is { Granted: false, Off: true })
        .On("Replace the lot", "7", "REPLACED-ON-THE-CAR", NewHardware,
            (before, after) => after.Granted && before is { Off: false, NutHold: NutHold.Waits }, (_, after) => after.NutHold == NutHold.ToReplace)
        .On("Rework the lot", "7", "LOT-NOT-REWORKED", "Rework needs the hardware's reuse allowed", (_, _) => true, (before, after) => after == before.Refused())
        .Always("1", "HELD-GOES-NOWHERE", Counts, work => !work.Goes || work is { StepHeld: false, ResultHeld: false, NutHold: NutHold.None })
        .Ends("7", "LOT-CHANGED", "A held lot is replaced on the car, and the car goes", work => work is { Lot: LotIs.Refused, Nut: Fitted.FromAnother, Goes: true })
        .Ends("7", "LOT-USED", "A held lot is used as it is on a written acceptance, and the car goes", work => work is { Lot: LotIs.Free, Nut: Fitted.FromTheLot, Goes: true });

    private static RuleBook<StoppedWork> Faults(RuleBook<StoppedWork> book) => book
        .Fault("a held step is signed", "HELD-STEP-UNSIGNED", "Sign", (before, _) => before.StepHeld, (_, work) => work with { Signed = true, Granted = true })
        .Fault("whoever pressed HOLD on a step decides it", "DECIDED-BY-ANOTHER", "Use the step as is", (_, after) => !after.Granted, (_, work) => work with { StepHeld = false })
        .Fault("whoever pressed HOLD on a result decides it", "DECIDED-BY-ANOTHER", "Use the result as is", (_, after) => !after.Granted, (_, work) => work with { ResultHeld = false })
        .Fault("whoever pressed HOLD on a lot decides it", "DECIDED-BY-ANOTHER", "Use the lot as is", (_, after) => !after.Granted, (_, work) => work with { Lot = LotIs.Free, NutHold = NutHold.None })
        .Fault("a step that is to be done again stays signed", "STEP-FALLS", "Have the step done again", (before, after) => after.Granted && before.Signed, (_, work) => work with { Signed = true })
        .Fault("a result that is to be done again stands", "RESULT-FALLS", "Have the result done again", (_, after) => after.Granted, (_, work) => work with { Result = true })
        .Fault("opening clears the hold of a lot", "OPENING-LEAVES-IT", "Open", (before, _) => before.NutHold == NutHold.Waits, (_, work) => work with { NutHold = NutHold.None })
        .Fault("opening clears the hold of a step", "OPENING-LEAVES-IT", "Open", (before, _) => before.StepHeld, (_, work) => work with { StepHeld = false })
        .Fault("a held lot goes on holding a wheel", "LOT-HOLDS-WHAT-IT-IS-ON", "Hold the lot", (before, _) => before.Nut == Fitted.FromTheLot, (_, work) => work with { NutHold = NutHold.None })
        .Fault("new hardware from a held lot counts", "NOT-FROM-A-HELD-LOT", "Fit from the lot", (before, _) => before.Lot != LotIs.Free, (_, work) => work.Fit(Fitted.FromTheLot))
        .Fault("a replaced lot stays on the wheel", "REPLACED-ON-THE-CAR", "Replace the lot",
            (before, after) => after.Granted && before is { Off: false, NutHold: NutHold.Waits }, (_, work) => work with { NutHold = NutHold.None })
        .Fault("a lot is reworked", "LOT-NOT-REWORKED", "Rework the lot", (_, _) => true, (_, work) => work with { Lot = LotIs.Free, NutHold = NutHold.None, Granted = true })
        .Fault("a car goes with a held result", "HELD-GOES-NOWHERE", "Hold the result", (_, _) => true, (_, work) => work with { Goes = true })
        .Fault("a car goes with a held step", "HELD-GOES-NOWHERE", "Hold the step", (_, _) => true, (_, work) => work with { Goes = true });

    private static int Holds(StoppedWork work) => (work.StepHeld ? 1 : 0) + (work.ResultHeld ? 1 : 0) + (work.Lot == LotIs.Held ? 1 : 0);
}
