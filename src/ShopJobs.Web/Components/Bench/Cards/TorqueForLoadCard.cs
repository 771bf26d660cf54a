using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Components.Bench.Fields;
using ShopJobs.Web.Components.Bench.Pictures;
using ShopJobs.Web.Components.Fasteners;
using UnitsNet;

namespace ShopJobs.Web.Components.Bench.Cards;

/// <summary>Clamp load to torque: what it takes at each friction.</summary>
public sealed class TorqueForLoadCard : BenchCard
{
    private readonly ThreadField thread = new();
    private readonly ForceField load = new("load", "Clamp load") { Example = "45" };
    private readonly StrengthField strength = new() { IsOptional = true };
    private readonly SeatFields seat;
    private readonly ChoiceField<BenchFriction> friction = FrictionField.New();

    public TorqueForLoadCard() => seat = new SeatFields(thread);

    /// <inheritdoc/>
    public override string Key => "torque-for-load";

    /// <inheritdoc/>
    public override string Question => "What torque does this clamp load take?";

    /// <inheritdoc/>
    public override string Use => "The other way round: from the load a joint needs to the torque, at least and at greatest friction.";

    /// <inheritdoc/>
    public override IReadOnlyList<BenchField> Fields => [thread, load, strength, .. seat.All, friction];

    /// <inheritdoc/>
    public override bool SpeaksTorque => true;

    /// <inheritdoc/>
    public override BenchPaper Paper { get; } = new(
        ["T = F (P/2π + µt d2/(2 cos 30°) + µb r)", "K = T/(d F)", "F at 90 % of yield = 0.9 Rp As/√(1 + 3 (τ/σ)²)"],
        [
            new("T", "torque, N·m"), new("F", "clamp load, N"), new("P, d, d2", "pitch, nominal and pitch diameter, mm"),
            new("µt, µb", "friction in the thread and under the head; taken as equal here"),
            new("r", "lever of the face's friction, mm; on a cone divided by the sine of half its angle"),
            new("K", "nut factor that the short form T = K d F would need"),
            new("Rp, As", "yield, MPa; stress area, mm²"), new("τ/σ", "torsion over tension while tightening"),
        ],
        "VDI 2230 (long form; 0.9 of yield behind its assembly tables); ISO 898-1, SAE J429, ISO 3506-1 (strength, partly from memory); friction by condition: common practice, no source.",
        "Elastic, steady friction, no run-down torque, an exact wrench. The torque an instruction states wins over this one.");

    /// <inheritdoc/>
    public override IEnumerable<BenchProblem> Problems(BenchInputs inputs) => seat.Problems(inputs);

    /// <inheritdoc/>
    public override BenchAnswer Answer(BenchInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var (size, wanted, units) = (thread.Read(inputs), load.Read(inputs), inputs.Units);
        var band = friction.Read(inputs).Band;
        var joint = JointGeometry.For(size, seat.Read(inputs));
        var bolt = strength.IsGiven(inputs) ? strength.Read(inputs) : null;
        var proof = bolt?.ProofLoad(size);
        var yield = bolt?.YieldLoad(size) is null ? null : bolt.YieldStress(size.NominalDiameter);
        return new BenchAnswer(
            units.Range(At(band.Low), At(band.High)),
            $"{units.Say(wanted)} takes {units.Range(At(band.Low), At(band.High))}, {units.Say(At(band.Nominal))} at the expected friction.")
        {
            Pictures =
            [
                units.Torques(units.Mark("at the expected friction", At(band.Nominal))) with { Span = units.Span("from the least to the greatest friction", At(band.Low), At(band.High)) },
            ],
            Table = new(
                "By friction",
                ["Friction", "Torque", "Nut factor K", "Of yield while tightening", "Torque at 90 % of yield"],
                [.. new[] { band.Low, band.Nominal, band.High }.Select(mu => (IReadOnlyList<string>)
                [
                    FormattableString.Invariant($"{mu:0.00}"), units.Say(At(mu)),
                    FormattableString.Invariant($"{ClampLoad.NutFactor(joint, size, mu, mu):0.000}"),
                    yield is { } rp ? FormattableString.Invariant($"{TighteningStress.Utilisation(size, wanted, mu, rp):0 %}") : "not known",
                    yield is { } limit
                        ? units.Say(ClampLoad.ToTorque(joint, ClampLoad.AtYieldUtilisation(size, limit, mu), mu, mu))
                        : "not known",
                ])]),
            Lines = proof is { } most
                ? [new("Of proof load", FormattableString.Invariant($"{wanted / most:0 %}"), $"proof load of {size} {bolt}: {units.Say(most)}")]
                : [],
            Cautions = [.. Cautions(wanted, proof, bolt, size)],
        };

        Torque At(double mu) => ClampLoad.ToTorque(joint, wanted, mu, mu);
    }

    private static IEnumerable<string> Cautions(Force wanted, Force? proof, StrengthClass? bolt, ThreadSize size)
    {
        if (proof is { } most && wanted > most)
        {
            yield return FormattableString.Invariant($"{ClampWords.Load(wanted)} is above the proof load, {ClampWords.Load(most)}: the bolt may stretch for good.");
        }
        else if (bolt is not null && proof is null)
        {
            yield return bolt.IsStainless
                ? $"ISO 3506-1 states no proof stress for {bolt}."
                : $"{bolt} has no proof load on {size}: the class is written for other sizes or threads.";
        }
    }
}
