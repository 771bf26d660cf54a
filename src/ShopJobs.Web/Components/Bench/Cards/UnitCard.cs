using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Components.Bench.Fields;
using ShopJobs.Web.Components.Bench.Pictures;
using ShopJobs.Web.Components.Look;

namespace ShopJobs.Web.Components.Bench.Cards;

/// <summary>One torque in every unit.</summary>
public sealed class UnitCard : BenchCard
{
    private readonly TorqueField torque = new("torque", "Torque") { Example = "110", Hint = "With or without its unit: 110, 81 lbf·ft, 950 in-lb.", MayBeZero = true };

    /// <inheritdoc/>
    public override string Key => "units";

    /// <inheritdoc/>
    public override string Question => "What is this torque in another unit?";

    /// <inheritdoc/>
    public override string Use => "N·m, lbf·ft, lbf·in and kgf·m side by side, and which way a limit is rounded.";

    /// <inheritdoc/>
    public override IReadOnlyList<BenchField> Fields => [torque];

    /// <inheritdoc/>
    public override BenchPaper Paper { get; } = new(
        [.. Enum.GetValues<TorqueUnit>().Select(unit => FormattableString.Invariant($"1 {unit.Symbol()} = {unit.NewtonMetresPerUnit()} N·m"))],
        [new("lbf", "0.45359237 kg × 9.80665 m/s²"), new("ft, in", "0.3048 m, 0.0254 m")],
        "NIST SP 811, appendix B: exact.",
        "A rounded figure is not the limit itself: compare in the unit the instruction states.");

    /// <inheritdoc/>
    public override BenchAnswer Answer(BenchInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var entered = torque.Read(inputs);
        var other = entered.Unit != inputs.Units.TorqueUnit ? inputs.Units
            : inputs.Units with { TorqueUnit = entered.Unit == TorqueUnit.NewtonMetre ? TorqueUnit.PoundForceFoot : TorqueUnit.NewtonMetre };
        var own = inputs.Units with { TorqueUnit = entered.Unit };
        return new BenchAnswer(other.Computed(entered), $"{own.Say(entered)} is {other.Computed(entered)}.")
        {
            Pictures = [own.Torques(own.Mark("as entered", entered)), other.Torques(other.Mark("the same torque", entered))],
            Table = new(
                "In each unit",
                ["Unit", "As a least torque", "Four decimals", "As a greatest torque"],
                [.. Enum.GetValues<TorqueUnit>().Select(unit => (IReadOnlyList<string>)
                [
                    unit.Symbol(), Number(entered.ToUnit(unit, LimitRounding.Up)), Exact(entered, unit), Number(entered.ToUnit(unit, LimitRounding.Down)),
                ])]),
        };
    }

    private static string Number(EnteredTorque torque) => TypedNumber.Plain(torque.Value);

    private static string Exact(EnteredTorque torque, TorqueUnit unit) =>
        TypedNumber.Plain(Math.Round(torque.NewtonMetres / unit.NewtonMetresPerUnit(), 4));
}
