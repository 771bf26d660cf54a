namespace ShopJobs.Domain.Tests.Specification.Releases;

/// <summary>How a release stands.</summary>
internal enum Given
{
    None,
    Stands,
    Suspended,
    Ended,
    Withdrawn,
}

/// <summary>What stands against a release that was given.</summary>
[Flags]
internal enum Against
{
    Nothing = 0,
    Doubt = 1,
    Hold = 2,
    SettingChanged = 4,
    SignOffFallen = 8,
}

/// <summary>What is asked of the lead, or of anybody with the release right.</summary>
internal enum Wish
{
    Nothing,
    Give,
    Uphold,
    Withdraw,
}

/// <summary>A car with one joint that was released, or is to be.</summary>
/// <param name="Page">What every screen and the customer's page say.</param>
/// <param name="Open">The joint is open.</param>
/// <param name="Against">The fact: what stands against a release now.</param>
/// <param name="TakenFrom">The release that the last opening ended, while it can be taken back as never done.</param>
internal readonly record struct ReleasedCar(Given Given, Given Page, bool Open, Against Against, bool TakenFrom, Wish Wish, bool Granted)
{
    public static readonly Against[] Causes = [Against.Doubt, Against.Hold, Against.SettingChanged, Against.SignOffFallen];

    public bool Could => !Open && Against == Against.Nothing;

    /// <summary>True where it can be put in order now: nothing is signed on a joint that is held or in doubt.</summary>
    public bool CanLift(Against cause) =>
        Against.HasFlag(cause) && (cause != Against.SignOffFallen || (Against & (Against.Hold | Against.Doubt)) == 0);

    public ReleasedCar Ask(Wish wish) => wish switch
    {
        Wish.Give when Could => Say(Given.Stands, wish),
        Wish.Uphold when Could && Given == Given.Suspended => Say(Given.Stands, wish),
        Wish.Withdraw when Given is not (Given.None or Given.Withdrawn) => Say(Given.Withdrawn, wish),
        _ => this with { Wish = wish, Granted = false },
    };

    public ReleasedCar Opened() => After(Lives ? Given.Ended : Given) with { Open = true, TakenFrom = Lives };

    public ReleasedCar Pulled() => After(Lives ? Given.Ended : Given) with { Against = Against | Against.Hold, TakenFrom = false };

    public ReleasedCar Closed() => After(Given) with { Open = false, TakenFrom = false };

    public ReleasedCar TakenBack() => After(TakenFrom ? Given.Suspended : Given) with { Open = false, TakenFrom = false };

    public ReleasedCar Raise(Against cause) => After(Given == Given.Stands ? Given.Suspended : Given) with { Against = Against | cause };

    public ReleasedCar Lift(Against cause) => After(Given) with { Against = Against & ~cause };

    private bool Lives => Given is Given.Stands or Given.Suspended;

    private ReleasedCar Say(Given given, Wish wish) => this with { Given = given, Page = given, Wish = wish, Granted = true, TakenFrom = false };

    private ReleasedCar After(Given given) => this with { Given = given, Page = given, Wish = Wish.Nothing, Granted = false };
}
