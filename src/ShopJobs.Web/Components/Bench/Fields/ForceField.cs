using ShopJobs.Web.Components.Look;
using UnitsNet;

namespace ShopJobs.Web.Components.Bench.Fields;

/// <summary>A clamp load or another force: "45", "45 kN", "45000 N", "10100 lbf"; kN where no unit is written.</summary>
public sealed class ForceField(string key, string label) : BenchField<Force>(key, label)
{
    private const string Example45 = "45 or 45 kN";

    /// <summary>Beyond the strongest bolt the tables hold, in kN.</summary>
    private const double Largest = 5000;

    /// <summary>True where none, 0, is an answer.</summary>
    public bool MayBeZero { get; init; }

    /// <inheritdoc/>
    public override string? UnitBeside(string text, BenchUnits units) => text.Length > 0 && char.IsLetter(text[^1]) ? null : "kN";

    private protected override bool TryRead(string text, BenchUnits units, out Force value, out string? problem)
    {
        value = Force.Zero;
        if (text.Length == 0)
        {
            problem = $"Nothing entered: write a load, for example {Example45}.";
            return false;
        }

        if (TypedNumber.Read(text, Example45, out var rest, out problem) is not { } number)
        {
            return false;
        }

        Force? read = rest.ToUpperInvariant() switch
        {
            "" or "KN" => Force.FromKilonewtons((double)number),
            "N" => Force.FromNewtons((double)number),
            "LBF" or "LB" => Force.FromPoundsForce((double)number),
            _ => null,
        };
        value = read ?? Force.Zero;
        problem = read is null ? $"{TypedNumber.Shown(text)} is no load known here: write kN, N or lbf, for example {Example45}."
            : value.Kilonewtons > Largest ? $"{TypedNumber.Shown(text)} is more than any bolt here bears. Read it again."
            : number == 0 && !MayBeZero ? "It must be above 0."
            : null;
        return problem is null;
    }
}
