using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Logbook;

/// <summary>Reads logbooks for screens: everything within one call stands at one moment.</summary>
public sealed class LogbookSnapshots(LogbookDatabase database, FoldCache cache, TimeProvider time)
{
    /// <summary>Runs <paramref name="read"/> on one snapshot. The reader must not be kept beyond the call.</summary>
    public T Read<T>(Func<LogbookReader, T> read) =>
        database.Read(session => read(new LogbookReader(session, cache, Envelope.InstantOf(time.GetUtcNow()))));
}
