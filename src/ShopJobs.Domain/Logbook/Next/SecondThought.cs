namespace ShopJobs.Domain.Logbook;

/// <summary>
/// A pattern in somebody's own records at which a person would think again. It is said to that person alone, once, at that moment; it
/// holds nothing, is kept nowhere and is counted for nobody.
/// </summary>
public enum SecondThought
{
    /// <summary>As many readings alike, to the digit, as no hand pulls in the time.</summary>
    EqualReadings,

    /// <summary>Signed as looked at sooner than anybody looks.</summary>
    QuickLook,
}

/// <summary>Finds them. The figures are common practice, no source.</summary>
public static class SecondThoughts
{
    /// <summary>So many readings alike ...</summary>
    public const int Readings = 10;

    /// <summary>... within this time.</summary>
    public static readonly TimeSpan Within = TimeSpan.FromSeconds(10);

    /// <summary>Signed sooner than this after it was asked, a look is a quick one.</summary>
    public static readonly TimeSpan Look = TimeSpan.FromSeconds(5);

    /// <summary>After a pull: by this person's own newest pulls on the car. Said at the tenth, and not again while they go on.</summary>
    public static SecondThought? OnPull(CarState state, PersonId person)
    {
        ArgumentNullException.ThrowIfNull(state);
        var newest = state.Positions.Values.SelectMany(book => book.Pulls)
            .Where(pull => pull.Person == person)
            .OrderByDescending(pull => pull.Number)
            .Take(Readings + 1)
            .ToList();
        return newest.TakeWhile(pull => IsLike(pull, newest[0])).Count() == Readings ? SecondThought.EqualReadings : null;
    }

    /// <summary>After somebody signed that he looked, so long after it was asked.</summary>
    public static SecondThought? OnLook(TimeSpan after) => after < Look ? SecondThought.QuickLook : null;

    private static bool IsLike(Pull pull, Pull newest) =>
        pull is { Fact.Kind: not TorqueKind.SettingConfirmed, Voided: false } && pull.Fact.Kind == newest.Fact.Kind
        && pull.Fact.Value == newest.Fact.Value && pull.Fact.AngleDegrees == newest.Fact.AngleDegrees
        && newest.At - pull.At <= Within;
}
