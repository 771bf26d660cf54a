using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Bench.Fields;
using ShopJobs.Web.Components.Bench.Pictures;
using UnitsNet;

namespace ShopJobs.Web.Components.Bench.Cards;

/// <summary>A lever adapter on a torque wrench, both ways.</summary>
public sealed class AdapterCard : BenchCard
{
    private readonly ChoiceField<bool> asked = new("find", "I know",
    [
        new("setting", "the torque at the fastener: what do I set?", true),
        new("torque", "what was set: what came to the fastener?", false),
    ])
    {
        Example = "setting",
    };

    private readonly TorqueField torque = new("torque", "That torque") { Example = "110" };
    private readonly LengthField wrench = new("wrench", "Wrench: square drive to the mark of the hand") { Example = "480" };
    private readonly LengthField adapter = new("adapter", "Adapter: square drive to the fastener") { Example = "40", MayBeZero = true };
    private readonly TorqueField graduation;
    private readonly NumberField angle = new("angle", "Angle of the adapter", "°", 0, 180)
    {
        Example = "0",
        Hint = "0° straight out, 90° to the side (no change), 180° back towards the hand.",
    };

    public AdapterCard() => graduation = new("graduation", "Steps of the wrench") { Example = "1", IsAsked = AsksSetting };

    /// <inheritdoc/>
    public override string Key => "adapter";

    /// <inheritdoc/>
    public override string Question => "What do I set on the wrench with this crowfoot?";

    /// <inheritdoc/>
    public override string Use => "Straight or at an angle, and back: what a setting brought to the fastener.";

    /// <inheritdoc/>
    public override IReadOnlyList<BenchField> Fields => [asked, torque, graduation, wrench, adapter, angle];

    /// <inheritdoc/>
    public override BenchPaper Paper { get; } = new(
        ["S = T L/(L + E cos a)", "T = S (L + E cos a)/L"],
        [
            new("S", "setting of the wrench, N·m"), new("T", "torque at the fastener, N·m"),
            new("L", "square drive to the mark of the hand, mm"), new("E", "square drive to the fastener, mm"), new("a", "angle of the adapter, 0 straight out"),
        ],
        "US Navy NAVEDTRA 14315; US Army TM 9-254 (angled).",
        "Only while the hand pulls at the mark that L was measured to, square to the wrench. No pipe on the handle.");

    /// <inheritdoc/>
    public override IEnumerable<BenchProblem> Problems(BenchInputs inputs)
    {
        // The lever L + E cos a is least at 180 degrees: an adapter shorter than the wrench leaves one at every angle.
        if (adapter.Read(inputs) >= wrench.Read(inputs))
        {
            yield return new(adapter, "The adapter is as long as the wrench or longer: measure both again.");
        }
    }

    /// <inheritdoc/>
    public override BenchAnswer Answer(BenchInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var lever = new AdapterSetting(wrench.Read(inputs), adapter.Read(inputs), Angle.FromDegrees((double)angle.Read(inputs)));
        var units = inputs.Units;
        var known = torque.Read(inputs);
        var ratio = new BenchLine("Setting over torque", FormattableString.Invariant($"{lever.Ratio:0.000}"), "the same for every torque with this wrench and adapter");
        if (!asked.Read(inputs))
        {
            var came = lever.AtFastener(known);
            return new BenchAnswer(units.Computed(came), $"Set to {units.Say(known)}, {units.Computed(came)} came to the fastener.")
            {
                Pictures = [new LeverPicture(lever), units.Torques(units.Mark("at the fastener", came, LineMarkKind.Value, units.Computed(came)), units.Mark("set", known, LineMarkKind.Beside))],
                Lines = [new("At the fastener, not rounded", Exactly(came)), ratio],
            };
        }

        var step = new WrenchStep(graduation.Read(inputs));
        var (exact, mark) = (lever.SettingFor(known), step.Nearest(lever.SettingFor(known)));
        var brings = lever.AtFastener(mark);
        return new BenchAnswer($"Set {units.Set(mark)}", $"For {units.Say(known)} at the fastener set {units.Set(mark)} ({step}).")
        {
            Pictures = [new LeverPicture(lever), units.Torques(units.Mark("set", mark, LineMarkKind.Value, units.Set(mark)), units.Mark("at the fastener", known, LineMarkKind.Beside))],
            Lines =
            [
                new("The mark brings", Exactly(brings), "to the fastener: compare it with what the instruction permits"),
                new("Set, not rounded", Exactly(exact), "before it is brought to a mark of the wrench"),
                ratio,
            ],
        };

        string Exactly(EnteredTorque torque) => units.Say(torque with { Value = Math.Round(torque.Value, 3) });
    }

    private bool AsksSetting(BenchInputs inputs) => asked.ProblemOf(inputs) is null && asked.Read(inputs);
}
