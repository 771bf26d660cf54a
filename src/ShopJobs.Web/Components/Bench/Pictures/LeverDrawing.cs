using System.Globalization;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Web.Components.Bench.Pictures;

/// <summary>Where the parts of a wrench with its adapter lie when drawn to scale, the hand at the left, in a field 1000 wide.</summary>
/// <param name="Hand">Along: the mark of the hand.</param>
/// <param name="Drive">Along: the square drive.</param>
/// <param name="Fastener">Along: the fastener.</param>
/// <param name="Aside">How far the fastener lies beside the wrench's line.</param>
public sealed record LeverDrawing(double Hand, double Drive, double Fastener, double Aside)
{
    /// <summary>Room around the outermost points, for what is drawn at them.</summary>
    public const double Edge = 40;

    private const double Width = 1000;

    /// <summary>The drawing of a lever.</summary>
    public static LeverDrawing Of(AdapterSetting lever)
    {
        ArgumentNullException.ThrowIfNull(lever);
        var (drive, adapter) = (lever.Wrench.Millimeters, lever.Adapter.Millimeters);
        var fastener = drive + (adapter * Math.Cos(lever.Angle.Radians));
        var scale = (Width - (2 * Edge)) / Math.Max(drive, fastener);
        return new LeverDrawing(Edge, Edge + (drive * scale), Edge + (fastener * scale), Math.Abs(adapter * Math.Sin(lever.Angle.Radians)) * scale);
    }

    /// <summary>Height of the field above the wrench's line.</summary>
    public double Height => Aside + (2 * Edge);

    /// <summary>The field, for the drawing's viewBox.</summary>
    public string Field => FormattableString.Invariant($"0 {-(Aside + Edge):0.#} {Width:0} {Height + Edge:0.#}");

    /// <summary>A number of the drawing.</summary>
    public static string N(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
