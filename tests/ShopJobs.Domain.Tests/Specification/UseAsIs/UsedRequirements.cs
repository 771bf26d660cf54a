namespace ShopJobs.Domain.Tests.Specification.UseAsIs;

/// <summary>What the rules ask of use as is, each in its own words.</summary>
internal static class UsedRequirements
{
    private const string StandsIn = "Use as is stands in for the one failed piece of evidence it names, on the final record it names, never for a missing pull, stage or witness.";
    private const string Ends = "It ends at the next opening or pull.";

    public static Sheet<UsedState> WithRequirements(this Sheet<UsedState> sheet) => sheet
        .Must("A-PULL", StandsIn, (_, a) => a.Counts, (_, a) => a is { HandTight: true, Final: true })
        .Must("A-STAGE", StandsIn, (_, a) => a.Counts, (_, a) => a.Snug && !a.Lacks.HasFlag(Piece.Stage))
        .Must("A-WITNESS", StandsIn, (_, a) => a.Counts, (_, a) => a.Witnessed)
        .Must("THE-ONE-NAMED", StandsIn, (b, a) => b.Holds != a.Holds && b.Final && a.Final && b.Lacks == a.Lacks,
            (b, a) => IsOne(b.Holds ^ a.Holds) && (a.Accepted & ~b.Accepted & ~(b.Holds ^ a.Holds)) == Piece.None)
        .Must("EVERY-PIECE", StandsIn, (_, a) => a.Counts, (_, a) => (a.Lacks & ~a.Accepted) == Piece.None && a.Holds == Piece.None)
        .MustOn("Open", "ENDS-AT-OPENING", Ends, (b, _) => b.Accepted != Piece.None, (_, a) => a is { Accepted: Piece.None, Counts: false })
        .MustOn("PullFinal", "ENDS-AT-PULL", Ends, (b, _) => b.Accepted != Piece.None, (_, a) => a is { Accepted: Piece.None, Counts: false })
        .MustOn("PullFinal", "SECOND-PULL", "A second pull on top never counts.", (b, _) => b.Final, (_, a) => !a.Meets && !a.Counts)
        .MustOn("UseAsIsByTheDoer", "NOT-THE-DOER", "Never by the doer.", (_, _) => true, (b, a) => b == a)
        .MustOn("UseAsIsUnwritten", "WRITTEN", "For class A only with an attached written acceptance by the maker or a named engineer.", (_, _) => true, (b, a) => b == a)
        .MustOn("Open", "HOLD-STAYS", "A hold is cleared only by its decision.", (b, _) => b.Holds != Piece.None, (b, a) => b.Holds == a.Holds);

    private static bool IsOne(Piece pieces) => System.Numerics.BitOperations.PopCount((uint)pieces) == 1;
}
