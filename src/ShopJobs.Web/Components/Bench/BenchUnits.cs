using System.Globalization;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Components.Fasteners;
using ShopJobs.Web.Components.Look;
using UnitsNet;

namespace ShopJobs.Web.Components.Bench;

/// <summary>The units a bench page speaks: of numbers typed without one, and of everything it answers.</summary>
public readonly record struct BenchUnits(TorqueUnit TorqueUnit, BenchLength LengthUnit)
{
    /// <summary>N·m and mm, in which the examples are written.</summary>
    public static readonly BenchUnits Usual = new(TorqueUnit.NewtonMetre, BenchLength.Millimetre);

    /// <summary>A torque as it was entered where that is its unit, else converted: one decimal from 10 up, two below.</summary>
    public string Say(EnteredTorque torque) => torque.Unit == TorqueUnit
        ? $"{TypedNumber.Plain(Math.Round(torque.Value, 3))} {torque.Unit.Symbol()}"
        : Say((double)(torque.NewtonMetres / TorqueUnit.NewtonMetresPerUnit()));

    /// <summary>A computed torque: one decimal from 10 up, two below.</summary>
    public string Say(Torque torque) => Say(torque.NewtonMeters / (double)TorqueUnit.NewtonMetresPerUnit());

    /// <summary>A computed length: hundredths of a millimetre or thousandths of an inch.</summary>
    public string Say(Length length) => LengthUnit == BenchLength.Inch
        ? FormattableString.Invariant($"{length.Inches:0.000} in")
        : FormattableString.Invariant($"{length.Millimeters:0.0#} mm");

    /// <summary>A computed length to the micrometre, for the limits of a thread.</summary>
    public string SayFine(Length length) => LengthUnit == BenchLength.Inch
        ? FormattableString.Invariant($"{length.Inches:0.0000} in")
        : FormattableString.Invariant($"{length.Millimeters:0.000} mm");

    /// <summary>A clamp load in kN, beside inches in lbf as well.</summary>
    public string Say(Force load) => LengthUnit == BenchLength.Inch
        ? FormattableString.Invariant($"{ClampWords.Load(load)} ({load.PoundsForce:0} lbf)")
        : ClampWords.Load(load);

    /// <summary>An area in mm² or in².</summary>
    public string Say(Area area) => LengthUnit == BenchLength.Inch
        ? FormattableString.Invariant($"{area.SquareInches:0.0000} in²")
        : FormattableString.Invariant($"{area.SquareMillimeters:0.0} mm²");

    /// <summary>A stress in MPa, beside inches in ksi as well.</summary>
    public string Say(Pressure stress) => LengthUnit == BenchLength.Inch
        ? FormattableString.Invariant($"{stress.Megapascals:0} MPa ({stress.KilopoundsForcePerSquareInch:0} ksi)")
        : FormattableString.Invariant($"{stress.Megapascals:0} MPa");

    private string Say(double value) =>
        $"{value.ToString(Math.Abs(value) < 10 ? "0.0#" : "0.0", CultureInfo.InvariantCulture)} {TorqueUnit.Symbol()}";
}

/// <summary>A unit of length on the bench.</summary>
public enum BenchLength
{
    /// <summary>Millimetre.</summary>
    Millimetre,

    /// <summary>Inch.</summary>
    Inch,
}
