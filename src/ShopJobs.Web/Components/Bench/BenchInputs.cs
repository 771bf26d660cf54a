using System.Collections.Immutable;
using ShopJobs.Web.Components.Bench.Fields;

namespace ShopJobs.Web.Components.Bench;

/// <summary>What stands in the fields of a card, as typed, and the units of numbers typed without one.</summary>
public sealed record BenchInputs(BenchUnits Units, ImmutableDictionary<string, string> Texts)
{
    /// <summary>Names of the fields that still hold the example: figures nobody entered.</summary>
    public ImmutableHashSet<string> Untouched { get; init; } = [];

    /// <summary>The unit the address names where it is none known here; then nothing is computed.</summary>
    public string? UnknownUnit { get; init; }

    /// <summary>The text of a field without blanks around it; empty where nothing was entered.</summary>
    public string this[BenchField field] => Texts.GetValueOrDefault(field.Key, "").Trim();

    /// <summary>The example of a card.</summary>
    public static BenchInputs ExampleOf(BenchCard card)
    {
        ArgumentNullException.ThrowIfNull(card);
        return new(BenchUnits.Usual, card.Fields.ToImmutableDictionary(field => field.Key, field => field.Example))
        {
            Untouched = [.. card.Fields.Where(field => field.Example.Length > 0).Select(field => field.Key)],
        };
    }

    /// <summary>True where a field that is asked still holds its example.</summary>
    public bool IsExample(BenchField field)
    {
        ArgumentNullException.ThrowIfNull(field);
        return Untouched.Contains(field.Key) && field.IsAsked(this);
    }

    /// <summary>The same with another text in one field.</summary>
    public BenchInputs With(BenchField field, string text)
    {
        ArgumentNullException.ThrowIfNull(field);
        return this with { Texts = Texts.SetItem(field.Key, text), Untouched = Untouched.Remove(field.Key) };
    }

    /// <summary>The same entries on a page that speaks other units: each number that needs it gets its own unit.</summary>
    public BenchInputs In(BenchUnits units, BenchCard card)
    {
        ArgumentNullException.ThrowIfNull(card);
        return new(units, Texts.SetItems(card.Fields.Select(field => KeyValuePair.Create(field.Key, field.Respelled(this[field], Units, units)))))
        {
            Untouched = Untouched,
        };
    }
}
