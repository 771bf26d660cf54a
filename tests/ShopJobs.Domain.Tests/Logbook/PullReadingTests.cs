using System.Text;
using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Golden;
using ShopJobs.Domain.Tests.Logbook.Properties;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>
/// A torque record in the very form it is written in is read by a way of its own. It must say the same as the general way,
/// which a space after the first brace leads to.
/// </summary>
public class PullReadingTests
{
    private const string Kind = "torque-recorded";

    public static TheoryData<string> Files => [.. GoldenFiles.Payloads.Where(golden => golden.Kind == Kind).Select(golden => golden.File)];

    [Fact]
    public void Pulls_of_what_people_write_on_cars_are_read_alike_either_way()
    {
        var pulls = 0;
        Move.History.Sample(
            history => Assert.All(CarHistory.Scout(history, HoldRules.Standard).Book.Where(recorded => recorded.Entry is TorqueRecorded), recorded =>
            {
                var payload = EntryCodec.Encode(recorded.Entry).Payload;
                Assert.Equal(Outcome(Spaced(payload)), Outcome(payload));
                Assert.Equal(Encoding.UTF8.GetString(payload), Outcome(payload));
                Interlocked.Increment(ref pulls);
            }),
            iter: 300);
        Assert.True(pulls > 300, $"only {pulls} pulls were read");
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Whatever_byte_is_changed_both_ways_read_the_same_or_refuse(string file)
    {
        var payload = GoldenFiles.Payloads.Single(golden => golden.File == file).Payload;
        foreach (var changed in Changed(Known(payload)))
        {
            Assert.True(Outcome(Spaced(changed)) == Outcome(changed), Encoding.UTF8.GetString(changed));
        }
    }

    [Fact]
    public void Specifications_that_say_the_same_are_read_once()
    {
        var payload = Known(GoldenFiles.Payloads.First(golden => golden.Kind == Kind && golden.File.Contains("least", StringComparison.Ordinal)).Payload);

        var (first, second) = ((TorqueRecorded)EntryCodec.Decode(Kind, 1, payload), (TorqueRecorded)EntryCodec.Decode(Kind, 1, payload));

        Assert.NotSame(first, second);
        Assert.Same(first.Spec, second.Spec);
    }

    // Read once, its values are remembered: the next time the quick way is open.
    private static byte[] Known(byte[] payload)
    {
        EntryCodec.Decode(Kind, 1, payload);
        EntryCodec.Decode(Kind, 1, payload);
        return payload;
    }

    private static IEnumerable<byte[]> Changed(byte[] payload)
    {
        for (var i = 0; i < payload.Length; i++)
        {
            yield return [.. payload[..i], .. payload[(i + 1)..]];
            foreach (var other in "01-+e.\"\\ ,:{}[]nA\0\u007f"u8.ToArray().Append((byte)0xff))
            {
                yield return [.. payload[..i], other, .. payload[(i + 1)..]];
                yield return [.. payload[..i], other, .. payload[i..]];
            }
        }
    }

    private static byte[] Spaced(byte[] payload) => [.. payload[..1], (byte)' ', .. payload[1..]];

    private static string Outcome(byte[] payload)
    {
        try
        {
            return Encoding.UTF8.GetString(EntryCodec.Encode(EntryCodec.Decode(Kind, 1, payload)).Payload);
        }
        catch (Exception e) when (e is FormatException or OverflowException or ArgumentException)
        {
            return e.GetType().Name;
        }
    }
}
