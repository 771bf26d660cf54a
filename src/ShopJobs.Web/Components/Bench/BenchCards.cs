using ShopJobs.Web.Components.Bench.Cards;

namespace ShopJobs.Web.Components.Bench;

/// <summary>Every card of the bench, by what a person wants to know. Whoever builds a card adds its line.</summary>
public static class BenchCards
{
    /// <summary>The groups in their order on the page.</summary>
    public static IReadOnlyList<BenchGroup> Groups { get; } =
    [
        new("Torque and clamp load", [new ClampLoadCard()]),
        new("What to set", [new AdapterCard(), new UnitCard()]),
    ];

    /// <summary>The card with a name in the address; null where there is none.</summary>
    public static BenchCard? Find(string key) => Groups.SelectMany(group => group.Cards).FirstOrDefault(card => card.Key == key);
}
