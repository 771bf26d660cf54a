using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// Stress in the bolt while it is being tightened: tension F/As and the torsion that thread friction and pitch put in, together
/// by von Mises. VDI 2230: diameter d0 = (d2 + d3)/2, torsion over the fully plastic section modulus pi d0^3/12. Torsion springs
/// back when the tool comes off, so the joint later carries the tension alone.
/// </summary>
/// <param name="Tension">sigma = F/As.</param>
/// <param name="Torsion">tau = Mt/(pi d0^3/12).</param>
/// <param name="Equivalent">sqrt(sigma^2 + 3 tau^2), compared with the yield.</param>
public readonly record struct TighteningStress(Pressure Tension, Pressure Torsion, Pressure Equivalent)
{
    /// <summary>Stress at a clamp load with a thread friction of 0 to 1.</summary>
    public static TighteningStress At(ThreadSize thread, Force clampLoad, double threadFriction) =>
        From(clampLoad.Newtons / thread.StressArea.SquareMillimeters, StressGeometry.For(thread).TorsionOverTension(threadFriction));

    /// <summary>Stress from a tension and a torque that twists the shank, both known.</summary>
    public static TighteningStress Of(ThreadSize thread, Force tension, Torque twist)
    {
        var modulus = Math.PI * Math.Pow(thread.StressDiameterMm, 3) / 12;
        var sigma = tension.Newtons / thread.StressArea.SquareMillimeters;
        return From(sigma, sigma == 0 ? 0 : twist.NewtonMeters * 1000 / modulus / sigma);
    }

    /// <summary>
    /// How much of the yield a clamp load uses while tightening, as a fraction (1 = yield; the assembly tables of VDI 2230 stop
    /// at 0.9).
    /// </summary>
    public static double Utilisation(ThreadSize thread, Force clampLoad, double threadFriction, Pressure yieldStress) =>
        At(thread, clampLoad, threadFriction).Equivalent / yieldStress;

    private static TighteningStress From(double sigma, double ratio) => new(
        Pressure.FromMegapascals(sigma),
        Pressure.FromMegapascals(sigma * ratio),
        Pressure.FromMegapascals(sigma * Math.Sqrt(1 + (3 * ratio * ratio))));
}
