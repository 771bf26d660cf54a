using System.Collections.Concurrent;
using CsCheck;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Logbook.Properties;

/// <summary>
/// Each rule is needed: without it the product and the model part on some history. Histories are drawn in one fixed order until
/// every rule was missed once. Where a rule found nothing on a history, leaving it out changes nothing there, so only those
/// that found something are tried.
/// </summary>
public class LeaveOneRuleOutTests(ITestOutputHelper output)
{
    private const int Limit = 20_000;
    private const uint Stream = 1;

    private static readonly Lazy<IReadOnlyDictionary<string, string>> Missed = new(Search);

    public static TheoryData<string> Rules => [.. LeftOut.All.Select(rule => rule.Name)];

    [Theory]
    [MemberData(nameof(Rules))]
    public void Product_and_model_part_when_one_rule_is_left_out(string rule)
    {
        Assert.True(
            Missed.Value.TryGetValue(rule, out var difference),
            $"{rule}: no difference in {Limit} histories. Either the rule is not needed or no history reaches it.");
        output.WriteLine(difference);
    }

    [Fact]
    public void Every_rule_is_told_apart_by_its_list_and_reason() =>
        Assert.Distinct(LeftOut.All.Select(rule => rule.Name));

    private static Dictionary<string, string> Search()
    {
        var waiting = new ConcurrentDictionary<string, LeftOut>(LeftOut.All.ToDictionary(rule => rule.Name));
        var missed = new ConcurrentDictionary<string, string>();
        Parallel.For(0, Limit, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, (number, search) =>
        {
            if (waiting.IsEmpty)
            {
                search.Stop();
                return;
            }

            var history = Move.History.Generate(new PCG(Stream, (ulong)number), null, out _);
            var finding = new HashSet<string>();
            CarHistory.Scout(history, LeftOut.Watched(finding));
            foreach (var name in finding)
            {
                if (waiting.TryGetValue(name, out var rule) && CarHistory.Run(history, rule.Without) is { } difference && waiting.TryRemove(name, out _))
                {
                    missed[name] = $"history {number}: {difference}";
                }
            }
        });
        return new Dictionary<string, string>(missed);
    }
}
