using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Components.Bench.Fields;
using ShopJobs.Web.Components.Bench.Pictures;

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
    public override string Question => "Torque from a K factor";

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
        var answer = asked.Read(inputs) switch
        {
            Wanted.Load => new BenchAnswer(units.Range(Load(high), Load(low)), $"{units.Say(torque.Read(inputs))} clamps {units.Range(Load(high), Load(low))}.")
            {
                Pictures = [UnitsOnALine.Loads(units.Mark("at the least K", Load(low)), units.Mark("at the greatest K", Load(high))) with { Span = units.Span("clamp load", Load(high), Load(low)) }],
            },
            Wanted.Torque => new BenchAnswer(units.Range(Needed(low), Needed(high)), $"{units.Say(load.Read(inputs))} takes {units.Range(Needed(low), Needed(high))}.")
            {
                Pictures = [units.Torques(units.Mark("at the least K", Needed(low)), units.Mark("at the greatest K", Needed(high))) with { Span = units.Span("torque", Needed(low), Needed(high)) }],
            },
            _ => OfATest(ClampLoad.NutFactor(torque.Read(inputs).ToTorque(), diameter, load.Read(inputs))),
        };
        return answer with
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

    private static BenchAnswer OfATest(double factor)
    {
        var (least, greatest) = (NutFactors.Published.Min(row => row.Low), NutFactors.Published.Max(row => row.High));
        return new BenchAnswer($"K {ShownFigure.Of(factor)}", $"The nut factor of that test is {ShownFigure.Of(factor)}.")
        {
            Pictures =
            [
                new NumberLine("", [new("this test", factor, ShownFigure.Of(factor))])
                {
                    Span = new("published factors", least, greatest, $"{ShownFigure.Of(least)} to {ShownFigure.Of(greatest)}"),
                },
            ],
        };
    }

    private bool Is(BenchInputs inputs, Wanted wanted) => asked.ProblemOf(inputs) is null && asked.Read(inputs) == wanted;
}
