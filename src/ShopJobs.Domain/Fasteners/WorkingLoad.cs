using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// A preloaded joint under a load that pulls it apart (Shigley's Mechanical Engineering Design, chapter 8): the bolt takes the share C
/// of the load, the joint face is relieved by the rest. Elastic, load in line with the bolt.
/// </summary>
/// <param name="Preload">Fi, the clamp load before the load acts; not below zero.</param>
/// <param name="Load">P, the load for each bolt; above zero.</param>
/// <param name="Share">C, 0 to below 1 (<see cref="Resilience.LoadShare"/>).</param>
public sealed record WorkingLoad(Force Preload, Force Load, double Share)
{
    /// <summary>C.</summary>
    public double Share { get; } = Share is >= 0 and < 1
        ? Share
        : throw new ArgumentOutOfRangeException(nameof(Share), Share, "A share is from 0 to below 1.");

    /// <summary>Load of the bolt, Fi + C P, while the faces touch.</summary>
    public Force InBolt => Preload + (Load * Share);

    /// <summary>What still presses the faces together, Fi - (1 - C) P; not above zero: they part.</summary>
    public Force OnFaces => Preload - (Load * (1 - Share));

    /// <summary>n0 = Fi/(P (1 - C)): how many times the load may grow before the faces part.</summary>
    public double SeparationFactor => Preload / (Load * (1 - Share));

    /// <summary>nL = (Fp - Fi)/(C P): how many times the load may grow before the bolt is at its proof load Fp.</summary>
    public double LoadFactor(Force proofLoad) => (proofLoad - Preload) / (Load * Share);

    /// <summary>np = Fp/(C P + Fi): proof load over the greatest load of the bolt.</summary>
    public double YieldFactor(Force proofLoad) => proofLoad / InBolt;
}
