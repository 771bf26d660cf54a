using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Reference.Checks;

/// <summary>Quantities out of "name=number unit" in a cell.</summary>
internal static class RowQuantity
{
    /// <summary>Without a unit of its own, the number is in inches where the cell speaks of inches, else in millimetres.</summary>
    public static Length Length(ReferenceRow row, string column, string name)
    {
        var usual = System.Text.RegularExpressions.Regex.IsMatch(row[column], @"[0-9] in\b") ? "in" : "mm";
        var value = row.Named(column, name);
        return row.UnitOf(column, name, usual) switch
        {
            "in" => UnitsNet.Length.FromInches(value),
            "mm" => UnitsNet.Length.FromMillimeters(value),
            "um" => UnitsNet.Length.FromMicrometers(value),
            var unit => throw new InvalidDataException($"{row.Id}: {name} in {unit} is no length."),
        };
    }

    public static Force Force(ReferenceRow row, string column, string name, string usual) => (row.UnitOf(column, name, usual), row.Named(column, name)) switch
    {
        ("lbf", var value) => UnitsNet.Force.FromPoundsForce(value),
        ("kip", var value) => UnitsNet.Force.FromPoundsForce(value * 1000),
        ("kN", var value) => UnitsNet.Force.FromKilonewtons(value),
        ("N", var value) => UnitsNet.Force.FromNewtons(value),
        (var unit, _) => throw new InvalidDataException($"{row.Id}: {name} in {unit} is no force."),
    };

    public static Torque Torque(ReferenceRow row, string column, string name) =>
        EnteredTorque.Parse($"{row.Printed(column, name)} {row.UnitOf(column, name, "N.m")}").ToTorque();

    public static Pressure Pressure(ReferenceRow row, string column, string name) => (row.UnitOf(column, name, ""), row.Named(column, name)) switch
    {
        ("ksi", var value) => UnitsNet.Pressure.FromKilopoundsForcePerSquareInch(value),
        ("psi", var value) => UnitsNet.Pressure.FromPoundsForcePerSquareInch(value),
        ("MPa", var value) => UnitsNet.Pressure.FromMegapascals(value),
        (var unit, _) => throw new InvalidDataException($"{row.Id}: {name} in {unit} is no stress."),
    };

    public static Area Area(ReferenceRow row, string column, string name) => (row.UnitOf(column, name, "in2"), row.Named(column, name)) switch
    {
        ("in2", var value) => UnitsNet.Area.FromSquareInches(value),
        ("mm2", var value) => UnitsNet.Area.FromSquareMillimeters(value),
        (var unit, _) => throw new InvalidDataException($"{row.Id}: {name} in {unit} is no area."),
    };

    /// <summary>The thread named anywhere in a cell.</summary>
    public static ThreadSize Thread(ReferenceRow row, string column) =>
        row[column].Split(' ', ';', ',', ':').Select(word => ThreadSize.TryParse(word, out var size, out _) ? size : null).FirstOrDefault(size => size is not null)
            ?? throw new InvalidDataException($"{row.Id}: no thread in \"{row[column]}\".");
}
