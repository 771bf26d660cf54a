using ShopJobs.Web.Components.Bench.Cards;

namespace ShopJobs.Web.Components.Bench;

/// <summary>Every card of the bench, by what a person wants to know. Whoever builds a card adds its line.</summary>
public static class BenchCards
{
    /// <summary>The groups in their order on the page.</summary>
    public static IReadOnlyList<BenchGroup> Groups { get; } =
    [
        new("What to set", [new TargetCard(), new AdapterCard(), new StagesCard(), new RunDownCard(), new UnitCard()]),
        new("Torque and clamp load", [new ClampLoadCard(), new TorqueForLoadCard(), new NutFactorCard(), new AngleCard(), new MethodCard()]),
        new("Bolts, studs and threads", [new WheelStudCard(), new NutPairCard(), new StrengthCard(), new EngagementCard(), new ThreadCard(), new ReuseCard()]),
        new("Under load and after the first drive", [new SettlingCard(), new WorkingLoadCard()]),
        new("Wrenches", [new ToolCard(), new CalibrationCard(), new CertificateCard()]),
    ];

    /// <summary>The card with a name in the address; null where there is none.</summary>
    public static BenchCard? Find(string key) => Groups.SelectMany(group => group.Cards).FirstOrDefault(card => card.Key == key);
}
