using Microsoft.Data.Sqlite;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Logbook;

/// <summary>
/// Reads logbooks and the rows around them as they stood at one moment, and remembers what was read: if any of it has moved
/// by the time the decision is to be written, the decision is taken again.
/// </summary>
public sealed class LogbookReader
{
    private readonly ReadSession session;
    private readonly FoldCache cache;
    private readonly Dictionary<LogbookId, Head> heads = [];
    private readonly Dictionary<string, ReadRow> rows = [];

    /// <param name="clock">What the clock shows, UTC.</param>
    /// <param name="setsClock">What is decided on this reading sets the time again: it takes the clock's instant, whatever the newest entry says.</param>
    internal LogbookReader(ReadSession session, FoldCache cache, DateTime clock, bool setsClock = false)
    {
        this.session = session;
        this.cache = cache;
        Clock = clock;
        Newest = session.NewestInstant();
        At = Newest > clock && !setsClock ? Newest.Value : clock;
    }

    /// <summary>
    /// The instant of this reading, UTC; it becomes the instant of the entries decided on it. It is what the clock shows, and never
    /// before the newest entry.
    /// </summary>
    public DateTime At { get; }

    /// <summary>What the clock shows, UTC.</summary>
    internal DateTime Clock { get; }

    /// <summary>Instant of the newest entry in any logbook, UTC; null while there is none.</summary>
    internal DateTime? Newest { get; }

    /// <summary>The heads read so far.</summary>
    internal IReadOnlyDictionary<LogbookId, Head> Heads => heads;

    /// <summary>The last entry's number and chain value.</summary>
    public Head Head(LogbookId logbook)
    {
        if (!heads.TryGetValue(logbook, out var head))
        {
            head = session.HeadOf(logbook);
            heads.Add(logbook, head);
        }

        return head;
    }

    /// <summary>The logbook's state. Throws <see cref="LogbookReadOnlyException"/> when an entry of it can't be used.</summary>
    public TState Fold<TState>(LogbookId logbook, Folder<TState> folder)
    {
        var folded = FoldAsFarAsReadable(logbook, folder);
        return folded.Unreadable is { } unreadable ? throw unreadable : folded.State;
    }

    /// <summary>The logbook's state up to the first entry that can't be used, if there is one: for looking, not for deciding.</summary>
    public Folded<TState> FoldAsFarAsReadable<TState>(LogbookId logbook, Folder<TState> folder)
    {
        var head = Head(logbook);
        var start = cache.Find(logbook, folder);
        if (start is null || start.Head.Number > head.Number)
        {
            start = new Folded<TState>(folder.Empty, default, null);
        }

        if (start.Head == head)
        {
            return start;
        }

        var folded = Advance(logbook, folder, start, head);
        if (folded.Unreadable is not null && !Stands(logbook, start.Head))
        {
            folded = Advance(logbook, folder, new Folded<TState>(folder.Empty, default, null), head);
        }

        cache.Keep(logbook, folder, folded with { Unreadable = null });
        return folded;
    }

    /// <summary>Entries after a number, oldest first. Throws <see cref="FormatException"/> for an envelope that can't be read.</summary>
    public IReadOnlyList<Envelope> Entries(LogbookId logbook, long after, int atMost) =>
        [.. session.EntriesAfter(logbook, after, atMost).Select(entry => EnvelopeCodec.Decode(entry.Envelope))];

    /// <summary>
    /// An ordinary row a decision relies on (rights, procedure, session). It is read again before the decision is written and
    /// compared by equality, so <typeparamref name="T"/> is a value or record; the second read of a key gives the first value.
    /// </summary>
    public T Row<T>(string key, Func<SqliteConnection, T> read) => Row(key, (ReadSession session) => read(session.Connection));

    /// <summary>As the other, for one value of a statement that is asked often: it stays prepared on the connection.</summary>
    /// <param name="sql">A constant text of the program, with $1, $2 and so on for the values; anything a person wrote goes into the values.</param>
    /// <param name="of">What the value means; it is null where no row is found.</param>
    public T Row<T>(string key, string sql, IReadOnlyList<object> values, Func<object?, T> of) => Row(key, (ReadSession session) => of(session.Ask(sql, values)));

    /// <summary>The content behind a digest.</summary>
    public StoredContent Content(ContentDigest digest) => session.ContentOf(digest);

    /// <summary>True when everything read here reads the same on the other connection.</summary>
    internal bool StillHolds(ReadSession now) =>
        heads.All(read => now.HeadOf(read.Key) == read.Value) && rows.Values.All(row => row.Unchanged(now));

    private T Row<T>(string key, Func<ReadSession, T> read)
    {
        if (!rows.TryGetValue(key, out var row))
        {
            var value = read(session);
            row = new ReadRow(value, now => EqualityComparer<T>.Default.Equals(read(now), value));
            rows.Add(key, row);
        }

        return (T)row.Value!;
    }

    private bool Stands(LogbookId logbook, Head head) =>
        session.EntriesAfter(logbook, head.Number - 1, 1).Any(entry => entry.Head == head);

    private Folded<TState> Advance<TState>(LogbookId logbook, Folder<TState> folder, Folded<TState> start, Head end)
    {
        var (state, head) = (start.State, start.Head);
        foreach (var (stored, bytes) in session.EntriesAfter(logbook, start.Head.Number))
        {
            if (head.Next(bytes) != stored)
            {
                return Stopped("Its chain is broken there: the entry or one before it was changed outside the program. Run verify.");
            }

            try
            {
                state = folder.Apply(state, EnvelopeCodec.DecodeUnopened(bytes));
            }
            catch (Exception e) when (e is UnknownEntryException or FormatException)
            {
                return Stopped(e.Message, e);
            }

            head = stored;
        }

        return head == end
            ? new Folded<TState>(state, head, null)
            : Stopped("Its last entries were taken out outside the program. Run verify.");

        Folded<TState> Stopped(string why, Exception? inner = null) =>
            new(state, head, new LogbookReadOnlyException(logbook, head.Number + 1, why, inner));
    }

    private sealed record ReadRow(object? Value, Func<ReadSession, bool> Unchanged);
}
