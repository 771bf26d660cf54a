namespace ShopJobs.Domain.Logbook;

/// <summary>
/// What somebody has seen before a car is driven: the closing check. Each is a state that was looked at, not an intention. The digest that
/// is kept of a request holds the number: a new item takes the next one. Tools, loose parts and panels are what EASA 145.A.48(a) asks a
/// general check for; wheels and fluids are common practice, no source.
/// </summary>
public enum ClosingItem
{
    ToolsCounted = 0,
    NothingLoose = 1,
    CoversOn = 2,
    WheelsOn = 3,
    FluidsRight = 4,
}

/// <summary>The closing check as a whole.</summary>
public static class ClosingCheck
{
    /// <summary>Every item, in the order in which it is walked.</summary>
    public static readonly IReadOnlyList<ClosingItem> All = [ClosingItem.ToolsCounted, ClosingItem.NothingLoose, ClosingItem.CoversOn, ClosingItem.WheelsOn, ClosingItem.FluidsRight];

    /// <summary>Items that nobody has said yet.</summary>
    public static IReadOnlyList<ClosingItem> Missing(IReadOnlyList<ClosingItem>? seen) => [.. All.Except(seen ?? [])];

    /// <summary>The item in words, as the state that was seen.</summary>
    public static string Words(this ClosingItem item) => item switch
    {
        ClosingItem.ToolsCounted => "Tools counted: every one is back",
        ClosingItem.NothingLoose => "Nothing loose under the bonnet, in the cabin, in the boot or under the car",
        ClosingItem.CoversOn => "Covers and panels fitted and fastened",
        ClosingItem.WheelsOn => "Wheels on, every nut marked, tyre pressures set",
        _ => "Fluids at their levels, no leak under the car",
    };
}
