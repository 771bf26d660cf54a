namespace ShopJobs.Domain.Logbook;

/// <summary>
/// One numbered entry of a logbook with who, when, where from and by which command. Its canonical bytes
/// (<see cref="EnvelopeCodec"/>) are what is stored and hashed. It holds ids and figures only, never a name or free text.
/// </summary>
/// <param name="Logbook">The logbook it is in.</param>
/// <param name="Number">1, 2, 3 ... without gaps within the logbook.</param>
/// <param name="At">The server's instant, UTC, whole microseconds.</param>
/// <param name="Person">Who the entry is by: the verified signer where the command was signed.</param>
/// <param name="SessionPerson">Whose session the tablet was in, if anybody's.</param>
/// <param name="Device">The tablet or scanner.</param>
/// <param name="Command">The command that led to the entry.</param>
/// <param name="Kind">The entry kind: lower-case letters, digits, hyphens and points.</param>
/// <param name="Version">The version of that kind's payload, from 1.</param>
/// <param name="Payload">The entry itself, one UTF-8 JSON object.</param>
public sealed record Envelope(
    LogbookId Logbook,
    long Number,
    DateTime At,
    PersonId Person,
    PersonId? SessionPerson,
    DeviceId Device,
    CommandId Command,
    string Kind,
    int Version,
    ReadOnlyMemory<byte> Payload)
{
    /// <summary>The instant as an envelope holds it: UTC, cut down to whole microseconds.</summary>
    public static DateTime InstantOf(DateTimeOffset now) =>
        new(now.UtcTicks - (now.UtcTicks % TimeSpan.TicksPerMicrosecond), DateTimeKind.Utc);

    public bool Equals(Envelope? other) =>
        other is not null
        && (Logbook, Number, At, Person, SessionPerson, Device) == (other.Logbook, other.Number, other.At, other.Person, other.SessionPerson, other.Device)
        && (Command, Kind, Version) == (other.Command, other.Kind, other.Version)
        && Payload.Span.SequenceEqual(other.Payload.Span);

    public override int GetHashCode() => HashCode.Combine(Logbook, Number, At, Command, Kind);
}
