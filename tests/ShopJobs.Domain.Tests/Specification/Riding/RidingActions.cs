namespace ShopJobs.Domain.Tests.Specification.Riding;

/// <summary>What people do at stud, pair and nut, and what the book makes of it.</summary>
internal static class RidingActions
{
    /// <param name="sheet">The specification that they are added to.</param>
    /// <param name="minutes">True where the group says within how many minutes the stud must be driven.</param>
    public static Sheet<RidingState> WithActions(this Sheet<RidingState> sheet, bool minutes = true)
    {
        sheet
            .May("OpenStud", _ => true, s => StudOpened(s).Told())
            .May("FitNewStud", _ => true, s => Fitted(s).Told())
            .May("HandTightStud", _ => true, s => (s with { Stud = ByHand(s.Stud) }).Told())
            .May("Jam", s => s.Nut.Sits == Sits.Open, s => (s with { Pair = Jammed(s) }).Told())
            .May("DriveStud", _ => true, s => (s with { Stud = Driven(s) }).Told())
            .May("TakePairOff", s => s.Pair.IsOn, s => (s with { Pair = s.Pair with { Jammed = Pulled.No } }).Told())
            .May("SignCure", _ => true, s => (s with { Stud = s.Stud with { Cured = s.Stud.Cured || s.Stud is { Pulled: Pulled.Good, Held: false } } }).Told())
            .May("HoldStud", _ => true, s => (s with { Stud = s.Stud with { Held = true } }).Told())
            .May("OpenNut", s => !s.Pair.IsOn, s => (s with { Nut = s.Nut with { Sits = Sits.Open, Pulled = Pulled.No } }).Told())
            .May("HandTightNut", s => !s.Pair.IsOn, s => (s with { Nut = ByHand(s) }).Told())
            .May("PullNut", s => !s.Pair.IsOn, s => (s with { Nut = NutPulled(s) }).Told());
        return minutes
            ? sheet.May("MinutesPass", s => s.Stud is { Sits: Sits.HandTight, Pulled: Pulled.No, Late: false }, s => s with { Stud = s.Stud with { Late = true } })
            : sheet;
    }

    private static RidingState StudOpened(RidingState s) => s with
    {
        Stud = new Stud(Sits.Open, Pulled.No, s.Stud.Held, Cured: false, Late: false),
        Pair = s.Pair with { Jammed = Pulled.No },
        Nut = s.Nut with { Sits = Sits.Open, Pulled = Pulled.No },
    };

    // New hardware on a position that isn't open means that it was opened.
    private static RidingState Fitted(RidingState s)
    {
        var open = s.Stud is { Sits: Sits.Open or Sits.New, Pulled: Pulled.No } ? s : StudOpened(s);
        return open with { Stud = open.Stud with { Sits = Sits.New } };
    }

    private static Stud ByHand(Stud stud) => stud switch
    {
        { Sits: Sits.AsFound } or { Pulled: not Pulled.No } => stud with { Held = true },
        { Sits: Sits.New } => stud with { Sits = Sits.HandTight },
        _ => stud,
    };

    private static Pair Jammed(RidingState s)
    {
        var bears = s.Stud is { Held: false, Sits: Sits.AsFound or Sits.HandTight, Pulled: not Pulled.Failed };
        return bears && s.Pair is { IsOn: false, Held: false } ? new Pair(Pulled.Good, false) : new Pair(Pulled.Failed, true);
    }

    private static Stud Driven(RidingState s) =>
        s.Stud is { Sits: Sits.HandTight, Pulled: Pulled.No, Held: false, Late: false } && s.Pair is { Jammed: Pulled.Good, Held: false }
            ? s.Stud with { Pulled = Pulled.Good }
            : s.Stud with { Pulled = Pulled.Failed, Held = true };

    private static Rider ByHand(RidingState s) => s.Nut switch
    {
        { Sits: Sits.AsFound } or { Pulled: not Pulled.No } => s.Nut with { Held = true },
        { Sits: Sits.Open } when s.Stud.Bears => s.Nut with { Sits = Sits.HandTight },
        _ => s.Nut,
    };

    private static Rider NutPulled(RidingState s) =>
        s.Nut is { Sits: Sits.HandTight, Pulled: Pulled.No, Held: false } && s.Stud.Bears
            ? s.Nut with { Pulled = Pulled.Good }
            : s.Nut with { Pulled = Pulled.Failed, Held = true };
}
