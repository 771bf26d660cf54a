using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Components.Fasteners;
using ShopJobs.Web.Components.Look;
using UnitsNet;

namespace ShopJobs.Web.Components.Bench;

/// <summary>
/// The units a bench page speaks: of numbers typed without one, and of everything it answers. What was entered is said as it was
/// entered; what was computed, to three significant figures; what is measured with a calliper or a gauge, to that tool's step.
/// </summary>
public readonly record struct BenchUnits(TorqueUnit TorqueUnit, BenchLength LengthUnit)
{
    /// <summary>N·m and mm, in which the examples are written.</summary>
    public static readonly BenchUnits Usual = new(TorqueUnit.NewtonMetre, BenchLength.Millimetre);

    /// <summary>A torque as it was entered where that is its unit, else converted.</summary>
    public string Say(EnteredTorque torque) => torque.Unit == TorqueUnit
        ? $"{TypedNumber.Plain(torque.Value)} {torque.Unit.Symbol()}"
        : Computed(torque);

    /// <summary>A computed torque.</summary>
    public string Say(Torque torque) => $"{ShownFigure.Of(In(torque))} {TorqueUnit.Symbol()}";

    /// <summary>A computed torque, on the right side of those it is compared with.</summary>
    public string Computed(EnteredTorque torque, params IEnumerable<EnteredTorque> besides)
    {
        var unit = TorqueUnit;
        return $"{ShownFigure.Of(In(torque), [.. besides.Select(other => other.Unit == unit ? other.Value : other.NewtonMetres / unit.NewtonMetresPerUnit())])} {unit.Symbol()}";
    }

    /// <summary>What is set on a wrench: a mark of it, in the wrench's own unit, and in the page's where that is another.</summary>
    public string Set(EnteredTorque mark) => mark.Unit == TorqueUnit
        ? Say(mark)
        : $"{TypedNumber.Plain(mark.Value)} {mark.Unit.Symbol()} ({Computed(mark)})";

    /// <summary>Two computed torques: "73.3 to 123 N·m".</summary>
    public string Range(Torque from, Torque to) => $"{ShownFigure.Of(In(from))} to {Say(to)}";

    /// <summary>Two torques as entered: "105 to 115 N·m"; one where they are the same.</summary>
    public string Range(EnteredTorque from, EnteredTorque to) => from.NewtonMetres == to.NewtonMetres ? Say(to)
        : from.Unit == TorqueUnit && to.Unit == TorqueUnit ? $"{TypedNumber.Plain(from.Value)} to {Say(to)}"
        : ComputedRange(from, to);

    /// <summary>Two computed torques; one where they are the same.</summary>
    public string ComputedRange(EnteredTorque from, EnteredTorque to) =>
        from.NewtonMetres == to.NewtonMetres ? Computed(to) : $"{ShownFigure.Of(In(from))} to {Computed(to)}";

    /// <summary>Clamp loads from one to another: "37 to 68 kN".</summary>
    public string Range(Force from, Force to) => LengthUnit == BenchLength.Inch
        ? $"{ClampWords.Loads(from, to)} ({ShownFigure.Of(from.PoundsForce)} to {ShownFigure.Of(to.PoundsForce)} lbf)"
        : ClampWords.Loads(from, to);

    /// <summary>A length as measured: hundredths of a millimetre or thousandths of an inch, the step of a calliper.</summary>
    public string Say(Length length) => LengthUnit == BenchLength.Inch
        ? FormattableString.Invariant($"{length.Inches:0.000} in")
        : FormattableString.Invariant($"{length.Millimeters:0.0#} mm");

    /// <summary>A computed length.</summary>
    public string Computed(Length length) => LengthUnit == BenchLength.Inch
        ? $"{ShownFigure.Of(length.Inches)} in"
        : $"{ShownFigure.Of(length.Millimeters)} mm";

    /// <summary>A length to the micrometre, the step of a gauge, for the limits of a thread.</summary>
    public string SayFine(Length length) => LengthUnit == BenchLength.Inch
        ? FormattableString.Invariant($"{length.Inches:0.0000} in")
        : FormattableString.Invariant($"{length.Millimeters:0.000} mm");

    /// <summary>A clamp load in kN, beside inches in lbf as well.</summary>
    public string Say(Force load) => LengthUnit == BenchLength.Inch
        ? $"{ClampWords.Load(load)} ({ShownFigure.Of(load.PoundsForce)} lbf)"
        : ClampWords.Load(load);

    /// <summary>An area in mm² or in².</summary>
    public string Say(Area area) => LengthUnit == BenchLength.Inch
        ? $"{ShownFigure.Of(area.SquareInches)} in²"
        : $"{ShownFigure.Of(area.SquareMillimeters)} mm²";

    /// <summary>A stress in MPa, beside inches in ksi as well.</summary>
    public string Say(Pressure stress) => LengthUnit == BenchLength.Inch
        ? FormattableString.Invariant($"{stress.Megapascals:0} MPa ({stress.KilopoundsForcePerSquareInch:0} ksi)")
        : FormattableString.Invariant($"{stress.Megapascals:0} MPa");

    /// <summary>A torque as a number in the page's unit, to draw it.</summary>
    public decimal In(EnteredTorque torque) => torque.NewtonMetres / TorqueUnit.NewtonMetresPerUnit();

    /// <summary>A torque as a number in the page's unit, to draw it.</summary>
    public double In(Torque torque) => torque.NewtonMeters / (double)TorqueUnit.NewtonMetresPerUnit();

    /// <summary>A length as a number in the page's unit, to draw it.</summary>
    public double In(Length length) => LengthUnit == BenchLength.Inch ? length.Inches : length.Millimeters;

    /// <summary>"mm" or "in".</summary>
    public string LengthSymbol => LengthUnit == BenchLength.Inch ? "in" : "mm";
}

/// <summary>A unit of length on the bench.</summary>
public enum BenchLength
{
    /// <summary>Millimetre.</summary>
    Millimetre,

    /// <summary>Inch.</summary>
    Inch,
}
