using System.Text.RegularExpressions;
using ShopJobs.Web.Components.Look;
using UnitsNet;

namespace ShopJobs.Web.Components.Bench.Fields;

/// <summary>A length: "12", "12.5 mm", "0.75 in", "1 3/8 in".</summary>
public sealed partial class LengthField(string key, string label) : BenchField<Length>(key, label)
{
    private const double Largest = 2000;

    /// <summary>True where none, 0, is an answer.</summary>
    public bool MayBeZero { get; init; }

    /// <inheritdoc/>
    public override string? UnitBeside(string text, BenchUnits units) =>
        text.Length > 0 && (char.IsLetter(text[^1]) || text[^1] is '"' or '″') ? null : Symbol(units.LengthUnit);

    /// <inheritdoc/>
    public override string Respelled(string text, BenchUnits from, BenchUnits to)
    {
        if (!TryRead(text, from, out _, out _))
        {
            return text;
        }

        var match = Form().Match(text);
        var unit = UnitOf(match, from);
        var number = match.Groups["number"].Value;
        return unit == to.LengthUnit && !number.Contains('/') ? number : $"{number} {Symbol(unit)}";
    }

    private static string Symbol(BenchLength unit) => unit == BenchLength.Inch ? "in" : "mm";

    private static BenchLength UnitOf(Match match, BenchUnits units) => match.Groups["unit"].Value.ToUpperInvariant() switch
    {
        "" => units.LengthUnit,
        "MM" => BenchLength.Millimetre,
        _ => BenchLength.Inch,
    };

    private protected override bool TryRead(string text, BenchUnits units, out Length value, out string? problem)
    {
        value = Length.Zero;
        var example = units.LengthUnit == BenchLength.Inch ? "0.75 or 3/4 in" : "12.5 or 12.5 mm";
        if (text.Length == 0)
        {
            problem = $"Nothing entered: write a length, for example {example}.";
            return false;
        }

        if (TypedNumber.Read(text, example, out _, out problem) is null)
        {
            return false;
        }

        if (Form().Match(text) is not { Success: true } match || Number(match) is not { } number)
        {
            problem = $"{TypedNumber.Shown(text)} is no length known here: write millimetres or inches, for example {example}.";
            return false;
        }

        var unit = UnitOf(match, units);
        if (match.Groups["den"].Success && match.Groups["unit"].Value.Length == 0)
        {
            problem = $"{TypedNumber.Shown(text)} is a fraction: write its unit, {text} in.";
            return false;
        }

        value = unit == BenchLength.Inch ? Length.FromInches(number) : Length.FromMillimeters(number);
        problem = value.Millimeters > Largest ? $"{TypedNumber.Shown(text)} is longer than anything on a bench. Read it again."
            : number == 0 && !MayBeZero ? "It must be above 0."
            : null;
        return problem is null;
    }

    private static double? Number(Match match)
    {
        if (!match.Groups["den"].Success)
        {
            return (double)decimal.Parse(match.Groups["number"].Value.Replace(',', '.'), System.Globalization.CultureInfo.InvariantCulture);
        }

        var (whole, over, under) = (Count(match, "whole"), Count(match, "num"), Count(match, "den"));
        return under == 0 || over >= under ? null : whole + ((double)over / under);
    }

    private static int Count(Match match, string group) =>
        match.Groups[group] is { Success: true, Value: var digits } ? int.Parse(digits, System.Globalization.CultureInfo.InvariantCulture) : 0;

    [GeneratedRegex("^(?<number>((?<whole>[0-9]{1,3}) )?(?<num>[0-9]{1,3})/(?<den>[0-9]{1,3})|[0-9]+([.,][0-9]+)?) ?(?<unit>mm|in|inch|\"|″)?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Form();
}
