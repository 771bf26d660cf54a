using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Components.Bench.Fields;
using ShopJobs.Web.Components.Bench.Pictures;
using UnitsNet;

namespace ShopJobs.Web.Components.Bench.Cards;

/// <summary>What faces that settle cost, and what a re-torque finds.</summary>
public sealed class SettlingCard : BenchCard
{
    private readonly ThreadField thread = new();
    private readonly FlatJointFields joint;
    private readonly ForceField made = new("made", "Clamp load when it was tightened") { Example = "40" };
    private readonly ChoiceField<FaceRoughness> roughness = new("roughness", "The faces are",
    [
        new("fine", "fine, Rz below 10 µm", FaceRoughness.Fine), new("medium", "medium, Rz 10 to 40 µm", FaceRoughness.Medium),
        new("coarse", "coarse, Rz 40 to 160 µm", FaceRoughness.Coarse),
    ])
    {
        Example = "medium",
    };

    private readonly ChoiceField<bool> shear = new("load-kind", "The load",
        [new("pull", "pulls along the bolt", false), new("shear", "pushes the parts sideways", true)])
    {
        Example = "shear",
    };

    private readonly ChoiceField<int> heads = new("heads", "Faces under head and nut",
        [new("one", "one: a stud, or a bolt in a tapped part", 1), new("two", "two: bolt and nut", 2)])
    {
        Example = "two",
    };

    private readonly NumberField inner = new("inner", "Faces between the clamped parts", "", 0, 20)
    {
        Example = "1",
        IsWhole = true,
        Hint = "Every spacer, washer and shim adds one.",
    };

    public SettlingCard() => joint = new FlatJointFields(thread);

    /// <inheritdoc/>
    public override string Key => "settling";

    /// <inheritdoc/>
    public override string Question => "How much does a joint lose after the first drive?";

    /// <inheritdoc/>
    public override string Use => "Faces flatten under load: the clamp load lost, and the turn that a re-torque should find.";

    /// <inheritdoc/>
    public override IReadOnlyList<BenchField> Fields => [thread, .. joint.All, made, roughness, shear, heads, inner];

    /// <inheritdoc/>
    public override BenchPaper Paper { get; } = new(
        ["loss = fZ/(δS + δP)", "turn = loss (δS + δP)/P · 360°"],
        [new("fZ", "how far thread, face under the head and inner faces settle, µm, by roughness"), new("P", "pitch, mm"), .. FlatJointFields.Symbols],
        "VDI 2230-1 table 5, from memory: check before relying on it; the turn is own arithmetic.",
        "Metal on metal, no paint, no gasket, one material in the grip. Paint or a gasket loses far more. A joint whose instruction forbids re-torque is never touched again.");

    /// <inheritdoc/>
    public override IEnumerable<BenchProblem> Problems(BenchInputs inputs) => joint.Problems(inputs);

    /// <inheritdoc/>
    public override BenchAnswer Answer(BenchInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var (units, size, give) = (inputs.Units, thread.Read(inputs), joint.Read(inputs));
        var settles = Embedding.Settling(roughness.Read(inputs), shear.Read(inputs), heads.Read(inputs), (int)inner.Read(inputs));
        var lost = Settling.Of(made.Read(inputs), settles, give);
        return new BenchAnswer(
            FormattableString.Invariant($"Loses {lost.Share:0 %}"),
            FormattableString.Invariant($"It loses {lost.Share:0 %}: {units.Say(lost.Left)} of {units.Say(lost.Made)} is left."))
        {
            Pictures =
            [
                UnitsOnALine.Loads(units.Mark("left", lost.Left), units.Mark("when it was tightened", lost.Made, LineMarkKind.Beside)) with
                {
                    Span = units.Span("lost", lost.Left, lost.Made) with { Figure = units.Say(lost.Loss) },
                },
            ],
            Lines =
            [
                new("Faces settle by", FormattableString.Invariant($"{settles.Micrometers:0.0} µm"), "fZ"),
                new("Clamp load lost", units.Say(lost.Loss)),
                new("Re-torque turns it by", FormattableString.Invariant($"{lost.TurnToRestore(size, give).Degrees:0.#}°"), "about; a nut that turns further has another cause"),
            ],
            Cautions = lost.Left <= Force.Zero ? ["Nothing is left: so short a joint needs fewer faces, a longer bolt or another way of locking."] : [],
        };
    }
}
