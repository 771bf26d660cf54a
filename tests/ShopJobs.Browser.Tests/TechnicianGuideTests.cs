using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>What docs/technician.md tells somebody at the car is on the screens, in its order. Its pictures are taken here.</summary>
public sealed class TechnicianGuideTests : OneTabletTests
{
    private const string Place = "front-left";

    [Fact]
    [Trait("Takes", "long")]
    public async Task Everything_that_the_guide_names_is_on_the_screen_where_it_says()
    {
        var door = await Tablet.NewPageAsync();
        await door.GotoAsync("/my-work");
        await door.GetByText("Who is working?").WaitForAsync();
        await PictureAsync(door, "sign-in");
        await door.CloseAsync();

        var (car, job) = await WheelAsync();
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/my-work");
        await page.GetByText("Switch user").WaitForAsync();
        await page.GetByText("Nobody has these yet").WaitForAsync();
        await PictureAsync(page, "my-work");

        var screen = new StepScreen(page, car, job);
        await screen.OpenAsync($"faces@{Place}");
        await screen.ReportAllAsync();
        await screen.AnswerAsync();
        await PictureAsync(page, "done", page.Locator(".finish-button"));
        await DoneAsync(page, "by-hand");
        await screen.ReportedAsync();
        await screen.AnswerAsync(("turns", 9));
        await DoneAsync(page, "snug");
        await screen.AnswerAsync();
        await DoneAsync(page, "stage-50");
        await screen.StandsAsAskedAsync();
        await screen.TakeAsync("W5");
        await page.GetByText("It is set to").WaitForAsync();
        await PictureAsync(page, "pull");

        await page.GetByRole(AriaRole.Button, new() { Name = "HOLD, CALL LEAD" }).ClickAsync();
        await page.GetByText("it keeps turning (thread stripped?)").WaitForAsync();
        await PictureAsync(page, "hold");
        await LeaveDialogAsync(page);

        await screen.SetAsInstructedAsync();
        await screen.ClickedAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "UNDO LAST" }).ClickAsync();
        await page.GetByText("Only the number was typed wrong").WaitForAsync();
        await PictureAsync(page, "correct");
        await LeaveDialogAsync(page);

        await page.Locator("[data-touch='1']").ClickAsync();
        await page.GetByText("HOLD this one").WaitForAsync();
        await page.GetByText("Correct its record").WaitForAsync();
        await PictureAsync(page, "nut");

        await Tablet.SetOfflineAsync(true);
        await page.Locator(".link-bar.is-shown").WaitForAsync(new() { Timeout = 120_000 });
        await PictureAsync(page, "no-line");
        await Tablet.SetOfflineAsync(false);
        await screen.OpenAsync($"stage-50@{Place}");
        await screen.PullAllAsync("W5", "50");
        await screen.SignAsync(DemoPeople.Chassis);

        await screen.OpenAsync("lower");
        await screen.AnswerAsync();
        await screen.SignAsync(DemoPeople.Chassis);
        await screen.OpenAsync($"final@{Place}");
        await screen.PullAllAsync("W7", "110");
        await screen.AnswerAsync();
        var witness = page.GetByRole(AriaRole.Button, new() { Name = "WITNESS: I checked" });
        await PictureAsync(page, "witness", witness);
        await screen.WitnessAsync(DemoPeople.Engines);
        Assert.Equal([], Shop.VerifyAll());
    }

    // As the technician sees it, not the whole page; what it is about is on it.
    private static async Task PictureAsync(IPage page, string name, ILocator? about = null)
    {
        if (about is not null)
        {
            await about.ScrollIntoViewIfNeededAsync();
        }

        await page.ScreenshotAsync(new() { Path = Path.Combine(Pictures.Folder, $"technician-{name}.png"), Scale = ScreenshotScale.Css });
    }

    private static async Task LeaveDialogAsync(IPage page)
    {
        await page.Locator(".sign-dialog").GetByRole(AriaRole.Button, new() { Name = "Cancel", Exact = true }).ClickAsync();
        await page.Locator(".sign-dialog").WaitForAsync(new() { State = WaitForSelectorState.Detached });
    }

    private async Task<(CarId Car, JobId Job)> WheelAsync()
    {
        var car = await Shop.CarAsync("Grey");
        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await lead.PutOnAsync(car, "P5", "Wheel, please", Place);
        await lead.CloseAsync();
        return (car, await Shop.JobAsync(car, "fit-up"));
    }

    private static async Task DoneAsync(IPage page, string next)
    {
        await page.Locator(".finish-button").ClickAsync();
        await page.Locator($"main.page:not(.is-asleep) [data-step*='/{next}']").WaitForAsync();
    }
}
