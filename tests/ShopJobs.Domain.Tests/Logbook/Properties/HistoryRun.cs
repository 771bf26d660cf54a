using System.Collections.Concurrent;
using CsCheck;

namespace ShopJobs.Domain.Tests.Logbook.Properties;

/// <summary>Many histories in one fixed order, on every processor; what they reached, and where product and model part.</summary>
internal static class HistoryRun
{
    /// <summary>Runs so many histories of a stream from its history <paramref name="first"/> on, until the time is over.</summary>
    public static (Tally Tally, int Played, IReadOnlyList<(int Number, string Difference)> Differences) Play(int histories, uint stream, TimeSpan atMost, int first = 0)
    {
        var tally = new Tally();
        var differences = new ConcurrentBag<(int, string)>();
        var played = 0;
        using var over = new CancellationTokenSource(atMost);
        Parallel.For(first, first + histories, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, (number, run) =>
        {
            if (over.IsCancellationRequested)
            {
                run.Stop();
                return;
            }

            if (CarHistory.Run(Move.History.Generate(new PCG(stream, (ulong)number), null, out _), tally: tally) is { } difference)
            {
                differences.Add((number, difference));
            }

            Interlocked.Increment(ref played);
        });
        return (tally, played, [.. differences.OrderBy(found => found.Item2.Length)]);
    }
}
