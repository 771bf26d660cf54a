using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>What a joint has lost after its first drive, and what a re-torque finds: the loss comes back as a small turn.</summary>
/// <param name="Made">Clamp load when it was tightened.</param>
/// <param name="Loss">Clamp load lost by embedding, not below zero.</param>
public readonly record struct Settling(Force Made, Force Loss)
{
    /// <summary>What is left, not below zero.</summary>
    public Force Left => Loss < Made ? Made - Loss : Force.Zero;

    /// <summary>Share of the clamp load that is lost, 0 to 1.</summary>
    public double Share => Made > Force.Zero ? Math.Min(1, Loss / Made) : 0;

    /// <summary>The least clamp load of a band after a loss by embedding.</summary>
    public static Settling Of(Force made, Length settling, Resilience resilience) => new(made, Embedding.Loss(settling, resilience));

    /// <summary>
    /// Angle through which re-torque to the same figure turns the fastener to bring the loss back, (loss (deltaS + deltaP)/P) 360.
    /// A fastener that turns further has lost more than its faces settled: look for another cause.
    /// </summary>
    public Angle TurnToRestore(ThreadSize thread, Resilience resilience) => TorqueAngle.For(thread, Loss < Made ? Loss : Made, resilience);
}
