using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// Torque and clamp load of one joint. Elastic, with steady friction, no run-down torque (add or take it off first).
/// Long form T = F (P/2pi + mu_t d2/(2 cos 30) + mu_b arm), VDI 2230; short form T = K d F.
/// </summary>
public static class ClampLoad
{
    /// <summary>F from T by the long form. Frictions as fractions, 0 to 1.</summary>
    public static Force FromTorque(JointGeometry joint, Torque torque, double threadFriction, double bearingFriction) =>
        Force.FromNewtons(torque.NewtonMeters * 1000 / joint.TorquePerForce(threadFriction, bearingFriction));

    /// <summary>T from F by the long form. Frictions as fractions, 0 to 1.</summary>
    public static Torque ToTorque(JointGeometry joint, Force clampLoad, double threadFriction, double bearingFriction) =>
        Torque.FromNewtonMeters(clampLoad.Newtons * joint.TorquePerForce(threadFriction, bearingFriction) / 1000);

    /// <summary>Torque that starts to loosen a clamp load F; not above zero means that the joint would loosen by itself.</summary>
    public static Torque LooseningTorque(JointGeometry joint, Force clampLoad, double threadFriction, double bearingFriction) =>
        Torque.FromNewtonMeters(clampLoad.Newtons * joint.LooseningTorquePerForce(threadFriction, bearingFriction) / 1000);

    /// <summary>K = T/(d F) that the short form needs to agree with the long form at these frictions.</summary>
    public static double NutFactor(JointGeometry joint, ThreadSize thread, double threadFriction, double bearingFriction) =>
        joint.TorquePerForce(threadFriction, bearingFriction) / thread.DiameterMm;

    /// <summary>K = T/(d F) of a measured torque and clamp load.</summary>
    public static double NutFactor(Torque torque, Length nominalDiameter, Force clampLoad) =>
        torque.NewtonMeters / (nominalDiameter.Meters * clampLoad.Newtons);

    /// <summary>T = K d F, the short form.</summary>
    public static Torque ToTorque(double nutFactor, Length nominalDiameter, Force clampLoad) =>
        Torque.FromNewtonMeters(nutFactor * nominalDiameter.Meters * clampLoad.Newtons);

    /// <summary>
    /// F_M, the clamp load at which tension and torsion together reach <paramref name="utilisation"/> (VDI 2230: 0.9) of the
    /// yield Rp: F = nu Rp As / sqrt(1 + 3 (1.5 d2/d0 (P/(pi d2) + 1.1547 mu_t))^2), d0 = (d2 + d3)/2.
    /// </summary>
    public static Force AtYieldUtilisation(ThreadSize thread, Pressure yieldStress, double threadFriction, double utilisation = 0.9)
    {
        ArgumentNullException.ThrowIfNull(thread);
        return Force.FromNewtons(utilisation * yieldStress.Megapascals / StressGeometry.For(thread).Equivalent(1, threadFriction));
    }

    /// <summary>F = T/(K d), the short form the other way. K above zero.</summary>
    public static Force FromTorque(double nutFactor, Length nominalDiameter, Torque torque)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(nutFactor);
        return Force.FromNewtons(torque.NewtonMeters / (nutFactor * nominalDiameter.Meters));
    }
}
