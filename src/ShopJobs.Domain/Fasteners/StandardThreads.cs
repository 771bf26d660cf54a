using System.Collections.Frozen;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// Standard sizes: coarse pitches and the list of pitches of ISO 261, the UNC and UNF series of ASME B1.1.
/// From memory of the standards; the geometry that follows from them is checked against printed tables.
/// </summary>
internal static class StandardThreads
{
    private static readonly FrozenDictionary<decimal, decimal> Coarse = new (decimal Diameter, decimal Pitch)[]
    {
        (1m, 0.25m), (1.2m, 0.25m), (1.6m, 0.35m), (2m, 0.4m), (2.5m, 0.45m), (3m, 0.5m), (3.5m, 0.6m), (4m, 0.7m),
        (5m, 0.8m), (6m, 1m), (7m, 1m), (8m, 1.25m), (9m, 1.25m), (10m, 1.5m), (11m, 1.5m), (12m, 1.75m), (14m, 2m),
        (16m, 2m), (18m, 2.5m), (20m, 2.5m), (22m, 2.5m), (24m, 3m), (27m, 3m), (30m, 3.5m), (33m, 3.5m), (36m, 4m),
        (39m, 4m), (42m, 4.5m), (45m, 4.5m), (48m, 5m), (52m, 5m), (56m, 5.5m), (60m, 5.5m), (64m, 6m),
    }.ToFrozenDictionary(t => t.Diameter, t => t.Pitch);

    private static readonly FrozenSet<decimal> MetricPitches = new[]
    {
        0.2m, 0.25m, 0.3m, 0.35m, 0.4m, 0.45m, 0.5m, 0.6m, 0.7m, 0.75m, 0.8m, 1m, 1.25m, 1.5m, 1.75m, 2m, 2.5m, 3m, 3.5m,
        4m, 4.5m, 5m, 5.5m, 6m, 8m,
    }.ToFrozenSet();

    private static readonly FrozenSet<string> Unc = (
        "#1-64 #2-56 #3-48 #4-40 #5-40 #6-32 #8-32 #10-24 #12-24 1/4-20 5/16-18 3/8-16 7/16-14 1/2-13 9/16-12 5/8-11 3/4-10 "
        + "7/8-9 1-8 1_1/8-7 1_1/4-7 1_3/8-6 1_1/2-6").Split(' ').ToFrozenSet();

    private static readonly FrozenSet<string> Unf = (
        "#0-80 #1-72 #2-64 #3-56 #4-48 #5-44 #6-40 #8-36 #10-32 #12-28 1/4-28 5/16-24 3/8-24 7/16-20 1/2-20 9/16-18 5/8-18 "
        + "3/4-16 7/8-14 1-12 1_1/8-12 1_1/4-12 1_3/8-12 1_1/2-12").Split(' ').ToFrozenSet();

    public static decimal? CoarsePitch(decimal diameter) => Coarse.TryGetValue(diameter, out var pitch) ? pitch : null;

    public static bool IsMetricPitch(decimal pitch) => MetricPitches.Contains(pitch);

    public static string? InchSeries(string diameter, int threadsPerInch)
    {
        var key = $"{diameter.Replace(' ', '_')}-{threadsPerInch}";
        return Unc.Contains(key) ? "UNC" : Unf.Contains(key) ? "UNF" : null;
    }
}
