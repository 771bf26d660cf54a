using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Unicode;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// The canonical bytes of an envelope: UTF-8 JSON, properties in one fixed order, no white space outside the payload, the
/// payload embedded as it was given. One envelope has one byte form; anything else is refused on reading.
/// </summary>
public static class EnvelopeCodec
{
    private const string InstantFormat = "yyyy-MM-ddTHH:mm:ss.ffffffZ";
    private static readonly SearchValues<char> KindLetters = SearchValues.Create("abcdefghijklmnopqrstuvwxyz0123456789-.");
    private static readonly Recurring<string> Kinds = new(16);

    /// <summary>Throws <see cref="ArgumentException"/> for an envelope that could not be read back as it is.</summary>
    public static byte[] Encode(Envelope envelope)
    {
        var buffer = new ArrayBufferWriter<byte>(512 + envelope.Payload.Length);
        Encode(envelope, buffer);
        return buffer.WrittenSpan.ToArray();
    }

    /// <summary>As <see cref="Encode(Envelope)"/>, into a buffer of the caller's.</summary>
    public static void Encode(Envelope envelope, IBufferWriter<byte> target)
    {
        Require(envelope.Number >= 1, "its number is below 1");
        Require(envelope.Version >= 1, "its version is below 1");
        Require(envelope.At.Kind == DateTimeKind.Utc && envelope.At.Ticks % TimeSpan.TicksPerMicrosecond == 0, "its instant is not UTC in whole microseconds");
        Require(IsKind(envelope.Kind), "its kind has other than lower-case letters, digits, hyphens and points");
        Require(envelope.Payload.Span is [(byte)'{', .., (byte)'}'], "its payload is not one JSON object without surrounding space");
        Require(Utf8.IsValid(envelope.Payload.Span), "its payload is not UTF-8");

        using var writer = new Utf8JsonWriter(target);
        writer.WriteStartObject();
        writer.WriteString("logbook"u8, envelope.Logbook.ToString());
        writer.WriteNumber("number"u8, envelope.Number);
        WriteInstant(writer, envelope.At);
        writer.WriteString("person"u8, envelope.Person.Value);
        if (envelope.SessionPerson is { } sessionPerson)
        {
            writer.WriteString("sessionPerson"u8, sessionPerson.Value);
        }
        else
        {
            writer.WriteNull("sessionPerson"u8);
        }

        writer.WriteString("device"u8, envelope.Device.Value);
        writer.WriteString("command"u8, envelope.Command.Value);
        writer.WriteString("kind"u8, envelope.Kind);
        writer.WriteNumber("version"u8, envelope.Version);
        writer.WritePropertyName("payload"u8);
        WritePayload(writer, envelope.Payload.Span);
        writer.WriteEndObject();
    }

    /// <summary>
    /// Reads the canonical bytes; the payload is a slice of them, not a copy. Throws <see cref="FormatException"/> for bytes
    /// that <see cref="Encode(Envelope)"/> would not have written.
    /// </summary>
    public static Envelope Decode(ReadOnlyMemory<byte> bytes)
    {
        var envelope = DecodeUnopened(bytes);
        RequireJson(envelope.Payload.Span);
        return envelope;
    }

    /// <summary>
    /// As <see cref="Decode"/>, but leaves the payload unread between its braces: for a caller that reads it next.
    /// </summary>
    public static Envelope DecodeUnopened(ReadOnlyMemory<byte> bytes)
    {
        var text = new EnvelopeText(bytes.Span);
        text.Literal("{\"logbook\":\""u8);
        var logbook = new LogbookId(LogbookKindOf(ref text), text.Id());
        text.Literal("\",\"number\":"u8);
        var number = text.Count();
        text.Literal(",\"at\":\""u8);
        var at = text.Instant();
        text.Literal("\",\"person\":\""u8);
        var person = new PersonId(text.Id());
        var inSession = text.Next("\",\"sessionPerson\":\""u8);
        PersonId? sessionPerson = inSession ? new PersonId(text.Id()) : null;
        text.Literal(inSession ? "\",\"device\":\""u8 : "\",\"sessionPerson\":null,\"device\":\""u8);
        var device = new DeviceId(text.Id());
        text.Literal("\",\"command\":\""u8);
        var command = new CommandId(text.Id());
        text.Literal("\",\"kind\":\""u8);
        var kind = KindOf(text.Until((byte)'"'));
        text.Literal("\",\"version\":"u8);
        var version = text.Count();
        text.Literal(",\"payload\":"u8);
        var payload = bytes[^(text.ObjectLeft() + 1)..^1];
        return version <= int.MaxValue
            ? new Envelope(logbook, number, at, person, sessionPerson, device, command, kind, (int)version, payload)
            : throw new FormatException($"The envelope's version {version} is too large.");
    }

    private static void RequireJson(ReadOnlySpan<byte> payload)
    {
        if (!Utf8.IsValid(payload))
        {
            throw new FormatException("The envelope's payload is not UTF-8.");
        }

        try
        {
            var reader = new Utf8JsonReader(payload);
            while (reader.Read())
            {
            }
        }
        catch (JsonException e)
        {
            throw new FormatException($"The envelope's payload can't be read: {e.Message}", e);
        }
    }

    private static LogbookKind LogbookKindOf(ref EnvelopeText text) =>
        text.Next("car:"u8) ? LogbookKind.Car
        : text.Next("tool:"u8) ? LogbookKind.Tool
        : text.Next("shop:"u8) ? LogbookKind.Shop
        : throw new FormatException($"The envelope names no kind of logbook but \"{Encoding.UTF8.GetString(text.Until((byte)':'))}\".");

    private static string KindOf(ReadOnlySpan<byte> text)
    {
        if (Kinds.TryRecall(text, out var known))
        {
            return known;
        }

        var kind = Encoding.UTF8.GetString(text);
        if (!IsKind(kind))
        {
            throw new FormatException($"The envelope has no entry kind but \"{kind}\".");
        }

        Kinds.Keep(text, kind);
        return kind;
    }

    private static bool IsKind(string kind) => kind.Length > 0 && !kind.AsSpan().ContainsAnyExcept(KindLetters);

    private static void WriteInstant(Utf8JsonWriter writer, DateTime at)
    {
        Span<byte> text = stackalloc byte[InstantFormat.Length];
        at.TryFormat(text, out var written, InstantFormat, CultureInfo.InvariantCulture);
        writer.WriteString("at"u8, text[..written]);
    }

    private static void WritePayload(Utf8JsonWriter writer, ReadOnlySpan<byte> payload)
    {
        try
        {
            writer.WriteRawValue(payload);
        }
        catch (JsonException e)
        {
            throw new ArgumentException($"This envelope can't be written: its payload is not JSON: {e.Message}", nameof(payload), e);
        }
    }

    private static void Require(bool met, string otherwise)
    {
        if (!met)
        {
            throw new ArgumentException($"This envelope can't be written: {otherwise}.");
        }
    }
}
