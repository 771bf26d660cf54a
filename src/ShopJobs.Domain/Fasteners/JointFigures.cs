using System.Diagnostics.CodeAnalysis;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// A joint in plain numbers, prepared once so that its band can be computed for many torques without allocation: geometry, stress
/// geometry, proof load in N and yield in MPa (null where the class has none for the thread).
/// </summary>
public readonly record struct JointFigures(JointGeometry Geometry, StressGeometry Stress, double? ProofLoad, double? Yield)
{
    /// <summary>Of a thread on a seat with a strength class; false with the reason where the seat is not known.</summary>
    public static bool TryFor(
        ThreadSize thread, Seat? seat, StrengthClass? strength, out JointFigures figures, [NotNullWhen(false)] out string? reason)
    {
        figures = default;
        if (!JointGeometry.TryFor(thread, seat, out var geometry, out reason))
        {
            return false;
        }

        var yield = strength?.YieldLoad(thread) is null ? null : strength.YieldStress(thread.NominalDiameter)?.Megapascals;
        figures = new JointFigures(geometry, StressGeometry.For(thread), strength?.ProofLoad(thread)?.Newtons, yield);
        return true;
    }

    /// <summary>
    /// The band of a torque in N·m set with a tool that may be off by the fraction <paramref name="deviation"/>: loads in N, and their
    /// shares of proof load and of yield while tightening. No allocation.
    /// </summary>
    public BandFigures Band(double torqueNewtonMetres, double deviation, FrictionBand friction)
    {
        ArgumentNullException.ThrowIfNull(friction);
        var load = ClampFigures.For(Geometry, torqueNewtonMetres, deviation, friction.Low, friction.Nominal, friction.High);
        return new BandFigures(
            load,
            ProofLoad is { } proof ? new ProofUtilisation(load.Minimum / proof, load.Nominal / proof, load.Maximum / proof) : null,
            Yield is { } yield ? YieldUtilisation.For(load, Stress, yield, friction.Low, friction.Nominal, friction.High) : null);
    }
}
