namespace ShopJobs.Domain.Tools;

/// <summary>What the points of one calibration run say between each other.</summary>
public static class CalibrationCurve
{
    /// <summary>
    /// Torque truly delivered when <paramref name="shown"/> was set or shown, in the tool's unit: the rig's reading, linear
    /// between neighbouring points, the mean where one value was read several times. Null outside the points: unknown.
    /// </summary>
    public static decimal? TrueTorque(this IReadOnlyList<CalibrationPoint> points, decimal shown)
    {
        var means = points.GroupBy(p => p.SetOrShown, p => p.RigRead).Select(g => (Set: g.Key, Rig: g.Average())).OrderBy(p => p.Set).ToList();
        var above = means.FindIndex(p => p.Set >= shown);
        if (above < 0 || (above == 0 && means[0].Set != shown))
        {
            return null;
        }

        if (means[above].Set == shown)
        {
            return means[above].Rig;
        }

        var (from, to) = (means[above - 1], means[above]);
        return from.Rig + ((to.Rig - from.Rig) * (shown - from.Set) / (to.Set - from.Set));
    }

    /// <summary>Largest deviation by ISO 6789 among the points, as a plus-minus percent; null without points.</summary>
    public static decimal? WorstDeviationPercent(this IReadOnlyList<CalibrationPoint> points) =>
        points.Count == 0 ? null : points.Max(p => Math.Abs(p.DeviationPercent));

    /// <summary>Largest error delivered among the points, as a plus-minus percent of the setting; null without points.</summary>
    public static decimal? WorstDeliveredPercent(this IReadOnlyList<CalibrationPoint> points) =>
        points.Count == 0 ? null : points.Max(p => Math.Abs(p.DeliveredPercent));
}
