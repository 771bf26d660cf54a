using System.Globalization;
using System.Text.RegularExpressions;
using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Reference.Checks;

/// <summary>Shear areas of threads and the engagement they give.</summary>
internal static class StrippingChecks
{
    /// <summary>Parent thread around an insert by 7/8 pi d Le, or a stated area; two shear strengths, "85 ksi (...) / 50 ksi (...)".</summary>
    public static void Insert(ReferenceRow row)
    {
        var area = row.NamedOrNull("inputs", "As") is not null
            ? RowQuantity.Area(row, "inputs", "As")
            : ThreadStripping.InsertArea(RowQuantity.Length(row, "inputs", "d"), RowQuantity.Length(row, "inputs", "Le"));
        var strengths = ReferenceRow.NumbersIn(Regex.Replace(row["inputs"][row["inputs"].IndexOf("Fsu", StringComparison.Ordinal)..], @"\([^)]*\)", ""));
        WorkedExampleChecks.List(row, "published", [.. strengths.Select(s => ThreadStripping.Load(
            area, Pressure.FromKilopoundsForcePerSquareInch(double.Parse(s, CultureInfo.InvariantCulture))).PoundsForce)]);
    }

    /// <summary>The limits in the row are those of class 2A and 2B here, to their printed digit; the area follows from them.</summary>
    public static void NutThread(ReferenceRow row)
    {
        var thread = RowQuantity.Thread(row, "inputs");
        var (major, pitch) = (RowQuantity.Length(row, "inputs", "Dsmin"), RowQuantity.Length(row, "inputs", "Enmax"));
        var bolt = ThreadLimits.External(thread);
        var nut = ThreadLimits.Internal(thread);
        row.Holds(bolt is not null && nut is not null, $"no limits are held for {thread}");
        row.Near("Dsmin", major.Inches, bolt!.Value.MajorMin.Inches, 0.000101);
        row.Near("Enmax", pitch.Inches, nut!.Value.PitchMax.Inches, 0.000101);
        var area = ThreadStripping.Areas(thread, RowQuantity.Length(row, "inputs", "Le"))!.Value.Nut.SquareInches;
        WorkedExampleChecks.List(row, "published", area);
    }

    public static void MinimumEngagement(ReferenceRow row)
    {
        var thread = RowQuantity.Thread(row, "inputs");
        var (minor, pitch) = (RowQuantity.Length(row, "inputs", "Knmax"), RowQuantity.Length(row, "inputs", "Esmin"));
        if (row["inputs"].StartsWith('M') is false)
        {
            minor = Length.FromInches(row.Named("inputs", "Knmax"));
            pitch = Length.FromInches(row.Named("inputs", "Esmin"));
            row.Near("Knmax", minor.Inches, ThreadLimits.Internal(thread)!.Value.MinorMax.Inches, 0.00051);
            row.Near("Esmin", pitch.Inches, ThreadLimits.External(thread)!.Value.PitchMin.Inches, 0.000101);
        }

        var engaged = Engagement.EqualMaterials(RowQuantity.Area(row, "inputs", "At"), thread.Pitch, minor, pitch);
        WorkedExampleChecks.List(
            row, row["published"].Length > 0 ? "published" : "computed", row["inputs"].StartsWith('M') ? engaged.Millimeters : engaged.Inches);
    }
}
