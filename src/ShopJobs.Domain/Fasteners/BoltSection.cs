using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>A stretch of a bolt of one cross section.</summary>
/// <param name="Length">Length that carries the clamp load; above zero.</param>
/// <param name="Area">Cross section; above zero.</param>
public readonly record struct BoltSection(Length Length, Area Area)
{
    /// <summary>Young's modulus of steel, 205 GPa (VDI 2230).</summary>
    public static readonly Pressure Steel = Pressure.FromGigapascals(205);

    /// <summary>
    /// deltaS of a bolt in mm/N, sum of l/(E A) over its sections, with a head that gives like 0.4 d of shank and an engaged thread
    /// that gives like 0.4 d of the nominal diameter and half a diameter of the core d3 (VDI 2230; 0.5 d for a hexagon head in
    /// some editions). <paramref name="free"/> is what lies between head and nut: shank and free thread.
    /// </summary>
    public static double Resilience(ThreadSize thread, IEnumerable<BoltSection> free, Pressure modulus)
    {
        ArgumentNullException.ThrowIfNull(thread);
        ArgumentNullException.ThrowIfNull(free);
        var d = thread.DiameterMm;
        var core = thread.MinorDiameter.Millimeters;
        var (shankArea, coreArea) = (Math.PI * d * d / 4, Math.PI * core * core / 4);
        var ends = (0.4 * d / shankArea) + (0.5 * d / coreArea) + (0.4 * d / shankArea);
        return (ends + free.Sum(s => s.Length.Millimeters / s.Area.SquareMillimeters)) / modulus.Megapascals;
    }

    /// <summary>deltaS of a bolt with one shank of the nominal diameter and the rest of the grip in thread (core d3).</summary>
    public static double Resilience(ThreadSize thread, Length shank, Length freeThread, Pressure modulus)
    {
        ArgumentNullException.ThrowIfNull(thread);
        var core = thread.MinorDiameter;
        return Resilience(
            thread,
            [
                new(shank, Area.FromSquareMillimeters(Math.PI * thread.DiameterMm * thread.DiameterMm / 4)),
                new(freeThread, Area.FromSquareMillimeters(Math.PI * core.Millimeters * core.Millimeters / 4)),
            ],
            modulus);
    }
}
