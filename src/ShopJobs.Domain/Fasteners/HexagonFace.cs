using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// The face of a plain hexagon head or nut on a clearance hole: least bearing diameter dw of ISO 4014 and ISO 4032 (product grade
/// A, B above 24 mm) and the medium hole of ISO 273. From memory of the standards; the mean diameters 4 to 24 mm agree with those
/// behind printed assembly tables. Flanged, socket and special heads differ: enter their own diameters.
/// </summary>
public static class HexagonFace
{
    private static readonly (double Diameter, double Bearing, double Hole)[] Sizes =
    [
        (3, 4.57, 3.4), (4, 5.88, 4.5), (5, 6.88, 5.5), (6, 8.88, 6.6), (7, 9.63, 7.6), (8, 11.63, 9), (10, 14.63, 11),
        (12, 16.63, 13.5), (14, 19.64, 15.5), (16, 22.49, 17.5), (18, 25.34, 20), (20, 28.19, 22), (22, 31.71, 24),
        (24, 33.61, 26), (27, 38, 30), (30, 42.75, 33), (33, 46.55, 36), (36, 51.11, 39), (39, 55.86, 42),
    ];

    /// <summary>Head or nut on a medium clearance hole; null for inch threads and sizes the standards do not have.</summary>
    public static FlatSeat? On(ThreadSize thread) => Find(thread) is var (_, bearing, hole)
        ? new FlatSeat(Length.FromMillimeters(bearing), Length.FromMillimeters(hole))
        : null;

    /// <summary>Mean diameter (dw + d)/2 of the face between two nuts on one thread; null as for <see cref="On"/>.</summary>
    public static Length? BetweenNuts(ThreadSize thread) => Find(thread) is var (diameter, bearing, _)
        ? Length.FromMillimeters((bearing + diameter) / 2)
        : null;

    private static (double Diameter, double Bearing, double Hole)? Find(ThreadSize thread)
    {
        ArgumentNullException.ThrowIfNull(thread);
        foreach (var size in Sizes)
        {
            if (thread.Standard == ThreadStandard.MetricIso && Math.Abs(size.Diameter - thread.DiameterMm) < 1e-9)
            {
                return size;
            }
        }

        return null;
    }
}
