using System.Globalization;
using ShopJobs.Domain.Fasteners;
using UnitsNet;
using UnitsNet.Units;

namespace ShopJobs.Domain.Tests.Reference.Checks;

/// <summary>Strength of classes and grades, pairing of nuts, proof and ultimate loads.</summary>
internal static class GradeChecks
{
    public static Action<ReferenceRow>? Of(string kind) => kind switch
    {
        "strength class" or "stainless class" or "SAE J429 grade" => Strength,
        "nut pairing" => Pairing,
        "nut proof stress" => NutProof,
        _ when kind.StartsWith("proof load", StringComparison.Ordinal) || kind.StartsWith("min ultimate", StringComparison.Ordinal) => Load,
        _ => null,
    };

    private static void Strength(ReferenceRow row)
    {
        var sae = row["kind"].StartsWith("SAE", StringComparison.Ordinal);
        var strength = StrengthClass.Parse(sae ? $"SAE {row["grade"]}" : row["grade"].Split('<', '>')[0]);
        var unit = row["unit"] == "ksi" ? PressureUnit.KilopoundForcePerSquareInch : PressureUnit.Megapascal;
        var quantities = row["quantity"].Split(';');
        var printed = row["value"].Split(';');
        row.Holds(quantities.Length == printed.Length, $"{quantities.Length} quantities and {printed.Length} values");
        foreach (var diameter in Diameters(row))
        {
            var values = strength.ValuesFor(diameter);
            row.Holds(values is not null, $"no strength of {strength} at {diameter}");
            foreach (var (quantity, text) in quantities.Zip(printed))
            {
                var held = quantity switch
                {
                    "Rm_min" or "tensile" => values!.Value.TensileStrength,
                    "Rp_or_ReL_min" or "Rp0.2_min" or "yield" => values!.Value.YieldStress,
                    "Sp" or "proof" => values!.Value.ProofStress,
                    _ => null,
                };
                row.Holds(held is not null, $"no {quantity} of {strength} is held");
                row.Near($"{quantity} at {diameter}", double.Parse(text, CultureInfo.InvariantCulture), held!.Value.As(unit), 1e-6);
            }
        }
    }

    private static void Pairing(ReferenceRow row)
    {
        var nut = NutClass.Parse(row["grade"]);
        row.Same("highest bolt class", row["value"], nut.HighestBoltClass?.Name);
        row.Holds(NutPairing.Judge(StrengthClass.Parse(row["value"]), nut) is NutPairing.FullStrength, $"{row["value"]} on nut {nut} is no full pair");
    }

    private static void NutProof(ReferenceRow row) =>
        row.Near("proof stress", row.Number("value"), NutClass.Parse(row["grade"]).NominalProofStress.Megapascals, 1e-6);

    /// <summary>
    /// Tables multiply a stress area of three figures and round the load to three figures: half a unit of each is allowed; a whole unit of
    /// the load where the table was written down from memory.
    /// </summary>
    private static void Load(ReferenceRow row)
    {
        var thread = ThreadSize.Parse(row["size"]);
        var strength = StrengthClass.Parse(thread.Standard == ThreadStandard.UnifiedInch ? $"SAE {row["grade"]}" : row["grade"]);
        var load = row["kind"].StartsWith("proof", StringComparison.Ordinal) ? strength.ProofLoad(thread) : strength.UltimateLoad(thread);
        row.Holds(load is not null, $"no load of {strength} on {thread}");
        var printed = row.Number("value");
        var area = thread.StressArea.SquareMillimeters;
        var computed = row["unit"] == "lbf" ? load!.Value.PoundsForce : load!.Value.Newtons;
        row.Near(row["quantity"], printed, computed, (HalfThirdFigure(printed) * (row.Evidence == "memory" ? 2 : 1)) + (printed * HalfThirdFigure(area) / area));
    }

    private static double HalfThirdFigure(double value) => 0.5 * Math.Pow(10, Math.Floor(Math.Log10(value)) - 2);

    /// <summary>The ends of the sizes a row holds for: "8.8>16", "&lt;=M39 (...)", "1/4-1", "over 1-1 1/2".</summary>
    private static Length[] Diameters(ReferenceRow row)
    {
        var (grade, size) = (row["grade"], row["size"]);
        if (size.StartsWith("<=M", StringComparison.Ordinal))
        {
            return [Length.FromMillimeters(4), Length.FromMillimeters(double.Parse(ReferenceRow.NumbersIn(size)[0], CultureInfo.InvariantCulture))];
        }

        if (row["unit"] == "ksi")
        {
            var over = size.StartsWith("over ", StringComparison.Ordinal);
            var ends = (over ? size[5..] : size).Split('-');
            return [Length.FromInches(Inches(ends[0]) + (over ? 0.125 : 0)), Length.FromInches(Inches(ends[1]))];
        }

        var (least, most) = grade.Contains("<=", StringComparison.Ordinal) ? (4.0, 16.0)
            : grade.Contains('>', StringComparison.Ordinal) ? (18.0, 39.0)
            : grade == "9.8" ? (4.0, 16.0) : (4.0, 39.0);
        return [Length.FromMillimeters(least), Length.FromMillimeters(most)];
    }

    private static double Inches(string text) => text.Split(' ').Sum(part =>
        part.Split('/') is [var top, var bottom]
            ? double.Parse(top, CultureInfo.InvariantCulture) / double.Parse(bottom, CultureInfo.InvariantCulture)
            : double.Parse(part, CultureInfo.InvariantCulture));
}
