namespace ShopJobs.Domain.Tests.Specification.Holds;

/// <summary>What may be decided on a held position.</summary>
internal enum Verdict
{
    UseAsIs,
    Rework,
    Replace,
}

/// <summary>What happens to nut and stud, and what the book makes of it. The doer does; the lead decides; a third confirms.</summary>
internal static class HeldActions
{
    public static readonly Verdict[] Verdicts = [Verdict.UseAsIs, Verdict.Rework, Verdict.Replace];

    public static Sheet<HeldState> WithActions(this Sheet<HeldState> sheet) => sheet
        .May("Open", _ => true, s => Opened(s).Told())
        .May("FitNew", s => s is { HandTight: false, Pulled: Pulled.No }, s => Fitted(s).Told())
        .May("HandTight", s => s.Pulled == Pulled.No, s => s with { HandTight = true })
        .May("Pull", MayPull, s => (s with { Pulled = Pulled.Good }).Told())
        .May("PullOver", MayPull, s => (s with { Pulled = Pulled.Over, Over = Hold.Standing, Stud = Hold.Standing }).Told())
        .May("ReportAgain", s => s is { Pulled: Pulled.Good, IsHeld: false, Stud: Hold.None, Said: Said.Nothing }, s => (s with { Twin = Hold.Standing, New = false }).Told())
        .May("Hold", s => s.Pressed == Hold.None, s => (s with { Pressed = Hold.Standing, New = s.New && s.IsHeld }).Told())
        .May("NewJob", _ => true, s => s)
        .May("VoidThePull", s => s is { Pulled: Pulled.Over, Over: Hold.Standing, Said: Said.Nothing }, s => s with { Pulled = Pulled.Voided })
        .May("SayASlip", s => s is { Pulled: Pulled.Over, Over: Hold.Standing, Said: Said.Nothing }, s => s with { Said = Said.Slip })
        .May("SayTheSamePull", s => s is { Twin: Hold.Standing, Said: Said.Nothing }, s => s with { Said = Said.SamePull })
        .May("ConfirmByTheDoer", s => s.Said != Said.Nothing, s => s)
        .May("ConfirmByASecond", s => s.Said != Said.Nothing, s => Confirmed(s).Told())
        .May("DecideByTheDoer", Verdicts, (s, _) => s.IsUndecided, (s, _) => s)
        .May("Decide", Verdicts, (s, _) => s.IsUndecided, (s, verdict) => Decided(s, verdict).Told())
        .May("DecideStudRework", s => s.Stud == Hold.Standing, s => s)
        .May("DecideStudReplace", s => s.Stud == Hold.Standing, s => (s with { Stud = Hold.Replace }).Told())
        .May("DecideStudUseAsIs", s => s.Stud == Hold.Standing, s => (s with { Stud = Hold.None }).Told());

    // What a pull does on a held position is the question of another specification.
    private static bool MayPull(HeldState s) => s is { HandTight: true, Pulled: Pulled.No, IsHeld: false, Stud: Hold.None };

    private static HeldState Opened(HeldState s) => s.Each(hold => hold switch
    {
        Hold.Standing => Hold.StandingOpened,
        Hold.Rework => Hold.None,
        _ => hold,
    }) with
    { HandTight = false, Pulled = Pulled.No, Said = Said.Nothing };

    private static HeldState Fitted(HeldState s) =>
        s.Each(hold => hold == Hold.Replace ? Hold.None : hold) with { HandTight = false, New = s.IsHeld };

    private static HeldState Decided(HeldState s, Verdict verdict)
    {
        var decided = s.Each(hold => hold switch
        {
            Hold.Standing => verdict switch
            {
                Verdict.UseAsIs => Hold.None,
                Verdict.Rework => Hold.Rework,
                _ => Hold.Replace,
            },
            Hold.StandingOpened => verdict == Verdict.Replace && !s.New ? Hold.Replace : Hold.None,
            _ => hold,
        });
        return decided with
        {
            Pulled = verdict == Verdict.UseAsIs && s is { Pulled: Pulled.Over, Over: Hold.Standing } ? Pulled.Used : s.Pulled,
            Said = s.Said == Said.SamePull ? Said.SamePull : Said.Nothing,
        };
    }

    // A confirmation lifts a hold that waits; one that was decided is carried out.
    private static HeldState Confirmed(HeldState s) => s.Said == Said.Slip
        ? s with { Pulled = Pulled.Good, Over = Lifted(s.Over), Stud = Lifted(s.Stud), Said = Said.Nothing }
        : s with { Twin = Lifted(s.Twin), Said = Said.Nothing };

    private static Hold Lifted(Hold hold) => hold == Hold.Standing ? Hold.None : hold;
}
