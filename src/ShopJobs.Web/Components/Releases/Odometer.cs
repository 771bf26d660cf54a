using ShopJobs.Web.Components.Look;

namespace ShopJobs.Web.Components.Releases;

/// <summary>Reads an odometer as people type it.</summary>
public static class Odometer
{
    private const decimal Largest = 9_999_999;

    /// <summary>Kilometres from "12450", "12 450" or "12450,5"; null for anything that is not one clear number from 0.</summary>
    public static decimal? Read(string? typed) =>
        TypedNumber.Alone(typed?.Replace(" ", "", StringComparison.Ordinal), "km") is { } km && km <= Largest ? km : null;
}
