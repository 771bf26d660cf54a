using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Components.Bench.Fields;

namespace ShopJobs.Web.Components.Bench.Cards;

/// <summary>The short form with a nut factor, each way.</summary>
public sealed class NutFactorCard : BenchCard
{
    private readonly ChoiceField<Wanted> asked;
    private readonly ThreadField thread = new();
    private readonly TorqueField torque;
    private readonly ForceField load;
    private readonly NumberField low;
    private readonly NumberField high;

    public NutFactorCard()
    {
        asked = new("find", "I look for",
        [
            new("load", "the clamp load", Wanted.Load), new("torque", "the torque", Wanted.Torque), new("factor", "the nut factor of a test", Wanted.Factor),
        ])
        {
            Example = "load",
        };
        torque = new("torque", "Torque") { Example = "110", IsAsked = inputs => !Is(inputs, Wanted.Torque) };
        load = new("load", "Clamp load") { Example = "45", IsAsked = inputs => !Is(inputs, Wanted.Load) };
        low = new("k-low", "Least nut factor K", "", 0.03m, 1) { Example = "0.15", IsAsked = inputs => !Is(inputs, Wanted.Factor) };
        high = new("k-high", "Greatest nut factor K", "", 0.03m, 1) { Example = "0.25", IsAsked = inputs => !Is(inputs, Wanted.Factor) };
    }

    private enum Wanted
    {
        Load,
        Torque,
        Factor,
    }

    /// <inheritdoc/>
    public override string Key => "nut-factor";

    /// <inheritdoc/>
    public override string Question => "What does a nut factor make of it?";

    /// <inheritdoc/>
    public override string Use => "T = K d F each way, and the factor of a torque and a load that were measured together.";

    /// <inheritdoc/>
    public override IReadOnlyList<BenchField> Fields => [asked, thread, torque, load, low, high];

    /// <inheritdoc/>
    public override BenchPaper Paper { get; } = new(
        ["T = K d F", "F = T/(K d)", "K = T/(d F)"],
        [new("T", "torque, N·m"), new("K", "nut factor, no unit"), new("d", "nominal diameter, m"), new("F", "clamp load, N")],
        "Shigley's Mechanical Engineering Design; NASA-STD-5020B. The factors of the table each name their own source.",
        "K holds for the surfaces, the lubricant and the nut it was measured with. It hides the seat: a cone has another K than a flat face.");

    /// <inheritdoc/>
    public override IEnumerable<BenchProblem> Problems(BenchInputs inputs)
    {
        if (low.IsGiven(inputs) && low.Read(inputs) > high.Read(inputs))
        {
            yield return new(low, "The least factor is above the greatest: swap them.");
        }
    }

    /// <inheritdoc/>
    public override BenchAnswer Answer(BenchInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var (units, diameter) = (inputs.Units, thread.Read(inputs).NominalDiameter);
        var sentence = asked.Read(inputs) switch
        {
            Wanted.Load => $"{units.Say(torque.Read(inputs))} clamps {units.Say(Load(high))} to {units.Say(Load(low))}.",
            Wanted.Torque => $"{units.Say(load.Read(inputs))} takes {units.Say(Needed(low))} to {units.Say(Needed(high))}.",
            _ => FormattableString.Invariant(
                $"The nut factor of that test is {ClampLoad.NutFactor(torque.Read(inputs).ToTorque(), diameter, load.Read(inputs)):0.000}."),
        };
        return new BenchAnswer(sentence)
        {
            Table = new(
                "Published factors: they differ by more than a wrench does",
                ["Finish or lubricant", "K", "Source"],
                [.. NutFactors.Published.Select(row => (IReadOnlyList<string>)
                [
                    row.Condition,
                    row.Low == row.High ? FormattableString.Invariant($"{row.Low:0.00}") : FormattableString.Invariant($"{row.Low:0.00} to {row.High:0.00}"),
                    row.Source,
                ])]),
        };

        UnitsNet.Force Load(NumberField factor) => ClampLoad.FromTorque((double)factor.Read(inputs), diameter, torque.Read(inputs).ToTorque());
        UnitsNet.Torque Needed(NumberField factor) => ClampLoad.ToTorque((double)factor.Read(inputs), diameter, load.Read(inputs));
    }

    private bool Is(BenchInputs inputs, Wanted wanted) => asked.ProblemOf(inputs) is null && asked.Read(inputs) == wanted;
}
