using System.Text;
using Bunit;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Summaries;
using ShopJobs.Web.Components.Summaries;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Tests.CarPage;

namespace ShopJobs.Web.Tests.Summaries;

/// <summary>What stands above an issued page: what to do, whom to call, why.</summary>
public sealed class StandingBannerTests : ScreenBench
{
    private static readonly DateTime At = new(2026, 3, 2, 10, 0, 0, DateTimeKind.Utc);

    [Fact]
    public void A_release_that_stands_no_more_is_the_first_line_with_the_telephone()
    {
        var banner = Draw(new SummaryStanding.Overtaken(At, [], ["a tool that was used is in doubt"], Grave: true) { NoLonger = [ReleaseKind.Road] });

        Assert.Equal("Out of date. Do not drive before you have spoken to us: 01632 960100", Words(banner.Find("p")));
        Assert.Equal("tel:01632960100", banner.Find("p a").GetAttribute("href"));
        Assert.Contains("This page says that the car is released to road. That is no longer so.", banner.Markup, StringComparison.Ordinal);
        Assert.Contains("Since 2 Mar 2026, 10:00: a tool that was used is in doubt.", banner.Markup, StringComparison.Ordinal);
        Assert.Contains("is-grave", banner.Find(".sheet-banner").ClassName, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_only_the_track_stands_no_more_it_says_so() => Assert.Equal(
        "Out of date. Do not drive on track before you have spoken to us: 01632 960100",
        Words(Draw(new SummaryStanding.Overtaken(At, [], [], Grave: true) { NoLonger = [ReleaseKind.Track] }).Find("p")));

    [Fact]
    public void A_page_that_was_only_replaced_says_that_and_links_to_the_newer_one()
    {
        var banner = Draw(new SummaryStanding.Replaced(2, At));

        Assert.DoesNotContain("drive", banner.Markup, StringComparison.OrdinalIgnoreCase);
        Assert.Equal("Version 2 of 2 Mar 2026 replaces this page.", banner.Find("strong").TextContent);
        Assert.Equal("/s/newest", banner.Find("a.button").GetAttribute("href"));
    }

    [Fact]
    public void A_page_that_was_replaced_and_whose_release_ended_says_both()
    {
        var banner = Draw(new SummaryStanding.Replaced(2, At) { NoLonger = [ReleaseKind.Road] });

        Assert.StartsWith("Out of date. Do not drive before", Words(banner.Find("p")), StringComparison.Ordinal);
        Assert.Equal("Read version 2", banner.Find("a.button").TextContent);
    }

    [Fact]
    public void A_page_that_stands_has_nothing_above_it() => Assert.Empty(Draw(new SummaryStanding.Current()).Markup.Trim());

    private static string Words(AngleSharp.Dom.IElement element) => string.Join(' ', element.TextContent.Split(default(char[]), StringSplitOptions.RemoveEmptyEntries));

    private IRenderedComponent<StandingBanner> Draw(SummaryStanding standing)
    {
        var digest = ContentDigest.Of([1], Encoding.UTF8.GetBytes("page"));
        var page = new WorkSummary(
            1, null, new DateOnly(2026, 3, 2), "ED, lead", new SummaryCar("Blue", "Brennock 220", ""), new SummaryShop("Ninth Bay", "Ninth Bay, 01632 960100 (invented)", true),
            null, new LogbookMark(1, "a3f1"), [], [], [], [], [], [], [], new EvidenceCounts(0, 0, 0, 0, 0, 0, 0, 0, 0, 0), [], [], [], []);
        var version = new IssuedVersion(
            new SummaryBook(1, At, new SummaryIssued(1, null, digest, 0, "00")), standing, new StoredContent.Present(SummaryText.Write(page)), false);
        return Render<StandingBanner>(parameters => parameters.Add(banner => banner.Version, version).Add(banner => banner.Newest, "/s/newest"));
    }
}
