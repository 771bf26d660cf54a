using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// The canonical bytes of an envelope: UTF-8 JSON, properties in one fixed order, no white space outside the payload, the
/// payload embedded as it was given. One envelope has one byte form; anything else is refused on reading.
/// </summary>
public static class EnvelopeCodec
{
    private const string InstantFormat = "yyyy-MM-ddTHH:mm:ss.ffffffZ";
    private static readonly SearchValues<char> KindLetters = SearchValues.Create("abcdefghijklmnopqrstuvwxyz0123456789-.");

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
        Require(envelope.Kind.Length > 0 && !envelope.Kind.AsSpan().ContainsAnyExcept(KindLetters), "its kind has other than lower-case letters, digits, hyphens and points");
        Require(envelope.Payload.Span is [(byte)'{', .., (byte)'}'], "its payload is not one JSON object without surrounding space");

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
        try
        {
            var envelope = Read(bytes);
            var canonical = new ArrayBufferWriter<byte>(bytes.Length);
            Encode(envelope, canonical);
            return canonical.WrittenSpan.SequenceEqual(bytes.Span)
                ? envelope
                : throw new FormatException("The envelope is not in its canonical form.");
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException or ArgumentException)
        {
            throw new FormatException($"The envelope can't be read: {e.Message}", e);
        }
    }

    private static Envelope Read(ReadOnlyMemory<byte> bytes)
    {
        var reader = new Utf8JsonReader(bytes.Span);
        Next(ref reader, JsonTokenType.StartObject);
        Value(ref reader, "logbook"u8);
        var logbook = LogbookId.TryParse(reader.GetString(), out var id)
            ? id
            : throw new FormatException($"The envelope names no logbook but \"{reader.GetString()}\".");
        Value(ref reader, "number"u8);
        var number = reader.GetInt64();
        Value(ref reader, "at"u8);
        var at = DateTime.SpecifyKind(reader.GetDateTime(), DateTimeKind.Utc);
        Value(ref reader, "person"u8);
        var person = new PersonId(reader.GetGuid());
        Value(ref reader, "sessionPerson"u8);
        PersonId? sessionPerson = reader.TokenType == JsonTokenType.Null ? null : new PersonId(reader.GetGuid());
        Value(ref reader, "device"u8);
        var device = new DeviceId(reader.GetGuid());
        Value(ref reader, "command"u8);
        var command = new CommandId(reader.GetGuid());
        Value(ref reader, "kind"u8);
        var kind = reader.GetString() ?? throw new FormatException("The envelope's kind is null.");
        Value(ref reader, "version"u8);
        var version = reader.GetInt32();
        Value(ref reader, "payload"u8);
        var start = (int)reader.TokenStartIndex;
        reader.Skip();
        var payload = bytes[start..(int)reader.BytesConsumed];
        Next(ref reader, JsonTokenType.EndObject);
        return new Envelope(logbook, number, at, person, sessionPerson, device, command, kind, version, payload);
    }

    private static void Value(ref Utf8JsonReader reader, ReadOnlySpan<byte> name)
    {
        Next(ref reader, JsonTokenType.PropertyName);
        if (!reader.ValueTextEquals(name))
        {
            throw new FormatException($"The envelope has \"{reader.GetString()}\" where \"{Encoding.UTF8.GetString(name)}\" belongs.");
        }

        reader.Read();
    }

    private static void Next(ref Utf8JsonReader reader, JsonTokenType expected)
    {
        if (!reader.Read() || reader.TokenType != expected)
        {
            throw new FormatException($"The envelope has {reader.TokenType} where {expected} belongs.");
        }
    }

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
