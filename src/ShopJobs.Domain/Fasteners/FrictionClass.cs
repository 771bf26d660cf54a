namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// Friction classes A to E of VDI 2230 table A5 (from memory): which friction in thread and under the head may be expected of
/// surfaces and lubricants. The document gives ranges and no nominal value; the middle stands for it here.
/// </summary>
/// <param name="Letter">A to E.</param>
/// <param name="Low">Least friction.</param>
/// <param name="High">Greatest friction.</param>
/// <param name="Examples">Surfaces and lubricants, shortened.</param>
public sealed record FrictionClass(char Letter, double Low, double High, string Examples)
{
    private const string Source = "VDI 2230-1 table A5, from memory; the middle taken as nominal";

    /// <summary>The five classes; E has no upper end in the document and stops at 0.45 here.</summary>
    public static IReadOnlyList<FrictionClass> All { get; } =
    [
        new('A', 0.04, 0.10, "bright or coated, with MoS2, graphite, PTFE or wax"),
        new('B', 0.08, 0.16, "bright, phosphated or zinc, with oil, grease, wax or MoS2 paste; pre-applied locker"),
        new('C', 0.14, 0.24, "phosphated, zinc or austenitic steel as delivered, thinly oiled"),
        new('D', 0.20, 0.35, "austenitic steel with oil; zinc or hot-dip zinc without lubricant"),
        new('E', 0.30, 0.45, "austenitic steel, aluminium or zinc without lubricant"),
    ];

    /// <summary>The class as a friction band.</summary>
    public FrictionBand Band => new(Low, (Low + High) / 2, High, $"class {Letter} of {Source}");
}
