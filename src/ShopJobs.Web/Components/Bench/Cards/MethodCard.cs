using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Components.Bench.Fields;
using ShopJobs.Web.Components.Bench.Pictures;

namespace ShopJobs.Web.Components.Bench.Cards;

/// <summary>How much a way of tightening scatters.</summary>
public sealed class MethodCard : BenchCard
{
    private readonly ForceField load = new("load", "Clamp load aimed at") { Example = "45" };
    private readonly ChoiceField<TighteningMethod> method = new("method", "Tightened by",
        [.. Enum.GetValues<TighteningMethod>().Select(way => new BenchChoice<TighteningMethod>(Name(way), Words(way), way))])
    {
        Example = "torque-estimated",
    };

    /// <inheritdoc/>
    public override string Key => "method";

    /// <inheritdoc/>
    public override string Question => "How far does this way of tightening scatter?";

    /// <inheritdoc/>
    public override string Use => "Torque wrench, angle, stretch or impact wrench: what is sure to clamp when one load is aimed at.";

    /// <inheritdoc/>
    public override IReadOnlyList<BenchField> Fields => [load, method];

    /// <inheritdoc/>
    public override BenchPaper Paper { get; } = new(
        ["αA = greatest F/least F", "u = (αA − 1)/(αA + 1)", "F (1 − u) to F (1 + u)"],
        [new("αA", "tightening factor"), new("u", "scatter about the middle, as a fraction"), new("F", "load aimed at, N")],
        "VDI 2230 table A8, from memory; scatter of the second list: NSTS 08307 Rev A, 3.4, partly from memory.",
        "Guide values of many joints. The load aimed at is taken as the middle of the scatter, at the method's greatest factor.");

    /// <inheritdoc/>
    public override BenchAnswer Answer(BenchInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var (units, aimed, way) = (inputs.Units, load.Read(inputs), method.Read(inputs));
        var (least, greatest) = TighteningFactor.Around(aimed, way);
        return new BenchAnswer(units.Range(least, greatest), $"Aiming at {units.Say(aimed)}, it clamps {units.Range(least, greatest)}.")
        {
            Pictures = [UnitsOnALine.Loads(units.Mark("aimed at", aimed)) with { Span = units.Span(Words(way), least, greatest) }],
            Table = new(
                "Each way beside the others",
                ["Way", "Factor αA", "Least", "Greatest"],
                [.. Enum.GetValues<TighteningMethod>().Select(each =>
                {
                    var (low, high) = TighteningFactor.Usual(each);
                    var (from, to) = TighteningFactor.Around(aimed, each);
                    return (IReadOnlyList<string>)[Words(each), FormattableString.Invariant($"{low:0.0} to {high:0.0}"), units.Say(from), units.Say(to)];
                })]),
            Lists =
            [
                new("Scatter by NSTS 08307", [.. PreloadUncertainty.Published.Select(row => FormattableString.Invariant(
                    $"{row.Method}: ±{row.Scatter:0 %}, a factor of {row.TighteningFactor:0.0}"))]),
            ],
        };
    }

    private static string Name(TighteningMethod method) => method switch
    {
        TighteningMethod.Elongation => "stretch",
        TighteningMethod.YieldOrAngle => "angle",
        TighteningMethod.HydraulicTensioner => "tensioner",
        TighteningMethod.TorqueFrictionKnown => "torque-known",
        TighteningMethod.TorqueFrictionEstimated => "torque-estimated",
        _ => "impact",
    };

    private static string Words(TighteningMethod method) => method switch
    {
        TighteningMethod.Elongation => "measured stretch of the bolt",
        TighteningMethod.YieldOrAngle => "angle or gradient into yield",
        TighteningMethod.HydraulicTensioner => "hydraulic tensioner",
        TighteningMethod.TorqueFrictionKnown => "torque wrench, friction measured on the joint",
        TighteningMethod.TorqueFrictionEstimated => "torque wrench, friction estimated",
        _ => "impact wrench",
    };
}
