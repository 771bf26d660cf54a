using System.Globalization;

namespace ShopJobs.Web.Components.JobCards;

/// <summary>Times as people write them on paper.</summary>
public static class CardTime
{
    private static readonly string[] Forms = ["H:mm", "HH:mm", "H.mm", "HH.mm", "HHmm"];

    /// <summary>The time of day; null for anything else.</summary>
    public static TimeOnly? Read(string? typed) =>
        TimeOnly.TryParseExact((typed ?? "").Trim(), Forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out var time) ? time : null;

    /// <summary>The instant without its seconds: a paper says minutes.</summary>
    public static DateTime Minute(DateTime at) => at.AddTicks(-(at.Ticks % TimeSpan.TicksPerMinute));
}
