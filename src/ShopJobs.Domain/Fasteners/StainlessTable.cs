using System.Text.RegularExpressions;
using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// ISO 3506-1: Rp0.2 and Rm in MPa per group of steel (A austenitic, C martensitic, F ferritic) and class. A 50 and A 80 seen in
/// a reprint, the others from memory. Class 50 up to 39 mm, 70 and 80 up to 24 mm (2009 edition). The number behind A may be left
/// out: it names the alloy and does not change the strength.
/// </summary>
internal static partial class StainlessTable
{
    private static readonly Row[] Rows =
    [
        new('A', 50, 39, 210, 500), new('A', 70, 24, 450, 700), new('A', 80, 24, 600, 800),
        new('C', 50, 39, 250, 500), new('C', 70, 39, 410, 700), new('C', 80, 39, 640, 800), new('C', 110, 39, 820, 1100),
        new('F', 45, 24, 250, 450), new('F', 60, 24, 410, 600),
    ];

    public static bool Knows(string name) => Parse(name) is { } key && Rows.Any(r => r.Group == key.Group && r.Class == key.Class);

    public static StrengthValues? Find(string name, double diameterMm)
    {
        var key = Parse(name);
        foreach (var row in Rows)
        {
            if (key is { } k && row.Group == k.Group && row.Class == k.Class && diameterMm is >= 1.59 && diameterMm <= row.UpTo + 1e-9)
            {
                return new StrengthValues(null, Pressure.FromMegapascals(row.Yield), Pressure.FromMegapascals(row.Tensile));
            }
        }

        return null;
    }

    private static (char Group, int Class)? Parse(string name) => Form().Match(name) is { Success: true } match
        ? (match.Groups["group"].Value[0], int.Parse(match.Groups["class"].Value, System.Globalization.CultureInfo.InvariantCulture))
        : null;

    [GeneratedRegex("^((?<group>A)[1-5]?|(?<group>C)[134]|(?<group>F)1)-(?<class>[0-9]{2,3})$", RegexOptions.CultureInvariant)]
    private static partial Regex Form();

    private readonly record struct Row(char Group, int Class, double UpTo, double Yield, double Tensile);
}
