namespace ShopJobs.Domain.Tests.Specification.Joint;

/// <summary>What people do at the joint, and what the book makes of it.</summary>
internal static class JointActions
{
    public static readonly int[] Nuts = [1, 2];

    public static readonly Cell[] Cells = [new(1, Stage.Snug), new(2, Stage.Snug), new(1, Stage.Final), new(2, Stage.Final)];

    /// <param name="sheet">The specification that they are added to.</param>
    /// <param name="past">True where what happened before is kept for the courses; without it the space is smaller.</param>
    public static Sheet<JointState> WithActions(this Sheet<JointState> sheet, bool past) => sheet
        .May("Open", _ => true, Opened)
        .May("HandTight", Nuts, (s, nut) => s[nut].Stop is Stop.None or Stop.HeldOpened, (s, nut) => s.With(nut, ByHand(s[nut])))
        .May("LateHandTight", Nuts, (s, nut) => s[nut] is { Sits: Sits.Open, IsPulled: false, Stop: Stop.None or Stop.HeldOpened }, (s, _) => s)
        .May("Pull", Cells, MayPull, (s, cell) => Pulled(s, cell, Record.Good))
        .May("PullShort", Cells, MayPull, (s, cell) => Seen(Pulled(s, cell, Record.Failed, isShort: true), past, Past.Short))
        .May("PullOver", Cells, MayPull, (s, cell) => Seen(Pulled(s, cell, Record.Failed), past, Past.Over))
        .May("LatePull", Nuts, (s, nut) => s[nut] is { Sits: not Sits.AsFound, IsPulled: false }, (s, nut) => Seen(s.With(nut, s[nut].Hold()), past, Past.Late))
        .May("VoidAsPulled", Nuts, HasNewest, (s, nut) => Voided(s, nut, Stop.BackOff))
        .May("VoidAsNeverPulled", Nuts, HasNewest, (s, nut) => Voided(s, nut, Stop.Asked))
        .May("ConfirmNeverPulled", Nuts, (s, nut) => s[nut].Stop == Stop.Asked, (s, nut) => Seen(s.With(nut, Confirmed(s[nut])), past, Past.NeverPulled))
        .May("DecideRework", Nuts, (s, nut) => s[nut].IsHeld, (s, nut) => s.With(nut, s[nut] with { Stop = s[nut].Stop == Stop.Held ? Stop.BackOff : Stop.None }));

    private static JointState Seen(JointState s, bool past, Past what) => past ? s.Saw(what) : s;

    private static JointState Opened(JointState s) => s.Each(nut => new Nut(
        Sits.Open, Record.None, Record.None, nut.IsHeld ? Stop.HeldOpened : Stop.None, Twice: false));

    private static Nut ByHand(Nut nut) => nut switch
    {
        { Sits: Sits.AsFound } or { IsPulled: true } => nut.Hold(),
        _ => nut with { Sits = Sits.HandTight },
    };

    // What a pull on one nut is worth while the other is held or to be backed off, no rule says.
    private static bool MayPull(JointState s, Cell cell) =>
        s[3 - cell.Nut] is var other && !other.IsHeld && !(other.Stop == Stop.BackOff && other.At(cell.Stage) == Record.Good);

    private static JointState Pulled(JointState s, Cell cell, Record value, bool isShort = false)
    {
        var nut = s[cell.Nut];
        var asked = nut.Stop == Stop.Asked && nut.At(cell.Stage) == Record.None;
        var second = nut.At(cell.Stage) != Record.None || (cell.Stage == Stage.Snug && nut.Final != Record.None);
        var inOrder = cell.Nut == 1 || s.One.At(cell.Stage) == Record.Good;
        var lower = cell.Stage == Stage.Snug || s.All(other => other.Snug == Record.Good);
        var fits = nut is { Sits: Sits.HandTight, Stop: Stop.None } && !second && inOrder && lower;
        var pulled = (nut with { Twice = nut.Twice || second || asked }).With(cell.Stage, fits ? value : Record.Failed);
        return s.With(cell.Nut, !fits ? pulled.Hold()
            : value == Record.Good ? pulled
            : isShort ? pulled with { Stop = Stop.BackOff }
            : pulled.Hold());
    }

    private static bool HasNewest(JointState s, int nut) =>
        s[nut] is { Stop: Stop.None } pulled && (pulled.Final == Record.Good || pulled is { Final: Record.None, Snug: Record.Good });

    // Where a lower stage is voided, every final that was pulled on it fell with it, on the other nut too.
    private static JointState Voided(JointState s, int nut, Stop stop)
    {
        var final = s[nut].Final == Record.Good;
        var voided = s.With(nut, s[nut].With(final ? Stage.Final : Stage.Snug, Record.None) with { Stop = stop });
        return final ? voided : voided.Each(other => other.Final == Record.Good ? other with { Final = Record.Failed } : other);
    }

    private static Nut Confirmed(Nut nut) => nut with { Stop = Stop.None };
}
