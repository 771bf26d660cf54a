using System.Globalization;

namespace ShopJobs.Domain.Logbook;

/// <summary>Days and times as every screen and sentence writes them, by the shop's wall clock. The one place with their format.</summary>
public static class WallTime
{
    /// <summary>"29 Nov 2026".</summary>
    public static string Day(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>"29 Nov 2026" of an instant on the wall.</summary>
    public static string Day(DateTime wall) => Day(DateOnly.FromDateTime(wall));

    /// <summary>"29 Nov 2026, 13:26".</summary>
    public static string Minute(DateTime wall) => wall.ToString("d MMM yyyy, HH:mm", CultureInfo.InvariantCulture);

    /// <summary>"Sunday 29 Nov 2026, 13:26", where a clock is compared.</summary>
    public static string Weekday(DateTime wall) => wall.ToString("dddd d MMM yyyy, HH:mm", CultureInfo.InvariantCulture);

    /// <summary>"13:26" today, the whole of it on any other day.</summary>
    public static string Short(DateTime wall, DateOnly today) =>
        DateOnly.FromDateTime(wall) == today ? Clock(wall) : Minute(wall);

    /// <summary>"29 Nov 2026, 13:26 to 14:10"; the day again where it is another.</summary>
    public static string Span(DateTime from, DateTime to)
    {
        var (first, last) = (Minute(from), Minute(to));
        return first == last ? first : $"{first} to {Short(to, DateOnly.FromDateTime(from))}";
    }

    /// <summary>"13:26".</summary>
    public static string Clock(DateTime wall) => wall.ToString("HH:mm", CultureInfo.InvariantCulture);
}
