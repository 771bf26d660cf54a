namespace ShopJobs.Domain.Tests.Specification.Joint;

/// <summary>What the rules ask of the joint, each in its own words.</summary>
internal static class JointRequirements
{
    public static Sheet<JointState> WithRequirements(this Sheet<JointState> sheet) => sheet
        .Must("LOWER-STAGES", "A final stage before its lower stages does not count.",
            (b, a) => Begins(b, a, Stage.Final),
            (b, _) => b.All(nut => nut.Snug == Record.Good))
        .Must("ORDER", "All stages in order, wrench valid, condition right.",
            (b, a) => b.Two.At(Stage.Snug) != Record.Good && a.Two.At(Stage.Snug) == Record.Good,
            (b, _) => b.One.Snug == Record.Good)
        .Must("HAND-TIGHT", "A position counts when every visit of its final stage since its last opening has a record that met that stage's own evidence.",
            (b, a) => Begins(b, a, Stage.Snug) || Begins(b, a, Stage.Final),
            (b, a) => JointActions.Nuts.All(nut => !(Begins(b[nut], a[nut], Stage.Snug) || Begins(b[nut], a[nut], Stage.Final)) || b[nut].Sits == Sits.HandTight))
        .Must("SECOND-PULL", "A voided pull may have been pulled: it asks, and a second pull on top never counts.",
            (_, a) => a.Any(nut => nut.Twice),
            (_, a) => a.All(nut => !nut.Twice || !nut.Counts))
        .Must("VOID-ASKS", "A voided pull may have been pulled: it asks.",
            (b, a) => Falls(b, a, Stop.BackOff) || Falls(b, a, Stop.Asked) || Falls(b, a, Stop.None),
            (b, a) => !Falls(b, a, Stop.None))
        .MustOn("VoidAsNeverPulled", "VOID-REJUDGES", "Voiding or restating re-judges every sign-off that rested on the old entry and voids its witness.",
            (b, a) => b.Any(nut => nut.Final == Record.Good) && a.Any(nut => nut.Snug == Record.None),
            (_, a) => a.All(nut => nut.Final != Record.Good))
        .MustOn("LatePull", "LATE-PULL", "A report counts only in the cycle and session it was made in.",
            (_, _) => true,
            (b, a) => JointActions.Nuts.All(nut => b[nut].Final == a[nut].Final && b[nut].Snug == a[nut].Snug) && a.Any(nut => nut.IsHeld))
        .MustOn("LateHandTight", "LATE-HAND-TIGHT", "A report counts only in the cycle and session it was made in.",
            (_, _) => true,
            (b, a) => JointActions.Nuts.All(nut => b[nut].Sits == a[nut].Sits))
        .MustOn("Open", "OPEN-VOIDS", "Opening a joint voids its records from that instant, everywhere.",
            (b, _) => b.Any(nut => nut.IsPulled),
            (_, a) => a.All(nut => nut is { IsPulled: false, Counts: false, Sits: Sits.Open }))
        .MustOn("Open", "HOLD-STAYS", "A hold is cleared only by its decision: opening, voiding, undo, correction, a new job or a revised procedure leave it standing.",
            (b, _) => b.Any(nut => nut.IsHeld),
            (b, a) => JointActions.Nuts.All(nut => !b[nut].IsHeld || a[nut].IsHeld))
        .MustOn("PullOver", "OVER", "Over the permitted maximum holds the position.",
            (_, _) => true,
            (b, a) => !BeginsAny(b, a) && a.Any(nut => nut.Stop == Stop.Held))
        .MustOn("PullShort", "SHORT", "A record is accepted on the number as entered: min <= value <= max, both ends inside.",
            (_, _) => true,
            (b, a) => !BeginsAny(b, a) && a.Any(nut => nut.Stop is Stop.BackOff or Stop.Held))
        .MustOn("HandTight", "NOT-OPENED", "The book must never say hand-tight while the nut is tight.",
            (b, a) => b.Any(nut => nut.IsPulled || nut.Sits == Sits.AsFound),
            (b, a) => JointActions.Nuts.All(nut => a[nut].Sits != Sits.HandTight || b[nut].Sits != Sits.AsFound));

    private static bool Begins(JointState b, JointState a, Stage stage) => JointActions.Nuts.Any(nut => Begins(b[nut], a[nut], stage));

    private static bool Begins(Nut b, Nut a, Stage stage) => b.At(stage) != Record.Good && a.At(stage) == Record.Good;

    private static bool BeginsAny(JointState b, JointState a) => Begins(b, a, Stage.Snug) || Begins(b, a, Stage.Final);

    private static bool Falls(JointState b, JointState a, Stop stop) => JointActions.Nuts.Any(nut =>
        a[nut].Sits == Sits.HandTight && a[nut].Stop == stop
        && ((b[nut].Snug == Record.Good && a[nut].Snug == Record.None) || (b[nut].Final == Record.Good && a[nut].Final == Record.None)));
}
