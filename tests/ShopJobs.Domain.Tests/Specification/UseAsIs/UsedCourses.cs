namespace ShopJobs.Domain.Tests.Specification.UseAsIs;

/// <summary>Courses that must come to an end, and defects that a requirement must catch.</summary>
internal static class UsedCourses
{
    public static Sheet<UsedState> WithCourses(this Sheet<UsedState> sheet) => sheet
        .Honest("DONE", "Two stages and a witness", s => s is { Counts: true, Lacks: Piece.None })
        .Honest("OVER-USED", "Over the maximum, used as is by the maker's letter, witnessed", s => s is { Counts: true, Lacks: Piece.Value })
        .Honest("TOOL-USED", "A wrench past its day, used as is by the maker's letter, witnessed", s => s is { Counts: true, Lacks: Piece.Tool })
        .Honest("BOTH-USED", "Over the maximum with a wrench past its day, both used as is by one decision, witnessed",
            s => s is { Counts: true, Lacks: Piece.Value | Piece.Tool })
        .Honest("SECOND-USED", "A second click, used as is by the maker's letter, looked at again", s => s is { Counts: true, Lacks: Piece.Second });

    public static Sheet<UsedState> WithDefects(this Sheet<UsedState> sheet) => sheet
        .Defect("HOLD “nicked” on a hand-tight nut, then use as is: counts without a torque", "A-PULL", "UseAsIs",
            (b, _) => b is { HandTight: true, Final: false, Holds: Piece.Pressed }, (_, a) => a with { Counts = true })
        .Defect("a final without its lower stage is used as is", "A-STAGE", "UseAsIs",
            (b, _) => b.Holds == Piece.Stage, (_, a) => a with { Holds = Piece.None, Accepted = Piece.Stage, Witnessed = true, Counts = true })
        .Defect("use as is stands in for the witness", "A-WITNESS", "UseAsIs",
            (_, a) => a is { Snug: true, Meets: true, Witnessed: false, Holds: Piece.None }, (_, a) => a with { Counts = true })
        .Defect("use as is lifts the hold and leaves a failed piece out", "THE-ONE", "UseAsIs",
            (b, _) => b.Holds == (Piece.Value | Piece.Tool), (_, a) => a with { Holds = Piece.None, Accepted = Piece.Value })
        .Defect("a snug over its maximum is used as is", "NO-LOWER-STAGE", "UseAsIs",
            (b, _) => b.Holds == Piece.Lower, (_, a) => a with { Holds = Piece.None, Snug = true })
        .Defect("use as is of a HOLD clears what is to be redone", "REDO-STAYS", "UseAsIs",
            (b, _) => b.Holds == (Piece.Redo | Piece.Pressed), (_, a) => a with { Holds = Piece.None })
        .Defect("a failed record counts once it was witnessed", "EVERY-PIECE", "Hold",
            (b, _) => b is { Snug: true, Witnessed: true }, (_, a) => a with { Counts = true })
        .Defect("used as is in March, opened in May, run on by hand", "ENDS-AT-OPENING", "Open",
            (b, _) => b.Accepted != Piece.None, (b, a) => a with { Accepted = b.Accepted })
        .Defect("a pull on top of what was used as is leaves it used", "ENDS-AT-PULL", "PullFinal",
            (b, _) => b.Accepted != Piece.None, (b, a) => a with { Accepted = b.Accepted })
        .Defect("a second pull on top counts", "SECOND-PULL", "PullFinal",
            (b, _) => b is { Counts: true, Accepted: Piece.None }, (b, _) => b)
        .Defect("the doer decides", "NOT-THE-DOER", "UseAsIsByTheDoer", (_, _) => true, (_, a) => a with { Holds = Piece.None })
        .Defect("class A is used as is without a letter", "WRITTEN", "UseAsIsUnwritten", (_, _) => true, (_, a) => a with { Holds = Piece.None })
        .Defect("opening clears a hold", "HOLD-STAYS", "Open", (b, _) => b.IsUndecided, (_, a) => a with { Holds = Piece.None });
}
