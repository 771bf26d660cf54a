namespace ShopJobs.Domain.Tests.Specification.Before;

/// <summary>What two people do, and what the book makes of it.</summary>
internal static class BeforeActions
{
    public static Sheet<BeforeState> WithActions(this Sheet<BeforeState> sheet) => sheet
        .May("OpenFirst", _ => true, s => s.First == Bolt.Open ? s : s with
        {
            First = Bolt.Open,
            FirstSigned = Fallen(s.FirstSigned),
            SecondSigned = Fallen(s.SecondSigned),
        })
        .May("HandTightFirst", s => s.First == Bolt.Open, s => s with { First = Bolt.HandTight })
        .May("PullFirst", s => s.First == Bolt.HandTight, s => s with { First = Bolt.Good })
        .May("SignFirst", _ => true, s => s.First == Bolt.Good && s.FirstSigned != Signature.Stands ? s with { FirstSigned = Signature.Stands } : s)
        .May("OpenSecond", s => s.Second != Bolt.Held, s => s.Second == Bolt.Open ? s : s with
        {
            Second = Bolt.Open,
            FirstSigned = s.Second == Bolt.AsFound ? s.FirstSigned : Fallen(s.FirstSigned),
            SecondSigned = Fallen(s.SecondSigned),
        })
        .May("HandTightSecond", s => s.Second == Bolt.Open, s => s with { Second = Bolt.HandTight })
        .May("PullSecond", s => s.Second == Bolt.HandTight, s => s with { Second = s.FirstSigned == Signature.Stands ? Bolt.Good : Bolt.Held })
        .May("SignSecond", _ => true, s => s is { Second: Bolt.Good, FirstSigned: Signature.Stands } && s.SecondSigned != Signature.Stands
            ? s with { SecondSigned = Signature.Stands }
            : s);

    private static Signature Fallen(Signature signature) => signature == Signature.Stands ? Signature.Fell : signature;
}
