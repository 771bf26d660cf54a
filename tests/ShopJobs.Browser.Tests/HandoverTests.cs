using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>A wheel is left half done and somebody else goes on with it, on the screens alone.</summary>
[Trait("Takes", "long")]
public sealed class HandoverTests : IAsyncLifetime
{
    private readonly ClockedShop shop = ClockedShop.Open();
    private ShopBrowser chromium = default!;
    private IBrowserContext tablet = default!;

    public async Task InitializeAsync()
    {
        chromium = await ShopBrowser.StartAsync();
        tablet = await chromium.ContextAsync(shop.Address, new() { ViewportSize = new() { Width = 1024, Height = 768 }, HasTouch = true });
        await tablet.OpenDemoShopAsync();
    }

    public async Task DisposeAsync()
    {
        foreach (var (page, number) in tablet.Pages.Select((page, number) => (page, number)))
        {
            await page.KeepAsync($"handover-at-the-end-{number}");
        }

        await chromium.DisposeAsync();
        await shop.DisposeAsync();
    }

    [Fact]
    public async Task Whoever_goes_on_with_a_wheel_that_was_left_looks_at_its_last_nut_first()
    {
        var car = await shop.CarAsync("Grey");
        var lead = await ShopBrowser.SignInAsync(tablet, DemoPeople.Lead, "/");
        await lead.PutOnAsync(car, "P5", "Wheel, please", "front-left");
        await lead.CloseAsync();
        var job = await shop.JobAsync(car, "fit-up");
        var steps = shop.Read(car).Placed(shop.Read(car).State.Jobs[job]).Steps.ToList();
        var final = steps.Last(step => step.Work.Any(work => work.Stages.Contains(2)));
        var page = await ShopBrowser.SignInAsync(tablet, DemoPeople.Chassis, "/");
        await new ProcedureHands(page, shop, car, job, DemoPeople.Chassis, DemoPeople.Engines).FinishAsync(upTo: final.Step.Id);

        // Two touches: I leave this half done, yes.
        await page.OpenAsync($"/cars/{car.Value}/jobs/{job.Value}/steps/{final.Id}");
        await page.GetByText("I leave this half done").ClickAsync();
        await page.Locator("#leave-words").FillAsync("The blue wrench is back on its hook");
        await page.GetByRole(AriaRole.Button, new() { Name = "LEFT HALF DONE" }).ClickAsync();
        await page.GetByText("You stopped here").WaitForAsync();
        await page.CloseAsync();

        page = await ShopBrowser.SignInAsync(tablet, DemoPeople.Engines, "/");
        await page.OpenAsync($"/cars/{car.Value}/jobs/{job.Value}/steps/{final.Id}");
        await page.GetByText("Jorn stopped here").WaitForAsync();
        await page.GetByText("The blue wrench is back on its hook").WaitForAsync();
        Assert.Equal(0, await page.Locator("[data-next]").CountAsync());
        await page.IsAccessibleEverywhereAsync("stopped-here");
        await page.GetByRole(AriaRole.Button, new() { Name = "LOOKED: IT IS SO, GO ON" }).ClickAsync();
        await page.Locator("[data-next]").WaitForAsync();
        await new ProcedureHands(page, shop, car, job, DemoPeople.Engines, DemoPeople.Lead).FinishAsync();

        Assert.Equal(StepStanding.Signed, shop.Read(car).State.StandingOf(shop.Read(car).State.Jobs[job], shop.Read(car).Placed(shop.Read(car).State.Jobs[job]), final));
        Assert.Equal([], shop.VerifyAll());
    }
}
