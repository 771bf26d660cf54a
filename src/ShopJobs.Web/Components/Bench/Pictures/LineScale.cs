using System.Globalization;
using ShopJobs.Web.Components.Fasteners;

namespace ShopJobs.Web.Components.Bench.Pictures;

/// <summary>The stretch of numbers that a line shows: from 0, or from a round figure below values that all lie close together.</summary>
/// <param name="From">Value at the left end, not below zero.</param>
/// <param name="Top">Value at the right end.</param>
/// <param name="Step">Distance of the figures under the line.</param>
public sealed record LineScale(double From, double Top, double Step)
{
    /// <summary>Values whose least is above this share of the greatest are drawn without the stretch from 0.</summary>
    private const double Close = 0.6;

    /// <summary>A line long enough for all that it shows.</summary>
    public static LineScale For(NumberLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        var values = line.Marks.Select(mark => mark.At)
            .Concat(new[] { line.Permitted, line.Span }.OfType<LineRange>().SelectMany(range => new[] { range.From, range.To })).ToList();
        var (least, greatest) = (values.Min(), values.Max());
        if (greatest <= 0)
        {
            return new LineScale(0, 1, ScaleStep.For(1));
        }

        var room = Math.Max((greatest - least) / 2, greatest / 20);
        var step = ScaleStep.For(least > Close * greatest ? greatest - least + room : greatest);
        var from = least > Close * greatest ? Math.Max(0, Math.Floor((least - room) / step) * step) : 0;
        return new LineScale(from, greatest + (0.06 * (greatest - from)), step);
    }

    /// <summary>True where the line begins at 0.</summary>
    public bool BeginsAtZero => From == 0;

    /// <summary>The figures under the line.</summary>
    public IEnumerable<double> Marks => Enumerable.Range(0, (int)((Top - From) / Step) + 1).Select(count => From + (count * Step));

    /// <summary>Where a value stands, as a share of the drawing: "37.5%".</summary>
    public string At(double value) => string.Create(CultureInfo.InvariantCulture, $"{Share(value) * 100:0.##}%");

    /// <summary>How wide a range is drawn.</summary>
    public string Wide(LineRange range)
    {
        ArgumentNullException.ThrowIfNull(range);
        return string.Create(CultureInfo.InvariantCulture, $"{(Share(range.To) - Share(range.From)) * 100:0.##}%");
    }

    private double Share(double value) => Math.Clamp((value - From) / (Top - From), 0, 1);
}
