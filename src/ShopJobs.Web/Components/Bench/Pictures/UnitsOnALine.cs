using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Web.Components.Bench.Pictures;

/// <summary>Quantities of a page put on a number line: the place in the page's unit, the figure as the page says it.</summary>
public static class UnitsOnALine
{
    /// <summary>A line of torques.</summary>
    public static NumberLine Torques(this BenchUnits units, params IReadOnlyList<LineMark> marks) => new(units.TorqueUnit.Symbol(), marks);

    /// <summary>A line of clamp loads, in kN.</summary>
    public static NumberLine Loads(params IReadOnlyList<LineMark> marks) => new("kN", marks);

    /// <summary>A torque as entered, or as computed.</summary>
    public static LineMark Mark(this BenchUnits units, string name, EnteredTorque torque, LineMarkKind kind = LineMarkKind.Value, string? figure = null) =>
        new(name, (double)units.In(torque), figure ?? units.Say(torque), kind);

    /// <summary>A computed torque.</summary>
    public static LineMark Mark(this BenchUnits units, string name, Torque torque, LineMarkKind kind = LineMarkKind.Value) =>
        new(name, units.In(torque), units.Say(torque), kind);

    /// <summary>A clamp load; none below zero is drawn as zero.</summary>
    public static LineMark Mark(this BenchUnits units, string name, Force load, LineMarkKind kind = LineMarkKind.Value) =>
        new(name, Math.Max(0, load.Kilonewtons), units.Say(load), kind);

    /// <summary>A length as measured.</summary>
    public static LineMark Mark(this BenchUnits units, string name, Length length, LineMarkKind kind = LineMarkKind.Value) =>
        new(name, units.In(length), units.Say(length), kind);

    /// <summary>From one torque to another, as entered.</summary>
    public static LineRange Span(this BenchUnits units, string name, EnteredTorque from, EnteredTorque to, string? figure = null) =>
        new(name, (double)units.In(from), (double)units.In(to), figure ?? units.Range(from, to));

    /// <summary>From one computed torque to another.</summary>
    public static LineRange Span(this BenchUnits units, string name, Torque from, Torque to) =>
        new(name, units.In(from), units.In(to), units.Range(from, to));

    /// <summary>From one clamp load to another.</summary>
    public static LineRange Span(this BenchUnits units, string name, Force from, Force to) =>
        new(name, Math.Max(0, from.Kilonewtons), Math.Max(0, to.Kilonewtons), units.Range(from, to));
}
