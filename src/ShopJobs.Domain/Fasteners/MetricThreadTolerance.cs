using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// Tolerances of ISO 965-1 for positions g and H, grade 6, in micrometres. From memory of the tables; a test holds each against
/// the formula it was rounded from, and printed 6g limits against the result.
/// </summary>
internal static class MetricThreadTolerance
{
    /// <summary>Per pitch: es of position g, Td of grade 6 (bolt major), TD1 of grade 6 (nut minor).</summary>
    internal static readonly PitchRow[] ByPitch =
    [
        new(0.25, 18, 67, 71), new(0.3, 18, 75, 85), new(0.35, 19, 85, 100), new(0.4, 19, 95, 112), new(0.45, 20, 100, 125),
        new(0.5, 20, 106, 140), new(0.6, 21, 125, 160), new(0.7, 22, 140, 180), new(0.75, 22, 140, 190), new(0.8, 24, 150, 200),
        new(1, 26, 180, 236), new(1.25, 28, 212, 265), new(1.5, 32, 236, 300), new(1.75, 34, 265, 335), new(2, 38, 280, 375),
        new(2.5, 42, 335, 450), new(3, 48, 375, 500), new(3.5, 53, 425, 560), new(4, 60, 475, 600), new(4.5, 63, 500, 670),
        new(5, 71, 530, 710), new(5.5, 75, 560, 750), new(6, 80, 600, 800),
    ];

    /// <summary>Per group of diameters (above, up to and including, mm) and pitch: Td2 and TD2 of grade 6.</summary>
    internal static readonly FlankRow[] ByDiameter =
    [
        new(1.4, 2.8, 0.25, 56, 75), new(1.4, 2.8, 0.35, 63, 85), new(1.4, 2.8, 0.4, 67, 90), new(1.4, 2.8, 0.45, 71, 95),
        new(2.8, 5.6, 0.35, 67, 90), new(2.8, 5.6, 0.5, 75, 100), new(2.8, 5.6, 0.6, 85, 112), new(2.8, 5.6, 0.7, 90, 118),
        new(2.8, 5.6, 0.75, 90, 118), new(2.8, 5.6, 0.8, 95, 125),
        new(5.6, 11.2, 0.75, 100, 132), new(5.6, 11.2, 1, 112, 150), new(5.6, 11.2, 1.25, 118, 160), new(5.6, 11.2, 1.5, 132, 180),
        new(11.2, 22.4, 1, 118, 160), new(11.2, 22.4, 1.25, 132, 180), new(11.2, 22.4, 1.5, 140, 190),
        new(11.2, 22.4, 1.75, 150, 200), new(11.2, 22.4, 2, 160, 212), new(11.2, 22.4, 2.5, 170, 224),
        new(22.4, 45, 1, 125, 170), new(22.4, 45, 1.5, 150, 200), new(22.4, 45, 2, 170, 224), new(22.4, 45, 3, 200, 265),
        new(22.4, 45, 3.5, 212, 280), new(22.4, 45, 4, 224, 300), new(22.4, 45, 4.5, 236, 315),
        new(45, 90, 1.5, 160, 212), new(45, 90, 2, 180, 236), new(45, 90, 3, 212, 280), new(45, 90, 4, 236, 315),
        new(45, 90, 5, 250, 335), new(45, 90, 5.5, 265, 355), new(45, 90, 6, 280, 375),
    ];

    public static ExternalThreadLimits? External(double d, double pitch)
    {
        if (Find(d, pitch) is not ({ } p, { } f))
        {
            return null;
        }

        var (major, flank) = (d - (p.Es / 1000), d - (0.649519 * pitch) - (p.Es / 1000));
        return new ExternalThreadLimits("6g", Mm(major), Mm(major - (p.BoltMajor / 1000)), Mm(flank), Mm(flank - (f.Bolt / 1000)));
    }

    public static InternalThreadLimits? Internal(double d, double pitch)
    {
        if (Find(d, pitch) is not ({ } p, { } f))
        {
            return null;
        }

        var (flank, minor) = (d - (0.649519 * pitch), d - (1.082532 * pitch));
        return new InternalThreadLimits("6H", Mm(flank), Mm(flank + (f.Nut / 1000)), Mm(minor), Mm(minor + (p.NutMinor / 1000)));
    }

    private static (PitchRow? Pitch, FlankRow? Flank) Find(double d, double pitch)
    {
        PitchRow? byPitch = null;
        foreach (var row in ByPitch)
        {
            byPitch = Math.Abs(row.Pitch - pitch) < 1e-9 ? row : byPitch;
        }

        FlankRow? byDiameter = null;
        foreach (var row in ByDiameter)
        {
            byDiameter = Math.Abs(row.Pitch - pitch) < 1e-9 && d > row.Above + 1e-9 && d <= row.UpTo + 1e-9 ? row : byDiameter;
        }

        return (byPitch, byDiameter);
    }

    /// <summary>The tables give limits to the micrometre.</summary>
    private static Length Mm(double value) => Length.FromMillimeters(Math.Round(value, 3, MidpointRounding.AwayFromZero));

    internal readonly record struct PitchRow(double Pitch, double Es, double BoltMajor, double NutMinor);

    internal readonly record struct FlankRow(double Above, double UpTo, double Pitch, double Bolt, double Nut);
}
