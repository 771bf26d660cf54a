namespace ShopJobs.Web.Components.Bench.Fields;

/// <summary>One of a few values.</summary>
public sealed class ChoiceField<T>(string key, string label, IReadOnlyList<BenchChoice<T>> choices) : BenchField<T>(key, label)
{
    /// <inheritdoc/>
    public override IReadOnlyList<BenchOption> Options { get; } = [.. choices.Select(choice => new BenchOption(choice.Value, choice.Words))];

    private protected override bool TryRead(string text, BenchUnits units, out T value, out string? problem)
    {
        var found = choices.FirstOrDefault(choice => choice.Value == text);
        value = found is null ? default! : found.Means;
        problem = found is null ? "Pick one." : null;
        return found is not null;
    }
}

/// <summary>One value to pick and what it means.</summary>
public sealed record BenchChoice<T>(string Value, string Words, T Means);
