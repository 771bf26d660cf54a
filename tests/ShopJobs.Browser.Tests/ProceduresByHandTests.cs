using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>
/// Each of the demo shop's other procedures done on the screens alone, by one technician and a second person, to the release it is for.
/// They take long: they run with the rest when everything is asked for.
/// </summary>
[Trait("Takes", "long")]
public sealed class ProceduresByHandTests : OneTabletTests
{
    [Theory]
    [InlineData("P7", "Flywheel", "driveline")]
    [InlineData("P10", "Seat", "driver")]
    public async Task It_is_done_from_the_first_open_joint_to_the_road(string code, string title, string place)
    {
        var car = await Shop.CarAsync("Grey");
        var job = await PutOnAsync(car, code, title, place);
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        var cure = Hands(page, car, job).FirstCure;
        await Hands(page, car, job).FinishAsync(cure);
        if (cure is not null)
        {
            // A day has passed with the cure: everybody signs in again.
            Shop.Time.Advance(TimeSpan.FromHours(25));
            await page.CloseAsync();
            page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
            await Hands(page, car, job).FinishAsync();
        }

        await page.CloseAsync();
        await ToTheRoadAsync(car, job);
    }

    [Fact]
    public async Task Struts_bar_and_wheels_go_to_the_road_once_the_car_is_measured()
    {
        string[] sides = ["front-left", "front-right"];
        var car = await Shop.CarAsync("Grey");
        var struts = await PutOnAsync(car, "P1", "struts", sides);
        var bar = await PutOnAsync(car, "P2", "anti-roll", ["front", .. sides]);
        var wheels = await PutOnAsync(car, "P5", "fit-up", sides);
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        await Hands(page, car, struts).FinishAsync();
        await Hands(page, car, bar).FinishAsync(upTo: "on-wheels");
        await Hands(page, car, wheels).FinishAsync();
        await Hands(page, car, bar).FinishAsync();
        await page.OpenAsync($"/cars/{car.Value}/results");
        await page.IsAccessibleAsync("results-to-measure");
        foreach (var name in (string[])["alignment", "corner-weights", "ride-height"])
        {
            await page.Locator($"article:has(#title-{name}) summary").ClickAsync();
            await Hands(page, car, struts).RecordAsync(name);
            await page.Locator($"article.is-stands:has(#title-{name})").WaitForAsync();
        }

        await page.CloseAsync();
        await ToTheRoadAsync(car, struts, bar, wheels);
    }

    [Fact]
    public async Task A_cylinder_head_goes_to_the_road()
    {
        var car = await Shop.CarAsync("Grey");
        var job = await PutOnAsync(car, "P6", "Cylinder head", "engine");
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Engines, "/");
        var hands = new ProcedureHands(page, Shop, car, job, DemoPeople.Engines, DemoPeople.Chassis);
        await hands.FinishAsync();
        await page.CloseAsync();
        await ToTheRoadAsync(car, job);
    }

    [Fact]
    public async Task Hub_nuts_wait_for_the_large_wrench_to_be_calibrated_and_go_to_the_road()
    {
        var car = await Shop.CarAsync("Grey");
        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/tools");
        await lead.GetByRole(AriaRole.Link, new() { Name = "View W9" }).ClickAsync();
        await lead.GetByRole(AriaRole.Link, new() { Name = "Enter a calibration" }).ClickAsync();
        var today = Shop.Time.GetUtcNow().Date;
        await lead.Locator("#date").FillAsync(today.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        await lead.Locator("#due").FillAsync(today.AddYears(1).ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        await lead.Locator("#certificate").FillAsync("Invented bench 9-1");
        foreach (var (index, value) in new[] { "100", "300", "500" }.Index())
        {
            await lead.Locator($"#set-{index}").FillAsync(value);
            await lead.Locator($"#found-{index}").FillAsync(value);
            await lead.Locator($"#left-{index}").FillAsync(value);
        }

        await lead.GetByRole(AriaRole.Button, new() { Name = "Save" }).SignWithAsync(lead, DemoPeople.Lead, "SIGN");
        await lead.CloseAsync();
        var job = await PutOnAsync(car, "P9", "hub nuts", "rear-left");
        var wheel = await PutOnAsync(car, "P5", "fit-up", "rear-left");
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        await Hands(page, car, job).FinishAsync();
        await Hands(page, car, wheel).FinishAsync();
        await page.CloseAsync();
        await ToTheRoadAsync(car, job, wheel);
    }

    private ProcedureHands Hands(IPage page, CarId car, JobId job) => new(page, Shop, car, job, DemoPeople.Chassis, DemoPeople.Engines);

    private async Task<JobId> PutOnAsync(CarId car, string code, string title, params string[] places)
    {
        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await lead.PutOnAsync(car, code, $"{code}, please", places);
        await lead.CloseAsync();
        return await Shop.JobAsync(car, title);
    }

    private async Task ToTheRoadAsync(CarId car, params JobId[] jobs)
    {
        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await lead.OpenAsync($"/cars/{car.Value}/release");
        await lead.IsAccessibleAsync($"release-{Shop.Read(car).State.Jobs[jobs[0]].Fact.Procedure}");
        await lead.Locator("#km-Road").FillAsync("41020");
        await lead.TickClosingCheckAsync("Road");
        await lead.Locator("#road button[type=submit]:not([disabled])").SignWithAsync(lead, DemoPeople.Lead, "RELEASE TO ROAD");
        await lead.Locator("#road .release-stands", new() { HasText = "Released" }).WaitForAsync();
        Assert.All(jobs, job => Assert.False(Shop.Read(car).State.Jobs[job].IsRunning));
        Assert.Equal(ReleaseStandingKind.Stands, Shop.Read(car).StandingOf(ReleaseKind.Road).Kind);
        Assert.Equal([], Shop.VerifyAll());
    }
}
