namespace ShopJobs.Domain.Tests.Specification.Holds;

/// <summary>What the rules ask of holds, each in its own words.</summary>
internal static class HeldRequirements
{
    private const string Over = "Over the permitted maximum holds the position, and what it rides on, until a person with the right, not the doer, decides (use as is / rework / replace).";
    private const string Only = "A hold is cleared only by its decision: opening, voiding, undo, correction, a new job or a revised procedure leave it standing.";

    public static Sheet<HeldState> WithRequirements(this Sheet<HeldState> sheet) => sheet
        .MustOn("PullOver", "OVER-HOLDS-BOTH", Over, (_, _) => true, (_, a) => a is { Over: Hold.Standing, Stud: Hold.Standing, Counts: false })
        .Must("HELD-COUNTS-NOT", Over, (_, a) => a.IsHeld || a.Stud != Hold.None, (_, a) => !a.Counts)
        .MustOn("Open", "OPENING-CLEARS-NONE", Only, (b, _) => b.IsUndecided, Stands)
        .MustOn("VoidThePull", "VOIDING-CLEARS-NONE", Only, (_, _) => true, Stands)
        .MustOn("NewJob", "A-JOB-CLEARS-NONE", Only, (b, _) => b.IsUndecided, Stands)
        .MustOn("SayASlip", "ONE-ALONE-CLEARS-NONE", "No single person's sequence of corrections turns a position that does not count into one that does.", (_, _) => true, Stands)
        .MustOn("FitNew", "NEW-HARDWARE-CLEARS-NONE", Only, (b, _) => b.IsUndecided, Stands)
        .Must("REPLACE-NEEDS-NEW", "Replace needs new hardware recorded on the position.",
            (b, a) => IsReplaced(b.Over, a.Over) || IsReplaced(b.Pressed, a.Pressed) || IsReplaced(b.Twin, a.Twin),
            (_, a) => a is { HandTight: false, Pulled: Pulled.No })
        .MustOn("Open", "REPLACE-STAYS", "Replace needs new hardware recorded on the position.", (b, _) => b.Over == Hold.Replace, (_, a) => a.Over == Hold.Replace)
        .MustOn("DecideStudRework", "REWORK-NEEDS-REUSE", "Rework needs the hardware's reuse allowed.", (_, _) => true, (b, a) => b == a)
        .MustOn("DecideByTheDoer", "NOT-THE-DOER", Over, (_, _) => true, (b, a) => b == a)
        .MustOn("ConfirmByTheDoer", "A-SECOND-CONFIRMS", "Two things more lift it, each said by the doer and confirmed by a second person.", (_, _) => true, (b, a) => b == a)
        .MustOn("ConfirmByASecond", "A-SLIP-LIFTS", "A correction, in order, of the one figure that raised it (a slip of typing).",
            (b, _) => b.Said == Said.Slip,
            (b, a) => a is { Over: Hold.None, Pulled: Pulled.Good } && a.Stud != Hold.Standing && a.Pressed == b.Pressed)
        .MustOn("ConfirmByASecond", "TOLD-TWICE-LIFTS", "One pull that was reported twice.",
            (b, _) => b.Said == Said.SamePull,
            (b, a) => a.Twin != Hold.Standing && a.Pulled == b.Pulled && a.Pressed == b.Pressed)
        .MustOn("Decide", "THE-STUD-BY-ITSELF", Over, (b, _) => b.Stud != Hold.None, (b, a) => a.Stud == b.Stud);

    private static bool Stands(HeldState b, HeldState a) =>
        Stands(b.Over, a.Over) && Stands(b.Twin, a.Twin) && Stands(b.Pressed, a.Pressed) && (b.Stud != Hold.Standing || a.Stud == Hold.Standing);

    private static bool Stands(Hold b, Hold a) => !HeldState.IsUndecidedHold(b) || HeldState.IsUndecidedHold(a);

    private static bool IsReplaced(Hold b, Hold a) => b == Hold.Replace && a == Hold.None;
}
