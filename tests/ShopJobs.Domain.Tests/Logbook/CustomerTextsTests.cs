using System.Text;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Golden;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>Which texts beside entries are the customer's, and go when he asks for it.</summary>
public sealed class CustomerTextsTests
{
    private static readonly ContentDigest Accepted = ContentDigest.Of([1], Encoding.UTF8.GetBytes("accepted"));
    private static readonly ContentDigest Lines = ContentDigest.Of([1], Encoding.UTF8.GetBytes("lines"));

    [Fact]
    public void Are_beside_these_kinds_of_entries_alone() => Assert.Equal(
        ["arrived", "as-found-recorded", "left", "owner-told", "photo-taken", "released", "summary-issued"],
        GoldenFiles.Payloads.Where(golden => EntryCodec.Decode(golden.Kind, golden.Version, golden.Payload).Facets().OfCustomer.Count > 0)
            .Select(golden => golden.Kind).Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void An_acceptance_goes_with_the_lines_that_showed_it_to_the_signer()
    {
        var released = new Released(ReleaseKind.Track, [], 0, null, null, null, Accepted, "00") { ShownAs = Lines };

        Assert.Equal([Accepted, Lines], released.Facets().OfCustomer);
        Assert.Equal([Accepted], (released with { ShownAs = null }).Facets().OfCustomer);
        Assert.Empty((released with { Acceptance = null }).Facets().OfCustomer);
    }

    [Fact]
    public void Why_it_comes_goes_and_what_was_said_of_the_odometer_stays()
    {
        var arrived = new Arrived(null, "Floor", Accepted) { OdometerWhy = Lines };

        Assert.Equal([Accepted], arrived.Facets().OfCustomer);
    }
}
