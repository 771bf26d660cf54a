namespace ShopJobs.Domain.Tests.Specification.Riding;

/// <summary>How the stud or the nut sits.</summary>
internal enum Sits
{
    AsFound,
    Open,
    New,
    HandTight,
}

/// <summary>A pull since the position was last opened.</summary>
internal enum Pulled
{
    No,
    Good,
    Failed,
}

/// <summary>A single-use stud. <c>Cured</c>: the step that waits for its cure is signed; <c>Late</c>: past the minutes of its locker.</summary>
internal readonly record struct Stud(Sits Sits, Pulled Pulled, bool Held, bool Cured, bool Late)
{
    /// <summary>Something may stand on it: as found, or counting with its cure signed.</summary>
    public bool Bears => !Held && (Sits == Sits.AsFound || (Pulled == Pulled.Good && Cured));
}

/// <summary>The pair of jam nuts that drives the stud, taken off before anything else goes on.</summary>
internal readonly record struct Pair(Pulled Jammed, bool Held)
{
    public bool IsOn => Jammed != Pulled.No;
}

/// <summary>The wheel nut that rides on the stud.</summary>
internal readonly record struct Rider(Sits Sits, Pulled Pulled, bool Held);

/// <summary>A nut that rides on a stud, and the temporary pair that rides on it too. <c>NutCounts</c> is what the book says.</summary>
internal sealed record RidingState(Stud Stud, Pair Pair, Rider Nut, bool NutCounts)
{
    public static readonly RidingState AsItCame = new(default, default, default, false);

    /// <summary>The same with what the book says of the nut.</summary>
    public RidingState Told() => this with { NutCounts = Nut is { Pulled: Pulled.Good, Held: false } && Stud.Bears };
}
