using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.Look;

/// <summary>Days and instants on every screen, as the shop's wall clock showed them.</summary>
public static class ClockWords
{
    /// <summary>"24 Nov 2026".</summary>
    public static string Day(this DateOnly day) => WallTime.Day(day);

    /// <summary>"24 Nov 2026" of an instant.</summary>
    public static string Day(this ShopClock clock, DateTime instant) => WallTime.Day(Wall(clock, instant));

    /// <summary>"24 Nov 2026, 14:03".</summary>
    public static string Minute(this ShopClock clock, DateTime instant) => WallTime.Minute(Wall(clock, instant));

    /// <summary>"14:03" today, "24 Nov 2026, 14:03" on any other day.</summary>
    public static string Words(this ShopClock clock, DateTime instant) => WallTime.Short(Wall(clock, instant), clock.Today);

    private static DateTime Wall(ShopClock clock, DateTime instant)
    {
        ArgumentNullException.ThrowIfNull(clock);
        return clock.OnTheWall(instant);
    }
}
