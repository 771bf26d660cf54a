using System.Collections.Concurrent;
using System.Text;
using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Golden;
using ShopJobs.Domain.Tests.Logbook.Properties;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>Keys read out of a payload are those of the entry it holds.</summary>
public class EntryKeysTests
{
    private const string Job = "\"job\":\"11111111000040008000000000000001\"";

    public static TheoryData<string> Files => [.. GoldenFiles.Payloads.Select(golden => golden.File)];

    [Theory]
    [MemberData(nameof(Files))]
    public void Keys_of_a_stored_payload_are_those_of_its_entry(string file)
    {
        var golden = GoldenFiles.Payloads.Single(one => one.File == file);

        Assert.Equal(
            EntryCodec.Decode(golden.Kind, golden.Version, golden.Payload).Facets().Keys,
            EntryCodec.KeysOf(golden.Kind, golden.Version, golden.Payload));
    }

    [Fact]
    public void Keys_of_what_people_write_on_cars_are_those_of_their_entries()
    {
        var kinds = new ConcurrentDictionary<string, bool>();
        Move.History.Sample(
            history => Assert.All(CarHistory.Scout(history, HoldRules.Standard).Book, recorded =>
            {
                var (kind, version, payload) = EntryCodec.Encode(recorded.Entry);
                kinds[kind] = true;
                Assert.Equal(recorded.Entry.Facets().Keys, EntryCodec.KeysOf(kind, version, payload));
            }),
            iter: 500);
        Assert.True(kinds.Count >= 14, string.Join(", ", kinds.Keys));
    }

    [Theory]
    [InlineData("{" + Job + ",\"group\":\"nuts\",\"hardware\":\"nut\",\"positions\":[\"wheel.nut/front-left/3\",\"wheel.nut/front-left/4\"]}", "in another order")]
    [InlineData("{\"posit\\u0069ons\":[\"wheel.nut\\/front-left/3\"]," + Job + "}", "with escapes")]
    [InlineData("{ \"positions\" : [ \"wheel.nut/front-left/3\" ], " + Job + " }", "with spaces")]
    [InlineData("{\"positions\":[\"bar.link/front/1\"],\"positions\":[\"wheel.nut/front-left/3\"]," + Job + "}", "named twice: the last counts")]
    public void Keys_are_found_however_the_payload_is_written(string payload, string how)
    {
        var bytes = Encoding.UTF8.GetBytes(payload);

        var keys = EntryCodec.KeysOf("fitted-new", 1, bytes);

        Assert.True(("wheel.nut", "front-left", 3) == (keys.Joint, keys.Place, keys.Position), how);
        Assert.Equal(EntryCodec.Decode("fitted-new", 1, bytes).Facets().Keys, keys);
    }

    [Theory]
    [InlineData("[]")]
    [InlineData("{}")]
    [InlineData("{" + Job + "}")]
    [InlineData("{" + Job + ",\"positions\":[]}")]
    [InlineData("{" + Job + ",\"positions\":null}")]
    [InlineData("{" + Job + ",\"positions\":[3]}")]
    [InlineData("{" + Job + ",\"positions\":[\"wheel.nut/front-left/3\",{}]}")]
    [InlineData("{" + Job + ",\"positions\":[\"wheel.nut/front-left\"]}")]
    [InlineData("{" + Job + ",\"positions\":[\"wheel.nut/front-left/three\"]}")]
    [InlineData("{" + Job + ",\"positions\":[\"wheel.nut/front-left/99999999999\"]}")]
    [InlineData("{\"positions\":[\"wheel.nut/front-left/3\"]}")]
    [InlineData("{\"job\":null,\"positions\":[\"wheel.nut/front-left/3\"]}")]
    [InlineData("{\"job\":\"1\",\"positions\":[\"wheel.nut/front-left/3\"]}")]
    [InlineData("{\"job\":1,\"positions\":[\"wheel.nut/front-left/3\"]}")]
    [InlineData("{" + Job + ",\"positions\":[\"wheel.nut/front-left/3\"],\"colour\":\"red\"}")]
    [InlineData("{" + Job + ",\"positions\":[\"wheel.nut/front-left/3\"],\"lot\":{\"a\":}}")]
    [InlineData("{" + Job + ",\"positions\":[\"wheel.nut/front-left/3\"]")]
    [InlineData("{" + Job + ",\"positions\":[\"wheel.nut/front-left/3\"]} {}")]
    public void Payload_that_is_no_such_entry_is_named(string payload)
    {
        var refused = Assert.Throws<FormatException>(() => EntryCodec.KeysOf("fitted-new", 1, Encoding.UTF8.GetBytes(payload)));
        Assert.StartsWith("An entry of kind “fitted-new” can't be read: ", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Payload_that_is_not_text_is_named()
    {
        var bytes = Encoding.UTF8.GetBytes("{" + Job + ",\"positions\":[\"wheel.nut/front-left/3\"],\"lot\":\"?\"}");
        bytes[Array.LastIndexOf(bytes, (byte)'?')] = 0xff;
        Assert.Throws<FormatException>(() => EntryCodec.KeysOf("fitted-new", 1, bytes));
    }

    [Theory]
    [InlineData("fitted-new", 2)]
    [InlineData("fitted-old", 1)]
    public void Kind_and_version_nobody_knows_are_named(string kind, int version) =>
        Assert.Throws<UnknownEntryException>(() => EntryCodec.KeysOf(kind, version, "{}"u8.ToArray()));
}
