using System.Globalization;
using System.Text;
using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Web.Components.Bench.Pictures;

/// <summary>The outline of a threaded bolt to scale, in millimetres, its axis at height 0: crests at d, roots at d3, flanks of 60°.</summary>
public static class ThreadDrawing
{
    /// <summary>Length drawn, in diameters: enough turns to count the pitch.</summary>
    private const double Diameters = 2.4;

    /// <summary>Length of the piece drawn: whole turns, at least three.</summary>
    public static double LengthOf(ThreadSize size)
    {
        ArgumentNullException.ThrowIfNull(size);
        var pitch = size.Pitch.Millimeters;
        return Math.Max(3, Math.Round(Diameters * size.NominalDiameter.Millimeters / pitch)) * pitch;
    }

    /// <summary>The outline as a path: along the upper side from left to right and back along the lower, half a turn apart.</summary>
    public static string Outline(ThreadSize size)
    {
        ArgumentNullException.ThrowIfNull(size);
        var (pitch, length) = (size.Pitch.Millimeters, LengthOf(size));
        var path = new StringBuilder("M");
        Append(Side(size, 0));
        path.Append('L');
        Append(Side(size, pitch / 2).Reverse().Select(point => (point.X, -point.Y)));
        return path.Append('Z').ToString();

        void Append(IEnumerable<(double X, double Y)> points) =>
            path.AppendJoin(' ', points.Select(point => string.Create(CultureInfo.InvariantCulture, $"{Math.Clamp(point.X, 0, length):0.###},{-point.Y:0.###}")));
    }

    private static IEnumerable<(double X, double Y)> Side(ThreadSize size, double shift)
    {
        var (pitch, crest, root) = (size.Pitch.Millimeters, size.NominalDiameter.Millimeters / 2, size.MinorDiameter.Millimeters / 2);
        var flank = (crest - root) * Math.Tan(Math.PI / 6);
        var flat = pitch / 8;
        for (var turn = -1; turn * pitch <= LengthOf(size); turn++)
        {
            var at = (turn * pitch) + shift;
            yield return (at, root);
            yield return (at + flank, crest);
            yield return (at + flank + flat, crest);
            yield return (at + (2 * flank) + flat, root);
        }
    }
}
