namespace ShopJobs.Domain.Tests.Specification.ToolDoubt;

/// <summary>Courses that must come to an end, and defects that a requirement must catch.</summary>
internal static class DoubtCourses
{
    public static Sheet<DoubtState> WithCourses(this Sheet<DoubtState> sheet) => sheet
        .Honest("DOUBT-WITHOUT-ITS-PAIR", "A stud in doubt whose pair is off", s => s.Stud == Stands.InDoubt && s.Pair == Stands.Nowhere)
        .Honest("DECIDED", "After an adjustment, decided per position, and the signature stands", s => s is { Doubt: Doubt.ByReadings, Since: Since.Adjusted, Nut: Stands.OnItBefore, SignatureStands: true })
        .Honest("LIFTED", "Everybody used the wrench: lifted by readings, and the signature stands", s => s is { Doubt: Doubt.None, Nut: Stands.OnIt, Stud: Stands.OnIt, SignatureStands: true });

    public static Sheet<DoubtState> WithDefects(this Sheet<DoubtState> sheet) => sheet
        .Defect("a doubt passes a nut by", "HOLDS-ITS-NUTS", "DoubtByHand", (b, _) => b.Nut == Stands.OnIt, (b, a) => a with { Nut = b.Nut, SignatureStands = b.SignatureStands })
        .Defect("a doubt passes a pair by", "HOLDS-ITS-PAIRS", "FoundBad", (b, _) => b.Pair == Stands.OnIt, (b, a) => a with { Pair = b.Pair })
        .Defect("a doubt passes a stud by that its pair drove", "HOLDS-DRIVEN-STUDS", "DoubtByHand", (b, _) => b.Stud == Stands.OnIt && b.Pair == Stands.Nowhere, (b, a) => a with { Stud = b.Stud })
        .Defect("a doubt reaches back before the last good readings", "ONLY-SINCE", "DoubtByHand", (b, _) => b.Nut == Stands.OnItBefore, (_, a) => (a with { Nut = Stands.InDoubt }).Told())
        .Defect("the doubt goes with the jam nuts", "PAIR-OFF-KEEPS-DOUBT", "TakePairOff", (b, _) => b.Stud == Stands.InDoubt, (_, a) => a with { Stud = Stands.OnIt })
        .Defect("the lead alone lifts what readings raised", "NOT-BY-ONE-ALONE", "LeadFindsItGood", (b, _) => b is { Doubt: Doubt.ByReadings, Since: Since.Nothing }, (_, a) => a with { Doubt = Doubt.None })
        .Defect("readings after the rig adjusted the wrench lift the doubt", "NOT-AFTER-ADJUSTMENT", "ReadAgain", (b, _) => b.Since == Since.Adjusted, (_, a) => a with { Doubt = Doubt.None })
        .Defect("readings before any adjustment don't lift", "BEFORE-ADJUSTMENT-LIFTS", "ReadAgain", (b, _) => b.Since != Since.Adjusted, (b, _) => b)
        .Defect("a calibration lifts the doubt", "CALIBRATION-LIFTS-NONE", "Calibrate", (b, _) => DoubtState.IsDoubted(b.Nut), (_, a) => (a with { Nut = Stands.OnItBefore }).Told())
        .Defect("he who tightened it decides", "NOT-A-WORKER", "DecideByAWorker", (b, _) => DoubtState.IsDoubted(b.Stud), (_, a) => a with { Stud = Stands.OnIt })
        .Defect("a wrench past its day brings a nut to torque", "IN-CALIBRATION", "PullNut", (b, _) => b.Wrench == Wrench.Overdue, (_, a) => a with { Nut = Stands.OnIt })
        .Defect("a signature stands in doubt", "SUSPENDS-SIGNATURES", "FoundBad", (b, _) => b.SignatureStands, (_, a) => a with { SignatureStands = true })
        .Defect("a signature stays fallen after the doubt", "SIGNATURES-STAND-AGAIN", "DecideByAnother", (b, _) => b.Signed && DoubtState.IsDoubted(b.Nut), (_, a) => a with { SignatureStands = false });
}
