namespace ShopJobs.Web.Shop;

/// <summary>The server's instant, and the day and time it is on the shop's wall.</summary>
public sealed class ShopClock(TimeProvider time, ShopSettings settings)
{
    /// <summary>Now, UTC.</summary>
    public DateTime Now => time.GetUtcNow().UtcDateTime;

    /// <summary>Today in the shop's zone; calibration, cure and re-torque days are judged against it.</summary>
    public DateOnly Today => DateOnly.FromDateTime(OnTheWall(Now));

    /// <summary>An instant (UTC) as the shop's clock showed it.</summary>
    public DateTime OnTheWall(DateTime instant) =>
        TimeZoneInfo.ConvertTimeFromUtc(DateTime.SpecifyKind(instant, DateTimeKind.Utc), settings.Current.Zone);

    /// <summary>The instant (UTC) at which the shop's clock showed this; null where it never did, as the clock went forward. Shown twice, the earlier one.</summary>
    public DateTime? Instant(DateTime wall)
    {
        var shown = DateTime.SpecifyKind(wall, DateTimeKind.Unspecified);
        var zone = settings.Current.Zone;
        return zone.IsInvalidTime(shown) ? null
            : zone.IsAmbiguousTime(shown) ? DateTime.SpecifyKind(shown - zone.GetAmbiguousTimeOffsets(shown).Max(), DateTimeKind.Utc)
            : TimeZoneInfo.ConvertTimeToUtc(shown, zone);
    }
}
