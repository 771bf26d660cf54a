using System.Threading.Channels;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Logbook;

/// <summary>A logbook has entries up to this number now.</summary>
public readonly record struct LogbookNotice(LogbookId Logbook, long Number);

/// <summary>
/// Tells screens in this process that a logbook has grown, after the commit. It says where to look, not what to show. Notices are told
/// in their order on a thread of their own: whoever recorded something does not wait for a screen that reads.
/// </summary>
public sealed class LogbookNotices(ILogger<LogbookNotices> log) : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);
    private readonly Channel<LogbookNotice> waiting = Channel.CreateUnbounded<LogbookNotice>(new() { SingleReader = true });
    private readonly Lock guard = new();
    private IReadOnlyList<Action<LogbookNotice>> listeners = [];
    private Thread? teller;

    /// <summary>
    /// Calls <paramref name="listener"/> on the notices' own thread, one notice after the other; a slow listener keeps the others waiting.
    /// Dispose to stop.
    /// </summary>
    public IDisposable Subscribe(Action<LogbookNotice> listener)
    {
        Action<LogbookNotice> own = notice => listener(notice);
        lock (guard)
        {
            listeners = [.. listeners, own];
            if (teller is null)
            {
                teller = new Thread(TellAll) { IsBackground = true, Name = "Logbook notices" };
                teller.Start();
            }
        }

        return new Subscription(this, own);
    }

    /// <summary>Tells everything that waits, and ends.</summary>
    public void Dispose()
    {
        waiting.Writer.TryComplete();
        if (teller?.Join(Patience) == false)
        {
            log.LogError("A screen has not come back from a notice in {Patience}; the notices after it are not told", Patience);
        }
    }

    internal void Publish(IEnumerable<AppendedEntry> appended)
    {
        if (listeners.Count == 0)
        {
            return;
        }

        foreach (var notice in appended.GroupBy(entry => entry.Logbook, (logbook, entries) => new LogbookNotice(logbook, entries.Max(e => e.Number))))
        {
            waiting.Writer.TryWrite(notice);
        }
    }

    private void TellAll()
    {
        while (waiting.Reader.WaitToReadAsync().AsTask().GetAwaiter().GetResult())
        {
            foreach (var notice in Newest())
            {
                foreach (var listener in listeners)
                {
                    Tell(listener, notice);
                }
            }
        }
    }

    // Of a logbook that grew several times while screens were reading, only how far it is now.
    private List<LogbookNotice> Newest()
    {
        var newest = new OrderedDictionary<LogbookId, LogbookNotice>();
        while (waiting.Reader.TryRead(out var notice))
        {
            newest.Remove(notice.Logbook);
            newest.Add(notice.Logbook, notice);
        }

        return [.. newest.Values];
    }

    private void Tell(Action<LogbookNotice> listener, LogbookNotice notice)
    {
        try
        {
            listener(notice);
        }
        catch (Exception e)
        {
            // The entry is saved, and the other screens want to hear of it too.
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
