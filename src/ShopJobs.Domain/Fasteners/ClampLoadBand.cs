using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>The band of clamp load that a torque gives with a tool of known deviation and an assumed friction.</summary>
public static class ClampLoadBand
{
    /// <summary>
    /// Band of <paramref name="torque"/> set with a tool that may be off by <paramref name="toolDeviationPercent"/> (0 to below 100).
    /// Not computed, with the reason, where seat or friction is unknown, or the torque is zero.
    /// Without a class, or with one that has no value for the thread, the band comes without proof load.
    /// </summary>
    public static ClampBand For(
        EnteredTorque torque, decimal toolDeviationPercent, ThreadSize thread, Seat? seat, FrictionBand? friction, StrengthClass? strength)
    {
        ToolDeviation.Check(toolDeviationPercent);
        if (!JointFigures.TryFor(thread, seat, strength, out var joint, out var reason))
        {
            return new ClampBand.NotComputed(reason);
        }

        if (friction is null)
        {
            return new ClampBand.NotComputed("the condition of the threads is not given");
        }

        if (torque.Value == 0)
        {
            return new ClampBand.NotComputed("the torque is zero");
        }

        var band = joint.Band((double)torque.NewtonMetres, (double)toolDeviationPercent / 100, friction);
        return new ClampBand.Computed(
            Force.FromNewtons(band.Load.Minimum), Force.FromNewtons(band.Load.Nominal), Force.FromNewtons(band.Load.Maximum),
            joint.ProofLoad is { } proof ? Force.FromNewtons(proof) : null, band.Proof)
        {
            WhileTightening = band.WhileTightening,
        };
    }
}
