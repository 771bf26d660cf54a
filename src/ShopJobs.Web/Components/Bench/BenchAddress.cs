using System.Collections.Immutable;
using System.Text;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Extensions.Primitives;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Components.Bench.Fields;
using ShopJobs.Web.Components.Look;

namespace ShopJobs.Web.Components.Bench;

/// <summary>The address of a card with its inputs: what was entered, reopened by anybody who has it.</summary>
public static class BenchAddress
{
    private const string TorqueKey = "unit";
    private const string LengthKey = "lengths";
    private const string ExampleKey = "example";

    private static readonly (TorqueUnit Unit, string Name)[] Torques =
    [
        (TorqueUnit.NewtonMetre, "Nm"), (TorqueUnit.PoundForceFoot, "lbf-ft"), (TorqueUnit.PoundForceInch, "lbf-in"),
        (TorqueUnit.KilogramForceMetre, "kgf-m"),
    ];

    /// <summary>A card with its example in it.</summary>
    public static string Of(BenchCard card) => $"/bench/{card.Key}";

    /// <summary>A card with what was entered in it.</summary>
    public static string Of(BenchCard card, BenchInputs inputs)
    {
        var address = new StringBuilder(Of(card)).Append('?');
        foreach (var field in card.Fields.Where(field => field.IsAsked(inputs)))
        {
            address.Append(Uri.EscapeDataString(field.Key)).Append('=').Append(Uri.EscapeDataString(inputs[field])).Append('&');
        }

        address.Append(TorqueKey).Append('=').Append(Torques.First(torque => torque.Unit == inputs.Units.TorqueUnit).Name);
        address.Append('&').Append(LengthKey).Append('=').Append(inputs.Units.LengthUnit == BenchLength.Inch ? "in" : "mm");
        var untouched = string.Join(' ', card.Fields.Where(inputs.IsExample).Select(field => field.Key));
        return (untouched.Length > 0 ? address.Append('&').Append(ExampleKey).Append('=').Append(Uri.EscapeDataString(untouched)) : address).ToString();
    }

    /// <summary>The entries that an address carries; the example's where it carries none.</summary>
    public static BenchInputs Read(BenchCard card, string query)
    {
        var given = QueryHelpers.ParseQuery(query);
        var unitText = Value(TorqueKey);
        var lengthText = Value(LengthKey);
        var knowsTorque = TorqueUnits.TryParse(unitText ?? "Nm", out var unit);
        var knowsLength = lengthText is null or "mm" or "in";
        var inputs = BenchInputs.ExampleOf(card).In(new BenchUnits(unit, lengthText == "in" ? BenchLength.Inch : BenchLength.Millimetre), card);
        foreach (var field in card.Fields)
        {
            inputs = Value(field.Key) is { } text ? inputs.With(field, text) : inputs;
        }

        return inputs with
        {
            Untouched = Untouched(card, BenchInputs.ExampleOf(card), given),
            UnknownUnit = !knowsTorque ? unitText : !knowsLength ? lengthText : null,
        };

        string? Value(string key) => given.TryGetValue(key, out var values) ? Cut(Typed.Clean(values[0])) : null;
    }

    /// <summary>Fields that hold the example: those that the address names as such, and those that it does not carry.</summary>
    private static ImmutableHashSet<string> Untouched(BenchCard card, BenchInputs example, Dictionary<string, StringValues> given)
    {
        var named = given.TryGetValue(ExampleKey, out var values) ? (values[0] ?? "").Split(' ') : [];
        return [.. card.Fields.Select(field => field.Key).Where(key => named.Contains(key) || (example.Untouched.Contains(key) && !given.ContainsKey(key)))];
    }

    // One letter more than a field takes: enough to say that it is too long.
    private static string Cut(string text) => text.Length > TypedNumber.MostLetters + 1 ? text[..(TypedNumber.MostLetters + 1)] : text;
}
