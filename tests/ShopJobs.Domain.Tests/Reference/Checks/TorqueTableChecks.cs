using System.Globalization;
using System.Text.RegularExpressions;
using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Reference.Checks;

/// <summary>Printed torques: assembly tables, charts by nut factor, and the inner relations of maintenance manuals.</summary>
internal static class TorqueTableChecks
{
    private const string ToolSettings = "published value rounded to tool settings";

    public static Action<ReferenceRow>? Of(string table) => table switch
    {
        _ when table.StartsWith("VDI 2230", StringComparison.Ordinal) => Assembly,
        _ when table.Contains(", K=", StringComparison.Ordinal) => ByNutFactor,
        _ when table.StartsWith("FAA AC 43.13-1B", StringComparison.Ordinal) => ShearNuts,
        _ when table.StartsWith("TM 9-2320", StringComparison.Ordinal) => TwoUnits,
        _ => null,
    };

    public static string[] Checked(ReferenceRow row) =>
        row["table"].StartsWith("FAA", StringComparison.Ordinal) ? ["computed"] : row["F_kN"].Length > 0 ? ["F_kN", "M"] : ["M"];

    /// <summary>
    /// Force within 0.5 %, torque within 1 %, each and half a unit of the last printed digit. Stainless tables cut forces of 50 kN and
    /// more off to whole kN: a whole unit. Torques rounded to settings of tools: 2.5 %.
    /// </summary>
    private static void Assembly(ReferenceRow row)
    {
        var thread = ThreadSize.Parse(row["thread"]);
        var yield = StrengthClass.Parse(row["grade"]).YieldStress(thread.NominalDiameter);
        row.Holds(yield is not null, $"no yield of {row["grade"]} at {thread}");
        var friction = row.Number("mu");
        var printedDiameter = row.NamedOrNull("computed", "DKm");
        var face = HexagonFace.On(thread);
        row.Holds(face is not null || printedDiameter is not null, $"no head of {thread} is known");
        if (face is not null && printedDiameter is { } mean)
        {
            row.Near("DKm", mean, face.MeanFrictionDiameter.Millimeters, 0.0051);
        }

        var joint = face is not null
            ? JointGeometry.For(thread, face)
            : new JointGeometry(thread.Pitch.Millimeters, thread.PitchDiameter.Millimeters, printedDiameter!.Value / 2);
        var force = ClampLoad.AtYieldUtilisation(thread, yield!.Value, friction);
        if (row["F_kN"].Length > 0)
        {
            var cutOff = row["table"].Contains("stainless", StringComparison.Ordinal) && !row["F_kN"].Contains('.', StringComparison.Ordinal);
            row.Near("F", row.Number("F_kN"), force.Kilonewtons, (row.Number("F_kN") * 0.005) + (ReferenceRow.HalfDigit(row["F_kN"]) * (cutOff ? 2 : 1)));
        }

        var torque = row.Number("M");
        var tolerance = row["note"] == ToolSettings ? torque * 0.025 : (torque * 0.01) + ReferenceRow.HalfDigit(row["M"]);
        row.Near("M", torque, ClampLoad.ToTorque(joint, force, friction, friction).NewtonMeters, tolerance);
    }

    /// <summary>Three quarters of the proof load, T = K d F: within 0.6 % for the printed area, and half a digit of the torque.</summary>
    private static void ByNutFactor(ReferenceRow row)
    {
        var thread = ThreadSize.Parse(row["thread"]);
        var share = double.Parse(Regex.Match(row["basis"], @"= (?<s>0\.[0-9]+)\*").Groups["s"].Value, CultureInfo.InvariantCulture);
        var force = StrengthClass.Parse(row["grade"]).ProofLoad(thread)!.Value * share;
        row.Near("F", row.Number("F_kN"), force.Kilonewtons, row.Number("F_kN") * 0.006);

        var torque = ClampLoad.ToTorque(row.Named("table", "K"), thread.NominalDiameter, force).PoundForceFeet;
        row.Near("M", row.Number("M"), torque, (row.Number("M") * 0.006) + ReferenceRow.HalfDigit(row["M"]));
        var back = ClampLoad.FromTorque(row.Named("table", "K"), thread.NominalDiameter, Torque.FromPoundForceFeet(row.Number("M")));
        row.Near("F from M", row.Number("F_kN"), back.Kilonewtons, row.Number("F_kN") * (0.006 + (ReferenceRow.HalfDigit(row["M"]) / row.Number("M"))));
    }

    /// <summary>
    /// The manual's own torques, checked against each other: ranges in order, below their greatest, and the torques of a thin shear nut
    /// those of a tension nut by 24/40 ksi, as far as rounding to fives and tens lets them; the printed ratio to its digits.
    /// </summary>
    private static void ShearNuts(ReferenceRow row)
    {
        var match = Regex.Match(
            row["M"], @"^tension nut (?<t1>\d+)-(?<t2>\d+); shear nut (?<s1>\d+)-(?<s2>\d+); max tension nut (?<tm>\d+); max shear nut (?<sm>\d+)$");
        row.Holds(match.Success, $"\"{row["M"]}\" is not two ranges with their greatest values");
        EnteredTorque Of(string group) => EnteredTorque.Parse($"{match.Groups[group].Value} {row["M_unit"]}");
        var tension = new TorqueRange(Of("t1"), Of("t2"));
        var shear = new TorqueRange(Of("s1"), Of("s2"));

        row.Holds(!tension.Contains(Of("tm")) && tension.IsOver(Of("tm")), "the greatest torque of the tension nut is not above its range");
        row.Holds(shear.IsOver(Of("sm")), "the greatest torque of the shear nut is not above its range");
        foreach (var (thin, full) in new[] { ("s1", "t1"), ("s2", "t2"), ("sm", "tm") })
        {
            row.Near($"{thin}/{full}", NutClass.ShearNutShare, (double)(Of(thin).NewtonMetres / Of(full).NewtonMetres), 0.065);
        }

        row.Near("ratio", row.Named("computed", "ratio"), (double)(Of("sm").NewtonMetres / Of("tm").NewtonMetres), 0.00051);
        row.Near("stress ratio", double.Parse(ReferenceRow.NumbersIn(row["computed"])[1], CultureInfo.InvariantCulture), NutClass.ShearNutShare, 0.0005);
    }

    /// <summary>
    /// One torque in two units, both ways: half a unit of what is printed and 0.05 %, as the manual's own factor is not stated and some of its figures
    /// are rounded up where the exact one is just below the half.
    /// </summary>
    private static void TwoUnits(ReferenceRow row)
    {
        var match = Regex.Match(row["M"], @"^(?<first>\S+ lbf\.(ft|in)) = (?<metres>\S+) N\.m$");
        row.Holds(match.Success, $"\"{row["M"]}\" is not in two units");
        var printed = double.Parse(match.Groups["metres"].Value, CultureInfo.InvariantCulture);
        var first = EnteredTorque.Parse(match.Groups["first"].Value);
        row.Near("N.m", printed, (double)first.NewtonMetres, ReferenceRow.HalfDigit(match.Groups["metres"].Value) + (printed * 0.0005));
        var back = printed / (double)first.Unit.NewtonMetresPerUnit();
        row.Near("back", (double)first.Value, back, ReferenceRow.HalfDigit(match.Groups["first"].Value.Split(' ')[0]) + (back * 0.0005));
    }
}
