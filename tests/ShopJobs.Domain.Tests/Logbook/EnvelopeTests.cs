using System.Text;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Tests.Logbook;

public class EnvelopeTests
{
    private static readonly LogbookId Car = new(LogbookKind.Car, Guid.Parse("0b6f3f0e-5d2a-4c8e-9a51-1f2e3d4c5b6a"));

    private static readonly Envelope Pull = new(
        Car,
        12,
        new DateTime(2026, 11, 25, 7, 15, 31, DateTimeKind.Utc).AddMicroseconds(40),
        new PersonId(Guid.Parse("11111111-1111-4111-8111-111111111111")),
        new PersonId(Guid.Parse("22222222-2222-4222-8222-222222222222")),
        new DeviceId(Guid.Parse("33333333-3333-4333-8333-333333333333")),
        new CommandId(Guid.Parse("44444444-4444-4444-8444-444444444444")),
        "torque-read",
        1,
        Encoding.UTF8.GetBytes("""{"value": "108.0", "unit":"N·m"}"""));

    private const string PullBytes =
        """{"logbook":"car:0b6f3f0e-5d2a-4c8e-9a51-1f2e3d4c5b6a","number":12,"at":"2026-11-25T07:15:31.000040Z","person":"11111111-1111-4111-8111-111111111111","sessionPerson":"22222222-2222-4222-8222-222222222222","device":"33333333-3333-4333-8333-333333333333","command":"44444444-4444-4444-8444-444444444444","kind":"torque-read","version":1,"payload":{"value": "108.0", "unit":"N·m"}}""";

    [Fact]
    public void Bytes_stand_in_one_fixed_order_with_the_payload_as_given() =>
        Assert.Equal(PullBytes, Encoding.UTF8.GetString(EnvelopeCodec.Encode(Pull)));

    [Fact]
    public void Decoding_gives_back_what_was_encoded() =>
        Assert.Equal(Pull, EnvelopeCodec.Decode(EnvelopeCodec.Encode(Pull)));

    [Fact]
    public void An_entry_outside_any_session_keeps_that_it_was()
    {
        var alone = Pull with { SessionPerson = null };
        var bytes = EnvelopeCodec.Encode(alone);
        Assert.Contains("\"sessionPerson\":null", Encoding.UTF8.GetString(bytes), StringComparison.Ordinal);
        Assert.Equal(alone, EnvelopeCodec.Decode(bytes));
    }

    [Theory]
    [InlineData("\"number\":12", "\"number\": 12")]
    [InlineData("\"number\":12", "\"number\":12.0")]
    [InlineData("\"number\":12", "\"number\":0")]
    [InlineData("\"number\":12", "\"number\":\"12\"")]
    [InlineData("\"number\":12,", "")]
    [InlineData("\"version\":1,", "\"version\":1,\"version\":1,")]
    [InlineData("\"version\":1,", "\"version\":1,\"extra\":1,")]
    [InlineData("31.000040Z", "31.00004Z")]
    [InlineData("31.000040Z", "31.0000401Z")]
    [InlineData("31.000040Z", "31.000040+00:00")]
    [InlineData("31.000040Z", "31.000040+01:00")]
    [InlineData("car:0b6f3f0e", "car:0B6F3F0E")]
    [InlineData("car:0b6f3f0e", "van:0b6f3f0e")]
    [InlineData("torque-read", "torque_read")]
    [InlineData("torque-read", "torque\\u002dread")]
    [InlineData("\"payload\":{", "\"payload\": {")]
    [InlineData("N·m\"}}", "N·m\"}} ")]
    [InlineData("N·m\"}}", "N·m\"}")]
    [InlineData("N·m\"}}", "N·m\"}{}}")]
    [InlineData("N·m\"}}", "N·m\",}}")]
    [InlineData("\"version\":1", "\"version\":2147483648")]
    [InlineData("\"number\":12", "\"number\":9223372036854775808")]
    [InlineData("2026-11-25", "2026-11-31")]
    [InlineData("\"22222222-2222-4222-8222-222222222222\"", "NULL")]
    [InlineData("N·m\"}}", "N·m\"}}{}")]
    [InlineData("{\"value\": \"108.0\", \"unit\":\"N·m\"}", "null")]
    [InlineData("{\"logbook\"", "\uFEFF{\"logbook\"")]
    public void Bytes_in_any_other_form_are_refused(string canonical, string other)
    {
        var bytes = Encoding.UTF8.GetBytes(PullBytes.Replace(canonical, other, StringComparison.Ordinal));
        Assert.Throws<FormatException>(() => EnvelopeCodec.Decode(bytes));
    }

    [Fact]
    public void Bytes_cut_short_anywhere_are_refused()
    {
        var bytes = EnvelopeCodec.Encode(Pull);
        Assert.All(Enumerable.Range(0, bytes.Length), length =>
            Assert.Throws<FormatException>(() => EnvelopeCodec.Decode(bytes.AsMemory(0, length))));
    }

    [Fact]
    public void No_change_of_one_byte_gives_a_second_form_of_an_envelope()
    {
        var canonical = EnvelopeCodec.Encode(Pull);
        byte[] values = [.. " +-.019AFafzZ\"\\{}[]:,"u8, 0x00, 0xC2, 0xFF];
        Assert.All(
            from place in Enumerable.Range(0, canonical.Length)
            from value in values
            select canonical.Select((b, i) => i == place ? value : b).ToArray(),
            bytes => Assert.True(Reencoded(bytes) is not { } again || again.SequenceEqual(bytes), Encoding.UTF8.GetString(bytes)));
    }

    private static byte[]? Reencoded(byte[] bytes)
    {
        try
        {
            return EnvelopeCodec.Encode(EnvelopeCodec.Decode(bytes));
        }
        catch (FormatException)
        {
            return null;
        }
    }

    [Fact]
    public void An_envelope_that_could_not_be_read_back_is_not_written()
    {
        Envelope[] wrong =
        [
            Pull with { Number = 0 },
            Pull with { Version = 0 },
            Pull with { Kind = "" },
            Pull with { Kind = "Torque read" },
            Pull with { At = Pull.At.AddTicks(1) },
            Pull with { At = DateTime.SpecifyKind(Pull.At, DateTimeKind.Local) },
            Pull with { Payload = "[]"u8.ToArray() },
            Pull with { Payload = "{} "u8.ToArray() },
            Pull with { Payload = "{}{}"u8.ToArray() },
            Pull with { Payload = "{value}"u8.ToArray() },
            Pull with { Payload = (byte[])[.. "{\"a\":\""u8, 0xFF, .. "\"}"u8] },
        ];
        Assert.All(wrong, envelope => Assert.Throws<ArgumentException>(() => EnvelopeCodec.Encode(envelope)));
    }

    [Fact]
    public void An_instant_is_cut_down_to_whole_microseconds_in_utc()
    {
        var shopTime = new DateTimeOffset(2026, 3, 1, 9, 0, 0, TimeSpan.FromHours(2)).AddTicks(19);
        var instant = Envelope.InstantOf(shopTime);
        Assert.Equal(new DateTime(2026, 3, 1, 7, 0, 0, DateTimeKind.Utc).AddTicks(10), instant);
        Assert.Equal(DateTimeKind.Utc, instant.Kind);
    }
}
