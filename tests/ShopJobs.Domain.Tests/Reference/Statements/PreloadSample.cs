using UnitsNet;

namespace ShopJobs.Domain.Tests.Reference.Statements;

/// <summary>
/// Preloads measured on several fasteners at one torque: what the scatter of a joint really is (NASA-STD-5020B, appendix A.2).
/// Two readings or more, all above zero.
/// </summary>
public sealed record PreloadSample
{
    private readonly double[] newtons;

    /// <summary>Refuses fewer than two readings and readings that are not above zero.</summary>
    public PreloadSample(IEnumerable<Force> preloads)
    {
        newtons = [.. preloads.Select(p => p.Newtons)];
        if (newtons.Length < 2 || newtons.Any(n => !(n > 0)))
        {
            throw new ArgumentException("A sample is two preloads or more, each above zero.", nameof(preloads));
        }
    }

    /// <summary>Number of readings.</summary>
    public int Count => newtons.Length;

    /// <summary>Mean preload.</summary>
    public Force Mean => Force.FromNewtons(newtons.Average());

    /// <summary>Standard deviation of the sample, over n - 1.</summary>
    public Force StandardDeviation
    {
        get
        {
            var mean = newtons.Average();
            return Force.FromNewtons(Math.Sqrt(newtons.Sum(n => (n - mean) * (n - mean)) / (newtons.Length - 1)));
        }
    }

    /// <summary>Least reading.</summary>
    public Force Least => Force.FromNewtons(newtons.Min());

    /// <summary>Greatest reading.</summary>
    public Force Greatest => Force.FromNewtons(newtons.Max());

    /// <summary>G from the farthest reading: |F - mean|/mean.</summary>
    public static double Variation(Force reading, Force mean) => Math.Abs(reading.Newtons - mean.Newtons) / mean.Newtons;

    /// <summary>
    /// G from the statistics: k s/mean, with k so that 90 % of all joints lie inside with a confidence of 95 %
    /// (<see cref="ToleranceFactor"/>).
    /// </summary>
    public double Scatter => ToleranceFactor.NinetyOfAllWith95Confidence(Count) * StandardDeviation.Newtons / Mean.Newtons;
}
