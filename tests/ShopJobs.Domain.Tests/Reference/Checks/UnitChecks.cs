using System.Globalization;
using ShopJobs.Domain.Fasteners;
using UnitsNet;
using Unit = ShopJobs.Domain.Fasteners.TorqueUnit;

namespace ShopJobs.Domain.Tests.Reference.Checks;

/// <summary>
/// Factors within 1e-9 where they are exact, else to the printed digits. Torque units go by the domain's own factors where it has the unit.
/// </summary>
internal static class UnitChecks
{
    /// <summary>Each unit in the base unit of its dimension, by the quantities the domain computes with.</summary>
    private static readonly Dictionary<string, (string Dimension, double Factor)> Known = new()
    {
        ["N.m"] = ("torque", (double)Unit.NewtonMetre.NewtonMetresPerUnit()),
        ["lbf.ft"] = ("torque", (double)Unit.PoundForceFoot.NewtonMetresPerUnit()),
        ["lbf.in"] = ("torque", (double)Unit.PoundForceInch.NewtonMetresPerUnit()),
        ["kgf.m"] = ("torque", (double)Unit.KilogramForceMetre.NewtonMetresPerUnit()),
        ["kgf.cm"] = ("torque", Torque.FromKilogramForceCentimeters(1).NewtonMeters),
        ["ozf.in"] = ("torque", (double)Unit.PoundForceInch.NewtonMetresPerUnit() / 16),
        ["N"] = ("force", 1),
        ["kN"] = ("force", Force.FromKilonewtons(1).Newtons),
        ["lbf"] = ("force", Force.FromPoundsForce(1).Newtons),
        ["kip"] = ("force", Force.FromPoundsForce(1000).Newtons),
        ["kgf"] = ("force", Force.FromKilogramsForce(1).Newtons),
        ["m"] = ("length", 1),
        ["mm"] = ("length", Length.FromMillimeters(1).Meters),
        ["in"] = ("length", Length.FromInches(1).Meters),
        ["ft"] = ("length", Length.FromFeet(1).Meters),
        ["Pa"] = ("pressure", 1),
        ["kPa"] = ("pressure", Pressure.FromKilopascals(1).Pascals),
        ["bar"] = ("pressure", Pressure.FromBars(1).Pascals),
        ["MPa"] = ("pressure", Pressure.FromMegapascals(1).Pascals),
        ["psi"] = ("pressure", Pressure.FromPoundsForcePerSquareInch(1).Pascals),
        ["ksi"] = ("pressure", Pressure.FromKilopoundsForcePerSquareInch(1).Pascals),
        ["kgf/mm2"] = ("pressure", Force.FromKilogramsForce(1).Newtons * 1e6),
        ["N/mm"] = ("rate", 1),
        ["lbf/in"] = ("rate", Force.FromPoundsForce(1).Newtons / Length.FromInches(1).Millimeters),
        ["kgf/mm"] = ("rate", Force.FromKilogramsForce(1).Newtons),
        ["mm2"] = ("area", 1),
        ["in2"] = ("area", Area.FromSquareInches(1).SquareMillimeters),
        ["kg"] = ("mass", 1),
        ["lb"] = ("mass", Mass.FromPounds(1).Kilograms),
        ["rad"] = ("angle", 1),
        ["deg"] = ("angle", Angle.FromDegrees(1).Radians),
    };

    public static void Factor(ReferenceRow row)
    {
        var parts = row["frm"].Split(' ');
        var value = parts.Length == 2 ? double.Parse(parts[0], CultureInfo.InvariantCulture) : 1;
        row.Holds(Known.ContainsKey(parts[^1]) && Known.ContainsKey(row["to"]), $"{parts[^1]} to {row["to"]} is not known here");
        var (from, to) = (Known[parts[^1]], Known[row["to"]]);
        row.Holds(from.Dimension == to.Dimension, $"{parts[^1]} and {row["to"]} are not of one dimension");

        var printed = row.Number("factor");
        var exact = row["exact"].StartsWith("yes", StringComparison.Ordinal);
        row.Near($"{row["frm"]} in {row["to"]}", printed, value * from.Factor / to.Factor, exact ? printed * 1e-9 : ReferenceRow.HalfDigit(row["factor"]));
    }
}
