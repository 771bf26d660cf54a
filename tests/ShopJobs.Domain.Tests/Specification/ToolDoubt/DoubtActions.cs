namespace ShopJobs.Domain.Tests.Specification.ToolDoubt;

/// <summary>A position that the wrench or its pair tightened.</summary>
internal enum On
{
    Nut,
    Stud,
}

/// <summary>What happens to the wrench and at the car, and what the books make of it.</summary>
internal static class DoubtActions
{
    public static readonly On[] Positions = [On.Nut, On.Stud];

    public static Sheet<DoubtState> WithActions(this Sheet<DoubtState> sheet) => sheet
        .May("PullNut", s => s.Nut == Stands.Nowhere, s => (s with { Nut = s.Wrench == Wrench.Good ? Stands.OnIt : Stands.Failed }).Told())
        .May("PullNutWithTheOther", s => s.Nut == Stands.Nowhere, s => (s with { Nut = Stands.OnTheOther }).Told())
        .May("Jam", s => s is { Pair: Stands.Nowhere, Stud: Stands.Nowhere, Wrench: Wrench.Good }, s => s with { Pair = Stands.OnIt })
        .May("JamWithTheOther", s => s is { Pair: Stands.Nowhere, Stud: Stands.Nowhere }, s => s with { Pair = Stands.OnTheOther })
        .May("DriveWithTheOther", s => s.Stud == Stands.Nowhere && DoubtState.Counts(s.Pair), s => s with { Stud = s.Pair })
        .May("TakePairOff", s => s.Pair != Stands.Nowhere, s => s with { Pair = Stands.Nowhere })
        .May("OpenNut", s => s.Nut != Stands.Nowhere, s => (s with { Nut = Stands.Nowhere, Signed = false }).Told())
        .May("OpenStud", s => s.Stud != Stands.Nowhere, s => s with { Stud = Stands.Nowhere, Pair = Stands.Nowhere })
        .May("Sign", s => !s.Signed, s => (s with { Signed = DoubtState.Counts(s.Nut) }).Told())
        .May("DayPasses", s => s is { Wrench: Wrench.Good, Doubt: Doubt.None }, s => s with { Wrench = Wrench.Overdue })
        .May("DoubtByHand", s => s is { Doubt: Doubt.None, Wrench: Wrench.Good }, s => (s.Each(InDoubt) with { Doubt = Doubt.ByHand, Wrench = Wrench.OutOfUse }).Told())
        .May("FoundBad", s => s is { Doubt: Doubt.None, Wrench: Wrench.Good }, s => (s.Each(InDoubt) with { Doubt = Doubt.ByReadings, Wrench = Wrench.OutOfUse }).Told())
        .May("FoundBadAndAdjusted", s => s.Doubt == Doubt.None,
            s => (s.Each(InDoubt).Each(Before) with { Doubt = Doubt.ByReadings, Wrench = Wrench.Good, Since = Since.Adjusted }).Told())
        .May("Calibrate", _ => true, s => (s.Each(Before) with { Wrench = Wrench.Good, Since = s is { Doubt: not Doubt.None, Since: Since.Nothing } ? Since.FoundGood : s.Since }).Told())
        .May("LeadFindsItGood", s => s.Doubt != Doubt.None, s => s.Doubt == Doubt.ByHand || s.Since == Since.FoundGood ? Lifted(s) : s)
        .May("ReadAgain", s => s.Doubt == Doubt.ByReadings, s => s.Since == Since.Adjusted ? s : Lifted(s))
        .May("DecideByAWorker", Positions, (s, on) => DoubtState.IsDoubted(At(s, on)), (s, _) => s)
        .May("DecideByAnother", Positions, (s, on) => DoubtState.IsDoubted(At(s, on)),
            (s, on) => (on == On.Nut ? s with { Nut = Freed(s.Nut) } : s with { Stud = Freed(s.Stud) }).Told());

    public static Stands At(DoubtState s, On on) => on == On.Nut ? s.Nut : s.Stud;

    private static Stands InDoubt(Stands position) => position == Stands.OnIt ? Stands.InDoubt : position;

    // The wrench has good readings as left: what was tightened until now is before them.
    private static Stands Before(Stands position) => position switch
    {
        Stands.OnIt => Stands.OnItBefore,
        Stands.InDoubt => Stands.InDoubtBefore,
        _ => position,
    };

    private static Stands Freed(Stands position) => position switch
    {
        Stands.InDoubt => Stands.OnIt,
        Stands.InDoubtBefore => Stands.OnItBefore,
        _ => position,
    };

    private static DoubtState Lifted(DoubtState s) =>
        (s.Each(Freed) with { Doubt = Doubt.None, Since = Since.Nothing, Wrench = Wrench.Good }).Told();
}
