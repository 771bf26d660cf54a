using System.Text;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Tests.Logbook.Golden;

/// <summary>Payloads that an earlier program wrote always open, and say the same.</summary>
public class GoldenPayloadTests
{
    public static TheoryData<string> Files => [.. GoldenFiles.Payloads.Select(golden => golden.File)];

    [Theory]
    [MemberData(nameof(Files))]
    public void Stored_payload_opens_and_is_written_again_as_the_same_bytes(string file)
    {
        var golden = GoldenFiles.Payloads.Single(one => one.File == file);

        var (kind, version, payload) = EntryCodec.Encode(EntryCodec.Decode(golden.Kind, golden.Version, golden.Payload));

        Assert.Equal(Encoding.UTF8.GetString(golden.Payload), Encoding.UTF8.GetString(payload));
        Assert.Equal((golden.Kind, golden.Version), (kind, version));
    }

    [Fact]
    public void Every_kind_has_a_stored_payload_and_every_stored_payload_a_kind() =>
        Assert.Equal(EntryCodec.Kinds.Order(StringComparer.Ordinal), GoldenFiles.Payloads.Select(golden => golden.Kind).Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void Every_kind_has_a_stored_payload_that_was_signed() => Assert.Equal(
        EntryCodec.Kinds.Order(StringComparer.Ordinal),
        Opened.Where(entry => entry.SignedAs is not null).Select(entry => EntryCodec.Encode(entry).Kind).Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void Every_problem_a_report_may_carry_stands_in_a_stored_payload()
    {
        var stored = Opened.SelectMany(entry => entry switch
        {
            HandTightened fact => fact.Problems.Select(problem => ("hand-tight", problem)),
            TorqueRecorded fact => fact.Problems.Select(problem => ("pull", problem)),
            Settled fact => fact.Problems.Select(problem => ("settling", problem)),
            _ => [],
        }).ToHashSet();

        var rules = HoldRules.Standard;
        Assert.Empty(rules.HandTight.Select(rule => ("hand-tight", rule.Reason))
            .Concat(rules.Pull.Select(rule => ("pull", rule.Reason)))
            .Concat(rules.Settling.Select(rule => ("settling", rule.Reason)))
            .Except(stored));
    }

    private static IReadOnlyList<Entry> Opened =>
        [.. GoldenFiles.Payloads.Select(golden => EntryCodec.Decode(golden.Kind, golden.Version, golden.Payload))];
}
