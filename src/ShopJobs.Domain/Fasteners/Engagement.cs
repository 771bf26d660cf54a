using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>Length of engaged thread: what it carries, and how much is needed so that the bolt breaks before a thread strips.</summary>
public static class Engagement
{
    /// <summary>
    /// Loads over an engaged length; tensile strengths of bolt and of nut or part. Null where the tables hold no limits for the size.
    /// </summary>
    public static EngagementLoads? Loads(ThreadSize thread, Length engaged, Pressure boltTensile, Pressure nutTensile)
    {
        if (ThreadStripping.Areas(thread, engaged) is not { } areas)
        {
            return null;
        }

        return new EngagementLoads(
            Force.FromNewtons(thread.StressArea.SquareMillimeters * boltTensile.Megapascals),
            ThreadStripping.Load(areas.Bolt, boltTensile * ThreadStripping.ShearOverTensile),
            ThreadStripping.Load(areas.Nut, nutTensile * ThreadStripping.ShearOverTensile));
    }

    /// <summary>
    /// The engaged length at which the weaker thread strips at exactly the load that breaks the bolt; null as for <see cref="Loads"/>.
    /// </summary>
    public static Length? Critical(ThreadSize thread, Pressure boltTensile, Pressure nutTensile) =>
        Loads(thread, Length.FromMillimeters(1), boltTensile, nutTensile) is { } perMillimetre
            ? Length.FromMillimeters(perMillimetre.BoltBreaks / perMillimetre.Strips)
            : null;

    /// <summary>
    /// Le = 2 As/(pi Kn_max [1/2 + 0.57735 n (Es_min - Kn_max)]) for bolt and nut of one material: FED-STD-H28, formula 1, in
    /// which the shear strength is taken as half the tensile strength. From the limits themselves.
    /// </summary>
    public static Length EqualMaterials(Area stressArea, Length pitch, Length nutMinorMax, Length boltPitchMin)
    {
        var perLength = ThreadStripping.BoltArea(pitch, Length.FromMillimeters(1), nutMinorMax, boltPitchMin).SquareMillimeters;
        return Length.FromMillimeters(2 * stressArea.SquareMillimeters / perLength);
    }

    /// <summary>
    /// J = (bolt area x bolt strength)/(nut area x nut strength): above 1 the nut is the weaker and
    /// <see cref="EqualMaterials"/> is multiplied by it.
    /// </summary>
    public static double UnequalFactor(StrippingAreas areas, Pressure boltTensile, Pressure nutTensile) =>
        areas.Bolt.SquareMillimeters * boltTensile.Megapascals / (areas.Nut.SquareMillimeters * nutTensile.Megapascals);
}
