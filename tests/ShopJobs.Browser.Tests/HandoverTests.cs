using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>A wheel is left half done and somebody else goes on with it, on the screens alone.</summary>
[Trait("Takes", "long")]
public sealed class HandoverTests : OneTabletTests
{
    [Fact]
    public async Task Whoever_goes_on_with_a_wheel_that_was_left_looks_at_its_last_nut_first()
    {
        var car = await Shop.CarAsync("Grey");
        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await lead.PutOnAsync(car, "P5", "Wheel, please", "front-left");
        await lead.CloseAsync();
        var job = await Shop.JobAsync(car, "fit-up");
        var steps = Shop.Read(car).Placed(Shop.Read(car).State.Jobs[job]).Steps.ToList();
        var final = steps.Last(step => step.Work.Any(work => work.Stages.Contains(2)));
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        await new ProcedureHands(page, Shop, car, job, DemoPeople.Chassis, DemoPeople.Engines).FinishAsync(upTo: final.Step.Id);

        // Two touches: I leave this half done, yes.
        await page.OpenAsync($"/cars/{car.Value}/jobs/{job.Value}/steps/{final.Id}");
        await page.GetByText("I leave this half done").ClickAsync();
        await page.Locator("#leave-words").FillAsync("The blue wrench is back on its hook");
        await page.GetByRole(AriaRole.Button, new() { Name = "LEFT HALF DONE" }).ClickAsync();
        await page.GetByText("You stopped here").WaitForAsync();
        await page.CloseAsync();

        page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Engines, "/");
        await page.OpenAsync($"/cars/{car.Value}/jobs/{job.Value}/steps/{final.Id}");
        await page.GetByText("Jorn stopped here").WaitForAsync();
        await page.GetByText("The blue wrench is back on its hook").WaitForAsync();
        Assert.Equal(0, await page.Locator("[data-next]").CountAsync());
        await page.IsAccessibleEverywhereAsync("stopped-here");
        await page.GetByRole(AriaRole.Button, new() { Name = "LOOKED: IT IS SO, GO ON" }).ClickAsync();
        await page.Locator("[data-next]").WaitForAsync();
        await new ProcedureHands(page, Shop, car, job, DemoPeople.Engines, DemoPeople.Lead).FinishAsync();

        Assert.Equal(StepStanding.Signed, Shop.Read(car).State.StandingOf(Shop.Read(car).State.Jobs[job], Shop.Read(car).Placed(Shop.Read(car).State.Jobs[job]), final));
        Assert.Equal([], Shop.VerifyAll());
    }
}
