using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Bench.Fields;
using ShopJobs.Web.Components.Bench.Pictures;

namespace ShopJobs.Web.Components.Bench.Cards;

/// <summary>A self-locking nut: what to set, what clamps, whether it may stay.</summary>
public sealed class RunDownCard : BenchCard
{
    private readonly ThreadField thread = new();
    private readonly TorqueField least = new("least", "Stated torque, or its least") { Example = "80" };
    private readonly TorqueField greatest = new("greatest", "Its greatest") { IsOptional = true, Hint = "Empty where one value is stated." };
    private readonly ChoiceField<RunDown> rule = new("rule", "To the run-down torque the instruction says",
    [
        new("not-stated", "nothing", RunDown.NotStated), new("includes", "it is included", RunDown.Includes), new("add", "add it", RunDown.Add),
    ])
    {
        Example = "not-stated",
    };

    private readonly TorqueField low = new("run-down-least", "Least run-down torque of such nuts") { Example = "2", MayBeZero = true };
    private readonly TorqueField high = new("run-down-greatest", "Greatest run-down torque of such nuts") { Example = "12", MayBeZero = true };
    private readonly TorqueField measured = new("measured", "Measured on the way down, on this nut")
    {
        Example = "6",
        IsOptional = true,
        MayBeZero = true,
        Hint = "0 where it turns with the fingers.",
    };

    private readonly TorqueField graduation;
    private readonly ChoiceField<bool> used = new("used", "The nut is", [new("new", "new", false), new("used", "used", true)]) { Example = "new" };

    public RunDownCard() => graduation = new("graduation", "Steps of the wrench") { Example = "1", IsAsked = AddsWhatIsMeasured };

    /// <inheritdoc/>
    public override string Key => "run-down";

    /// <inheritdoc/>
    public override string Question => "What does a self-locking nut take of the torque?";

    /// <inheritdoc/>
    public override string Use => "What to set when the run-down torque is included, added or not mentioned, and whether the nut still locks.";

    /// <inheritdoc/>
    public override IReadOnlyList<BenchField> Fields => [thread, least, greatest, rule, low, high, measured, graduation, used];

    /// <inheritdoc/>
    public override BenchPaper Paper { get; } = new(
        ["add: set T + measured run-down", "includes: clamps with Tmin − greatest run-down to Tmax − least run-down", "not stated: both readings, Tmin − greatest run-down to Tmax"],
        [new("T", "stated torque, from Tmin to Tmax, N·m"), new("run-down", "torque that turns the nut before it touches, N·m")],
        "FAA AC 43.13-1B 7-40 and table 7-2 (partly from memory); NASA-STD-5020B.",
        "Run-down torque measured on the way down, before the nut touches. The least of a used nut is published for 7/16 in and larger only.");

    /// <inheritdoc/>
    public override IEnumerable<BenchProblem> Problems(BenchInputs inputs)
    {
        if (greatest.IsGiven(inputs) && !TorqueRange.TryCreate(least.Read(inputs), greatest.Read(inputs), out _, out var problem))
        {
            yield return new(least, problem);
        }

        if (low.Read(inputs).NewtonMetres > high.Read(inputs).NewtonMetres)
        {
            yield return new(low, "The least run-down torque is above the greatest: swap them.");
        }
    }

    /// <inheritdoc/>
    public override BenchAnswer Answer(BenchInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var (units, size, says) = (inputs.Units, thread.Read(inputs), rule.Read(inputs));
        var stated = new TorqueRange(least.Read(inputs), greatest.IsGiven(inputs) ? greatest.Read(inputs) : least.Read(inputs));
        var runDown = new RunDownTorque(low.Read(inputs), high.Read(inputs));
        var (from, to) = runDown.Clamping(stated, says);
        EnteredTorque? found = measured.IsGiven(inputs) ? measured.Read(inputs) : null;
        var published = used.Read(inputs) ? PrevailingTorque.LeastOfUsedNut(size) : null;
        WrenchStep? step = AddsWhatIsMeasured(inputs) ? new WrenchStep(graduation.Read(inputs)) : null;
        var (setLeast, setGreatest) = (ToSet(stated.Minimum), ToSet(stated.Maximum));
        return new BenchAnswer(
            Set() is { } setting ? $"Set {setting}" : "Measure the run-down first",
            Set() is not null
                ? $"Set {Set()}{(step is { } marks ? $" ({marks})" : "")}; {units.ComputedRange(from, to)} of it clamps."
                : $"{units.ComputedRange(from, to)} clamps; measure the run-down torque on this nut, then add it.")
        {
            Pictures =
            [
                units.Torques(
                [
                    .. setLeast is { } first ? new[] { units.Mark("set", first) } : [],
                    .. setGreatest is { } last && last != setLeast ? new[] { units.Mark("set at most", last) } : [],
                    .. setLeast is null ? new[] { units.Mark("stated", stated.Minimum, LineMarkKind.Beside) } : [],
                ]) with
                {
                    Span = units.Span("clamps", from, to, units.ComputedRange(from, to)),
                },
            ],
            Lines =
            [
                .. Set() is { } set ? new BenchLine[] { new("Set", set, says == RunDown.Add ? "stated torque and measured run-down torque, on a mark of the wrench" : "as stated") } : [],
                .. step is not null ? new BenchLine[] { new("Set, not rounded", units.Range(Added(stated.Minimum), Added(stated.Maximum)), "before it is brought to a mark of the wrench") } : [],
                new("Clamps", units.ComputedRange(from, to), says == RunDown.NotStated ? "from one reading of the instruction to the other: ask the maker" : "what is left for the joint"),
                .. published is { } limit
                    ? new BenchLine[] { new("Least of a used nut", units.Say(limit), "FAA AC 43.13-1B table 7-2; the maker's own value wins") }
                    : [],
            ],
            Cautions = [.. Cautions(found, published)],
        };

        EnteredTorque Added(EnteredTorque torque) => RunDownTorque.ToSet(torque, says, found ?? torque with { Value = 0 });

        EnteredTorque? ToSet(EnteredTorque torque) => says != RunDown.Add ? torque : step?.Nearest(Added(torque));

        string? Set() => setLeast is not { } a || setGreatest is not { } b ? null
            : says != RunDown.Add ? units.Range(a, b)
            : a == b ? units.Set(a)
            : $"{units.Set(a)} to {units.Set(b)}";

        IEnumerable<string> Cautions(EnteredTorque? torque, EnteredTorque? leastOfUsed)
        {
            if (says == RunDown.NotStated)
            {
                yield return "The instruction does not say whether its torque includes the run-down torque: ask the maker before relying on either reading.";
            }

            var limits = used.Read(inputs) ? leastOfUsed ?? runDown.Least : runDown.Least;
            if (torque is { } value && PrevailingTorque.WhyDiscard(value, limits, runDown.Greatest) is { } discard)
            {
                yield return discard;
            }
        }
    }

    private bool AddsWhatIsMeasured(BenchInputs inputs) => rule.ProblemOf(inputs) is null && rule.Read(inputs) == RunDown.Add && measured.IsGiven(inputs);
}
