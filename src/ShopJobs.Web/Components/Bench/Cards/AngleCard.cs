using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Components.Bench.Fields;
using ShopJobs.Web.Components.Bench.Pictures;
using UnitsNet;

namespace ShopJobs.Web.Components.Bench.Cards;

/// <summary>A torque and then an angle.</summary>
public sealed class AngleCard : BenchCard
{
    private readonly ThreadField thread = new();
    private readonly StrengthField strength = new() { Example = "10.9" };
    private readonly FlatJointFields joint;
    private readonly ChoiceField<BenchFriction> friction = FrictionField.New();
    private readonly TorqueField snug = new("snug", "Torque first") { Example = "40" };
    private readonly NumberField turn = new("turn", "Then turned by, all stages together", "°", 0, 720) { Example = "90" };

    public AngleCard() => joint = new FlatJointFields(thread);

    /// <inheritdoc/>
    public override string Key => "angle";

    /// <inheritdoc/>
    public override string Question => "What does torque and angle clamp?";

    /// <inheritdoc/>
    public override string Use => "The turn stretches the bolt whatever the friction: the load after it, and whether the bolt yields.";

    /// <inheritdoc/>
    public override IReadOnlyList<BenchField> Fields => [thread, strength, .. joint.All, friction, snug, turn];

    /// <inheritdoc/>
    public override BenchPaper Paper { get; } = new(
        ["F = Fsnug + angle/360 · P/(δS + δP)", "at most the load that yields the bolt: √(σ² + 3 τ²) = Rp"],
        [
            new("Fsnug", "clamp load of the torque, by VDI 2230, N"), new("P", "pitch, mm"), .. FlatJointFields.Symbols,
            new("σ, τ, Rp", "tension, torsion and yield, MPa"),
        ],
        "Own arithmetic on VDI 2230; moduli: handbook values, from memory; friction by condition: common practice, no source.",
        "One material in the grip, flat faces, joint snug before the turn. Beyond yield the load stays about where it is and the bolt keeps stretching. Bolts for angle tightening are commonly for one use: the maker says.");

    /// <inheritdoc/>
    public override IEnumerable<BenchProblem> Problems(BenchInputs inputs)
    {
        foreach (var problem in joint.Problems(inputs))
        {
            yield return problem;
        }

        if (strength.Read(inputs).YieldLoad(thread.Read(inputs)) is null)
        {
            yield return new(strength, $"The standard has no {strength.Read(inputs)} for {thread.Read(inputs)}.");
        }
    }

    /// <inheritdoc/>
    public override BenchAnswer Answer(BenchInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var (units, size, give) = (inputs.Units, thread.Read(inputs), joint.Read(inputs));
        var yield = strength.Read(inputs).YieldStress(size.NominalDiameter)!.Value;
        var band = friction.Read(inputs).Band;
        var geometry = JointGeometry.For(size, joint.Face(inputs));
        var turned = Angle.FromDegrees((double)turn.Read(inputs));
        var (least, expected, greatest) = (Row(band.High), Row(band.Nominal), Row(band.Low));
        var after = new[] { least, expected, greatest };
        var toYield = TorqueAngle.For(size, expected.Yields - expected.Snug, give);
        var loads = (Least: after.Min(row => row.After), Greatest: after.Max(row => row.After));
        return new BenchAnswer(
            units.Range(loads.Least, loads.Greatest),
            $"After the turn it clamps {units.Range(loads.Least, loads.Greatest)}"
            + (after.All(row => row.Yielded) ? ": the bolt is at yield." : after.Any(row => row.Yielded) ? ": the bolt may be at yield." : ", below yield."))
        {
            Pictures =
            [
                UnitsOnALine.Loads(
                    units.Mark("expected after the turn", expected.After),
                    units.Mark("expected after the torque", expected.Snug, LineMarkKind.Beside),
                    units.Mark("yields while tightening", expected.Yields, LineMarkKind.Limit)) with
                {
                    Span = units.Span("least to greatest after the turn", loads.Least, loads.Greatest),
                },
            ],
            Table = new(
                "By friction",
                ["Friction", "After the torque", "After the turn", "Bolt"],
                [.. after.Select(row => (IReadOnlyList<string>)
                [
                    FormattableString.Invariant($"{row.Friction:0.00}"), units.Say(row.Snug), units.Say(row.After), row.Yielded ? "at yield" : "elastic",
                ])]),
            Lines =
            [
                new("The turn alone adds", units.Say(TorqueAngle.Gain(size, turned, give)), "while the bolt is elastic"),
                new("Yields from a turn of", toYield.Degrees <= 0 ? "0°" : FormattableString.Invariant($"{toYield.Degrees:0}°"), "at the expected friction"),
                new("Bolt and parts take up", units.Computed(size.Pitch * (turned.Degrees / 360)), "P × angle/360"),
            ],
            Cautions = after.Any(row => row.Yielded)
                ? ["A bolt taken to yield is stretched for good: use it again only where its maker says how often, and do not set it again by torque."]
                : [],
        };

        (double Friction, Force Snug, Force After, bool Yielded, Force Yields) Row(double mu)
        {
            var yields = ClampLoad.AtYieldUtilisation(size, yield, mu, 1);
            var elastic = ClampLoad.FromTorque(geometry, snug.Read(inputs).ToTorque(), mu, mu);
            var first = elastic < yields ? elastic : yields;
            var (load, yielded) = TorqueAngle.After(size, first, turned, give, yield, mu);
            return (mu, first, load, yielded || elastic >= yields, yields);
        }
    }
}
