using System.Globalization;
using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Tests.Fasteners;

/// <summary>Tolerance limits; printed 6g limits and 2A/2B limits are checked row by row with the published tables.</summary>
public class ThreadLimitsTests
{
    /// <summary>
    /// The tables of ISO 965-1 are formulas rounded to preferred numbers (R40), from memory: es = 15 + 11 P, Td = 180 P^(2/3) - 3.15/P^(1/2),
    /// Td2 = 90 P^0.4 d^0.1, TD2 = 1.32 Td2, TD1 = 230 P^0.7 (below 1 mm 433 P - 190 P^1.22), d the geometric mean of its group.
    /// A slip of a figure in a table lies further off than the rounding.
    /// </summary>
    [Fact]
    public void Metric_tolerances_are_the_rounded_formulas_of_the_standard()
    {
        double[] groups = [1.4, 2.8, 5.6, 11.2, 22.4, 45, 90];
        var seen = 0;
        foreach (var (thread, bolt, nut) in MetricSizes())
        {
            var (d, p) = (thread.NominalDiameter.Millimeters, thread.Pitch.Millimeters);
            var upper = Array.FindIndex(groups, g => d <= g + 1e-9);
            var mean = Math.Sqrt(groups[upper - 1] * groups[upper]);
            var flank = 90 * Math.Pow(p, 0.4) * Math.Pow(mean, 0.1);

            Near(15 + (11 * p), (thread.NominalDiameter - bolt.MajorMax).Micrometers, "es");
            Near((180 * Math.Pow(p, 2.0 / 3)) - (3.15 / Math.Sqrt(p)), (bolt.MajorMax - bolt.MajorMin).Micrometers, "Td");
            Near(flank, (bolt.PitchMax - bolt.PitchMin).Micrometers, "Td2");
            Near(1.32 * flank, (nut.PitchMax - nut.PitchMin).Micrometers, "TD2");
            Near(p < 1 ? (433 * p) - (190 * Math.Pow(p, 1.22)) : 230 * Math.Pow(p, 0.7), (nut.MinorMax - nut.MinorMin).Micrometers, "TD1");
            seen++;

            void Near(double formula, double table, string what) => Assert.True(
                Math.Abs(table - formula) <= (0.05 * formula) + 1, FormattableString.Invariant($"{what} of {thread}: {table} against {formula}"));
        }

        Assert.True(seen > 60, $"{seen} sizes");
    }

    [Fact]
    public void A_bolt_at_its_largest_still_goes_into_a_nut_at_its_smallest() => Assert.All(MetricSizes(), size =>
    {
        Assert.True(size.Bolt.PitchMax < size.Nut.PitchMin);
        Assert.True(size.Bolt.MajorMin < size.Bolt.MajorMax && size.Nut.MinorMin < size.Nut.MinorMax);
    });

    /// <summary>Limits behind a printed minimum engagement of 1/4-20 (FED-STD-H28; limits from memory).</summary>
    [Fact]
    public void Quarter_inch_coarse_has_the_limits_of_2A_and_2B()
    {
        var thread = ThreadSize.Parse("1/4-20 UNC");
        var (bolt, nut) = (ThreadLimits.External(thread)!.Value, ThreadLimits.Internal(thread)!.Value);

        Assert.Equal(("2A", "2B"), (bolt.Class, nut.Class));
        Assert.Equal(0.2489, bolt.MajorMax.Inches, 1e-9);
        Assert.Equal(0.2127, bolt.PitchMin.Inches, 1e-9);
        Assert.Equal(0.207, nut.MinorMax.Inches, 0.0005);
    }

    [Fact]
    public void A_size_outside_the_tables_has_no_limits() => Assert.Null(ThreadLimits.External(ThreadSize.Parse("M100x4")));

    private static IEnumerable<(ThreadSize Thread, ExternalThreadLimits Bolt, InternalThreadLimits Nut)> MetricSizes() =>
        from d in Enumerable.Range(3, 58)
        from p in new[] { 0.35, 0.5, 0.6, 0.7, 0.75, 0.8, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5 }
        let name = string.Create(CultureInfo.InvariantCulture, $"M{d}x{p}")
        where ThreadSize.TryParse(name, out _, out _) && ThreadLimits.External(ThreadSize.Parse(name)) is not null
        let thread = ThreadSize.Parse(name)
        select (thread, ThreadLimits.External(thread)!.Value, ThreadLimits.Internal(thread)!.Value);
}
