using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// An angle turned after the joint is snug: the turn is taken up by stretch of the bolt and compression of the parts, whatever the
/// friction. Elastic up to yield; beyond it the load stays near the yield load while the bolt keeps stretching.
/// </summary>
public static class TorqueAngle
{
    /// <summary>dF = (angle/360) P/(deltaS + deltaP), elastic.</summary>
    public static Force Gain(ThreadSize thread, Angle turned, Resilience resilience)
    {
        ArgumentNullException.ThrowIfNull(thread);
        ArgumentOutOfRangeException.ThrowIfNegative(turned.Degrees, nameof(turned));
        return Force.FromNewtons(turned.Degrees / 360 * thread.PitchMm / resilience.Sum);
    }

    /// <summary>Angle that gains a load, the reverse of <see cref="Gain"/>.</summary>
    public static Angle For(ThreadSize thread, Force gain, Resilience resilience)
    {
        ArgumentNullException.ThrowIfNull(thread);
        return Angle.FromDegrees(gain.Newtons * resilience.Sum / thread.PitchMm * 360);
    }

    /// <summary>
    /// Clamp load after snug torque and angle, at most the load at which the bolt yields under tension and torsion
    /// (<see cref="ClampLoad.AtYieldUtilisation"/> with 1); <c>Yielded</c> says that it is there.
    /// </summary>
    public static (Force ClampLoad, bool Yielded) After(
        ThreadSize thread, Force snug, Angle turned, Resilience resilience, Pressure yieldStress, double threadFriction)
    {
        var elastic = snug + Gain(thread, turned, resilience);
        var yield = Fasteners.ClampLoad.AtYieldUtilisation(thread, yieldStress, threadFriction, 1);
        return elastic > yield ? (yield, true) : (elastic, false);
    }

    /// <summary>How far the bolt is longer under a load, F deltaS.</summary>
    public static Length Elongation(Force clampLoad, Resilience resilience) => Length.FromMillimeters(clampLoad.Newtons * resilience.Bolt);
}
