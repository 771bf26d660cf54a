using System.Globalization;
using ShopJobs.Domain.Fasteners;
using UnitsNet;
using Unit = ShopJobs.Domain.Fasteners.TorqueUnit;

namespace ShopJobs.Domain.Tests.Reference;

/// <summary>
/// Factors within 1e-9 where they are exact, else to the printed digits. Rates go by force over length: the library's own
/// pound-force per inch carries a factor rounded to nine digits.
/// </summary>
public class UnitRowTests
{
    public static TheoryData<string> Rows => FastenerRows.Of(FastenerRows.Units);

    [Theory]
    [MemberData(nameof(Rows))]
    public void Unit_converts_by_the_printed_factor(string id)
    {
        var row = FastenerRows.Row(id);
        var parts = row["frm"].Split(' ');
        var value = parts.Length == 2 ? double.Parse(parts[0], CultureInfo.InvariantCulture) : 1;
        var printed = row.Number("factor");
        var tolerance = row["exact"].StartsWith("yes", StringComparison.Ordinal) ? printed * 1e-9 : ReferenceRow.HalfDigit(row["factor"]);

        row.Near($"{row["frm"]} in {row["to"]}", printed, Convert(value, parts[^1], row["to"]), tolerance);
    }

    private static double Convert(double value, string from, string to) => (from, to) switch
    {
        ("lbf", "N") => Force.FromPoundsForce(value).Newtons,
        ("in", "mm") => Length.FromInches(value).Millimeters,
        ("ft", "m") => Length.FromFeet(value).Meters,
        ("psi", "Pa") => Pressure.FromPoundsForcePerSquareInch(value).Pascals,
        ("ksi", "MPa") => Pressure.FromKilopoundsForcePerSquareInch(value).Megapascals,
        ("MPa", "psi") => Pressure.FromMegapascals(value).PoundsForcePerSquareInch,
        ("lbf/in", "N/mm") => Force.FromPoundsForce(value).Newtons / Length.FromInches(1).Millimeters,
        ("in2", "mm2") => Area.FromSquareInches(value).SquareMillimeters,
        ("kgf.cm", "N.m") => Torque.FromKilogramForceCentimeters(value).NewtonMeters,
        ("ozf.in", "N.m") => new EnteredTorque((decimal)value, Unit.PoundForceInch).ToTorque().NewtonMeters / 16,
        _ => (double)(new EnteredTorque((decimal)value, Known(from)).NewtonMetres / Known(to).NewtonMetresPerUnit()),
    };

    private static Unit Known(string text) =>
        TorqueUnits.TryParse(text, out var unit) ? unit : throw new InvalidDataException($"{text} is not a unit of this check.");
}
