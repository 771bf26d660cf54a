using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Tests.Logbook.Properties;

/// <summary>The rules in force without one of them.</summary>
/// <param name="Name">The list and the reason of the rule that is left out.</param>
internal sealed record LeftOut(string Name, HoldRules Without)
{
    private static readonly HoldRules Rules = HoldRules.Standard;

    /// <summary>Every rule of every list, left out one at a time.</summary>
    public static IReadOnlyList<LeftOut> All => Every.Where(rule => !rule.IsOfHeldWork).ToList();

    /// <summary>The rules on held steps, results and lots: their own specification is parted from.</summary>
    public static IReadOnlyList<LeftOut> OfHeldWork => Every.Where(rule => rule.IsOfHeldWork).ToList();

    private bool IsOfHeldWork => Tally.OfHeldWork.Any(reason => Name.EndsWith($" {reason}", StringComparison.Ordinal));

    private static IReadOnlyList<LeftOut> Every { get; } =
    [
        .. Each("Hand-tight", Rules.HandTight, rule => rule.Reason, left => Rules with { HandTight = left }),
        .. Each("Pull", Rules.Pull, rule => rule.Reason, left => Rules with { Pull = left }),
        .. Each("Settling", Rules.Settling, rule => rule.Reason, left => Rules with { Settling = left }),
        .. Each("Position", Rules.Position, rule => rule.Reason, left => Rules with { Position = left }),
        .. Each("Step", Rules.Step, rule => rule.Reason, left => Rules with { Step = left }),
        .. Each("Release", Rules.Release, rule => rule.Reason, left => Rules with { Release = left }),
        .. Each("Permission", Rules.Permission, rule => rule.Reason, left => Rules with { Permission = left }),
    ];

    /// <summary>The rules in force; each that finds something puts its name into the set.</summary>
    public static HoldRules Watched(ISet<string> finding)
    {
        return new HoldRules(
            Pulls("Hand-tight", Rules.HandTight),
            Pulls("Pull", Rules.Pull),
            Pulls("Settling", Rules.Settling),
            [.. Rules.Position.Select(rule => rule with { Find = q => Found("Position", rule.Reason, [.. rule.Find(q)]) })],
            [.. Rules.Step.Select(rule => rule with { Find = q => Found("Step", rule.Reason, [.. rule.Find(q)]) })],
            [.. Rules.Release.Select(rule => rule with { Find = q => Found("Release", rule.Reason, [.. rule.Find(q)]) })],
            [.. Rules.Permission.Select(rule => rule with { Find = q => Found<HoldPoint>("Permission", rule.Reason, rule.Find(q) is { } no ? [no] : []).SingleOrDefault() })]);

        IReadOnlyList<PullRule> Pulls(string list, IReadOnlyList<PullRule> rules) =>
            [.. rules.Select(rule => rule with { Fails = q => Found<bool>(list, rule.Reason, rule.Fails(q) ? [true] : []).Count > 0 })];

        IReadOnlyList<T> Found<T>(string list, HoldReason reason, IReadOnlyList<T> found)
        {
            if (found.Count > 0)
            {
                finding.Add(NameOf(list, reason));
            }

            return found;
        }
    }

    private static string NameOf(string list, HoldReason reason) => $"{list} without {reason}";

    private static IEnumerable<LeftOut> Each<TRule>(
        string list, IReadOnlyList<TRule> rules, Func<TRule, HoldReason> reason, Func<IReadOnlyList<TRule>, HoldRules> with) =>
        rules.Select((rule, index) => new LeftOut(NameOf(list, reason(rule)), with([.. rules.Where((_, other) => other != index)])));
}
