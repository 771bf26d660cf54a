using System.Globalization;

namespace ShopJobs.Domain.Logbook;

/// <summary>What a car's odometer counts in.</summary>
public enum DistanceUnit
{
    Kilometre,

    /// <summary>The international mile of 1.609344 km, exactly.</summary>
    Mile,
}

/// <summary>How distances are named and counted in kilometres.</summary>
public static class DistanceUnits
{
    /// <summary>Kilometres in one international mile: 1760 yards of 0.9144 m (agreement of 1 July 1959; NIST SP 811, appendix B.8).</summary>
    public const decimal KilometresPerMile = 1.609344m;

    /// <summary>"km" or "mi".</summary>
    public static string Symbol(this DistanceUnit unit) => unit switch
    {
        DistanceUnit.Kilometre => "km",
        DistanceUnit.Mile => "mi",
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "Not a unit of distance."),
    };

    /// <summary>The whole word: "kilometres" or "miles".</summary>
    public static string Plural(this DistanceUnit unit) => unit == DistanceUnit.Mile ? "miles" : "kilometres";

    /// <summary>Kilometres in one of it, exactly.</summary>
    public static decimal Kilometres(this DistanceUnit unit) => unit == DistanceUnit.Mile ? KilometresPerMile : 1;

    /// <summary>A distance in kilometres, said in this unit to a tenth: "50200 km", "31192.8 mi".</summary>
    public static string Say(this DistanceUnit unit, decimal km) =>
        string.Create(CultureInfo.InvariantCulture, $"{km / unit.Kilometres():#,##0.#} {unit.Symbol()}");

    /// <summary>From one distance in kilometres to another, said in this unit: "48,260 to 48,310 km".</summary>
    public static string Say(this DistanceUnit unit, decimal from, decimal to) =>
        string.Create(CultureInfo.InvariantCulture, $"{from / unit.Kilometres():#,##0.#} to {unit.Say(to)}");
}
