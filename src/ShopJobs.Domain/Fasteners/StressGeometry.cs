namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// What the stress of a bolt under tightening depends on besides load and friction, in plain mm: As, and the two terms of
/// tau/sigma = pitch term + friction term x mu_t. No allocation.
/// </summary>
public readonly record struct StressGeometry(double StressArea, double PitchTerm, double FrictionTerm)
{
    /// <summary>tau/sigma = 1.5 d2/d0 (P/(pi d2) + 1.1547 mu_t), d0 = (d2 + d3)/2: the form of VDI 2230 behind its assembly tables.</summary>
    public static StressGeometry For(ThreadSize thread)
    {
        ArgumentNullException.ThrowIfNull(thread);
        var pitchDiameter = thread.PitchDiameterMm;
        var factor = 1.5 * pitchDiameter / thread.StressDiameterMm;
        return new StressGeometry(
            thread.StressArea.SquareMillimeters, factor * thread.PitchMm / (Math.PI * pitchDiameter), factor * 2 / Math.Sqrt(3));
    }

    /// <summary>tau/sigma at a thread friction.</summary>
    public double TorsionOverTension(double threadFriction) => PitchTerm + (FrictionTerm * threadFriction);

    /// <summary>sqrt(sigma^2 + 3 tau^2) in MPa at a clamp load in N and a thread friction.</summary>
    public double Equivalent(double newtons, double threadFriction)
    {
        var ratio = TorsionOverTension(threadFriction);
        return newtons / StressArea * Math.Sqrt(1 + (3 * ratio * ratio));
    }
}
