using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// Shear areas of an engaged thread and the loads at which it strips. FED-STD-H28 and ASME B1.1 appendix B, worst case of the
/// tolerance classes (<see cref="ThreadLimits"/>), n threads per unit length, Le engaged length:
/// bolt thread  pi n Le Kn_max [1/(2n) + 0.57735 (Es_min - Kn_max)], Kn = minor diameter of the nut, Es = pitch diameter of the bolt;
/// nut thread   pi n Le Ds_min [1/(2n) + 0.57735 (Ds_min - En_max)], Ds = major diameter of the bolt, En = pitch diameter of the nut.
/// Full thread over the whole of Le; a nut that widens under load carries less.
/// </summary>
public static class ThreadStripping
{
    /// <summary>Shear strength over tensile strength of steel, about 0.6 (0.58 by von Mises).</summary>
    public const double ShearOverTensile = 0.6;

    /// <summary>Area that shears off the bolt's thread, from the limits themselves.</summary>
    public static Area BoltArea(Length pitch, Length engaged, Length nutMinorMax, Length boltPitchMin) =>
        Shear(pitch, engaged, nutMinorMax, boltPitchMin - nutMinorMax);

    /// <summary>Area that shears out of the nut's or the part's thread, from the limits themselves.</summary>
    public static Area NutArea(Length pitch, Length engaged, Length boltMajorMin, Length nutPitchMax) =>
        Shear(pitch, engaged, boltMajorMin, boltMajorMin - nutPitchMax);

    /// <summary>Both areas of a thread over an engaged length; null where the tables hold no limits for the size.</summary>
    public static StrippingAreas? Areas(ThreadSize thread, Length engaged)
    {
        if (ThreadLimits.External(thread) is not { } bolt || ThreadLimits.Internal(thread) is not { } nut)
        {
            return null;
        }

        return new StrippingAreas(
            BoltArea(thread.Pitch, engaged, nut.MinorMax, bolt.PitchMin), NutArea(thread.Pitch, engaged, bolt.MajorMin, nut.PitchMax));
    }

    /// <summary>
    /// 7/8 pi d Le: area of the parent thread around a wire insert of nominal diameter d, inferred from NASA TM-106943 table III.
    /// </summary>
    public static Area InsertArea(Length nominalDiameter, Length engaged) =>
        Area.FromSquareMillimeters(0.875 * Math.PI * nominalDiameter.Millimeters * engaged.Millimeters);

    /// <summary>Load at which an area shears, area x shear strength.</summary>
    public static Force Load(Area area, Pressure shearStrength) => Force.FromNewtons(area.SquareMillimeters * shearStrength.Megapascals);

    private static Area Shear(Length pitch, Length engaged, Length at, Length over)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(engaged.Millimeters, nameof(engaged));
        var p = pitch.Millimeters;
        return Area.FromSquareMillimeters(
            Math.PI / p * engaged.Millimeters * at.Millimeters * ((p / 2) + (over.Millimeters / Math.Sqrt(3))));
    }
}
