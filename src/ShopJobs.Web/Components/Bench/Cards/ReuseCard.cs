using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Components.Bench.Fields;
using ShopJobs.Web.Components.Bench.Pictures;

namespace ShopJobs.Web.Components.Bench.Cards;

/// <summary>Whether a fastener may be used again.</summary>
public sealed class ReuseCard : BenchCard
{
    private readonly NumberField used = new("used", "Times it was at torque", "", 0, 1000) { Example = "1", IsWhole = true, Hint = "Also when it was undone at once." };
    private readonly NumberField allowed = new("allowed", "Times its maker allows", "", 1, 1000)
    {
        Example = "1",
        IsWhole = true,
        IsOptional = true,
        Hint = "Empty where the maker sets no limit.",
    };

    private readonly ChoiceField<bool> yielded = YesNo("yielded", "Taken to yield, or over its greatest torque");
    private readonly ChoiceField<bool> damaged = YesNo("damaged", "Thread or face damaged");

    /// <inheritdoc/>
    public override string Key => "reuse";

    /// <inheritdoc/>
    public override string Question => "May this fastener be used again?";

    /// <inheritdoc/>
    public override string Use => "Counted uses against what the maker allows.";

    /// <inheritdoc/>
    public override IReadOnlyList<BenchField> Fields => [used, allowed, yielded, damaged];

    /// <inheritdoc/>
    public override BenchPaper Paper { get; } = new(
        ["left = allowed − used", "none once it yielded or is damaged"],
        [new("used", "full tightenings, each counted")],
        "Common practice, no source.",
        "The maker's word on single use wins over everything here; where it says nothing, look at thread, face and straightness.");

    /// <inheritdoc/>
    public override BenchAnswer Answer(BenchInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        int? limit = allowed.IsGiven(inputs) ? (int)allowed.Read(inputs) : null;
        var use = new FastenerUse((int)used.Read(inputs), limit, yielded.Read(inputs), damaged.Read(inputs));
        var said = use.WhyNot is not null ? "No"
            : use.Left is { } left ? $"Yes, {left} more {(left == 1 ? "time" : "times")}"
            : "Yes, as far as counting goes: its maker sets no limit";
        return new BenchAnswer(use.Left is null && use.WhyNot is null ? "Yes" : said, $"{said}.")
        {
            Pictures =
            [
                new NumberLine("",
                [
                    new("used", (double)used.Read(inputs), used.Read(inputs).ToString("0", System.Globalization.CultureInfo.InvariantCulture)),
                    .. limit is { } most ? new LineMark[] { new("allowed", most, FormattableString.Invariant($"{most}"), LineMarkKind.Limit) } : [],
                ]),
            ],
            Cautions = use.WhyNot is { } why ? [why] : [],
        };
    }

    private static ChoiceField<bool> YesNo(string key, string label) => new(key, label, [new("no", "no", false), new("yes", "yes", true)]) { Example = "no" };
}
