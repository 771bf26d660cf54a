using ShopJobs.Domain.Fasteners;
using UnitsNet.Units;

namespace ShopJobs.Domain.Tests.Reference.Checks;

/// <summary>Geometry and tolerance limits of threads.</summary>
internal static class ThreadChecks
{
    /// <summary>
    /// Nominal diameter exact; pitch to the sixth decimal of inches; diameters to half a unit of the last printed digit, UNR minor diameters to a
    /// whole unit (printed tables cut off or round on the way); stress area within 0.6 %, as tables print three figures.
    /// </summary>
    public static void Geometry(ReferenceRow row)
    {
        var metric = row["unit"] == "mm";
        var thread = ThreadSize.Parse(metric ? row["size"] : $"{row["size"]} {row["series"]}");
        var unit = metric ? LengthUnit.Millimeter : LengthUnit.Inch;
        var isFlatRoot = metric || row["note"].Contains("1.22687", StringComparison.Ordinal);

        row.Near("d", row.Number("d"), thread.NominalDiameter.As(unit), 1e-6);
        row.Near("pitch", row.Number("pitch"), thread.Pitch.As(unit), 6e-7);
        if (row["tpi"].Length > 0)
        {
            row.Near("tpi", row.Number("tpi"), 1 / thread.Pitch.Inches, 1e-6);
        }

        Digits("d2", thread.PitchDiameter.As(unit), 1);
        Digits("d3", (isFlatRoot ? thread.FlatRootMinorDiameter : thread.MinorDiameter).As(unit), isFlatRoot ? 1 : 2);
        Digits("D1", thread.NutMinorDiameter.As(unit), 1);
        row.Near("As", row.Number("As"), metric ? thread.StressArea.SquareMillimeters : thread.StressArea.SquareInches, row.Number("As") * 0.006);

        void Digits(string column, double computed, double halves) =>
            row.Near(column, row.Number(column), computed, (halves * ReferenceRow.HalfDigit(row[column])) + 1e-9);
    }

    /// <summary>To the printed micrometre.</summary>
    public static void Limits6g(ReferenceRow row)
    {
        var thread = ThreadSize.Parse(row["size"]);
        row.Near("pitch", row.Number("pitch"), thread.Pitch.Millimeters, 1e-9);
        var limits = ThreadLimits.External(thread);
        row.Holds(limits is { Class: "6g" }, $"no 6g limits are held for {thread}");

        row.Near("d_max", row.Number("d_max"), limits!.Value.MajorMax.Millimeters, 0.0005);
        row.Near("d_min", row.Number("d_min"), limits.Value.MajorMin.Millimeters, 0.0005);
        row.Near("d2_max", row.Number("d2_max"), limits.Value.PitchMax.Millimeters, 0.0005);
        row.Near("d2_min", row.Number("d2_min"), limits.Value.PitchMin.Millimeters, 0.0005);
    }
}
