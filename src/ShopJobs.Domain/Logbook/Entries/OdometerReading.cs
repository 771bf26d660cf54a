using System.Globalization;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// What an odometer showed, as it was entered: the number with its own unit, never taken through another one. From 0 to 9,999,999, in
/// either unit. To compare or reckon use <see cref="Km"/>. The default value is 0 km.
/// </summary>
public readonly record struct OdometerReading(decimal Value, DistanceUnit Unit)
{
    /// <summary>The largest number read or kept.</summary>
    public const decimal Largest = 9_999_999;

    /// <summary>The number, in <see cref="Unit"/>.</summary>
    public decimal Value { get; init => field = InBounds(value); } = InBounds(Value);

    /// <summary>The same distance in kilometres, by the exact length of its unit.</summary>
    public decimal Km => Value * Unit.Kilometres();

    /// <summary>
    /// Reads an odometer in any customary spelling: "50200", "50 200", "50.200", "50,200", "50'200", "48 210,5", "31,000 mi". What can be
    /// read in two ways ("12,5") is not guessed: false, with what to write instead in <paramref name="problem"/>.
    /// </summary>
    /// <param name="assumed">The car's unit: counts where none is written.</param>
    public static bool TryParse(string? text, DistanceUnit assumed, out OdometerReading reading, out string? problem)
    {
        problem = OdometerText.Read(text, assumed, out reading);
        return problem is null;
    }

    /// <summary>As people read it: "31,000 mi".</summary>
    public string Words => string.Create(CultureInfo.InvariantCulture, $"{Value:#,##0.######} {Unit.Symbol()}");

    /// <summary>Number as entered and unit as the logbook keeps it, for example "31000 mi"; always with a decimal point.</summary>
    public override string ToString() => $"{Value.ToString(CultureInfo.InvariantCulture)} {Unit.Symbol()}";

    private static decimal InBounds(decimal value) => value is >= 0 and <= Largest
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), value, $"An odometer is from 0 to {Largest}.");
}
