namespace ShopJobs.Domain.Tests.Specification.UseAsIs;

/// <summary>What the rules ask of use as is, each in its own words.</summary>
internal static class UsedRequirements
{
    private const string StandsIn = "Use as is stands in for the failed evidence of the one final record it names, all of it shown, never for a missing pull, stage or witness.";
    private const string Ends = "It ends at the next opening or pull.";

    public static Sheet<UsedState> WithRequirements(this Sheet<UsedState> sheet) => sheet
        .Must("A-PULL", StandsIn, (_, a) => a.Counts, (_, a) => a is { HandTight: true, Final: true })
        .Must("A-STAGE", StandsIn, (_, a) => a.Counts, (_, a) => a.Snug && !a.Lacks.HasFlag(Piece.Stage))
        .Must("A-WITNESS", StandsIn, (_, a) => a.Counts, (_, a) => a.Witnessed)
        .MustOn("UseAsIs", "THE-ONE", StandsIn, (b, _) => b.Final && (b.Holds & Piece.Evidence) != Piece.None,
            (b, a) => a == b || (a.Holds == Piece.None && a.Accepted == b.Lacks))
        .MustOn("UseAsIs", "NO-LOWER-STAGE", StandsIn, (b, _) => b.Holds.HasFlag(Piece.Lower), (b, a) => b == a)
        .MustOn("UseAsIs", "REDO-STAYS", "A hold is cleared only by its decision.", (b, _) => b.Holds.HasFlag(Piece.Redo),
            (b, a) => a.Holds.HasFlag(Piece.Redo) && a.Accepted == b.Accepted)
        .Must("EVERY-PIECE", StandsIn, (_, a) => a.Counts, (_, a) => (a.Lacks & ~a.Accepted) == Piece.None && a.Holds == Piece.None)
        .MustOn("Open", "ENDS-AT-OPENING", Ends, (b, _) => b.Accepted != Piece.None, (_, a) => a is { Accepted: Piece.None, Counts: false })
        .MustOn("PullFinal", "ENDS-AT-PULL", Ends, (b, _) => b.Accepted != Piece.None,
            (_, a) => a is { Accepted: Piece.None, Counts: false, IsUndecided: true })
        .MustOn("PullFinal", "SECOND-PULL", "A second pull on a position already at torque, outside its visits and no re-torque, is recorded, does not count, and holds it.",
            (b, _) => b.Final, (_, a) => a is { Counts: false, IsUndecided: true, Witnessed: false })
        .MustOn("UseAsIsByTheDoer", "NOT-THE-DOER", "Never by the doer.", (_, _) => true, (b, a) => b == a)
        .MustOn("UseAsIsUnwritten", "WRITTEN", "For class A only with an attached written acceptance by the maker or a named engineer.", (_, _) => true, (b, a) => b == a)
        .MustOn("Open", "HOLD-STAYS", "A hold is cleared only by its decision.", (b, _) => b.IsUndecided, (_, a) => a.IsUndecided);
}
