using System.Collections.Concurrent;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Logbook;

/// <summary>Keeps the newest state of each logbook lately asked for. States are immutable, so readers share them.</summary>
public sealed class FoldCache(int capacity = 2000)
{
    private readonly ConcurrentDictionary<(LogbookId Logbook, string Folder), Kept> kept = new();
    private long clock;

    internal Folded<TState>? Find<TState>(LogbookId logbook, Folder<TState> folder)
    {
        if (!kept.TryGetValue((logbook, folder.Name), out var found))
        {
            return null;
        }

        found.LastUsed = Interlocked.Increment(ref clock);
        return (Folded<TState>)found.State;
    }

    internal void Keep<TState>(LogbookId logbook, Folder<TState> folder, Folded<TState> state)
    {
        kept[(logbook, folder.Name)] = new Kept(state) { LastUsed = Interlocked.Increment(ref clock) };
        if (kept.Count > capacity)
        {
            foreach (var oldest in kept.OrderBy(k => k.Value.LastUsed).Take(capacity / 4 + 1).ToList())
            {
                kept.TryRemove(oldest.Key, out _);
            }
        }
    }

    private sealed class Kept(object state)
    {
        public object State { get; } = state;

        public long LastUsed { get; set; }
    }
}
