namespace ShopJobs.Domain.Tests.Specification.ToolDoubt;

/// <summary>What the rules ask of a tool in doubt, each in its own words.</summary>
internal static class DoubtRequirements
{
    private const string Holds = "A tool in doubt holds every position it tightened since its last good as-left calibration (and every stud driven through a pair it jammed).";
    private const string Lifts = "A doubt raised by readings is lifted by new as-found readings taken before any adjustment, with why the first were wrong, or per position by somebody who did not work on that group instance; signed.";

    public static Sheet<DoubtState> WithRequirements(this Sheet<DoubtState> sheet) => sheet
        .Must("HOLDS-ITS-NUTS", Holds, (b, a) => IsRaised(b, a) && b.Nut == Stands.OnIt, (_, a) => DoubtState.IsDoubted(a.Nut))
        .Must("HOLDS-ITS-PAIRS", Holds, (b, a) => IsRaised(b, a) && b.Pair == Stands.OnIt, (_, a) => DoubtState.IsDoubted(a.Pair))
        .Must("HOLDS-DRIVEN-STUDS", Holds, (b, a) => IsRaised(b, a) && b.Stud == Stands.OnIt, (_, a) => DoubtState.IsDoubted(a.Stud))
        .Must("ONLY-SINCE", Holds, (b, a) => IsRaised(b, a) && b.Nut is Stands.OnItBefore or Stands.OnTheOther, (b, a) => b.Nut == a.Nut)
        .MustOn("TakePairOff", "PAIR-OFF-KEEPS-DOUBT", "The driven record keeps what it rested on, doubts too.", (_, _) => true, (b, a) => b.Stud == a.Stud)
        .MustOn("LeadFindsItGood", "NOT-BY-ONE-ALONE", Lifts, (b, _) => b is { Doubt: Doubt.ByReadings, Since: not Since.FoundGood }, (b, a) => b == a)
        .MustOn("ReadAgain", "NOT-AFTER-ADJUSTMENT", Lifts, (b, _) => b.Since == Since.Adjusted, (b, a) => b == a)
        .MustOn("ReadAgain", "BEFORE-ADJUSTMENT-LIFTS", Lifts, (b, _) => b.Since != Since.Adjusted,
            (_, a) => a.Doubt == Doubt.None && !DoubtState.IsDoubted(a.Nut) && !DoubtState.IsDoubted(a.Stud) && !DoubtState.IsDoubted(a.Pair))
        .MustOn("Calibrate", "CALIBRATION-LIFTS-NONE", Lifts, (b, _) => DoubtState.IsDoubted(b.Nut), (_, a) => DoubtState.IsDoubted(a.Nut))
        .MustOn("DecideByAWorker", "NOT-A-WORKER", Lifts, (_, _) => true, (b, a) => b == a)
        .MustOn("PullNut", "IN-CALIBRATION", "With a tool in calibration and in its range.", (b, _) => b.Wrench != Wrench.Good, (_, a) => !DoubtState.Counts(a.Nut))
        .Must("SUSPENDS-SIGNATURES", "A doubt suspends sign-offs; lifted, they stand again.",
            (_, a) => a.Signed && DoubtState.IsDoubted(a.Nut), (_, a) => !a.SignatureStands)
        .Must("SIGNATURES-STAND-AGAIN", "A doubt suspends sign-offs; lifted, they stand again.",
            (b, a) => b.Signed && DoubtState.IsDoubted(b.Nut) && DoubtState.Counts(a.Nut), (_, a) => a.SignatureStands);

    private static bool IsRaised(DoubtState b, DoubtState a) => b.Doubt == Doubt.None && a.Doubt != Doubt.None;
}
