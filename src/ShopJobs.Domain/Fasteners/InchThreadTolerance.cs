using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// Limits of ASME B1.1, classes 2A and 2B, in inches to four decimals; D nominal diameter, P pitch, Le length of engagement taken
/// by the standard: D for UNC and UNF, 9 P for the other series. From memory of the standard, held against limits printed beside
/// stripping areas.
/// Td2 = 0.0015 D^(1/3) + 0.0015 Le^(1/2) + 0.015 P^(2/3), allowance 0.3 Td2, Td = 0.060 P^(2/3), TD2 = 1.3 Td2,
/// TD1 = 0.25 P - 0.4 P^2, below 1/4 in 0.05 P^(2/3) + 0.03 P/D - 0.002 within 0.25 P - 0.4 P^2 and 0.394 P.
/// </summary>
internal static class InchThreadTolerance
{
    private const double Inch = 25.4;

    public static ExternalThreadLimits? External(double dMm, double pitchMm, bool isUncOrUnf)
    {
        var (d, p) = (dMm / Inch, pitchMm / Inch);
        if (p > 0.25)
        {
            return null;
        }

        var flank = Flank(d, p, isUncOrUnf);
        var allowance = Round(0.3 * flank);
        var major = Round(d) - allowance;
        var pitch = Round(d - (0.649519 * p)) - allowance;
        return new ExternalThreadLimits(
            "2A", In(major), In(major - Round(0.060 * Math.Pow(p, 2.0 / 3))), In(pitch), In(pitch - Round(flank)));
    }

    public static InternalThreadLimits? Internal(double dMm, double pitchMm, bool isUncOrUnf)
    {
        var (d, p) = (dMm / Inch, pitchMm / Inch);
        if (p > 0.25)
        {
            return null;
        }

        var pitch = Round(d - (0.649519 * p));
        var minor = Round(d - (1.082532 * p));
        var wide = (0.25 * p) - (0.4 * p * p);
        var tolerance = d < 0.25 - 1e-9
            ? Math.Clamp((0.05 * Math.Pow(p, 2.0 / 3)) + (0.03 * p / d) - 0.002, Math.Min(wide, 0.394 * p), 0.394 * p)
            : wide;
        return new InternalThreadLimits(
            "2B", In(pitch), In(pitch + Round(1.3 * Flank(d, p, isUncOrUnf))), In(minor), In(minor + Round(tolerance)));
    }

    private static double Flank(double d, double p, bool isUncOrUnf) =>
        (0.0015 * Math.Cbrt(d)) + (0.0015 * Math.Sqrt(isUncOrUnf ? d : 9 * p)) + (0.015 * Math.Pow(p, 2.0 / 3));

    private static double Round(double inches) => Math.Round(inches, 4, MidpointRounding.AwayFromZero);

    private static Length In(double inches) => Length.FromInches(inches);
}
