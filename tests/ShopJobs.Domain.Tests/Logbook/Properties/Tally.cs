using System.Collections.Concurrent;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Tests.Logbook.Properties;

/// <summary>Counts what the generated histories reached.</summary>
internal sealed class Tally
{
    private readonly ConcurrentDictionary<string, int> entries = [];
    private readonly ConcurrentDictionary<HoldReason, int> reasons = [];
    private int commands;
    private int unfit;

    public int Commands => commands;

    /// <summary>Part of the commands that were refused, or recorded and do not count.</summary>
    public double Unfit => (double)unfit / commands;

    public int Of(string kind) => entries.GetValueOrDefault(kind);

    public int Of(HoldReason reason) => reasons.GetValueOrDefault(reason);

    /// <summary>Entry kinds and reasons that no history reached.</summary>
    public IReadOnlyList<string> Never =>
    [
        .. EntryCodec.Kinds.Where(kind => Of(kind) == 0),
        .. Enum.GetValues<HoldReason>().Where(reason => Of(reason) == 0).Select(reason => reason.ToString()),
    ];

    public void Count(Verdict verdict)
    {
        Interlocked.Increment(ref commands);
        if (verdict is Verdict.Refused refused)
        {
            Interlocked.Increment(ref unfit);
            Add(refused.Reasons.Select(point => point.Reason));
            return;
        }

        var found = ((Verdict.Accepted)verdict).Entries;
        var problems = found.SelectMany(entry => entry switch
        {
            HandTightened fact => fact.Problems,
            TorqueRecorded fact => fact.Problems,
            Settled fact => fact.Problems,
            Witnessed { Accepted: false } => [HoldReason.WitnessRejected],
            _ => [],
        }).ToList();
        if (problems.Count > 0)
        {
            Interlocked.Increment(ref unfit);
        }

        Add(problems);
        foreach (var entry in found)
        {
            Count(entry);
        }
    }

    public void Count(Entry entry) => entries.AddOrUpdate(EntryCodec.Encode(entry).Kind, 1, (_, count) => count + 1);

    public override string ToString() => string.Join(
        Environment.NewLine,
        EntryCodec.Kinds.Select(kind => $"{Of(kind),8} {kind}")
            .Concat(Enum.GetValues<HoldReason>().Select(reason => $"{Of(reason),8} {reason}"))
            .Append($"{Commands} commands, {Unfit:P0} of them refused or not counting"));

    private void Add(IEnumerable<HoldReason> found)
    {
        foreach (var reason in found.Distinct())
        {
            reasons.AddOrUpdate(reason, 1, (_, count) => count + 1);
        }
    }
}
