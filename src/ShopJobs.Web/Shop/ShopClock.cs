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
}
