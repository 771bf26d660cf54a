using ShopJobs.Web.Components.Look;

namespace ShopJobs.Web.Components.Bench.Fields;

/// <summary>One input of a card: how it is called, what it takes, and what is wrong with what was typed.</summary>
public abstract class BenchField(string key, string label)
{
    /// <summary>Its name in the address.</summary>
    public string Key { get; } = key;

    /// <summary>What it is called on the page.</summary>
    public string Label { get; } = label;

    /// <summary>What stands in it before anybody types, in N·m and mm. Invented: for no car.</summary>
    public string Example { get; init; } = "";

    /// <summary>What to look for, or what emptiness means.</summary>
    public string? Hint { get; init; }

    /// <summary>True where it may stay empty.</summary>
    public bool IsOptional { get; init; }

    /// <summary>True for what is asked only by those who know it; folded away at first.</summary>
    public bool IsMore { get; init; }

    /// <summary>Whether the other inputs make it needed.</summary>
    public Func<BenchInputs, bool> IsAsked { get; init; } = _ => true;

    /// <summary>Values to pick from; null where it is typed.</summary>
    public virtual IReadOnlyList<BenchOption>? Options => null;

    /// <summary>Kind of input element.</summary>
    public virtual string InputType => "text";

    /// <summary>Which keyboard a tablet shows.</summary>
    public virtual string InputMode => "decimal";

    /// <summary>True where something was entered.</summary>
    public bool IsGiven(BenchInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        return IsAsked(inputs) && inputs[this].Length > 0;
    }

    /// <summary>What is wrong with the text, in plain words; null where it can be read.</summary>
    public string? ProblemOf(BenchInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var text = inputs[this];
        return !IsAsked(inputs) || (IsOptional && text.Length == 0) ? null
            : text.Length > TypedNumber.MostLetters ? $"{TypedNumber.Shown(text)} is too long: it takes at most {TypedNumber.MostLetters} letters."
            : ProblemOf(text, inputs.Units);
    }

    /// <summary>The unit of a number typed without one; null where the field has no unit or the text names its own.</summary>
    public virtual string? UnitBeside(string text, BenchUnits units) => null;

    /// <summary>The same entry where numbers without a unit are read in other units: it names its unit when it must.</summary>
    public virtual string Respelled(string text, BenchUnits from, BenchUnits to) => text;

    private protected abstract string? ProblemOf(string text, BenchUnits units);
}

/// <summary>An input that reads as a value of one type.</summary>
public abstract class BenchField<T>(string key, string label) : BenchField(key, label)
{
    /// <summary>The value; only asked once every field was found in order.</summary>
    public T Read(BenchInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        return TryRead(inputs[this], inputs.Units, out var value, out var problem)
            ? value
            : throw new InvalidOperationException($"{Key}: {problem}");
    }

    private protected abstract bool TryRead(string text, BenchUnits units, out T value, out string? problem);

    private protected sealed override string? ProblemOf(string text, BenchUnits units) => TryRead(text, units, out _, out var problem) ? null : problem;
}

/// <summary>One value to pick.</summary>
/// <param name="Value">In the address.</param>
/// <param name="Words">On the page.</param>
public readonly record struct BenchOption(string Value, string Words);
