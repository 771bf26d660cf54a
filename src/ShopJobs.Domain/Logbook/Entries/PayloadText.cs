using System.Buffers.Text;
using System.Globalization;
using System.Text;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// Reads a payload from left to right in the very form it is written in. The first part in another form fails the whole
/// reading: what was returned then means nothing.
/// </summary>
internal ref struct PayloadText(ReadOnlySpan<byte> text)
{
    private ReadOnlySpan<byte> rest = text;

    public bool Failed { get; private set; }

    /// <summary>True when everything was read and nothing failed.</summary>
    public readonly bool IsWhole => !Failed && rest.IsEmpty;

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
            Fail();
        }
    }

    /// <summary>Everything before this text, which must come.</summary>
    public ReadOnlySpan<byte> Until(ReadOnlySpan<byte> end)
    {
        var length = rest.IndexOf(end);
        return length < 0 ? Fail() : Take(length);
    }

    /// <summary>A value between quotes that was read before.</summary>
    public T Known<T>(Recurring<T> known)
    {
        var text = Until("\""u8);
        if (!known.TryRecall(text, out var value))
        {
            Fail();
        }

        Literal("\""u8);
        return value;
    }

    /// <summary>Letters, digits and signs between quotes; none that JSON would escape.</summary>
    public string Plain(Recurring<string> known)
    {
        var text = Until("\""u8);
        if (!known.TryRecall(text, out var value))
        {
            if (!Ascii.IsValid(text) || text.Contains((byte)'\\') || text.ContainsAnyInRange((byte)0, (byte)0x1f))
            {
                Fail();
                return "";
            }

            value = Encoding.ASCII.GetString(text);
            known.Keep(text, value);
        }

        Literal("\""u8);
        return value;
    }

    /// <summary>From 0, without leading zeros.</summary>
    public long Number()
    {
        if (rest.IsEmpty || !char.IsAsciiDigit((char)rest[0]) || !Utf8Parser.TryParse(rest, out long value, out var read)
            || (read > 1 && rest[0] == (byte)'0'))
        {
            Fail();
            return 0;
        }

        rest = rest[read..];
        return value;
    }

    /// <summary>As <see cref="Number"/>, for a smaller one.</summary>
    public int Count()
    {
        var number = Number();
        if (number > int.MaxValue)
        {
            Fail();
        }

        return Failed ? 0 : (int)number;
    }

    /// <summary>A date between quotes.</summary>
    public DateOnly Date()
    {
        const string Format = "yyyy-MM-dd";
        Span<char> date = stackalloc char[Format.Length];
        var text = Until("\""u8);
        if (text.Length != date.Length || !Ascii.IsValid(text))
        {
            Fail();
            return default;
        }

        Encoding.ASCII.GetChars(text, date);
        if (!DateOnly.TryParseExact(date, Format, CultureInfo.InvariantCulture, DateTimeStyles.None, out var value))
        {
            Fail();
        }

        Literal("\""u8);
        return value;
    }

    /// <summary>A list of <see cref="Number"/>s.</summary>
    public IReadOnlyList<long> Numbers()
    {
        Literal("["u8);
        var numbers = new List<long>();
        while (!Failed && !Next("]"u8))
        {
            if (numbers.Count > 0)
            {
                Literal(","u8);
            }

            numbers.Add(Number());
        }

        return numbers;
    }

    private ReadOnlySpan<byte> Take(int length)
    {
        var taken = rest[..length];
        rest = rest[length..];
        return taken;
    }

    private ReadOnlySpan<byte> Fail()
    {
        Failed = true;
        rest = default;
        return default;
    }
}
