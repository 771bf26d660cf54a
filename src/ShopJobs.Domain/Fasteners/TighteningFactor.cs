using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>alpha_A = Fmax/Fmin, the scatter of clamp load that a way of tightening brings (VDI 2230), from 1 upward.</summary>
public static class TighteningFactor
{
    /// <summary>
    /// Usual least and greatest alpha_A of a method: VDI 2230 table A8, from memory (hydraulic tensioner: 1.2 to 1.6 in some editions).
    /// For angle the edition of 1986 has less, a scatter of 5 to 12 % (seen in a public reprint).
    /// </summary>
    public static (double Low, double High) Usual(TighteningMethod method) => method switch
    {
        TighteningMethod.Elongation => (1.1, 1.2),
        TighteningMethod.YieldOrAngle => (1.2, 1.4),
        TighteningMethod.HydraulicTensioner => (1.1, 1.5),
        TighteningMethod.TorqueFrictionKnown => (1.4, 1.6),
        TighteningMethod.TorqueFrictionEstimated => (1.6, 2.0),
        TighteningMethod.Impact => (2.5, 4.0),
        _ => throw new ArgumentOutOfRangeException(nameof(method), method, "Not a way of tightening."),
    };

    /// <summary>alpha_A = (1 + u)/(1 - u) for a scatter of plus or minus u about the mean, a fraction from 0 to below 1.</summary>
    public static double FromScatter(double scatter)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(scatter);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(scatter, 1);
        return (1 + scatter) / (1 - scatter);
    }

    /// <summary>u = (alpha_A - 1)/(alpha_A + 1), the reverse of <see cref="FromScatter"/>.</summary>
    public static double ScatterOf(double tighteningFactor)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(tighteningFactor, 1);
        return (tighteningFactor - 1) / (tighteningFactor + 1);
    }

    /// <summary>Fmin = Fmax/alpha_A: what is sure to clamp when the greatest load is Fmax.</summary>
    public static Force LeastLoad(Force greatest, double tighteningFactor)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(tighteningFactor, 1);
        return greatest / tighteningFactor;
    }

    /// <summary>
    /// Least and greatest load of a method whose nominal load is the middle of its scatter: F (1 - u) to F (1 + u) with
    /// u of <see cref="ScatterOf"/>, at the method's greatest alpha_A.
    /// </summary>
    public static (Force Least, Force Greatest) Around(Force nominal, TighteningMethod method)
    {
        var scatter = ScatterOf(Usual(method).High);
        return (nominal * (1 - scatter), nominal * (1 + scatter));
    }
}
