namespace ShopJobs.Domain.Tests.Specification.UseAsIs;

/// <summary>What happens to the nut, and what the book makes of it.</summary>
internal static class UsedActions
{
    public static readonly Piece[] Values = [Piece.None, Piece.Value, Piece.Tool, Piece.Value | Piece.Tool];

    public static Sheet<UsedState> WithActions(this Sheet<UsedState> sheet) => sheet
        .May("Open", _ => true, s => UsedState.Open with { Holds = s.IsUndecided ? Piece.Opened : Piece.None })
        .May("HandTight", s => s is { HandTight: false }, s => s with { HandTight = true })
        .May("PullSnug", s => s is { HandTight: true, Snug: false, Final: false, Holds: Piece.None }, s => s with { Snug = true })
        .May("PullSnugOver", s => s is { HandTight: true, Snug: false, Final: false, Holds: Piece.None }, s => s with { Holds = Piece.Lower })
        .May("PullFinal", Values, (s, _) => s is { HandTight: true, Holds: Piece.None }, (s, value) => Pulled(s, value).Told())
        .May("Hold", s => !s.Holds.HasFlag(Piece.Pressed), s => (s with { Holds = s.Holds | Piece.Pressed }).Told())
        .May("Witness", s => s is { Final: true, Witnessed: false, Holds: Piece.None }, s => (s with { Witnessed = s.Meets }).Told())
        .May("UseAsIs", s => s.IsUndecided, s => Used(s).Told())
        .May("UseAsIsByTheDoer", s => s.IsUndecided, s => s)
        .May("UseAsIsUnwritten", s => s.IsUndecided, s => s)
        .May("Rework", s => s.IsUndecided, s => (s with { Holds = s.Holds == Piece.Opened ? Piece.None : Piece.Redo }).Told());

    // A pull on top ends what was used as is: the final record is this one now.
    private static UsedState Pulled(UsedState s, Piece value)
    {
        var lacks = value | (s.Final ? Piece.Second : Piece.None) | (s.Snug ? Piece.None : Piece.Stage);
        return s with { Final = true, Lacks = lacks, Accepted = Piece.None, Holds = lacks, Witnessed = false };
    }

    // It accepts the final record with all that it fails, never a missing stage and never a record of a lower one. What was
    // decided before as rework still waits for that.
    private static UsedState Used(UsedState s)
    {
        var failed = s.Holds & Piece.Evidence;
        return failed.HasFlag(Piece.Stage) || s.Holds.HasFlag(Piece.Lower)
            ? s
            : s with { Holds = s.Holds & Piece.Redo, Accepted = s.Accepted | failed };
    }
}
