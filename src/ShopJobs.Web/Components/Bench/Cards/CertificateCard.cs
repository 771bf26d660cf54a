using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Bench.Fields;
using ShopJobs.Web.Components.Bench.Pictures;

namespace ShopJobs.Web.Components.Bench.Cards;

/// <summary>A certificate's percent, read both ways.</summary>
public sealed class CertificateCard : BenchCard
{
    private readonly TorqueField set = new("set", "At, set or shown") { Example = "110" };
    private readonly ChoiceField<decimal> sign = new("sign", "The certificate prints", [new("plus", "plus, or no sign", 1), new("minus", "minus", -1)]) { Example = "plus" };
    private readonly NumberField percent = new("percent", "Percent", "%", 0, 50) { Example = "5" };

    /// <inheritdoc/>
    public override string Key => "certificate";

    /// <inheritdoc/>
    public override string Question => "What does a certificate's percent mean?";

    /// <inheritdoc/>
    public override string Use => "Two conventions are in use with opposite signs: what the wrench gave by each of them.";

    /// <inheritdoc/>
    public override IReadOnlyList<BenchField> Fields => [set, sign, percent];

    /// <inheritdoc/>
    public override BenchPaper Paper { get; } = new(
        ["deviation: (set − rig)/rig, so rig = set/(1 + percent/100)", "delivered: (rig − set)/set, so rig = set (1 + percent/100)"],
        [new("set", "what was set on the wrench or shown by it"), new("rig", "what the rig read: the torque given")],
        "ISO 6789 (deviation), from memory; the other form is common on certificates, no source.",
        "Find on the certificate which one it is, or ask the laboratory for the pair of set and read values. A bare percent is never recorded.");

    /// <inheritdoc/>
    public override BenchAnswer Answer(BenchInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var (units, torque) = (inputs.Units, set.Read(inputs));
        var signed = sign.Read(inputs) * percent.Read(inputs);
        var deviation = CertificatePercent.ToPoint(torque.Value, signed, PercentDefinition.Deviation);
        var delivered = CertificatePercent.ToPoint(torque.Value, signed, PercentDefinition.Delivered);
        return new BenchAnswer(
            signed == 0 ? units.Say(torque) : $"{Given(deviation)} or {Given(delivered)}",
            signed == 0
                ? $"No error: {units.Say(torque)} was given."
                : $"{Given(deviation)} or {Given(delivered)} was given, by which of the two it is.")
        {
            Pictures =
            [
                units.Torques(
                    units.Mark("read as a deviation", Torque(deviation), LineMarkKind.Value, Given(deviation)),
                    units.Mark("read as delivered", Torque(delivered), LineMarkKind.Value, Given(delivered)),
                    units.Mark("set or shown", torque, LineMarkKind.Beside)),
            ],
            Lines =
            [
                new("Deviation, ISO 6789", units.Say(Torque(deviation)), deviation.Words()),
                new("Delivered over set", units.Say(Torque(delivered)), delivered.Words()),
            ],
        };

        EnteredTorque Torque(CalibrationPoint point) => torque with { Value = Math.Round(point.RigRead, 2) };
        string Given(CalibrationPoint point) => units.Computed(torque with { Value = point.RigRead });
    }
}
