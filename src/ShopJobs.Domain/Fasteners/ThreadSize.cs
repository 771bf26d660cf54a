using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// A thread size with its basic geometry: d nominal diameter, P pitch, d2 pitch diameter, d3 minor diameter of the bolt,
/// D1 minor diameter of the nut. Profile H = sqrt(3)/2 P (ISO 68-1, ASME B1.1). Always a real size: made only by parsing.
/// </summary>
public sealed record ThreadSize
{
    private readonly string name;

    internal ThreadSize(ThreadStandard standard, decimal diameterMm, decimal pitchMm, string name)
    {
        Standard = standard;
        DiameterMm = (double)diameterMm;
        PitchMm = (double)pitchMm;
        this.name = name;
    }

    /// <summary>Metric or inch.</summary>
    public ThreadStandard Standard { get; }

    internal double DiameterMm { get; }

    internal double PitchMm { get; }

    /// <summary>True for a size of the UNC or UNF series.</summary>
    internal bool IsUncOrUnf => name.EndsWith("UNC", StringComparison.Ordinal) || name.EndsWith("UNF", StringComparison.Ordinal);

    internal double PitchDiameterMm => DiameterMm - (0.649519 * PitchMm);

    /// <summary>d0 = (d2 + d3)/2.</summary>
    internal double StressDiameterMm => (PitchDiameterMm + MinorDiameter.Millimeters) / 2;

    /// <summary>d, the nominal (major) diameter.</summary>
    public Length NominalDiameter => Length.FromMillimeters(DiameterMm);

    /// <summary>P, the axial distance of one turn.</summary>
    public Length Pitch => Length.FromMillimeters(PitchMm);

    /// <summary>d2 = d - 0.649519 P (ISO 724).</summary>
    public Length PitchDiameter => Length.FromMillimeters(PitchDiameterMm);

    /// <summary>
    /// d3, minor diameter of the external thread. Metric: d - 1.226869 P (ISO 724). Inch: the rounded-root UNR value
    /// d - 1.190785/n (ASME B1.1); older tables print <see cref="FlatRootMinorDiameter"/>.
    /// </summary>
    public Length MinorDiameter => Standard == ThreadStandard.MetricIso
        ? FlatRootMinorDiameter
        : Length.FromMillimeters(DiameterMm - (1.190785 * PitchMm));

    /// <summary>d - 1.226869 P: d3 of a metric thread, and the flat-root UN value of older inch tables.</summary>
    public Length FlatRootMinorDiameter => Length.FromMillimeters(DiameterMm - (1.226869 * PitchMm));

    /// <summary>D1 = d - 1.082532 P, minor diameter of the internal thread (ISO 724).</summary>
    public Length NutMinorDiameter => Length.FromMillimeters(DiameterMm - (1.082532 * PitchMm));

    /// <summary>
    /// As, tensile stress area. Metric: pi/4 (d - 0.938194 P)^2 (ISO 898-1, 9.1.6.1). Inch: pi/4 (d - 0.9743/n)^2 (ASME B1.1).
    /// </summary>
    public Area StressArea
    {
        get
        {
            var diameter = DiameterMm - ((Standard == ThreadStandard.MetricIso ? 0.938194 : 0.9743) * PitchMm);
            return Area.FromSquareMillimeters(Math.PI / 4 * diameter * diameter);
        }
    }

    /// <summary>
    /// Reads "M12x1.5", "M12×1,5", "m12 x 1.5", "M12" (coarse pitch of ISO 261), "1/2-20 UNF", "7/16-20", "1 1/8-12 UNF", "#10-32".
    /// False with the problem in plain words, also where a stated series (UNC, UNF) does not have that size.
    /// </summary>
    public static bool TryParse(string? text, [NotNullWhen(true)] out ThreadSize? size, [NotNullWhen(false)] out string? problem)
    {
        problem = ThreadText.Read(text, out size)?.OneLine;
        return size is not null && problem is null;
    }

    /// <summary>As <see cref="TryParse"/>; throws <see cref="FormatException"/> with the problem in plain words.</summary>
    public static ThreadSize Parse(string? text) =>
        TryParse(text, out var size, out var problem) ? size : throw new FormatException(problem);

    /// <summary>The one spelling used in records: "M12x1.5", "M12x1.75" (pitch always given), "1/2-20 UNF", "#10-32 UNF".</summary>
    public override string ToString() => name;

    internal static ThreadSize Metric(decimal diameter, decimal pitch) => new(
        ThreadStandard.MetricIso, diameter, pitch, string.Create(CultureInfo.InvariantCulture, $"M{diameter:0.##}x{pitch:0.##}"));

    internal static ThreadSize Inch(decimal inches, int threadsPerInch, string name) =>
        new(ThreadStandard.UnifiedInch, inches * 25.4m, 25.4m / threadsPerInch, name);
}
