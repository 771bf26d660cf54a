using System.Buffers.Text;
using System.Text;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// Reads an envelope's bytes from left to right and accepts each part in its canonical form only, so that what was read
/// would be written byte for byte the same. Throws <see cref="FormatException"/> otherwise.
/// </summary>
internal ref struct EnvelopeText(ReadOnlySpan<byte> text)
{
    private ReadOnlySpan<byte> rest = text;

    /// <summary>Steps over the text if it comes next.</summary>
    public bool Next(ReadOnlySpan<byte> possible)
    {
        var next = rest.StartsWith(possible);
        rest = next ? rest[possible.Length..] : rest;
        return next;
    }

    public void Literal(ReadOnlySpan<byte> expected)
    {
        if (!Next(expected))
        {
            throw Unlike($"no {Encoding.UTF8.GetString(expected)} where it belongs");
        }
    }

    /// <summary>Everything before the next such byte.</summary>
    public ReadOnlySpan<byte> Until(byte end)
    {
        var length = rest.IndexOf(end);
        return length < 0 ? throw Unlike("no end of a value") : Take(length);
    }

    /// <summary>36 characters, lower case.</summary>
    public Guid Id()
    {
        const int Length = 36;
        var id = Take(Length);
        return !id.ContainsAnyInRange((byte)'A', (byte)'F') && Utf8Parser.TryParse(id, out Guid value, out var read, 'D') && read == Length
            ? value
            : throw Unlike("an id in another form");
    }

    /// <summary>From 1, without leading zeros.</summary>
    public long Count()
    {
        if (rest.IsEmpty || rest[0] is < (byte)'1' or > (byte)'9' || !Utf8Parser.TryParse(rest, out long value, out var read))
        {
            throw Unlike("a number that is no count");
        }

        rest = rest[read..];
        return value;
    }

    /// <summary>UTC with exactly six decimals and a Z.</summary>
    public DateTime Instant()
    {
        const int Length = 27;
        var instant = Take(Length);
        Span<byte> sevenDecimals = stackalloc byte[Length + 1];
        instant[..^1].CopyTo(sevenDecimals);
        sevenDecimals[^2] = (byte)'0';
        sevenDecimals[^1] = instant[^1];
        return instant[^1] == (byte)'Z' && Utf8Parser.TryParse(sevenDecimals, out DateTime value, out var read, 'O') && read == Length + 1
            ? DateTime.SpecifyKind(value, DateTimeKind.Utc)
            : throw Unlike("an instant in another form");
    }

    /// <summary>Length of what is left up to the last brace, which closes the envelope; it stands in braces itself.</summary>
    public readonly int ObjectLeft() =>
        rest is [(byte)'{', .., (byte)'}', (byte)'}'] ? rest.Length - 1 : throw Unlike("no payload up to the end");

    private static FormatException Unlike(string what) => new($"The envelope is not in its canonical form: {what}.");

    private ReadOnlySpan<byte> Take(int length)
    {
        if (rest.Length < length)
        {
            throw Unlike("its end is missing");
        }

        var taken = rest[..length];
        rest = rest[length..];
        return taken;
    }
}
