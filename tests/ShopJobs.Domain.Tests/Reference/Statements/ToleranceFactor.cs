namespace ShopJobs.Domain.Tests.Reference.Statements;

/// <summary>
/// k of a two-sided tolerance interval mean +- k s of a normal population, exact (Odeh and Owen). The confidence is
/// 2 sqrt(n/2pi) times the integral over x from 0 of exp(-n x^2/2) P(chi2 with n - 1 degrees above (n - 1) r(x)^2/k^2), where
/// r(x) is the half width about x that holds the share asked. NASA-STD-5020B table 5 prints it for 90 % of the population and
/// 95 % confidence.
/// </summary>
public static class ToleranceFactor
{
    private const double Share = 0.90;
    private const double Confidence = 0.95;
    private const int Steps = 400;

    /// <summary>k for a sample of n readings, 2 to 1000.</summary>
    public static double NinetyOfAllWith95Confidence(int n)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(n, 2);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(n, 1000);
        return Solve(k => ConfidenceOf(n, k) - Confidence, 0.5, 100);
    }

    /// <summary>Simpson's rule out to eight standard errors of the mean.</summary>
    private static double ConfidenceOf(int n, double k)
    {
        var reach = 8 / Math.Sqrt(n);
        var step = reach / Steps;
        var sum = 0.0;
        for (var i = 0; i <= Steps; i++)
        {
            var x = i * step;
            var r = HalfWidth(x);
            var weight = i == 0 || i == Steps ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * Math.Exp(-n * x * x / 2) * ChiSquareAbove(n - 1, (n - 1) * r * r / (k * k));
        }

        return 2 * Math.Sqrt(n / (2 * Math.PI)) * sum * step / 3;
    }

    private static double HalfWidth(double x) => Solve(r => Normal(x + r) - Normal(x - r) - Share, 0, x + 10);

    private static double Normal(double z) => z < 0
        ? 0.5 * GammaAbove(0.5, z * z / 2)
        : 1 - (0.5 * GammaAbove(0.5, z * z / 2));

    private static double ChiSquareAbove(int degrees, double value) => GammaAbove(degrees / 2.0, value / 2);

    /// <summary>Upper regularised incomplete gamma function Q(a, x): series below a + 1, continued fraction above.</summary>
    private static double GammaAbove(double a, double x)
    {
        if (x <= 0)
        {
            return 1;
        }

        var front = Math.Exp((a * Math.Log(x)) - x - LogGamma(a));
        if (x < a + 1)
        {
            var term = 1 / a;
            var sum = term;
            for (var i = 1; i < 2000 && term > sum * 1e-16; i++)
            {
                term *= x / (a + i);
                sum += term;
            }

            return 1 - (front * sum);
        }

        var b = x + 1 - a;
        var c = 1e300;
        var d = 1 / b;
        var h = d;
        for (var i = 1; i < 2000; i++)
        {
            var an = -i * (i - a);
            b += 2;
            d = 1 / ((an * d) + b);
            c = b + (an / c);
            h *= d * c;
            if (Math.Abs((d * c) - 1) < 1e-15)
            {
                break;
            }
        }

        return front * h;
    }

    /// <summary>Stirling's series, raised to where it is exact to rounding.</summary>
    private static double LogGamma(double z)
    {
        var shift = 0.0;
        for (; z < 15; z++)
        {
            shift += Math.Log(z);
        }

        var z2 = z * z;
        return ((z - 0.5) * Math.Log(z)) - z + (0.5 * Math.Log(2 * Math.PI))
            + ((1.0 / 12 - (((1.0 / 360) - (1.0 / (1260 * z2))) / z2)) / z) - shift;
    }

    private static double Solve(Func<double, double> rising, double low, double high)
    {
        while (high - low > 1e-10 * (1 + high))
        {
            var middle = (low + high) / 2;
            (low, high) = rising(middle) < 0 ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }
}
