using System.Globalization;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.Look;

/// <summary>Days and instants on every screen, as the shop's wall clock showed them.</summary>
public static class ClockWords
{
    /// <summary>"24 Nov 2026".</summary>
    public static string Day(this DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>"14:03" today, "24 Nov 14:03" this year, "24 Nov 2025 14:03" before.</summary>
    public static string Words(this ShopClock clock, DateTime instant)
    {
        ArgumentNullException.ThrowIfNull(clock);
        var at = clock.OnTheWall(instant);
        var today = clock.Today;
        var form = DateOnly.FromDateTime(at) == today ? "HH:mm" : at.Year == today.Year ? "d MMM HH:mm" : "d MMM yyyy HH:mm";
        return at.ToString(form, CultureInfo.InvariantCulture);
    }
}
