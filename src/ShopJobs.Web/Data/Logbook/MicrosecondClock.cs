namespace ShopJobs.Web.Data.Logbook;

/// <summary>Instants as the logbook tables keep them: whole microseconds since 1970-01-01 UTC.</summary>
internal static class MicrosecondClock
{
    public static long ToStored(DateTime utc) => (utc - DateTime.UnixEpoch).Ticks / TimeSpan.TicksPerMicrosecond;

    public static DateTime FromStored(long microseconds) => DateTime.UnixEpoch.AddTicks(microseconds * TimeSpan.TicksPerMicrosecond);
}
