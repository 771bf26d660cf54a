using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>A wheel is fitted in one go and its steps are signed with one PIN, on the screens alone.</summary>
public sealed class InOneGoTests : OneTabletTests
{
    private const string Place = "front-left";

    [Fact]
    public async Task A_wheel_up_to_its_lower_stage_is_done_in_one_go_and_signed_with_one_PIN()
    {
        var (car, job) = await WheelAsync();
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        var screen = new StepScreen(page, car, job);
        await screen.OpenAsync($"faces@{Place}");
        await screen.ReportAllAsync();
        Assert.Equal(0, await page.Locator(".finish-button").CountAsync());
        await screen.AnswerAsync();
        await page.IsAccessibleEverywhereAsync("done-sign-later");

        // One touch: it is done, and the next step is on the screen.
        await DoneAsync(page, "by-hand");
        await screen.ReportedAsync();
        await screen.AnswerAsync(("turns", 9));
        await DoneAsync(page, "snug");
        await screen.AnswerAsync();
        await DoneAsync(page, "stage-50");
        await page.IsAccessibleEverywhereAsync("how-the-car-must-stand");
        await screen.StandsAsAskedAsync();
        await screen.TakeAsync("W5");
        await page.IsAccessibleEverywhereAsync("set-the-tool");
        await screen.PullAllAsync("W5", "50");
        await page.GetByText("One PIN signs it with what you have finished before").WaitForAsync();
        await page.IsAccessibleEverywhereAsync("sign-four-steps");

        var sign = page.GetByRole(AriaRole.Button, new() { Name = "SIGN 4 STEPS: done by me" });
        await sign.ClickAsync();
        var dialog = page.Locator(".sign-dialog");
        await dialog.GetByText("Full turns the least of the five nuts took by hand: 9 turns").WaitForAsync();
        await page.IsAccessibleAsync("sign-four-steps-dialog");
        await dialog.Locator(".person-tile", new() { HasText = DemoPeople.Chassis.Name }).ClickAsync();
        await dialog.Locator("#sign-pin").FillAsync(DemoPeople.Chassis.Pin);
        await dialog.GetByRole(AriaRole.Button, new() { Name = "SIGN 4 STEPS" }).ClickAsync();
        await page.Locator("[data-cell-status][data-kind=signed]", new() { HasText = "Torque to 50 N·m in star" }).WaitForAsync();

        var reading = Shop.Read(car);
        var book = reading.State.Jobs[job];
        Assert.All(
            (string[])["faces", "by-hand", "snug", "stage-50"],
            step => Assert.Equal(StepStanding.Signed, reading.State.StandingOf(book, reading.Placed(book), reading.Placed(book).Step($"{step}@{Place}")!)));
        Assert.Equal(["faces-bare", "cones-bare", "threads-dry", "hub-ring"], book.SignOffs[$"faces@{Place}"].Fact.Ticks);
        Assert.Equal([], Shop.VerifyAll());
    }

    [Fact]
    [Trait("Takes", "long")]
    public async Task Somebody_else_is_told_that_the_step_before_is_done_and_not_signed_and_its_doer_signs_it_from_his_list()
    {
        var (car, job) = await WheelAsync();
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        var screen = new StepScreen(page, car, job);
        await screen.OpenAsync($"faces@{Place}");
        await screen.ReportAllAsync();
        await screen.AnswerAsync();
        await DoneAsync(page, "by-hand");
        await page.CloseAsync();

        page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Engines, "/");
        await page.OpenAsync($"/cars/{car.Value}/jobs/{job.Value}/steps/by-hand@{Place}");
        await page.GetByText("is done and not signed").WaitForAsync();
        Assert.Equal(0, await page.Locator("[data-next], .report-main").CountAsync());
        await page.OpenAsync($"/cars/{car.Value}");
        await page.GetByText($"done, not signed, {DemoPeople.Chassis.Name}").First.WaitForAsync();
        await page.CloseAsync();

        // Signed in again he signs it first, as his list says, with the ticks that he gave.
        page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/my-work");
        await page.GetByText("Done by you: sign it").First.WaitForAsync();
        await page.OpenAsync($"/cars/{car.Value}/jobs/{job.Value}/steps/by-hand@{Place}");
        await page.GetByText("Done by you and not signed").WaitForAsync();
        await page.IsAccessibleEverywhereAsync("done-in-an-earlier-session");
        await page.Locator(".unsigned .button").SignWithAsync(page, DemoPeople.Chassis, "SIGN");
        await page.Locator(".group-report button.report-main").First.WaitForAsync();
        Assert.Equal([], Shop.VerifyAll());
    }

    [Fact]
    [Trait("Takes", "long")]
    public async Task A_page_left_open_from_before_its_person_signed_in_anew_reports_in_the_session_of_now()
    {
        var (car, job) = await WheelAsync();
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        var screen = new StepScreen(page, car, job);
        await screen.OpenAsync($"faces@{Place}");

        var other = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        await page.BringToFrontAsync();
        await page.Locator(".step-next :not(.condition-asked) > button.report-main").First.ClickAsync();
        await other.OpenAsync($"/cars/{car.Value}/jobs/{job.Value}/steps/by-hand@{Place}");
        await page.CloseAsync();

        // The nuts are opened; what is run down next on a page drawn before counts too, and that page is drawn again.
        await new StepScreen(other, car, job).OpenAsync($"faces@{Place}");
        await new StepScreen(other, car, job).AnswerAsync();
        await DoneAsync(other, "by-hand");
        var third = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        await other.BringToFrontAsync();
        await other.Locator(".group-report button.report-main").First.ClickAsync();
        await other.GetByText("is done and not signed").WaitForAsync();

        var reading = Shop.Read(car);
        Assert.All(reading.Placed(reading.State.Jobs[job]).Group("wheel-nuts", Place)!.Positions, nut => Assert.Equal(Fitting.HandTight, reading.State.Of(nut).Fitting));
        await third.CloseAsync();
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
        await page.WaitForURLAsync($"**/steps/{next}%40{Place}*");
        await page.Locator($"[data-step$='/{next}@{Place}']").WaitForAsync();
    }
}
