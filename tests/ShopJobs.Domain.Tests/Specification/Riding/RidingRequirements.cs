namespace ShopJobs.Domain.Tests.Specification.Riding;

/// <summary>What the rules ask of stud, pair and nut, each in its own words.</summary>
internal static class RidingRequirements
{
    private const string RidesOn = "What it rides on was, at its pull and is now, as found or counting itself, any cure named for it signed.";

    public static Sheet<RidingState> WithRequirements(this Sheet<RidingState> sheet) => sheet
        .Must("RIDES-AT-PULL", RidesOn,
            (b, a) => b.Nut.Pulled != Pulled.Good && a.Nut.Pulled == Pulled.Good,
            (b, _) => b.Stud.Sits == Sits.AsFound || (b.Stud is { Pulled: Pulled.Good, Cured: true }))
        .Must("RIDES-NOW", RidesOn,
            (_, a) => a.NutCounts,
            (_, a) => a.Stud is { Held: false } && (a.Stud.Sits == Sits.AsFound || a.Stud is { Pulled: Pulled.Good, Cured: true }))
        .MustOn("HandTightNut", "RIDES-BY-HAND", RidesOn,
            (b, _) => !b.Stud.Bears && b.Nut.Sits == Sits.Open,
            (_, a) => a.Nut.Sits == Sits.Open)
        .Must("PAIR-ON-HAND-TIGHT", "A temporary joint may ride on a hand-tight one.",
            (b, a) => b.Pair.Jammed != Pulled.Good && a.Pair.Jammed == Pulled.Good,
            (b, _) => b.Stud is { Sits: Sits.HandTight or Sits.AsFound, Held: false })
        .Must("PAIR-DRIVES", "Nut 1 run on until nut 2 will also have full thread, nut 2, jam; then drive.",
            (b, a) => b.Stud.Pulled != Pulled.Good && a.Stud.Pulled == Pulled.Good,
            (b, _) => b.Pair is { Jammed: Pulled.Good, Held: false })
        .MustOn("TakePairOff", "PAIR-OFF", "Taking a temporary joint off is no opening of what it rode on, voids nothing and moves no cycle.",
            (_, _) => true,
            (b, a) => b.Stud == a.Stud && b.Nut == a.Nut)
        .Must("SINGLE-USE", "Single-use: hand-tight only after fitted new.",
            (b, a) => b.Stud.Sits != Sits.HandTight && a.Stud.Sits == Sits.HandTight,
            (b, _) => b.Stud.Sits == Sits.New)
        .MustOn("DriveStud", "MINUTES", "A group may say within how many minutes of hand-tight or of its locker it must be done; late is held.",
            (b, _) => b.Stud.Late,
            (_, a) => a.Stud is { Held: true, Pulled: not Pulled.Good })
        .MustOn("DriveStud", "SECOND-DRIVE", "A second pull on top never counts.",
            (b, _) => b.Stud.Pulled != Pulled.No,
            (_, a) => a.Stud.Held && !a.Stud.Bears)
        .MustOn("OpenStud", "STUD-OPENS-NUT", "Opening the stud opens the nut, not the reverse.",
            (_, _) => true,
            (_, a) => a is { NutCounts: false, Nut: { Sits: Sits.Open, Pulled: Pulled.No }, Pair.IsOn: false })
        .MustOn("OpenNut", "NOT-THE-REVERSE", "Opening the stud opens the nut, not the reverse.",
            (_, _) => true,
            (b, a) => b.Stud == a.Stud)
        .Must("CURE", "Any cure named for it signed.",
            (b, a) => !b.Stud.Cured && a.Stud.Cured,
            (b, _) => b.Stud is { Pulled: Pulled.Good, Held: false })
        .MustOn("OpenStud", "OPEN-STUD-VOIDS", "Opening a joint voids its records from that instant, everywhere.",
            (b, _) => b.Stud.Pulled != Pulled.No,
            (_, a) => a.Stud is { Pulled: Pulled.No, Cured: false, Sits: Sits.Open })
        .Must("HELD-STAYS", "A hold is cleared only by its decision.",
            (b, _) => b.Stud.Held || b.Nut.Held || b.Pair.Held,
            (b, a) => (a.Stud.Held || !b.Stud.Held) && (a.Nut.Held || !b.Nut.Held) && (a.Pair.Held || !b.Pair.Held));
}
