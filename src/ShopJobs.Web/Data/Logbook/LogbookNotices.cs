using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Logbook;

/// <summary>A logbook has entries up to this number now.</summary>
public readonly record struct LogbookNotice(LogbookId Logbook, long Number);

/// <summary>Tells screens in this process that a logbook has grown, after the commit. It says where to look, not what to show.</summary>
public sealed class LogbookNotices(ILogger<LogbookNotices> log)
{
    private readonly Lock guard = new();
    private IReadOnlyList<Action<LogbookNotice>> listeners = [];

    /// <summary>Calls <paramref name="listener"/> on the writer's thread, so it must be quick; dispose to stop.</summary>
    public IDisposable Subscribe(Action<LogbookNotice> listener)
    {
        Action<LogbookNotice> own = notice => listener(notice);
        lock (guard)
        {
            listeners = [.. listeners, own];
        }

        return new Subscription(this, own);
    }

    internal void Publish(IEnumerable<AppendedEntry> appended)
    {
        var notices = appended.GroupBy(entry => entry.Logbook, (logbook, entries) => new LogbookNotice(logbook, entries.Max(e => e.Number)));
        foreach (var notice in notices)
        {
            foreach (var listener in listeners)
            {
                Tell(listener, notice);
            }
        }
    }

    private void Tell(Action<LogbookNotice> listener, LogbookNotice notice)
    {
        try
        {
            listener(notice);
        }
        catch (Exception e)
        {
            // The entry is saved: a screen that can't refresh must not turn that into "not saved".
            log.LogError(e, "A screen failed to take the notice of {Logbook} {Number}", notice.Logbook, notice.Number);
        }
    }

    private sealed class Subscription(LogbookNotices notices, Action<LogbookNotice> listener) : IDisposable
    {
        public void Dispose()
        {
            lock (notices.guard)
            {
                notices.listeners = [.. notices.listeners.Where(other => !ReferenceEquals(other, listener))];
            }
        }
    }
}
