using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.SecondPersons;

/// <summary>What Ann did for Bob.</summary>
internal enum Tie
{
    None,
    Enrolled,
    GaveRight,
    ResetPin,
}

/// <summary>Who did the work and who asks to be the second person for him.</summary>
internal readonly record struct Pair(People Doer, People Second)
{
    public static readonly Pair[] All = [.. from doer in Persons.Each from second in Persons.Each select new Pair(doer, second)];

    public override string ToString() => $"{Second} for {Doer}";
}

/// <summary>A shop of two or three in which Ann may have enrolled Bob, given him his right or reset his PIN.</summary>
/// <param name="Third">Cy works here.</param>
/// <param name="Confirmed">A third confirmed Bob since.</param>
/// <param name="Shown">Release and summary say that the second person is tied to the first.</param>
internal readonly record struct TiedPair(bool Third, Tie Tie, bool Confirmed, bool Shown, Pair Asked, bool Granted)
{
    public static readonly Tie[] Ties = [Tie.Enrolled, Tie.GaveRight, Tie.ResetPin];

    public bool Tied(Pair pair) => Tie != Tie.None && !Confirmed && pair is { Doer: People.Ann, Second: People.Bob };

    public TiedPair Bind(Tie tie) => Told() with { Tie = tie, Confirmed = false };

    public TiedPair Confirm(People person) => person == People.Cy ? Told() with { Confirmed = true } : Told();

    public TiedPair Ask(Pair pair) => this with
    {
        Asked = pair,
        Granted = pair.Doer != pair.Second && !(Third && Tied(pair)),
        Shown = pair.Doer != pair.Second && !Third && Tied(pair),
    };

    public TiedPair Changes() => Told() with { Third = !Third };

    private TiedPair Told() => this with { Asked = default, Granted = false, Shown = false };
}
