using UnitsNet;

namespace ShopJobs.Domain.Parts;

/// <summary>Figures of a comparison as they are read.</summary>
internal static class FigureWords
{
    /// <summary>Millimetres, up to two decimals.</summary>
    public static string Of(Length length) => FormattableString.Invariant($"{length.Millimeters:0.##} mm");

    /// <summary>Kilonewtons, one decimal.</summary>
    public static string Of(Force load) => FormattableString.Invariant($"{load.Kilonewtons:0.0} kN");
}
