using System.Globalization;
using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Tests.Reference.Checks;

/// <summary>Nut factors of tests and of published tables.</summary>
internal static class NutFactorChecks
{
    public static void FromTest(ReferenceRow row)
    {
        var preload = RowQuantity.Force(row, "inputs", "preload", "lbf");
        var diameter = RowQuantity.Length(row, "inputs", "D");
        var factor = ClampLoad.NutFactor(RowQuantity.Torque(row, "inputs", "T"), diameter, preload);
        WorkedExampleChecks.List(row, "published", factor);
        row.Near("preload back", preload.Newtons, ClampLoad.FromTorque(factor, diameter, RowQuantity.Torque(row, "inputs", "T")).Newtons, 1e-6);
    }

    /// <summary>One value or "low-high", of the condition and the document that the row names.</summary>
    public static void Published(ReferenceRow row)
    {
        var document = row.Source.Split(' ', ',')[0];
        var held = NutFactors.Published.FirstOrDefault(f =>
            row["inputs"].Contains(f.Condition, StringComparison.OrdinalIgnoreCase) && f.Source.Contains(document, StringComparison.OrdinalIgnoreCase));
        row.Holds(held is not null, $"no nut factor of \"{row["inputs"]}\" by {document} is held");
        var printed = ReferenceRow.NumbersIn(row["published"]);
        row.Near("least K", double.Parse(printed[0], CultureInfo.InvariantCulture), held!.Low, 1e-9);
        row.Near("greatest K", double.Parse(printed[^1], CultureInfo.InvariantCulture), held.High, 1e-9);
    }
}
