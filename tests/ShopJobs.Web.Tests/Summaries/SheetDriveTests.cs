using Bunit;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Summaries;
using ShopJobs.Web.Components.Summaries;

namespace ShopJobs.Web.Tests.Summaries;

/// <summary>The answer at the top of the customer's page, and what may be done with it.</summary>
public sealed class SheetDriveTests : BunitContext
{
    internal static readonly WorkSummary Page = new(
        1, null, new DateOnly(2026, 3, 2), "ED, lead", new SummaryCar("Blue", "Brennock 220", "DEMO 220"), new SummaryShop("Ninth Bay", "Ninth Bay, 01632 960100", true),
        48210, new LogbookMark(41, "a3f1b2c4d5"), [], ["Come back."], [new ReleaseLine(true, "Released to road.")], [], [], [], [], new EvidenceCounts(0, 0, 0, 0, 0, 0, 0, 0, 0, 0), [], [], [], [])
    {
        Drive =
        [
            new DriveAnswer(ReleaseKind.Road, "Drive on the road", true, "yes, until 48,310 km or 29 Dec 2026"),
            new DriveAnswer(ReleaseKind.Track, "Track", false, "not yet"),
        ],
        ComeBacks = [new ComeBack("all 20 wheel nuts", "between 48,260 and 48,310 km on the odometer, or by 29 Dec 2026, whichever comes first", new DateOnly(2026, 12, 29))],
        Told = [new ToldWork("Wheels fitted, all four", ["Every nut was started by hand."])],
        Known = ["A second person checked every one of them."],
        Mistakes = [],
        Declined = [],
    };

    [Fact]
    public void Says_yes_and_not_yet_in_words_and_marks_them_apart_in_shape()
    {
        var sheet = Draw(Page);

        Assert.Equal(
            [("is-yes", "Drive on the road: yes, until 48,310 km or 29 Dec 2026."), ("is-no", "Track: not yet.")],
            sheet.FindAll(".sheet-drive dl > div").Select(line => (line.ClassName!, Words(line))));
    }

    [Fact]
    public void What_is_no_longer_so_is_struck_and_goes_into_no_calendar()
    {
        Assert.Equal("/s/x/calendar.ics?version=1", Draw(Page, link: "/s/x").Find("a[href*=calendar]").GetAttribute("href"));

        var fallen = Draw(Page, "/s/x", ReleaseKind.Road);

        Assert.Equal(("is-no", "Drive on the road: no longer. Speak to us first. yes, until 48,310 km or 29 Dec 2026"), (fallen.Find(".sheet-drive dl > div").ClassName, Words(fallen.Find(".sheet-drive dl > div"))));
        Assert.Equal("yes, until 48,310 km or 29 Dec 2026", fallen.Find(".sheet-drive s").TextContent);
        Assert.Empty(fallen.FindAll("a[href*=calendar]"));
        Assert.Equal("tel:01632960100", fallen.Find(".sheet-actions a").GetAttribute("href"));
    }

    [Fact]
    public void The_shops_own_pages_call_and_neither_print_nor_put_into_a_calendar() => Assert.Equal(
        ["Call 01632 960100"], Draw(Page).FindAll(".sheet-actions > *").Select(Words));

    [Fact]
    public void The_shops_mistake_stands_apart_from_what_was_found_and_above_it()
    {
        var sheet = Draw(Page with
        {
            Mistakes = [new Mistake("We tightened the front right wheel nut no. 5 to 110 N·m at a step that allowed 60 N·m at most. It was loosened and tightened again.", true)],
            Found = [new Finding("wheel nut, front-right, no. 5: tightened over the permitted maximum", "redone, now at torque", false) { Ours = true }, new Finding("tyre, rear-left: cut", "used as it is", true)],
        });

        Assert.Equal(["Our mistake, put right", "What we found"], sheet.FindAll(".sheet-part > h2").Select(Words).SkipWhile(words => words != "Our mistake, put right").Take(2));
        Assert.Equal(["tyre, rear-left: cut: used as it is"], sheet.FindAll("section[aria-labelledby=sheet-found] li").Select(Words));
        Assert.Equal("Our mistake", Words(Draw(Page with { Mistakes = [new Mistake("We pulled it once more. That is not put right yet.", false)] }).Find("#sheet-mistakes")));
    }

    [Fact]
    public void What_was_declined_stands_apart_and_the_record_is_folded()
    {
        var sheet = Draw(Page with { Declined = ["New brake discs: declined on 1 Mar 2026."], Advice = ["Tyres in spring."] });

        Assert.Equal(["New brake discs: declined on 1 Mar 2026."], sheet.FindAll("section[aria-labelledby=sheet-declined] li").Select(Words));
        Assert.Equal("What we advise", Words(sheet.Find("#sheet-advice")));
        Assert.False(sheet.Find("details.sheet-record").HasAttribute("open"));
        Assert.Contains("check code a3f1 b2c4 d5", Words(sheet.Find("details.sheet-record")), StringComparison.Ordinal);
    }

    [Fact]
    public void The_car_is_drawn_as_it_was_with_a_legend_of_the_states_in_it()
    {
        var sheet = Draw(Page with
        {
            Drawn =
            [
                new DrawnJoint("wheel.nut", "front-left", "wheel nut", [.. Enumerable.Repeat(PositionState.Checked, 5)]),
                new DrawnJoint("wheel.nut", "front-right", "wheel nut", [.. Enumerable.Repeat(PositionState.AsFound, 5)]),
            ],
        });

        Assert.Equal("The car from above, 10 fasteners: 5 as found, 5 checked.", sheet.Find(".sheet-picture svg.above-car").GetAttribute("aria-label"));
        Assert.Equal(["as found", "checked"], sheet.FindAll(".sheet-picture dt").Select(Words));
        Assert.Empty(Draw(Page).FindAll(".sheet-picture"));
    }

    /// <summary>A page as it was issued before it answered first: what it is released for on top, its details open, nothing lost.</summary>
    [Fact]
    public void An_older_page_shows_all_it_has()
    {
        var older = Page with
        {
            Drive = null,
            ComeBacks = null,
            Told = null,
            Known = null,
            Mistakes = null,
            Declined = null,
            Work = [new CoveredWork("Wheel fit-up: front-left", "P5, revision 1", new DateOnly(2026, 3, 2), new DateOnly(2026, 3, 2), "winter wheels", ["faces"])],
            Found = [new Finding("wheel nut, front-left, no. 3: stopped", "used as it is", true)],
            Advice = ["Discs near their limit: declined."],
        };

        var sheet = Draw(older, "/s/x");

        Assert.Equal("Released to road.", Words(sheet.Find(".sheet-drive li")));
        Assert.True(sheet.Find("details.sheet-record").HasAttribute("open"));
        Assert.Equal("winter wheels", sheet.Find("blockquote").TextContent);
        Assert.Equal("What we advise, and what you declined", Words(sheet.Find("#sheet-advice")));
        Assert.Contains("wheel nut, front-left, no. 3: stopped: used as it is", Words(sheet.Find(".sheet")), StringComparison.Ordinal);
        Assert.Empty(sheet.FindAll("a[href*=calendar]"));
    }

    private IRenderedComponent<SummarySheet> Draw(WorkSummary page, string? link = null, params ReleaseKind[] noLonger) => Render<SummarySheet>(
        parameters => parameters.Add(sheet => sheet.Page, page).Add(sheet => sheet.Link, link).Add(sheet => sheet.NoLonger, noLonger));

    private static string Words(AngleSharp.Dom.IElement element) => string.Join(' ', element.TextContent.Split(default(char[]), StringSplitOptions.RemoveEmptyEntries));
}
