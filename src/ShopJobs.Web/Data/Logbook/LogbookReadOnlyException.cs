using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Logbook;

/// <summary>A logbook with an entry this program can't use: it may be read up to there and not be written to.</summary>
public sealed class LogbookReadOnlyException(LogbookId logbook, long number, string why, Exception? inner = null)
    : Exception($"Logbook {logbook} is read-only from entry {number} on. {why}", inner)
{
    public LogbookId Logbook { get; } = logbook;

    public long Number { get; } = number;
}
