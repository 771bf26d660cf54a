using Microsoft.EntityFrameworkCore;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Running;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.FirstStart;

public sealed class FirstStartTests : IDisposable
{
    private readonly OpenShop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task Demo_shop_shows_its_pins_on_the_sign_in_page()
    {
        var page = await (await shop.OpenDemoAsync()).GetAsync("/sign-in");

        Assert.All(DemoPeople.All, person => Assert.Contains(person.Pin, page.Text, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Demo_shop_has_the_four_cars()
    {
        await shop.OpenDemoAsync();

        Assert.Equal(["Blue", "Grey", "Orange", "White"], await shop.RowsAsync(rows => rows.Cars.OrderBy(car => car.Name).Select(car => car.Name).ToListAsync()));
    }

    [Fact]
    public async Task Empty_shop_shows_the_leads_pin_once_and_it_works()
    {
        var browser = shop.NewBrowser();
        var opened = await browser.SubmitAsync("/start", "empty", ("Form.ShopName", "Bay Four"), ("Form.LeadName", "Nadja"), ("Form.Zone", "Europe/Vienna"));

        var pin = opened.Page.QuerySelector(".pin-shown")!.TextContent.Trim();
        Assert.Equal("/", (await browser.SignInAsync("Nadja", pin)).Path);
        var signIn = await browser.GetAsync("/sign-in");
        Assert.DoesNotContain(pin, signIn.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(DemoPeople.Lead.Pin, signIn.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "Nadja", "Europe/Vienna", "Give the shop a name")]
    [InlineData("Bay Four", "  ", "Europe/Vienna", "name of the lead")]
    [InlineData("Bay Four", "Nadja", "Middle/Earth", "time zone")]
    public async Task Empty_shop_asks_for_what_is_missing(string name, string lead, string zone, string said)
    {
        var answer = await shop.NewBrowser().SubmitAsync("/start", "empty", ("Form.ShopName", name), ("Form.LeadName", lead), ("Form.Zone", zone));

        Assert.Contains(said, answer.Alert, StringComparison.Ordinal);
        Assert.False(await shop.RowsAsync(rows => rows.People.AnyAsync()));
    }

    [Fact]
    public async Task Shop_is_opened_once()
    {
        var late = shop.NewBrowser();
        var page = await late.GetAsync("/start");
        await shop.OpenDemoAsync();

        var token = page.Page.QuerySelector("input[name=__RequestVerificationToken]")!.GetAttribute("value")!;
        await late.PostAsync("/start", ("_handler", "demo"), ("__RequestVerificationToken", token));

        Assert.Equal("/", (await late.GetAsync("/start")).Path);
        Assert.DoesNotContain("shop.tablet", late.Cookies.Keys);
        Assert.Equal(DemoPeople.All.Count, await shop.RowsAsync(rows => rows.People.CountAsync()));
    }

    [Fact]
    public async Task Demo_shop_is_refused_where_the_network_reaches_it()
    {
        shop.Settings["urls"] = "https://0.0.0.0:5443";
        shop.Settings[Listening.NetworkSetting] = "true";

        var page = await shop.NewBrowser().GetAsync("/start");

        Assert.DoesNotContain(page.Page.Forms, form => form.QuerySelector("input[value=demo]") is not null);
        Assert.Contains("demo accounts whose PINs are printed", page.Text, StringComparison.Ordinal);
    }
}
