namespace ShopJobs.Domain.Tests.Specification.UseAsIs;

/// <summary>What happens to the nut, and what the book makes of it.</summary>
internal static class UsedActions
{
    public static readonly Piece[] Values = [Piece.None, Piece.Value, Piece.Tool, Piece.Value | Piece.Tool];

    public static readonly Piece[] Named = [Piece.Value, Piece.Tool, Piece.Stage, Piece.Second, Piece.Pressed];

    public static Sheet<UsedState> WithActions(this Sheet<UsedState> sheet, params Piece[] values) => sheet
        .May("Open", _ => true, s => UsedState.Open with { Holds = s.Holds })
        .May("HandTight", s => s is { HandTight: false }, s => s with { HandTight = true })
        .May("PullSnug", s => s is { HandTight: true, Snug: false, Final: false, Holds: Piece.None }, s => s with { Snug = true })
        .May("PullFinal", values, (s, _) => s.HandTight && (s.Final || s.Holds == Piece.None), (s, value) => Pulled(s, value).Told())
        .May("Hold", _ => true, s => (s with { Holds = s.Holds | Piece.Pressed }).Told())
        .May("Witness", s => s is { Final: true, Witnessed: false, Holds: Piece.None }, s => (s with { Witnessed = s.Meets }).Told())
        .May("UseAsIs", Named, (s, piece) => s.Holds.HasFlag(piece), (s, piece) => Used(s, piece).Told())
        .May("UseAsIsByTheDoer", Named, (s, piece) => s.Holds.HasFlag(piece), (s, _) => s)
        .May("UseAsIsUnwritten", Named, (s, piece) => s.Holds.HasFlag(piece), (s, _) => s);

    private static UsedState Pulled(UsedState s, Piece value)
    {
        if (s.Final)
        {
            return s with { Lacks = s.Lacks | Piece.Second, Accepted = Piece.None, Holds = s.Holds | Piece.Second, Witnessed = false };
        }

        var lacks = value | (s.Snug ? Piece.None : Piece.Stage);
        return s with { Final = true, Lacks = lacks, Holds = s.Holds | lacks };
    }

    private static UsedState Used(UsedState s, Piece piece) => s with
    {
        Holds = s.Holds & ~piece,
        Accepted = s.Accepted | (piece & s.Lacks & (Piece.Value | Piece.Tool)),
    };
}
