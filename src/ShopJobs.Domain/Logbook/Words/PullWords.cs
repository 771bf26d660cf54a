using System.Globalization;

namespace ShopJobs.Domain.Logbook;

/// <summary>The answer to a pull in words, short enough to be read at arm's length.</summary>
public static class PullWords
{
    /// <summary>How it came out. A click shows a setting, so it is never called in range.</summary>
    public static string Of(Pull pull)
    {
        ArgumentNullException.ThrowIfNull(pull);
        return pull.Outcome switch
        {
            PullOutcome.Held => "HELD",
            PullOutcome.Short => "SHORT",
            PullOutcome.AwaitsCountersign => "TO COUNTERSIGN",
            _ => pull.Fact.Kind == TorqueKind.SettingConfirmed ? "CLICKED" : "IN RANGE",
        };
    }

    /// <summary>What comes after it: "NEXT: 3", "PULL ON: 2", or "GO ON: " and the next thing to do.</summary>
    public static string After(PullAnswer answer, Circumstances now)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var ahead = answer.Pull.Outcome == PullOutcome.Held ? "STOP" : "GO ON";
        return answer.Following is not { } next ? $"{ahead}: {NextWords.Of(answer.Next, now)}"
            : string.Create(CultureInfo.InvariantCulture, $"{(next == answer.Pull.Fact.Position ? "PULL ON" : "NEXT")}: {next.Number}");
    }
}
