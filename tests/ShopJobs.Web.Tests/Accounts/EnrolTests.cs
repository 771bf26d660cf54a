using System.Net;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Accounts;

public sealed class EnrolTests : IDisposable
{
    private readonly OpenShop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task Lead_makes_a_browser_a_tablet()
    {
        await shop.OpenDemoAsync();
        var browser = shop.NewBrowser();

        Assert.Equal("/sign-in?returnUrl=%2F", (await EnrolAsync(browser, "Edda", DemoPeople.Lead.Pin)).Path);
        Assert.Equal("/", (await browser.SignInAsync("Jorn", DemoPeople.Chassis.Pin)).Path);
    }

    [Theory]
    [InlineData("Jorn", "582046")]
    [InlineData("Edda", "111111")]
    [InlineData("Nobody", "470913")]
    public async Task Nobody_else_does(string name, string pin)
    {
        await shop.OpenDemoAsync();
        var browser = shop.NewBrowser();

        Assert.NotEqual("", (await EnrolAsync(browser, name, pin)).Alert);
        Assert.DoesNotContain("shop.tablet", browser.Cookies.Keys);
    }

    [Theory]
    [InlineData("First tab1et", "“First tab1et” looks like “First tablet”, the name of another tablet.")]
    [InlineData("first  TABLET", "looks like “First tablet”")]
    [InlineData("Lift\u202E A", "It has a character that nobody sees after “Lift”.")]
    public async Task Tablet_has_a_name_of_its_own_and_the_field_says_why_not(string name, string said)
    {
        await shop.OpenDemoAsync();
        var browser = shop.NewBrowser();

        var page = await browser.SubmitAsync("/enrol", "enrol", ("Form.TabletName", name), ("Form.LeadName", "Edda"), ("Form.Pin", DemoPeople.Lead.Pin));

        Assert.Contains(said, page.Page.QuerySelector("#tablet-name-wrong")!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("shop.tablet", browser.Cookies.Keys);
    }

    [Fact]
    public async Task Name_of_a_tablet_out_of_use_goes_to_the_next()
    {
        await shop.OpenDemoAsync();
        var at = shop.Time.GetUtcNow().UtcDateTime;
        await shop.RowsAsync(rows => rows.Tablets.ExecuteUpdateAsync(set => set.SetProperty(row => row.RevokedAt, at)));

        var page = await shop.NewBrowser().SubmitAsync("/enrol", "enrol", ("Form.TabletName", "First tablet"), ("Form.LeadName", "Edda"), ("Form.Pin", DemoPeople.Lead.Pin));

        Assert.Equal("/sign-in?returnUrl=%2F", page.Path);
    }

    [Fact]
    public async Task Revoked_tablet_is_an_unknown_browser_at_once()
    {
        var tablet = await shop.OpenDemoAsync();
        await tablet.SignInAsync("Edda", DemoPeople.Lead.Pin);
        var at = shop.Time.GetUtcNow().UtcDateTime;
        await shop.RowsAsync(rows => rows.Tablets.ExecuteUpdateAsync(set => set.SetProperty(row => row.RevokedAt, at)));

        Assert.Equal("/enrol?returnUrl=%2Fcars", (await tablet.GetAsync("/cars")).Path);
        Assert.Equal(HttpStatusCode.Unauthorized, (await tablet.GetAsync("/here")).Status);
        Assert.Equal("/enrol?returnUrl=%2F", (await tablet.GetAsync("/sign-in")).Path);
    }

    [Fact]
    public async Task Token_is_stored_hashed_only()
    {
        var tablet = await shop.OpenDemoAsync();
        var token = tablet.Cookies["shop.tablet"];

        var stored = await shop.RowsAsync(rows => rows.Tablets.Select(row => row.TokenHash).ToListAsync());

        Assert.Contains(stored, hash => hash.SequenceEqual(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.ASCII.GetBytes(token))));
        Assert.DoesNotContain(stored, hash => hash.SequenceEqual(System.Text.Encoding.ASCII.GetBytes(token)));
    }

    private static Task<Answer> EnrolAsync(Browser browser, string name, string pin) =>
        browser.SubmitAsync("/enrol", "enrol", ("Form.TabletName", "Lift A"), ("Form.LeadName", name), ("Form.Pin", pin));
}
