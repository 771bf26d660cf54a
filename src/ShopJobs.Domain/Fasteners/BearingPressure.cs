using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>Pressure under a flat head or nut: above what the clamped part bears, its face gives way and the clamp load falls.</summary>
/// <param name="Material">The clamped part.</param>
/// <param name="Limit">Limiting surface pressure p_G.</param>
public sealed record BearingPressure(string Material, Pressure Limit)
{
    /// <summary>Guide values of p_G: VDI 2230 table A9, from memory; a part's own value counts before them.</summary>
    public static IReadOnlyList<BearingPressure> Guide { get; } =
    [
        new("steel S235", Pressure.FromMegapascals(490)),
        new("steel S355", Pressure.FromMegapascals(760)),
        new("heat-treated steel 34CrNiMo6", Pressure.FromMegapascals(1080)),
        new("grey cast iron GJL-250", Pressure.FromMegapascals(850)),
        new("wrought aluminium AlMgSi1", Pressure.FromMegapascals(260)),
        new("cast aluminium AlSi9Cu3", Pressure.FromMegapascals(220)),
    ];

    /// <summary>Bearing area pi/4 (dw^2 - dh^2) of a flat seat.</summary>
    public static Area AreaOf(FlatSeat seat)
    {
        ArgumentNullException.ThrowIfNull(seat);
        var (dw, dh) = (seat.HeadDiameter.Millimeters, seat.HoleDiameter.Millimeters);
        return Area.FromSquareMillimeters(Math.PI / 4 * ((dw * dw) - (dh * dh)));
    }

    /// <summary>p = F/A on a flat seat.</summary>
    public static Pressure Of(FlatSeat seat, Force clampLoad) =>
        Pressure.FromMegapascals(clampLoad.Newtons / AreaOf(seat).SquareMillimeters);

    /// <summary>Clamp load that reaches a limiting pressure on a flat seat.</summary>
    public static Force LoadAt(FlatSeat seat, Pressure limit) => Force.FromNewtons(limit.Megapascals * AreaOf(seat).SquareMillimeters);
}
