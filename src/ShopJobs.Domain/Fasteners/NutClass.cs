using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// A property class of nuts by ISO 898-2: 5, 6, 8, 9, 10, 12 for nuts of full height (styles 1 and 2), 04 and 05 for thin nuts,
/// which strip before the bolt breaks. Stress and pairing as the nominal values of ISO 898-2 (8 seen in a reprint, the others from
/// memory); the standard's own test loads differ a little by size and style.
/// </summary>
public sealed record NutClass
{
    /// <summary>
    /// Torque of a thin shear nut over that of a full nut: 24 ksi to 40 ksi in the bolt (FAA AC 43.13-1B table 7-1).
    /// </summary>
    public const double ShearNutShare = 24.0 / 40;

    private static readonly NutClass[] All =
    [
        new("04", 380, null), new("05", 500, null), new("5", 500, "5.8"), new("6", 600, "6.8"), new("8", 800, "8.8"),
        new("9", 900, "9.8"), new("10", 1000, "10.9"), new("12", 1200, "12.9"),
    ];

    private NutClass(string name, double proof, string? highestBolt)
    {
        Name = name;
        NominalProofStress = Pressure.FromMegapascals(proof);
        HighestBoltClass = highestBolt is null ? null : StrengthClass.Parse(highestBolt);
    }

    /// <summary>"10", "05".</summary>
    public string Name { get; }

    /// <summary>Nominal stress under proof load, on the stress area of the bolt.</summary>
    public Pressure NominalProofStress { get; }

    /// <summary>The strongest bolt that breaks before this nut strips; null for a thin nut.</summary>
    public StrengthClass? HighestBoltClass { get; }

    /// <summary>True for 04 and 05.</summary>
    public bool IsThin => HighestBoltClass is null;

    /// <summary>Nominal proof load of the nut on a metric thread, proof stress x As; null on an inch thread.</summary>
    public Force? ProofLoad(ThreadSize thread)
    {
        ArgumentNullException.ThrowIfNull(thread);
        return thread.Standard == ThreadStandard.MetricIso
            ? Force.FromNewtons(NominalProofStress.Megapascals * thread.StressArea.SquareMillimeters)
            : null;
    }

    /// <summary>Reads "8", "class 10", "nut 12"; false for anything else.</summary>
    public static bool TryParse(string? text, [NotNullWhen(true)] out NutClass? value)
    {
        var words = (text ?? "").ToUpperInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var named = words is [var name] ? name : words is ["CLASS" or "NUT", var after] ? after : "";
        value = Array.Find(All, nut => nut.Name == named);
        return value is not null;
    }

    /// <summary>As <see cref="TryParse"/>; throws <see cref="FormatException"/> with the problem in plain words.</summary>
    public static NutClass Parse(string? text) => TryParse(text, out var value)
        ? value
        : throw new FormatException($"\"{text}\" is not a nut class of ISO 898-2: write 5, 6, 8, 9, 10 or 12, or 04 or 05 for a thin nut.");

    /// <summary>The name, for example "10".</summary>
    public override string ToString() => Name;
}
