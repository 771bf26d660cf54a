using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// A car's condition in the words of the workshop. The keys are the register's own; the usual ones have words here, any other is read
/// with its hyphens as spaces.
/// </summary>
public static class ConditionSaid
{
    private static readonly Dictionary<string, string> OfValues = new()
    {
        ["wheel-up"] = "wheel off the ground",
        ["tyre-on-ground"] = "tyre just touching",
        ["on-wheels"] = "on its wheels",
        ["ride-height"] = "at ride height",
    };

    /// <summary>What is asked about: "wheel", "hub".</summary>
    public static string Aspect(string aspect) => aspect == "stand" ? "wheel" : Plain(aspect);

    /// <summary>How it is: "wheel off the ground", "held".</summary>
    public static string Value(string value) => OfValues.GetValueOrDefault(value) ?? Plain(value);

    /// <summary>The whole of it: "hub held"; a value of several words speaks for itself: "wheel off the ground".</summary>
    public static string Of(CarCondition condition) =>
        condition.Value.Contains('-', StringComparison.Ordinal) ? Value(condition.Value) : $"{Aspect(condition.Aspect)} {Value(condition.Value)}";

    /// <summary>A key of the register in plain words: "front left".</summary>
    public static string Plain(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        return key.Replace('-', ' ');
    }
}
