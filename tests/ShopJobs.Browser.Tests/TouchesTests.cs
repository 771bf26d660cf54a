using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Web.Demo;
using Xunit.Abstractions;

namespace ShopJobs.Browser.Tests;

/// <summary>How many touches the work at a wheel takes. docs/touches.md keeps what is measured here.</summary>
public sealed class TouchesTests(ITestOutputHelper output) : OneTabletTests
{
    private const string Place = "front-left";

    protected override Task BeginAsync() => TouchCounter.CountAsync(Tablet);

    [Fact]
    public async Task A_wheel_takes_the_touches_that_the_docs_say()
    {
        var car = await Shop.CarAsync("Grey");
        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await lead.PutOnAsync(car, "P5", "Wheel, please", Place);
        await lead.CloseAsync();
        var job = await Shop.JobAsync(car, "fit-up");
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        var screen = new StepScreen(page, car, job);
        var touches = new TouchCounter(page);
        var table = new List<string>();

        await touches.BeginAsync();
        await page.Locator("article", new() { HasText = "Grey" }).Locator(".car-next").ClickAsync();
        await StandsAtAsync(page, "faces");
        await screen.ReportAllAsync();
        await TickAsync(page);
        await DoneAsync(page, "by-hand");
        await screen.ReportedAsync();
        await touches.TypeAsync("#m-turns", 9);
        await DoneAsync(page, "snug");
        await TickAsync(page);
        await DoneAsync(page, "stage-50");
        await screen.StandsAsAskedAsync();
        await screen.TakeAsync("W5");
        await screen.SetAsInstructedAsync();
        await screen.ClickedAsync();
        await RowAsync("A fresh wheel, from the floor to its first nut");

        await page.OpenAsync("/");
        await touches.BeginAsync();
        await page.Locator("article", new() { HasText = "Grey" }).Locator(".car-next").ClickAsync();
        await StandsAtAsync(page, "stage-50");
        await screen.PullAsync("W5", "50");
        await RowAsync("The next nut of a begun wheel, from the floor");

        await touches.BeginAsync();
        for (var nut = 3; nut <= 5; nut++)
        {
            await screen.ClickedAsync();
        }

        await touches.SignAsync(page.Locator(".sign-button:not([aria-disabled=true])"), DemoPeople.Chassis, "SIGN 4 STEPS");
        await page.Locator(".signed").WaitForAsync();
        await RowAsync("Three more nuts at 50 N·m, and four steps signed");

        await screen.OpenAsync("lower");
        await touches.BeginAsync();
        await TickAsync(page);
        foreach (var said in await page.Locator(".stage-ahead button.report-main").AllAsync())
        {
            await said.ClickAsync();
        }

        await touches.SignAsync(page.Locator(".sign-button:not([aria-disabled=true])"), DemoPeople.Chassis, "SIGN");
        await page.Locator(".signed").WaitForAsync();
        await RowAsync("The car lowered, and signed");

        await touches.BeginAsync();
        await page.Locator(".go-on .button-main").ClickAsync();
        await StandsAtAsync(page, "final");
        await screen.StandsAsAskedAsync();
        await screen.TakeAsync("W7");
        await screen.SetAsInstructedAsync();
        for (var nut = 1; nut <= 5; nut++)
        {
            await screen.ClickedAsync();
        }

        await TickAsync(page);
        await touches.SignAsync(page.GetByRole(AriaRole.Button, new() { Name = "WITNESS: I checked" }), DemoPeople.Engines, "WITNESS");
        await touches.SignAsync(page.Locator(".sign-button:not([aria-disabled=true])"), DemoPeople.Chassis, "SIGN");
        await page.Locator(".signed").WaitForAsync();
        await RowAsync("Five nuts at 110 N·m, the second person, and signed");

        output.WriteLine(string.Join(Environment.NewLine, table));
        Assert.Equal(Kept(), table);
        Assert.Equal([], Shop.VerifyAll());

        async Task RowAsync(string task)
        {
            var (all, signing) = await touches.SoFarAsync();
            table.Add($"| {task} | {all} | {signing} |");
        }
    }

    // What the docs say is what is measured, row by row.
    private static List<string> Kept() =>
        [.. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "docs", "touches.md")).Where(line => line.StartsWith("| ", StringComparison.Ordinal)).Skip(1)];

    private static async Task TickAsync(IPage page)
    {
        foreach (var tick in await page.Locator(".tick").AllAsync())
        {
            await tick.ClickAsync();
        }
    }

    private static async Task DoneAsync(IPage page, string next)
    {
        await page.Locator(".finish-button").ClickAsync();
        await StandsAtAsync(page, next);
    }

    private static Task StandsAtAsync(IPage page, string step) =>
        page.Locator($"main.page:not(.is-asleep) [data-step*='/{step}']").WaitForAsync();
}
