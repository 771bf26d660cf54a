namespace ShopJobs.Web.Components.Fasteners;

/// <summary>How far apart the figures under a drawn line stand.</summary>
public static class ScaleStep
{
    private static readonly double[] Steps = [1, 2, 5, 10];

    /// <summary>1, 2 or 5 times a power of ten, so that about five of them fill the length; the length is above zero.</summary>
    public static double For(double length)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(length);
        var decade = Math.Pow(10, Math.Floor(Math.Log10(length / 4)));
        return Steps.First(step => step * decade * 5.2 >= length) * decade;
    }
}
