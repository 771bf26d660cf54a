using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// ISO 898-1:2013 table 3 (MPa; 4.6, 8.8, 10.9, 12.9 seen in a reprint, the others from memory) and SAE J429 (ksi; 5 and 8
/// seen in a reprint, 1 and 2 from memory). A row holds for diameters above the first figure up to the second, in mm.
/// </summary>
internal static class StrengthTable
{
    private const double KsiInMegapascal = 6.894757293168361;
    private const double Inch = 25.4;

    private static readonly Row[] Rows =
    [
        new("4.6", 1.59, 39, 225, 240, 400),
        new("4.8", 1.59, 39, 310, 340, 420),
        new("5.6", 1.59, 39, 280, 300, 500),
        new("5.8", 1.59, 39, 380, 420, 520),
        new("6.8", 1.59, 39, 440, 480, 600),
        new("8.8", 1.59, 16, 580, 640, 800),
        new("8.8", 16, 39, 600, 660, 830),
        new("9.8", 1.59, 16, 650, 720, 900),
        new("10.9", 1.59, 39, 830, 940, 1040),
        new("12.9", 1.59, 39, 970, 1100, 1220),
        Sae("SAE 1", 0.2499, 1.5, 33, 36, 60),
        Sae("SAE 2", 0.2499, 0.75, 55, 57, 74),
        Sae("SAE 2", 0.75, 1.5, 33, 36, 60),
        Sae("SAE 5", 0.2499, 1, 85, 92, 120),
        Sae("SAE 5", 1, 1.5, 74, 81, 105),
        Sae("SAE 8", 0.2499, 1.5, 120, 130, 150),
    ];

    public static bool IsIso(string name) => !name.StartsWith("SAE", StringComparison.Ordinal) && Rows.Any(r => r.Name == name);

    public static bool IsSae(string name) => name.StartsWith("SAE", StringComparison.Ordinal) && Rows.Any(r => r.Name == name);

    public static StrengthValues? Find(string name, double diameterMm)
    {
        foreach (var row in Rows)
        {
            if (row.Name == name && diameterMm > row.Above && diameterMm <= row.UpTo + 1e-9)
            {
                return new StrengthValues(
                    Pressure.FromMegapascals(row.Proof), Pressure.FromMegapascals(row.Yield), Pressure.FromMegapascals(row.Tensile));
            }
        }

        return null;
    }

    private static Row Sae(string name, double aboveInch, double upToInch, double proof, double yield, double tensile) =>
        new(name, aboveInch * Inch, upToInch * Inch, proof * KsiInMegapascal, yield * KsiInMegapascal, tensile * KsiInMegapascal);

    private readonly record struct Row(string Name, double Above, double UpTo, double Proof, double Yield, double Tensile);
}
