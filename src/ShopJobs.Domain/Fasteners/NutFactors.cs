namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// Published nut factors K of T = K d F by finish or lubricant, each as a band with its source. They differ between sources by more
/// than a tool does: use them to see how far a torque may be off, never to invent one.
/// </summary>
/// <param name="Condition">Finish or lubricant, in the source's words.</param>
/// <param name="Low">Least K.</param>
/// <param name="High">Greatest K; equal to <paramref name="Low"/> where the source gives one value.</param>
/// <param name="Source">The document.</param>
public sealed record NutFactors(string Condition, double Low, double High, string Source)
{
    private const string Textbook = "Shigley's Mechanical Engineering Design, table 8-15";
    private const string Supplier = "supplier engineering data, not a standard";
    private const string Nasa = "NASA TM-106943 (Dec 1995), p. 3";

    /// <summary>All published bands held here.</summary>
    public static IReadOnlyList<NutFactors> Published { get; } =
    [
        new("black oxide, as received", 0.30, 0.30, Textbook),
        new("zinc plated", 0.20, 0.20, Textbook),
        new("lubricated", 0.18, 0.18, Textbook),
        new("cadmium plated", 0.16, 0.16, Textbook),
        new("anti-seize", 0.12, 0.12, Textbook),
        new("grip nuts", 0.09, 0.09, Textbook),
        new("machine oil on steel", 0.10, 0.26, Supplier),
        new("cadmium on steel", 0.15, 0.19, Supplier),
        new("zinc on steel", 0.17, 0.35, Supplier),
        new("stainless on stainless", 0.30, 0.50, Supplier),
        new("unlubricated", 0.20, 0.20, Nasa),
        new("lubricated", 0.11, 0.15, Nasa + " (from memory)"),
    ];

    /// <summary>Share of a torque that gives the same preload at another nut factor: T scales with K.</summary>
    public static double TorqueShare(double from, double to)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(from);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(to);
        return to / from;
    }
}
