namespace ShopJobs.Domain.Tests.Specification.Joint;

/// <summary>Courses that must come to an end, and defects that a requirement must catch.</summary>
internal static class JointCourses
{
    public static Sheet<JointState> WithCourses(this Sheet<JointState> sheet) => sheet
        .Honest("DONE", "Two nuts, two stages, nothing special", s => s.All(nut => nut.Counts) && s.Past == Past.Nothing)
        .Honest("SHORT-REDONE", "A short pull, backed off and redone", s => s.All(nut => nut.Counts) && s.Past == Past.Short)
        .Honest("OVER-REWORKED", "Over the maximum, decided as rework, redone", s => s.All(nut => nut.Counts) && s.Past == Past.Over)
        .Honest("UNDO-CONFIRMED", "A pull taken back as never pulled, confirmed, then pulled", s => s.All(nut => nut.Counts) && s.Past == Past.NeverPulled)
        .Honest("LATE-DECIDED", "A late pull of an earlier cycle, decided, the joint redone", s => s.All(nut => nut.Counts) && s.Past == Past.Late);

    public static Sheet<JointState> WithDefects(this Sheet<JointState> sheet) => sheet
        .Defect("a final counts though the other nut isn't snug", "LOWER-STAGES", "Pull",
            (b, a) => a.One is { Final: Record.Failed } && b.One is { Sits: Sits.HandTight, Stop: Stop.None, Final: Record.None },
            (_, a) => a with { One = a.One with { Final = Record.Good, Stop = Stop.None } })
        .Defect("the second nut of the pattern may come first", "ORDER", "Pull",
            (b, a) => b.Two is { Sits: Sits.HandTight, Stop: Stop.None, Snug: Record.None } && a.Two.Snug == Record.Failed,
            (_, a) => a with { Two = a.Two with { Snug = Record.Good, Stop = Stop.None } })
        .Defect("a pull on an open nut counts", "HAND-TIGHT", "Pull",
            (b, a) => b.One is { Sits: Sits.Open, Snug: Record.None } && a.One.Snug == Record.Failed,
            (_, a) => a with { One = a.One with { Snug = Record.Good, Stop = Stop.None } })
        .Defect("UNDO, then a second click counts", "SECOND-PULL", "Pull",
            (b, a) => b.One is { Stop: Stop.Asked, Snug: Record.Good, Final: Record.None } && a.One.Final == Record.Failed,
            (_, a) => a with { One = a.One with { Final = Record.Good, Stop = Stop.None } })
        .Defect("a voided pull asks nothing", "VOID-ASKS", "VoidAsNeverPulled", (_, _) => true, (_, a) => a.Each(nut => nut with { Stop = Stop.None }))
        .Defect("the other nut's final stands on a voided lower stage", "VOID-REJUDGES", "VoidAsNeverPulled",
            (b, a) => b.Two.Final == Record.Good && a.Two.Final == Record.Failed,
            (b, a) => a with { Two = b.Two })
        .Defect("a late pull lands in the new cycle", "LATE-PULL", "LatePull",
            (b, _) => b.One.Sits == Sits.HandTight && b.One.Stop == Stop.None,
            (b, _) => b with { One = b.One with { Snug = Record.Good } })
        .Defect("a late HAND-TIGHT lands on a joint opened since", "LATE-HAND-TIGHT", "LateHandTight",
            (_, _) => true, (b, _) => b with { One = b.One with { Sits = Sits.HandTight } })
        .Defect("opening leaves the other nut's records", "OPEN-VOIDS", "Open",
            (b, _) => b.Two.IsPulled, (b, a) => a with { Two = b.Two })
        .Defect("opening clears a hold", "HOLD-STAYS", "Open", (b, _) => b.One.IsHeld, (_, a) => a with { One = a.One with { Stop = Stop.None } })
        .Defect("over the maximum counts", "OVER", "PullOver",
            (b, a) => b.One is { Sits: Sits.HandTight, Stop: Stop.None, Snug: Record.None } && a.One.Snug == Record.Failed,
            (_, a) => a with { One = a.One with { Snug = Record.Good, Stop = Stop.None } })
        .Defect("under the minimum counts", "SHORT", "PullShort",
            (b, a) => b.One is { Sits: Sits.HandTight, Stop: Stop.None, Snug: Record.None } && a.One.Snug == Record.Failed,
            (_, a) => a with { One = a.One with { Snug = Record.Good, Stop = Stop.None } })
        .Defect("hand-tight on a joint that nobody opened", "NOT-OPENED", "HandTight",
            (b, a) => b.One.Sits == Sits.AsFound && a.One.IsHeld, (_, a) => a with { One = a.One with { Sits = Sits.HandTight, Stop = Stop.None } });
}
