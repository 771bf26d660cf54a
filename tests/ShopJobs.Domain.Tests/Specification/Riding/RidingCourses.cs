namespace ShopJobs.Domain.Tests.Specification.Riding;

/// <summary>Courses that must come to an end, and defects that a requirement must catch.</summary>
internal static class RidingCourses
{
    public static Sheet<RidingState> WithCourses(this Sheet<RidingState> sheet) => sheet
        .Honest("AS-FOUND-STUD", "The wheel off and on, on the studs the car came with", s => s.NutCounts && s.Stud.Sits == Sits.AsFound)
        .Honest("STUD-THEN-WHEEL", "Jam pair on a hand-tight stud, driven, pair off, cure, wheel on", s => s.NutCounts && s.Stud.Pulled == Pulled.Good && !s.Pair.IsOn)
        .Honest("PAIR-ON-HAND-TIGHT-STUD", "The pair jammed on a stud run down by hand", s => s.Pair.Jammed == Pulled.Good && s.Stud is { Sits: Sits.HandTight, Pulled: Pulled.No });

    public static Sheet<RidingState> WithDefects(this Sheet<RidingState> sheet) => sheet
        .Defect("wheel nuts pulled on a stud whose cure isn't signed", "RIDES-AT-PULL", "PullNut",
            (b, a) => b.Stud is { Sits: Sits.HandTight, Pulled: Pulled.No } && a.Nut.Pulled == Pulled.Failed,
            (_, a) => a with { Nut = a.Nut with { Pulled = Pulled.Good, Held = false } })
        .Defect("the nut goes on counting while its stud is held", "RIDES-NOW", "HoldStud",
            (b, _) => b.NutCounts, (_, a) => a with { NutCounts = true })
        .Defect("a nut is hand-tight on an open stud", "RIDES-BY-HAND", "HandTightNut",
            (b, a) => b.Stud.Sits == Sits.Open && a.Nut.Sits == Sits.Open, (_, a) => a with { Nut = a.Nut with { Sits = Sits.HandTight } })
        .Defect("the pair is jammed on an open stud", "PAIR-ON-HAND-TIGHT", "Jam",
            (b, a) => b.Stud.Sits == Sits.Open && a.Pair.Jammed == Pulled.Failed, (_, a) => a with { Pair = new Pair(Pulled.Good, false) })
        .Defect("a stud driven without its pair counts", "PAIR-DRIVES", "DriveStud",
            (b, a) => b.Stud is { Sits: Sits.HandTight, Pulled: Pulled.No } && !b.Pair.IsOn && a.Stud.Held,
            (b, a) => a with { Stud = b.Stud with { Pulled = Pulled.Good } })
        .Defect("taking the pair off opens the stud", "PAIR-OFF", "TakePairOff",
            (b, _) => b.Stud.Pulled == Pulled.Good, (_, a) => a with { Stud = new Stud(Sits.Open, Pulled.No, a.Stud.Held, false, false) })
        .Defect("a used stud is run down again", "SINGLE-USE", "HandTightStud",
            (b, _) => b.Stud is { Sits: Sits.Open, Pulled: Pulled.No }, (_, a) => a with { Stud = a.Stud with { Sits = Sits.HandTight } })
        .Defect("a stud at hand-tight for three months, then driven, counts", "MINUTES", "DriveStud",
            (b, _) => b.Stud is { Late: true, Held: false, Pulled: Pulled.No } && b.Pair is { Jammed: Pulled.Good, Held: false },
            (b, a) => a with { Stud = b.Stud with { Pulled = Pulled.Good } })
        .Defect("a second drive counts", "SECOND-DRIVE", "DriveStud",
            (b, _) => b.Stud is { Pulled: Pulled.Good, Held: false }, (b, _) => b)
        .Defect("opening the stud leaves the nut", "STUD-OPENS-NUT", "OpenStud",
            (b, _) => b.Nut.Sits == Sits.HandTight, (b, a) => a with { Nut = b.Nut })
        .Defect("opening the nut opens the stud", "NOT-THE-REVERSE", "OpenNut",
            (_, _) => true, (_, a) => a with { Stud = a.Stud with { Sits = Sits.Open } })
        .Defect("the cure is signed for a stud that wasn't driven", "CURE", "SignCure",
            (b, _) => b.Stud is { Sits: Sits.HandTight, Pulled: Pulled.No }, (_, a) => a with { Stud = a.Stud with { Cured = true } })
        .Defect("an opened stud keeps its cure", "OPEN-STUD-VOIDS", "OpenStud",
            (b, _) => b.Stud.Cured, (_, a) => a with { Stud = a.Stud with { Cured = true } })
        .Defect("opening the stud clears its hold", "HELD-STAYS", "OpenStud",
            (b, _) => b.Stud.Held, (_, a) => a with { Stud = a.Stud with { Held = false } });
}
