using System.Diagnostics;
using System.Globalization;
using ShopJobs.Domain.Tests.Logbook.Properties;

namespace ShopJobs.Benchmarks;

/// <summary>Plays many generated histories against product and model, and says what they reached and how fast.</summary>
internal static class HistoriesVerb
{
    /// <summary>A stream of its own: not the histories that the tests play.</summary>
    private const uint Stream = 1_000_003;

    /// <summary>
    /// Plays so many from history <paramref name="first"/> on: parts of one long run may be played one after the other.
    /// Gives 0 when product and model agreed on every command, else 1.
    /// </summary>
    public static int Run(int histories, int first, TextWriter output)
    {
        var started = Stopwatch.GetTimestamp();
        var (tally, played, differences) = HistoryRun.Play(histories, Stream, Timeout.InfiniteTimeSpan, first);
        var seconds = Stopwatch.GetElapsedTime(started).TotalSeconds;

        output.WriteLine(tally);
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"{played} histories in {seconds:F1} s, {played / seconds:F0} a second; product and model part in {differences.Count}"));
        output.WriteLine(tally.Never.Count == 0 ? "Every kind and every reason occurred." : $"Never: {string.Join(", ", tally.Never)}");
        if (differences.Count == 0)
        {
            return 0;
        }

        output.WriteLine($"The shortest, history {differences[0].Number}:{Environment.NewLine}{differences[0].Difference}");
        return 1;
    }
}
