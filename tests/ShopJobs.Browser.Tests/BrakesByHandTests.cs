using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>
/// Brakes at one corner (P4) and the wheel (P5) on the screens alone, from the first OPEN to the track: run-out with the gauge, bleed
/// with its fluid, a road test for the bed-in, and the release to track that waited for it.
/// </summary>
public sealed class BrakesByHandTests : OneTabletTests
{
    private static readonly (string Name, int Width, int Height, ColorScheme Look)[] Sizes =
    [
        ("tablet", 1024, 768, ColorScheme.Light), ("desktop-dark", 1440, 900, ColorScheme.Dark), ("phone-dark", 390, 844, ColorScheme.Dark),
    ];


    [Fact]
    public async Task Brakes_go_from_the_first_open_joint_to_the_track_by_a_road_test()
    {
        var car = await Shop.CarAsync("Grey");
        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await lead.PutOnAsync(car, "P4", "New discs and pads, one corner", "front-left");
        await lead.PutOnAsync(car, "P5", "And its wheel back on", "front-left");
        var brakes = await Shop.JobAsync(car, "pads");
        var wheel = await Shop.JobAsync(car, "fit-up");
        await lead.CloseAsync();

        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        var hands = new ProcedureHands(page, Shop, car, brakes, DemoPeople.Chassis, DemoPeople.Engines);
        await hands.FinishAsync(upTo: "pedal");
        await NotRolledAsync(page, car);
        await hands.FinishAsync(upTo: "bed-in");
        await page.OpenAsync($"/cars/{car.Value}/jobs/{brakes.Value}/steps/bed-in");
        await page.GetByText("Only a drive gives it").First.WaitForAsync();
        await page.IsAccessibleAsync("bed-in-before-the-drive");
        await new ProcedureHands(page, Shop, car, wheel, DemoPeople.Chassis, DemoPeople.Engines).FinishAsync();
        await page.OpenAsync($"/cars/{car.Value}/results");
        await page.IsAccessibleAsync("results");
        await page.CloseAsync();

        lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await RoadTestAsync(lead, car);
        await lead.CloseAsync();

        page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        await new ProcedureHands(page, Shop, car, brakes, DemoPeople.Chassis, DemoPeople.Engines).FinishStepAsync("bed-in");
        await page.OpenAsync($"/cars/{car.Value}/results");
        foreach (var (name, width, height, look) in Sizes)
        {
            await page.EmulateMediaAsync(new() { ColorScheme = look });
            await page.SetViewportSizeAsync(width, height);
            await page.IsAccessibleAsync($"results-{name}");
        }

        await page.CloseAsync();
        lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await lead.OpenAsync($"/cars/{car.Value}/release");
        await lead.Locator("#km-Road").FillAsync("41020");
        await lead.TickClosingCheckAsync("Road");
        await lead.Locator("#road button[type=submit]:not([disabled])").SignWithAsync(lead, DemoPeople.Lead, "RELEASE TO ROAD");
        await lead.Locator("#road .release-stands", new() { HasText = "Released" }).WaitForAsync();
        Assert.False(Shop.Read(car).State.Jobs[brakes].IsRunning);
        Assert.Equal([], Shop.VerifyAll());
    }

    // Nobody has held the pedal yet: the car does not roll to another place.
    private static async Task NotRolledAsync(IPage page, CarId car)
    {
        await page.OpenAsync($"/cars/{car.Value}/visit");
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^Floor space") }).First.ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^MOVE IT") }).ClickAsync();
        await page.Locator("#move-refused:visible p").WaitForAsync();
        await page.IsAccessibleEverywhereAsync("not-rolled-before-the-pedal-is-held");
    }

    private async Task RoadTestAsync(IPage lead, CarId car)
    {
        await lead.OpenAsync($"/cars/{car.Value}/release");
        foreach (var (name, width, height, look) in Sizes)
        {
            await lead.EmulateMediaAsync(new() { ColorScheme = look });
            await lead.SetViewportSizeAsync(width, height);
            await lead.IsAccessibleAsync($"road-test-{name}");
        }

        await lead.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
        await lead.SetViewportSizeAsync(1024, 768);
        Assert.Equal("NO", await lead.Locator("#track h2 strong").InnerTextAsync());
        await lead.Locator("#km-RoadTest").FillAsync("41000");
        await lead.Locator("#driver").SelectOptionAsync(DemoPeople.Lead.Name);
        await lead.Locator("#distance").FillAsync("25");
        await lead.TickClosingCheckAsync("RoadTest");
        await lead.Locator("#roadtest button[type=submit]:not([disabled])").SignWithAsync(lead, DemoPeople.Lead, "RELEASE TO A ROAD TEST");
        await lead.Locator(".road-test").WaitForAsync();
        await lead.IsAccessibleAsync("out-on-a-road-test");
        Assert.True(Shop.Read(car).StandingOf(ReleaseKind.RoadTest).IsGood);

        await lead.Locator("#back-km").FillAsync("40999");
        await lead.GetByRole(AriaRole.Button, new() { Name = "THE CAR IS BACK" }).ClickAsync();
        await lead.Locator("#back-km-wrong p").WaitForAsync();
        await lead.RefusalsAreSeenAsync("a return below the odometer it left with");
        await lead.Locator("#back-km").FillAsync("41020");
        await lead.GetByRole(AriaRole.Button, new() { Name = "THE CAR IS BACK" }).ClickAsync();
        await lead.Locator(".road-test").WaitForAsync(new() { State = WaitForSelectorState.Detached });
        Assert.Equal(ReleaseStandingKind.Ended, Shop.Read(car).StandingOf(ReleaseKind.RoadTest).Kind);
    }
}
