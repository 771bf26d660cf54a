using ShopJobs.Web.Components.Look;

namespace ShopJobs.Web.Components.Bench.Fields;

/// <summary>A plain number in one fixed unit, from a least to a greatest value, both inside.</summary>
public sealed class NumberField(string key, string label, string unit, decimal least, decimal most) : BenchField<decimal>(key, label)
{
    /// <summary>True where only whole numbers are.</summary>
    public bool IsWhole { get; init; }

    /// <inheritdoc/>
    public override string? UnitBeside(string text, BenchUnits units) => unit.Length == 0 ? null : unit;

    private protected override bool TryRead(string text, BenchUnits units, out decimal value, out string? problem)
    {
        value = 0;
        if (text.Length == 0)
        {
            problem = $"Nothing entered: write a number from {Range}.";
            return false;
        }

        if (TypedNumber.Read(text, TypedNumber.Plain(most > 10 ? 10 : most), out var rest, out problem) is not { } number)
        {
            return false;
        }

        value = number;
        problem = rest.Length > 0 && !string.Equals(rest, unit, StringComparison.OrdinalIgnoreCase)
                ? $"{TypedNumber.Shown(text)} has something behind the number: write the number alone{(unit.Length > 0 ? $", in {unit}" : "")}."
            : number < least || number > most ? $"{TypedNumber.Shown(text)} is outside {Range}: read it again."
            : IsWhole && number != decimal.Truncate(number) ? $"{TypedNumber.Shown(text)} is not a whole number."
            : null;
        return problem is null;
    }

    private string Range => $"{TypedNumber.Plain(least)} to {TypedNumber.Plain(most)}{(unit.Length > 0 ? " " + unit : "")}";
}
