using System.Globalization;

namespace ShopJobs.Web.Components.Look;

/// <summary>How long ago, as people say it.</summary>
public static class Ages
{
    /// <summary>"just now", "12 min", "3 h", "2 days"; never below zero.</summary>
    public static string Words(TimeSpan age) => age switch
    {
        { TotalMinutes: < 1 } => "just now",
        { TotalHours: < 1 } => string.Create(CultureInfo.InvariantCulture, $"{(int)age.TotalMinutes} min"),
        { TotalHours: < 36 } => string.Create(CultureInfo.InvariantCulture, $"{(int)age.TotalHours} h"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{(int)age.TotalDays} days"),
    };
}
