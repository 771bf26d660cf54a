using System.Diagnostics.CodeAnalysis;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// Values by entry number, each number higher than the one before. Never changes: <see cref="Add"/> gives a new one, which
/// shares what it can with this one. Safe for any number of threads.
/// </summary>
public sealed class ByNumber<T>
{
    /// <summary>Without any value.</summary>
    public static readonly ByNumber<T> Empty = new(new Written(0), 0);

    private readonly Written written;

    private ByNumber(Written written, int count)
    {
        this.written = written;
        Count = count;
    }

    public int Count { get; }

    /// <summary>The numbers, lowest first.</summary>
    public IEnumerable<long> Keys => written.Numbers.Take(Count);

    /// <summary>The numbers with their values, lowest first.</summary>
    public IEnumerable<KeyValuePair<long, T>> All => written.Numbers.Zip(written.Values, KeyValuePair.Create).Take(Count);

    /// <summary>The value of a number; throws <see cref="KeyNotFoundException"/> where there is none.</summary>
    public T this[long number] =>
        TryGetValue(number, out var value) ? value : throw new KeyNotFoundException($"Nothing has number {number}.");

    /// <summary>True where the number has a value.</summary>
    public bool TryGetValue(long number, [MaybeNullWhen(false)] out T value)
    {
        var at = Array.BinarySearch(written.Numbers, 0, Count, number);
        value = at < 0 ? default : written.Values[at];
        return at >= 0;
    }

    /// <summary>These and one more. Throws <see cref="ArgumentOutOfRangeException"/> for a number that is not the highest.</summary>
    public ByNumber<T> Add(long number, T value)
    {
        if (Count > 0)
        {
            ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(number, written.Numbers[Count - 1]);
        }

        var target = written.MayFollow(Count) ? written : written.Copy(Count);
        target.Numbers[Count] = number;
        target.Values[Count] = value;
        return new ByNumber<T>(target, Count + 1);
    }

    // What several share: a place, once written, is never written again.
    private sealed class Written(int room)
    {
        private int used;

        public long[] Numbers { get; } = new long[room];

        public T[] Values { get; } = new T[room];

        /// <summary>True for the one who may write the next place; anybody else who adds to the same one makes a copy.</summary>
        public bool MayFollow(int count) => count < Numbers.Length && Interlocked.CompareExchange(ref used, count + 1, count) == count;

        public Written Copy(int count)
        {
            var copy = new Written(Math.Max(4, count * 2)) { used = count + 1 };
            Array.Copy(Numbers, copy.Numbers, count);
            Array.Copy(Values, copy.Values, count);
            return copy;
        }
    }
}
