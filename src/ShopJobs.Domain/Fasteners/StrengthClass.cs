using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// A strength class of ISO 898-1 (4.6 to 12.9) or ISO 3506-1 (stainless, "A2-70"), or a grade of SAE J429 (1, 2, 5, 8). Anything
/// else, such as "12.9-like", is not a class: state the class it is equal to and mark it as an equivalence where it is used.
/// </summary>
public sealed record StrengthClass
{
    private StrengthClass(string name, ThreadStandard standard)
    {
        Name = name;
        Standard = standard;
    }

    /// <summary>"10.9", "A2-70" or "SAE 8".</summary>
    public string Name { get; }

    /// <summary>The threads the class is written for: metric for ISO 898-1 and ISO 3506-1, inch for SAE J429.</summary>
    public ThreadStandard Standard { get; }

    /// <summary>
    /// Strength at a nominal diameter d (8.8 changes at 16 mm, SAE 2 at 3/4 in, SAE 5 at 1 in); null where the standard has no
    /// value: ISO 898-1 covers 1.6 to 39 mm (9.8 up to 16 mm), ISO 3506-1 up to 39 mm (70 and 80 up to 24 mm), SAE J429 1/4 to
    /// 1 1/2 in.
    /// </summary>
    public StrengthValues? ValuesFor(Length diameter) => IsStainless
        ? StainlessTable.Find(Name, diameter.Millimeters)
        : StrengthTable.Find(Name, diameter.Millimeters);

    /// <summary>True for a class of ISO 3506-1: no proof stress is stated, yield counts in its place.</summary>
    public bool IsStainless => StainlessTable.Knows(Name);

    /// <summary>Sp, proof stress at a nominal diameter; null where the standard has no value, as for stainless classes.</summary>
    public Pressure? ProofStress(Length diameter) => ValuesFor(diameter)?.ProofStress;

    /// <summary>ReL or Rp0.2, yield at a nominal diameter; null where the standard has no value.</summary>
    public Pressure? YieldStress(Length diameter) => ValuesFor(diameter)?.YieldStress;

    /// <summary>Rm, tensile strength at a nominal diameter; null where the standard has no value.</summary>
    public Pressure? TensileStrength(Length diameter) => ValuesFor(diameter)?.TensileStrength;

    /// <summary>
    /// Fp = Sp As (ISO 898-1), the pull that must leave no lasting stretch. Null where the standard has no value, or where a
    /// metric class is put on an inch thread or the reverse.
    /// </summary>
    public Force? ProofLoad(ThreadSize thread) => LoadOn(thread, ProofStress(thread.NominalDiameter));

    /// <summary>Fm = Rm As (ISO 898-1), least breaking load; null as for <see cref="ProofLoad"/>.</summary>
    public Force? UltimateLoad(ThreadSize thread) => LoadOn(thread, TensileStrength(thread.NominalDiameter));

    /// <summary>
    /// F0.2 = Rp As, the pull at which the bolt yields in plain tension; null as for <see cref="ProofLoad"/>, given for stainless.
    /// </summary>
    public Force? YieldLoad(ThreadSize thread) => LoadOn(thread, YieldStress(thread.NominalDiameter));

    /// <summary>Reads "8.8", "class 10.9", "A2-70", "SAE 8", "grade 5"; false with the problem in plain words for anything else.</summary>
    public static bool TryParse(string? text, [NotNullWhen(true)] out StrengthClass? value, [NotNullWhen(false)] out string? problem)
    {
        var typed = text?.Trim() ?? "";
        var words = typed.ToUpperInvariant().Replace(',', '.').Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var name = words.Length == 0 ? "" : words[^1];
        var before = string.Join(' ', words.SkipLast(1));
        value = before switch
        {
            "" or "CLASS" or "ISO" or "ISO 898-1" when StrengthTable.IsIso(name) => new StrengthClass(name, ThreadStandard.MetricIso),
            "SAE" or "GRADE" or "GR" or "GR." or "SAE GRADE" or "SAE J429" or "SAE J429 GRADE" when StrengthTable.IsSae($"SAE {name}") =>
                new StrengthClass($"SAE {name}", ThreadStandard.UnifiedInch),
            "" or "CLASS" or "ISO" or "ISO 3506" or "ISO 3506-1" when StainlessTable.Knows(name) =>
                new StrengthClass(name, ThreadStandard.MetricIso),
            _ => null,
        };
        problem = value is not null
            ? null
            : new Advice(NotKnown(typed), "give the class, and say so where it is only by equivalence").OneLine;
        return value is not null;
    }

    /// <summary>What is wrong with a text that is no strength class.</summary>
    internal static string NotKnown(string text) =>
        $"\"{text}\" is not a strength class of ISO 898-1 (such as 10.9) or ISO 3506-1 (such as A2-70), or a grade of SAE J429 (such as SAE 8)";

    /// <summary>As <see cref="TryParse"/>; throws <see cref="FormatException"/> with the problem in plain words.</summary>
    public static StrengthClass Parse(string? text) =>
        TryParse(text, out var value, out var problem) ? value : throw new FormatException(problem);

    /// <summary>The name, for example "10.9".</summary>
    public override string ToString() => Name;

    private Force? LoadOn(ThreadSize thread, Pressure? stress) =>
        stress is { } s && thread.Standard == Standard
            ? Force.FromNewtons(s.Megapascals * thread.StressArea.SquareMillimeters)
            : null;
}
