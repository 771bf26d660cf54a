namespace ShopJobs.Domain.Logbook;

/// <summary>
/// Remembers values read from short texts that come again and again, so that each is read once and shared. It has room for a
/// fixed number of them; a newer one takes an older one's place. Safe for any number of threads; the values must never change.
/// </summary>
internal sealed class Recurring<T>(int rows)
{
    private const int Longest = 1024;
    private const int Row = 4;
    private readonly Kept?[] kept = new Kept?[rows * Row];
    private uint turn;

    /// <summary>False for a text that is not remembered.</summary>
    public bool TryRecall(ReadOnlySpan<byte> text, out T value)
    {
        foreach (ref var place in RowOf(text))
        {
            if (Volatile.Read(ref place) is { } known && text.SequenceEqual(known.Text))
            {
                value = known.Value;
                return true;
            }
        }

        value = default!;
        return false;
    }

    /// <summary>Remembers what a text was read as.</summary>
    public void Keep(ReadOnlySpan<byte> text, T value)
    {
        if (text.Length > Longest)
        {
            return;
        }

        var row = RowOf(text);
        var free = row.IndexOf((Kept?)null);
        Volatile.Write(ref row[free < 0 ? (int)(turn++ % Row) : free], new Kept(text.ToArray(), value));
    }

    private Span<Kept?> RowOf(ReadOnlySpan<byte> text)
    {
        var hash = default(HashCode);
        hash.AddBytes(text);
        return kept.AsSpan((int)((uint)hash.ToHashCode() % (uint)rows) * Row, Row);
    }

    private sealed class Kept(byte[] text, T value)
    {
        public byte[] Text { get; } = text;

        public T Value { get; } = value;
    }
}
