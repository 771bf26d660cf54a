using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor;
using MudBlazor.Services;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Releases;
using ShopJobs.Web.Components.Summaries;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Shop;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Summaries;

public sealed class SummaryPageTests : BunitContext, IAsyncLifetime
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private ShopOnDisk shop = default!;
    private SummaryBench bench = default!;
    private IRenderedComponent<MudDialogProvider> dialogs = default!;

    public async Task InitializeAsync()
    {
        shop = await ShopOnDisk.OpenAsync();
        bench = await SummaryBench.SetUpAsync(shop.Services);
        await shop.SignInAsync(DemoPeople.Lead);
        Services.AddMudServices();
        Services.AddSingleton<AuthenticationStateProvider>(shop.Circuit);
        Services.AddSingleton(shop.Get<IConfiguration>());
        Services.AddSingleton(shop.Get<WhoIsHere>()).AddSingleton(shop.Get<PeopleShelf>()).AddSingleton(shop.Get<SignatureDesk>());
        Services.AddSingleton(shop.Get<SummaryDesk>()).AddSingleton(shop.Get<SummaryShelf>()).AddSingleton(shop.Get<AcknowledgementDesk>()).AddSingleton(shop.Get<LinkDesk>());
        Services.AddSingleton(shop.Get<LinkAddress>()).AddSingleton(shop.Get<LogbookNotices>()).AddSingleton(shop.Get<ShopClock>());
        JSInterop.Mode = JSRuntimeMode.Loose;
        SetRendererInfo(new RendererInfo("Server", true));
        Render<MudPopoverProvider>();
        dialogs = Render<MudDialogProvider>();
    }

    async Task IAsyncLifetime.DisposeAsync()
    {
        await DisposeComponentsAsync();
        await base.DisposeAsync();
        shop.Dispose();
    }

    [Fact]
    public async Task Issues_what_the_preview_showed_and_lists_it()
    {
        var page = Page();
        await FillAsync(page, "contact", "01632 960110");
        await FillAsync(page, "odometer", "48210,5");
        await FillAsync(page, "advice", "Brake fluid is two years old: declined.");
        var previewed = page.Find(".sheet").OuterHtml;

        await IssueAsync(page, DemoPeople.Lead.Pin);

        page.WaitForAssertion(() => Assert.Contains("Version 1 is issued", page.Markup, StringComparison.Ordinal), Patience);
        var issued = shop.Get<SummaryShelf>().Of(bench.Car).Single();
        Assert.Equal(("01632 960110", 48210.5m, "ED, lead"), (issued.Page!.Shop.Contact, issued.Page.OdometerKm, issued.Page.IssuedBy));
        Assert.Equal(
            previewed.Replace("<h2 class=\"sheet-title\">", "", StringComparison.Ordinal).Replace("</h2>", "", StringComparison.Ordinal),
            Render<SummarySheet>(sheet => sheet.Add(s => s.Page, issued.Page)).Find(".sheet").OuterHtml
                .Replace("<h1 class=\"sheet-title\">", "", StringComparison.Ordinal).Replace("</h1>", "", StringComparison.Ordinal).Replace("</h2>", "", StringComparison.Ordinal));
        Assert.Contains("Version 1", page.Find(".summary-issued").TextContent, StringComparison.Ordinal);
        var next = shop.Get<SummaryDesk>().NewForm(bench.Car);
        Assert.Equal(("01632 960110", "Brake fluid is two years old: declined."), (next.Contact, next.Advice));
    }

    [Fact]
    public async Task Begun_anew_it_is_as_the_last_version_and_the_tablet_forgets_what_was_typed()
    {
        var page = Page();
        await FillAsync(page, "advice", "Pads are thin: declined on 2 Mar.");
        Assert.Contains("Pads are thin: declined on 2 Mar.", page.Find(".summary-preview").TextContent, StringComparison.Ordinal);

        await Button(page, "Start again from the last version").ClickAsync(new());

        JSInterop.VerifyInvoke("shopTyped.forget");
        Assert.Equal("", page.Find("#advice").GetAttribute("value") ?? "");
        Assert.DoesNotContain("Pads are thin", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_new_page_begins_with_the_advice_of_the_last_version_and_the_tablet_forgets_what_was_issued()
    {
        var page = Page();
        await FillAsync(page, "contact", "01632 960110");
        await FillAsync(page, "advice", "Pads are thin.\nFluid is old: declined on 2 Mar.");
        await IssueAsync(page, DemoPeople.Lead.Pin);
        page.WaitForAssertion(() => Assert.Contains("Version 1 is issued", page.Markup, StringComparison.Ordinal), Patience);
        JSInterop.VerifyInvoke("shopTyped.forget");

        var next = Page();

        Assert.Equal("Pads are thin.\nFluid is old: declined on 2 Mar.", next.Find("#advice").GetAttribute("value"));
        Assert.Contains("What changed since version 1", next.Find(".summary-preview").TextContent, StringComparison.Ordinal);
        await FillAsync(next, "advice", "Pads are thin.");
        Assert.Contains("Advice: Fluid is old: declined on 2 Mar.", next.Find(".sheet-changes").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Says_which_version_the_customer_has_read_and_with_what_words()
    {
        await bench.IssueAsync();
        Assert.Contains("not confirmed by the customer", Page().Find(".summary-issued").TextContent, StringComparison.Ordinal);

        Assert.Null(await shop.Get<AcknowledgementDesk>().TakeAsync(bench.Car, 1, "See you <b>then</b>."));

        var issued = Page().Find(".summary-issued");
        Assert.Contains("Read by the customer 2 Mar 2026, 0", issued.TextContent, StringComparison.Ordinal);
        Assert.Equal("See you <b>then</b>.", issued.QuerySelector("blockquote")!.TextContent);
    }

    [Fact]
    public async Task Asks_how_the_customer_reaches_the_shop_before_anything_is_signed()
    {
        var page = Page();

        await page.Find(".page-head .button-main").ClickAsync(new());

        Assert.Contains("how the customer reaches you", page.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Empty(dialogs.FindAll(".sign-shown"));
    }

    [Fact]
    public async Task A_wrong_pin_issues_nothing()
    {
        var page = Page();
        await FillAsync(page, "contact", "01632 960110");

        await IssueAsync(page, "000000");

        dialogs.WaitForAssertion(() => Assert.NotEmpty(dialogs.FindAll("#sign-refusal")), Patience);
        Assert.Empty(shop.Get<SummaryShelf>().Of(bench.Car));
    }

    [Fact]
    public async Task A_page_that_the_car_left_behind_while_signing_is_not_issued()
    {
        var page = Page();
        await FillAsync(page, "contact", "01632 960110");
        var pressed = page.Find(".page-head .button-main").ClickAsync(new());
        dialogs.WaitForAssertion(() => Assert.NotEmpty(dialogs.FindAll(".person-tile")), Patience);
        await bench.OpenNutsAsync();

        await SignAsync(DemoPeople.Lead.Pin);
        await pressed.WaitAsync(Patience);

        page.WaitForAssertion(
            () => Assert.Contains("More was recorded on this car since the summary was shown", page.Markup, StringComparison.Ordinal), Patience);
        Assert.Empty(shop.Get<SummaryShelf>().Of(bench.Car));
    }

    [Fact]
    public async Task Shows_an_opening_elsewhere_without_a_reload()
    {
        var page = Page();
        Assert.DoesNotContain("5 of 5 open", page.Markup, StringComparison.Ordinal);

        await bench.OpenNutsAsync();

        page.WaitForAssertion(() => Assert.Contains("wheel nut, front-left: 5 of 5 open", page.Markup, StringComparison.Ordinal), Patience);
    }

    [Fact]
    public async Task A_link_is_shown_once_with_its_drawing_and_opens_until_it_is_taken_back()
    {
        var page = Page();
        await Button(page, "Make a link").ClickAsync(new());

        var link = page.Find("#made-link").GetAttribute("value")!;
        var token = link[(link.LastIndexOf('/') + 1)..];
        Assert.NotNull(page.Find(".summary-qr svg"));
        Assert.Equal(bench.Car, await shop.Get<LinkShelf>().OpenAsync(token));
        var row = (await shop.Get<LinkDesk>().OfAsync(bench.Car)).Single();
        Assert.Equal(CustomerToken.HashOf(token), row.TokenHash);
        Assert.Equal(shop.Time.GetUtcNow().UtcDateTime.AddDays(365), row.ExpiresAt);
        Assert.DoesNotContain(token, Page().Markup, StringComparison.Ordinal);

        await Button(page, "Take back").ClickAsync(new());

        Assert.Null(await shop.Get<LinkShelf>().OpenAsync(token));
        Assert.Empty(page.FindAll("#made-link"));
    }

    [Fact]
    public async Task Without_the_right_nothing_is_issued_and_no_link_is_made()
    {
        await shop.SignInAsync(DemoPeople.Chassis);

        var page = Page();

        Assert.Empty(page.FindAll(".page-head .button-main"));
        Assert.DoesNotContain(page.FindAll("button"), button => button.TextContent.Trim() == "Make a link");
        Assert.NotNull((await shop.Get<LinkDesk>().MakeAsync(bench.Car, 30)).Refusal);
        Assert.Empty(await shop.Get<LinkDesk>().OfAsync(bench.Car));
    }

    [Fact]
    public async Task A_suspended_release_stands_in_a_banner_above_the_preview_until_the_car_stands_again()
    {
        await bench.ReleaseAsync(ReleaseKind.Road);
        Assert.Empty(Page().FindAll(".suspended-banner"));

        await bench.DoAsync(new HoldPositions([bench.Nuts[0]], bench.Reason.Digest), bench.Reason);

        var page = Page();
        var banner = Assert.Single(page.FindAll(".suspended-banner"));
        Assert.Equal(StandingWords.Suspended(ReleaseKind.Road), banner.QuerySelector("strong")!.TextContent);
        Assert.Contains("wheel nut front-left 1", banner.TextContent, StringComparison.Ordinal);
        Assert.Equal($"/cars/{bench.Car.Value}/release", banner.QuerySelector("p:last-child a")!.GetAttribute("href"));
        Assert.Empty(page.FindAll(".summary-preview .suspended-banner"));
    }

    [Fact]
    public void A_car_that_is_not_there_is_said_to_be_missing()
    {
        var page = Render<SummaryPage>(parameters => parameters.Add(p => p.Id, Guid.NewGuid()));

        Assert.Contains("not in the book", page.Find("[role=alert]").TextContent, StringComparison.Ordinal);
    }

    private IRenderedComponent<SummaryPage> Page()
    {
        var page = Render<SummaryPage>(parameters => parameters.Add(p => p.Id, bench.Car.Value));
        page.WaitForElement(".sheet", Patience);
        return page;
    }

    private static Task FillAsync(IRenderedComponent<SummaryPage> page, string id, string text) =>
        page.Find($"#{id}").ChangeAsync(new() { Value = text });

    private async Task IssueAsync(IRenderedComponent<SummaryPage> page, string pin)
    {
        _ = page.Find(".page-head .button-main").ClickAsync(new());
        dialogs.WaitForAssertion(() => Assert.NotEmpty(dialogs.FindAll(".person-tile")), Patience);
        Assert.Equal(["Edda"], dialogs.FindAll(".person-tile").Select(tile => tile.TextContent.Trim()));
        await SignAsync(pin);
    }

    private async Task SignAsync(string pin)
    {
        await dialogs.Find("#sign-pin").InputAsync(new() { Value = pin });
        await dialogs.Find("form").SubmitAsync();
    }

    private static IElement Button(IRenderedComponent<SummaryPage> page, string text) =>
        page.FindAll("button").Single(button => button.TextContent.Trim() == text);
}
