using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Components.Bench.Fields;
using ShopJobs.Web.Components.Bench.Pictures;

namespace ShopJobs.Web.Components.Bench.Cards;

/// <summary>A clamped joint that is pulled apart: what the bolt feels and what is left on the faces.</summary>
public sealed class WorkingLoadCard : BenchCard
{
    private readonly ThreadField thread = new();
    private readonly FlatJointFields joint;
    private readonly ForceField clamp = new("clamp", "Clamp load before the load acts") { Example = "40", MayBeZero = true };
    private readonly ForceField load = new("load", "Load on each bolt, in line with it") { Example = "10" };
    private readonly StrengthField strength = new() { IsOptional = true };

    public WorkingLoadCard() => joint = new FlatJointFields(thread);

    /// <inheritdoc/>
    public override string Key => "working-load";

    /// <inheritdoc/>
    public override string Question => "How much of the load reaches the bolt?";

    /// <inheritdoc/>
    public override string Use => "How far bolt and parts give, the share of a load that the bolt takes, and when the faces part.";

    /// <inheritdoc/>
    public override IReadOnlyList<BenchField> Fields => [thread, strength, .. joint.All, clamp, load];

    /// <inheritdoc/>
    public override BenchPaper Paper { get; } = new(
        [
            "C = δP/(δS + δP)", "bolt: F + C P; faces: F − (1 − C) P",
            "n0 = F/(P (1 − C)); nL = (Fp − F)/(C P); np = Fp/(F + C P)",
        ],
        [
            .. FlatJointFields.Symbols, new("C", "share of the load that the bolt feels"), new("F, P", "clamp load and load, N"), new("Fp", "proof load, N"),
            new("n0, nL, np", "how often the load may grow until the faces part, until the bolt is at its proof load; proof load over the bolt's load"),
        ],
        "Shigley's Mechanical Engineering Design, chapter 8; VDI 2230. Moduli: handbook values, from memory.",
        "Elastic, one material in the grip, flat faces that touch, the load in line with the bolt at the outer faces. Use the least clamp load for parting and the greatest for the bolt.");

    /// <inheritdoc/>
    public override IEnumerable<BenchProblem> Problems(BenchInputs inputs) => joint.Problems(inputs);

    /// <inheritdoc/>
    public override BenchAnswer Answer(BenchInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var (units, give) = (inputs.Units, joint.Read(inputs));
        var loaded = new WorkingLoad(clamp.Read(inputs), load.Read(inputs), give.LoadShare);
        var part = loaded.OnFaces.Newtons <= 0;
        var proof = strength.IsGiven(inputs) ? strength.Read(inputs).ProofLoad(thread.Read(inputs)) : null;
        return new BenchAnswer(
            part ? "The faces part" : $"{give.LoadShare.ToString("0 %", System.Globalization.CultureInfo.InvariantCulture)} of the load",
            part
                ? $"The faces part: the clamp load is gone at {ShownFigure.Of(loaded.SeparationFactor)} times the load."
                : $"The bolt feels {units.Say(loaded.InBolt)}; {units.Say(loaded.OnFaces)} still presses the faces together.")
        {
            Pictures =
            [
                UnitsOnALine.Loads(
                [
                    units.Mark("in the bolt", loaded.InBolt),
                    units.Mark("clamp load before", clamp.Read(inputs), LineMarkKind.Beside),
                    .. proof is { } bears ? new[] { units.Mark("proof load", bears, LineMarkKind.Limit) } : [],
                ]) with
                {
                    Span = part ? null : units.Span("still presses the faces together", UnitsNet.Force.Zero, loaded.OnFaces) with { Figure = units.Say(loaded.OnFaces) },
                },
            ],
            Lines =
            [
                new("Share of the load in the bolt", FormattableString.Invariant($"{give.LoadShare:0 %}"), "C"),
                new("Faces part at", FormattableString.Invariant($"{loaded.SeparationFactor:0.0} × the load"), "n0"),
                .. proof is { } most
                    ? new BenchLine[]
                    {
                        new("Bolt at its proof load at", FormattableString.Invariant($"{loaded.LoadFactor(most):0.0} × the load"), $"nL; proof load {units.Say(most)}"),
                        new("Proof load over load in the bolt", FormattableString.Invariant($"{loaded.YieldFactor(most):0.00}"), "np"),
                    }
                    : [],
                Micrometres("Bolt stretches by", clamp.Read(inputs).Newtons * give.Bolt, "at the clamp load"),
                Micrometres("Parts are pressed together by", clamp.Read(inputs).Newtons * give.Parts, "at the clamp load"),
            ],
            Cautions = part ? ["Once the faces part the bolt carries all of the load and works loose or tires: clamp more, or use more bolts."] : [],
        };
    }

    private static BenchLine Micrometres(string what, double millimetres, string why) =>
        new(what, FormattableString.Invariant($"{millimetres * 1000:0} µm"), why);
}
