using System.Globalization;
using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Web.Components.Fasteners;

/// <summary>The line of clamp load on which every row of a picture is drawn: from 0 to a round figure above all it shows.</summary>
/// <param name="Top">Clamp load at the right end, in kN; above zero.</param>
/// <param name="Step">Distance of the figures under the line, in kN.</param>
public sealed record ClampScale(double Top, double Step)
{
    /// <summary>A line long enough for every band, permitted range and limit near them.</summary>
    public static ClampScale For(ClampStanding standing)
    {
        ArgumentNullException.ThrowIfNull(standing);
        var bands = standing.Rows.Select(row => row.Band).OfType<ClampBand.Computed>().Select(band => band.Maximum.Kilonewtons);
        var ranges = standing.Rows.Where(row => row.Permitted is not null).Select(row => row.Permitted!.Value.Greatest.Kilonewtons);
        var farthest = bands.Concat(ranges).DefaultIfEmpty(1).Max();
        var limits = standing.Limits.Select(limit => limit.Load.Kilonewtons)
            .Concat(standing.Rows.Where(row => row.Yield is not null).Select(row => row.Yield!.Value.Kilonewtons));

        // A limit far beyond every band would press the bands into a corner: it is said in words and not drawn.
        farthest = limits.Where(limit => limit <= 3 * farthest).Append(farthest).Max();
        return new ClampScale(1.06 * farthest, ScaleStep.For(farthest));
    }

    /// <summary>The figures under the line.</summary>
    public IEnumerable<double> Marks => Enumerable.Range(0, (int)(Top / Step) + 1).Select(count => count * Step);

    /// <summary>True where a load is on the line.</summary>
    public bool Shows(Force load) => load.Kilonewtons <= Top;

    /// <summary>Where a clamp load stands, as a length of the drawing: "37.5%".</summary>
    public string At(double kilonewtons) =>
        string.Create(CultureInfo.InvariantCulture, $"{Math.Clamp(kilonewtons / Top, 0, 1) * 100:0.##}%");

    /// <summary>Where a clamp load stands.</summary>
    public string At(Force load) => At(load.Kilonewtons);

    /// <summary>How wide a span of loads is drawn.</summary>
    public string Wide(Force from, Force to) => At(Math.Min(to.Kilonewtons, Top) - from.Kilonewtons);
}
