namespace ShopJobs.Domain.Summaries;

/// <summary>The usual cautions of the customer's page.</summary>
internal static class SummaryCautions
{
    private static readonly IReadOnlyList<string> Usual =
    [
        "This page covers only the work listed on it, as the logbook stood when it was issued. It is no inspection of the rest of the car.",
        "“Click wrench” means that the wrench was set to that torque and clicked: the torque itself was not measured.",
        "Do not re-tighten anything by this page. Some fasteners are harmed by it; ask us first.",
        "A new noise, vibration, leak, pull, or a change of pedal or steering: stop, do not drive on, call us.",
        "The makers' instructions, local rules and the judgement of licensed people come first; this page replaces none of them.",
    ];

    public static IReadOnlyList<string> For(SummaryFacts facts) =>
    [
        .. facts.Shop.Demo ? ["Demo data: car, people and figures are invented."] : Array.Empty<string>(),
        .. facts.NoThird ? ["This shop has no third person: nobody independent of whoever did the work has looked at it."] : Array.Empty<string>(),
        .. Usual,
    ];
}
