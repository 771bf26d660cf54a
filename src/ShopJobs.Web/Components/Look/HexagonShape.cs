using System.Globalization;

namespace ShopJobs.Web.Components.Look;

/// <summary>The nut seen from above, point up, in a drawing of 48 by 48.</summary>
public static class HexagonShape
{
    private const double Top = 5;
    private const double Bottom = 43;
    private const double UpperShoulder = 14.5;
    private const double LowerShoulder = 33.5;
    private const double Left = 7.5;
    private const double Right = 40.5;
    private const double Middle = 24;

    /// <summary>The whole outline as polygon points.</summary>
    public static string Outline { get; } = FilledFromBelow(1);

    /// <summary>Polygon points of the part below a level: 0 nothing, 1 the whole nut.</summary>
    public static string FilledFromBelow(double fraction)
    {
        var level = Bottom - (Math.Clamp(fraction, 0, 1) * (Bottom - Top));
        var half = HalfWidthAt(level);
        List<(double X, double Y)> points = [(Middle - half, level), (Middle + half, level)];
        if (level < UpperShoulder)
        {
            points.Add((Right, UpperShoulder));
        }

        if (level < LowerShoulder)
        {
            points.AddRange([(Right, LowerShoulder), (Middle, Bottom), (Left, LowerShoulder)]);
        }
        else
        {
            points.Add((Middle, Bottom));
        }

        if (level < UpperShoulder)
        {
            points.Add((Left, UpperShoulder));
        }

        return string.Join(' ', points.Select(point => string.Create(CultureInfo.InvariantCulture, $"{point.X:0.##},{point.Y:0.##}")));
    }

    private static double HalfWidthAt(double y) => (Right - Middle) * y switch
    {
        < UpperShoulder => (y - Top) / (UpperShoulder - Top),
        > LowerShoulder => (Bottom - y) / (Bottom - LowerShoulder),
        _ => 1,
    };
}
