using System.Globalization;

namespace ShopJobs.Domain.Logbook;

// The sentences of the shop's logbook.
internal static class ShopEntryWords
{
    public static string? Of(Entry entry) => entry switch
    {
        ClockStepped fact => string.Create(
            CultureInfo.InvariantCulture, $"The clock {(fact.Showed < fact.Was ? "went back" : "jumped ahead")} by {ClockSpan.Words(fact.Showed - fact.Was)}. Cures, re-torques and calibrations wait until the lead signs the time."),
        ClockSet => "Compared the clock with a trusted one: it is right from here on.",
        _ => null,
    };
}

/// <summary>How far the clock was set.</summary>
public static class ClockSpan
{
    /// <summary>A length of time in its two largest units: "2 d 1 h", "3 min".</summary>
    public static string Words(TimeSpan span)
    {
        var length = span.Duration();
        return length.TotalDays >= 1 ? FormattableString.Invariant($"{(int)length.TotalDays} d {length.Hours} h")
            : length.TotalHours >= 1 ? FormattableString.Invariant($"{length.Hours} h {length.Minutes} min")
            : FormattableString.Invariant($"{(int)Math.Ceiling(length.TotalMinutes)} min");
    }
}
