using System.Numerics;

namespace ShopJobs.Domain.Tests.Specification.UseAsIs;

/// <summary>What happens to the nut, and what the book makes of it.</summary>
internal static class UsedActions
{
    public static readonly Piece[] Values = [Piece.None, Piece.Value, Piece.Tool, Piece.Value | Piece.Tool];

    public static Sheet<UsedState> WithActions(this Sheet<UsedState> sheet) => sheet
        .May("Open", _ => true, s => UsedState.Open with { Holds = s.IsUndecided ? Piece.Opened : Piece.None })
        .May("HandTight", s => s is { HandTight: false }, s => s with { HandTight = true })
        .May("PullSnug", s => s is { HandTight: true, Snug: false, Final: false, Holds: Piece.None }, s => s with { Snug = true })
        .May("PullFinal", Values, (s, _) => s is { HandTight: true, Holds: Piece.None }, (s, value) => Pulled(s, value).Told())
        .May("Hold", s => !s.Holds.HasFlag(Piece.Pressed), s => (s with { Holds = s.Holds | Piece.Pressed }).Told())
        .May("Witness", s => s is { Final: true, Witnessed: false, Holds: Piece.None }, s => (s with { Witnessed = s.Meets }).Told())
        .May("UseAsIs", s => s.IsUndecided, s => Used(s).Told())
        .May("UseAsIsByTheDoer", s => s.IsUndecided, s => s)
        .May("UseAsIsUnwritten", s => s.IsUndecided, s => s)
        .May("Rework", s => s.IsUndecided, s => (s with { Holds = s.Holds == Piece.Opened ? Piece.None : Piece.Redo }).Told());

    // A pull on top ends what was used as is: what that stood in for is failed again.
    private static UsedState Pulled(UsedState s, Piece value)
    {
        var lacks = s.Final ? s.Lacks | value | Piece.Second : value | (s.Snug ? Piece.None : Piece.Stage);
        return s with { Final = true, Lacks = lacks, Accepted = Piece.None, Holds = lacks, Witnessed = false };
    }

    // It names one failed piece, and never a missing stage.
    private static UsedState Used(UsedState s)
    {
        var failed = s.Holds & Piece.Evidence;
        return failed.HasFlag(Piece.Stage) || BitOperations.PopCount((uint)failed) > 1 || s.Holds.HasFlag(Piece.Redo)
            ? s
            : s with { Holds = Piece.None, Accepted = s.Accepted | failed };
    }
}
