using System.Reflection;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Golden;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>A kind says everything it holds: no position, job, tool, problem or text of it is forgotten.</summary>
public class EntryFacetsTests
{
    // Kept outside the entry and shown by other means: who signed it, the page that was issued, and a picture.
    private static readonly string[] NoTexts = [nameof(Entry.SignedAs), nameof(Entry.ShownAs), nameof(SummaryIssued.Snapshot), nameof(PhotoTaken.Photo)];

    public static TheoryData<string> Files => [.. GoldenFiles.Payloads.Select(golden => golden.File)];

    [Theory]
    [MemberData(nameof(Files))]
    public void Positions_of_an_entry_are_all_those_it_holds(string file)
    {
        var entry = Stored(file);

        // What a pull rides on is only named by it, and what was reported late stands among what was reported.
        var ridden = (entry as TorqueRecorded)?.RidesOn;
        Assert.Equal(Held<JointPosition>(entry).Where(at => at != ridden).Distinct(), entry.Facets().Positions);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Job_and_tool_of_an_entry_are_those_it_holds(string file)
    {
        var entry = Stored(file);

        Assert.Equal(Value(entry, "Job"), entry.Facets().Job);
        Assert.Equal(Value(entry, "Tool"), entry.Facets().Tool);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Problems_of_an_entry_are_those_it_holds(string file)
    {
        var entry = Stored(file);

        Assert.Equal(Held<HoldReason>(entry), entry.Facets().Problems);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Texts_of_an_entry_are_all_those_it_holds_each_with_its_label(string file)
    {
        var entry = Stored(file);

        Assert.Equal(Held<ContentDigest>(entry), entry.Facets().Texts.Select(text => text.Digest));
        Assert.All(entry.Facets().Texts, text => Assert.NotEmpty(text.Label));
    }

    [Fact]
    public void A_witness_is_found_by_the_joint_and_is_about_the_records_he_saw()
    {
        var seen = GoldenFiles.Payloads.Select(golden => Stored(golden.File)).OfType<Witnessed>().First();

        Assert.Equal(seen.Records, seen.Facets().About);
        Assert.Equal((seen.Joint.Key, seen.Joint.Place, 1), (seen.Facets().Keys.Joint, seen.Facets().Keys.Place, seen.Facets().Keys.Position));
    }

    [Fact]
    public void A_correction_is_about_the_entry_it_corrects_and_a_confirmation_about_the_correction()
    {
        var reason = new ContentDigest(new string('a', 64));

        Assert.Equal([4], new Corrected(4, null, reason).Facets().About);
        Assert.Equal([5], new CorrectionConfirmed(5, reason).Facets().About);
    }

    [Fact]
    public void An_entry_with_a_text_that_was_not_given_has_none() =>
        Assert.Empty(new Opened([new JointPosition("wheel.nut", "front-left", 3)], [], [], null, null).Facets().Texts);

    private static Entry Stored(string file)
    {
        var golden = GoldenFiles.Payloads.Single(one => one.File == file);
        return EntryCodec.Decode(golden.Kind, golden.Version, golden.Payload);
    }

    private static object? Value(Entry entry, string member) => entry.GetType().GetProperty(member)?.GetValue(entry);

    private static IEnumerable<T> Held<T>(Entry entry)
        where T : struct =>
        from property in entry.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance)
        where !NoTexts.Contains(property.Name)
        let value = property.GetValue(entry)
        from held in value switch
        {
            T one => [one],
            IReadOnlyList<T> many => many,
            _ => [],
        }
        select held;
}
