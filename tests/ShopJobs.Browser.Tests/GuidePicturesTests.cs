using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>
/// The pictures of the docs, taken at one wheel of the demo shop: <c>test-output/guide-*.png</c>, which are copied to <c>docs/pictures</c>
/// when a screen has changed.
/// </summary>
[Trait("Takes", "long")]
public sealed class GuidePicturesTests : OneTabletTests
{
    private const string Place = "front-left";

    [Fact]
    public async Task A_wheel_is_shown_as_its_technician_sees_it()
    {
        var car = await Shop.CarAsync("Grey");
        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await lead.PutOnAsync(car, "P5", "Wheel, please", Place);
        await lead.SetViewportSizeAsync(1440, 900);
        await lead.OpenAsync("/");
        await lead.Locator(".above svg").First.WaitForAsync();
        await KeepAsync(lead, "floor");
        await lead.CloseAsync();
        var job = await Shop.JobAsync(car, "fit-up");

        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        var step = new StepScreen(page, car, job);
        await step.OpenAsync($"faces@{Place}");
        await step.ReportAllAsync();
        await step.AnswerAsync();
        await GoOnAsync(page, "by-hand");
        await step.ReportedAsync();
        await step.AnswerAsync(("turns", 9));
        await GoOnAsync(page, "snug");
        await step.AnswerAsync();
        await GoOnAsync(page, "stage-50");
        await step.StandsAsAskedAsync();
        await step.PullAsync("W5", "50");
        await step.StandsAtAsync("wheel nut front-left 3");
        await KeepAsync(page, "step");
        await page.Locator("[data-touch='1']").First.ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "HOLD this one" }).WaitForAsync();
        await KeepAsync(page, "nut");
        await page.GetByRole(AriaRole.Button, new() { Name = "Back to what is next" }).ClickAsync();
        await step.PullAllAsync("W5", "50");
        await page.GetByRole(AriaRole.Button, new() { Name = "SIGN 4 STEPS: done by me" }).ClickAsync();
        await page.Locator(".sign-dialog [data-pin-pad]").WaitForAsync();
        await KeepAsync(page, "sign");
        await page.Keyboard.PressAsync("Escape");
        await step.SignAsync(DemoPeople.Chassis);

        await step.OpenAsync("lower");
        await step.AnswerAsync();
        await step.SignAsync(DemoPeople.Chassis);
        await step.OpenAsync($"final@{Place}");
        await step.StandsAsAskedAsync();
        await step.PullAllAsync("W7", "110");
        await step.AnswerAsync();
        await page.Locator(".witness-panel").WaitForAsync();
        await KeepAsync(page, "witness");
        Assert.Equal(5, Shop.Read(car).State.Positions.Values.Count(book => book.Pulls.Count == 2));
    }

    [Fact]
    public async Task A_car_that_came_in_is_shown_as_its_lead_sees_it()
    {
        var car = $"/cars/{(await Shop.CarAsync("Blue")).Value}";
        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        foreach (var (name, address, seen) in new[]
        {
            ("as-found", $"{car}/as-found", ".as-found-card.is-recorded"), ("photos", $"{car}/photos", "img"), ("parts", "/parts", "table"),
        })
        {
            await lead.OpenAsync(address);
            await lead.Locator(seen).First.WaitForAsync();
            await KeepAsync(lead, name);
        }
    }

    private static async Task GoOnAsync(IPage page, string step)
    {
        await page.Locator(".finish-button").ClickAsync();
        await page.Locator($"[data-step*='/{step}']").WaitForAsync();
    }

    // What is in sight, and nothing that is just fading in or out.
    private static async Task KeepAsync(IPage page, string name)
    {
        await page.EvaluateAsync("() => scrollTo(0, 0)");
        await page.WaitForTimeoutAsync(1500);
        await page.ScreenshotAsync(new() { Path = Path.Combine(Pictures.Folder, $"guide-{name}.png") });
    }
}
