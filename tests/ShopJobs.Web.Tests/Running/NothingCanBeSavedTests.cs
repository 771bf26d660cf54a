using System.Net;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Running;

/// <summary>The disk is full, locked or may only be read: people who are signed in go on reading, and are told.</summary>
public sealed class NothingCanBeSavedTests : IDisposable
{
    private static readonly string[] Pages =
        ["/", "/my-work", "/open-joints", "/cars", "/cars/{car}", "/cars/{car}/logbook", "/cars/{car}/release", "/cars/{car}/summary", "/cars/{car}/jobs/{job}/steps/faces@front-left",
         "/tools", "/tools/{tool}", "/procedures", "/bench", "/people", "/cars/new"];

    private readonly OpenShop shop = new();
    private readonly BrokenDisk disk;

    public NothingCanBeSavedTests()
    {
        disk = new BrokenDisk(() => shop.Services.GetRequiredService<DataFolder>());
        shop.Changed = services => services.ConfigureDbContext<ShopDbContext>(options => options.AddInterceptors(disk));
    }

    public void Dispose()
    {
        disk.Dispose();
        shop.Dispose();
    }

    [Theory]
    [InlineData(Trouble.Full, "the disk of the server is full")]
    [InlineData(Trouble.Busy, "another program holds the shop's database")]
    [InlineData(Trouble.ReadOnly, "the shop's database can't be written")]
    public async Task Every_page_reads_with_an_old_session_and_says_it(Trouble trouble, string why)
    {
        var tablet = await SignedInAsync();
        shop.Time.Advance(TimeSpan.FromMinutes(5));
        disk.Break(trouble);

        foreach (var page in await PagesAsync())
        {
            shop.Time.Advance(TimeSpan.FromMinutes(1));
            var answer = await tablet.GetAsync(page);
            Assert.True(HttpStatusCode.OK == answer.Status, $"{page} answered {answer.Status} {answer.Location}");
            var notice = Assert.Single(answer.Page.QuerySelectorAll(".saving-notice")).TextContent;
            Assert.Contains("Nothing can be saved now", notice, StringComparison.Ordinal);
            Assert.Contains(why, notice, StringComparison.Ordinal);
        }

        // Longer by now than a tablet stays awake without a touch.
        Assert.Equal(HttpStatusCode.OK, (await tablet.GetAsync("/")).Status);

        disk.Mend();
        shop.Time.Advance(TimeSpan.FromMinutes(1));
        Assert.Empty((await tablet.GetAsync("/")).Page.QuerySelectorAll(".saving-notice"));
    }

    [Theory]
    [InlineData(Trouble.Full)]
    [InlineData(Trouble.Busy)]
    [InlineData(Trouble.ReadOnly)]
    public async Task Health_is_not_healthy(Trouble trouble)
    {
        await SignedInAsync();
        var browser = shop.NewBrowser();
        Assert.Equal("Healthy", (await browser.GetAsync("/healthz")).Text);
        shop.Time.Advance(TimeSpan.FromMinutes(1));
        disk.Break(trouble);

        var answer = await browser.GetAsync("/healthz");

        Assert.Equal((HttpStatusCode.ServiceUnavailable, "Unhealthy"), (answer.Status, answer.Text));
        disk.Mend();
        Assert.Equal("Healthy", (await browser.GetAsync("/healthz")).Text);
    }

    [Theory]
    [InlineData(Trouble.Full)]
    [InlineData(Trouble.ReadOnly)]
    public async Task Nobody_signs_in_and_the_door_says_why(Trouble trouble)
    {
        var tablet = await SignedInAsync();
        disk.Break(trouble);

        var answer = await tablet.SignInAsync(DemoPeople.Engines.Name, DemoPeople.Engines.Pin);

        Assert.Equal(HttpStatusCode.OK, answer.Status);
        Assert.Contains("No PIN can be taken. Nothing can be saved now", answer.Alert, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Trouble.Full)]
    [InlineData(Trouble.Busy)]
    [InlineData(Trouble.ReadOnly)]
    public async Task The_tablet_is_given_up_all_the_same(Trouble trouble)
    {
        var tablet = await SignedInAsync();
        var token = (await tablet.GetAsync("/")).Page.QuerySelector("form[action='/sign-out'] input[name=__RequestVerificationToken]")!.GetAttribute("value")!;
        disk.Break(trouble);

        var answer = await tablet.PostAsync("/sign-out", ("__RequestVerificationToken", token));

        Assert.Equal("/sign-in?returnUrl=%2F", answer.Path);
        Assert.Equal("", tablet.Cookies["shop.person"]);
    }

    private async Task<Browser> SignedInAsync()
    {
        var tablet = await shop.OpenDemoAsync();
        Assert.Equal("/", (await tablet.SignInAsync(DemoPeople.Lead.Name, DemoPeople.Lead.Pin)).Path);
        return tablet;
    }

    private async Task<List<string>> PagesAsync()
    {
        var car = await shop.RowsAsync(rows => rows.Cars.Where(row => row.Name == "Orange").Select(row => row.Id).SingleAsync());
        var tool = await shop.RowsAsync(rows => rows.Tools.Select(row => row.Id).FirstAsync());
        var job = shop.Services.GetRequiredService<CarDesk>().Read(car, null).State.RunningJobs.Single().Id;
        return [.. Pages.Select(page => page
            .Replace("{car}", car.Value.ToString(), StringComparison.Ordinal)
            .Replace("{job}", job.Value.ToString(), StringComparison.Ordinal)
            .Replace("{tool}", tool.ToString(), StringComparison.Ordinal))];
    }
}
