namespace ShopJobs.Domain.Tests.Specification.Papers;

/// <summary>A nut that was pulled by a card while the power was off, until it counts.</summary>
/// <param name="Pulled">It was pulled, and the card says so.</param>
/// <param name="Whole">The card says tool, time and how the car stood.</param>
/// <param name="OtherSession">Whoever pulled it was signed in anew since.</param>
/// <param name="Declared">The card was entered by another, or with something missing.</param>
/// <param name="BackOff">It may be tight, and the book does not say so: a pull on top is a second one.</param>
/// <param name="Voided">The declaration was voided by one person.</param>
internal readonly record struct PaperCard(
    bool Pulled, bool Whole, bool OtherSession, bool Entered, bool Declared, bool Counts, bool Held, bool BackOff, bool Voided)
{
    public static PaperCard Start => default;

    public bool Waits => Pulled && !Entered;

    public PaperCard EnterOwn() => Whole
        ? this with { Entered = true, Counts = !OtherSession, Held = OtherSession }
        : Declare();

    public PaperCard Declare() => this with { Entered = true, Declared = true, BackOff = true };

    public PaperCard PullOnTop() => BackOff ? this with { Held = true } : this with { Counts = true };
}
