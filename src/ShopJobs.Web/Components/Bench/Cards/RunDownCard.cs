using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Components.Bench.Fields;

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

    private readonly ChoiceField<bool> used = new("used", "The nut is", [new("new", "new", false), new("used", "used", true)]) { Example = "new" };

    /// <inheritdoc/>
    public override string Key => "run-down";

    /// <inheritdoc/>
    public override string Question => "What does a self-locking nut take of the torque?";

    /// <inheritdoc/>
    public override string Use => "What to set when the run-down torque is included, added or not mentioned, and whether the nut still locks.";

    /// <inheritdoc/>
    public override IReadOnlyList<BenchField> Fields => [thread, least, greatest, rule, low, high, measured, used];

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
        return new BenchAnswer(Set() is { } setting
            ? $"Set {setting}; {Range(from, to)} of it clamps."
            : $"{Range(from, to)} clamps; measure the run-down torque on this nut, then add it.")
        {
            Lines =
            [
                .. Set() is { } set ? new BenchLine[] { new("Set", set, says == RunDown.Add ? "stated torque and measured run-down torque" : "as stated") } : [],
                new("Clamps", Range(from, to), says == RunDown.NotStated ? "from one reading of the instruction to the other: ask the maker" : "what is left for the joint"),
                .. published is { } limit
                    ? new BenchLine[] { new("Least of a used nut", units.Say(limit), "FAA AC 43.13-1B table 7-2; the maker's own value wins") }
                    : [],
            ],
            Cautions = [.. Cautions(found, published)],
        };

        string? Set() => says != RunDown.Add ? Range(stated.Minimum, stated.Maximum)
            : found is { } torque ? Range(RunDownTorque.ToSet(stated.Minimum, says, torque), RunDownTorque.ToSet(stated.Maximum, says, torque))
            : null;

        string Range(EnteredTorque a, EnteredTorque b) => a.NewtonMetres == b.NewtonMetres ? units.Say(a) : $"{units.Say(a)} to {units.Say(b)}";

        IEnumerable<string> Cautions(EnteredTorque? torque, EnteredTorque? leastOfUsed)
        {
            if (says == RunDown.NotStated)
            {
                yield return "The instruction does not say how its torque stands to the run-down torque: ask the maker before relying on either reading.";
            }

            var limits = used.Read(inputs) ? leastOfUsed ?? runDown.Least : runDown.Least;
            if (torque is { } value && PrevailingTorque.WhyDiscard(value, limits, runDown.Greatest) is { } discard)
            {
                yield return discard;
            }
        }
    }
}
