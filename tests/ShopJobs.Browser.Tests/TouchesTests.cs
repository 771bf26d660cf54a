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
        var counted = new List<(int All, int Signing)>();

        await touches.BeginAsync();
        await page.Locator("article", new() { HasText = "Grey" }).Locator(".car-next").ClickAsync();
        await StandsAtAsync(page, "faces");
        await screen.ReportAllAsync();
        await TickAllButOneAsync(page);
        await DoneAsync(page, "by-hand");
        var (before, _) = await touches.SoFarAsync();
        await screen.ReportedAsync();
        await touches.TypeAsync("#m-turns", 9);
        await DoneAsync(page, "snug");
        await DoneAsync(page, "stage-50");
        await screen.StandsAsAskedAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "W5, set to 50 N·m" }).ClickAsync();
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

        await touches.SignAsync(page.Locator(".sign-button:not([disabled])", new() { HasText = "SIGN 4 STEPS" }), DemoPeople.Chassis);
        await StandsAtAsync(page, "lower");
        await RowAsync("Three more nuts at 50 N·m, and four steps signed");

        await touches.BeginAsync();
        await page.Locator(".stage-ahead button.report-main").ClickAsync();
        await TickAllButOneAsync(page);
        await touches.SignAsync(page.Locator(".sign-button:not([disabled])"), DemoPeople.Chassis);
        await StandsAtAsync(page, "final");
        await RowAsync("The car lowered, and signed");

        await touches.BeginAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "W7, set to 110 N·m" }).ClickAsync();
        for (var nut = 1; nut <= 5; nut++)
        {
            await screen.ClickedAsync();
        }

        await page.Locator(".tick").ClickAsync();
        await touches.OpenAsync(page.GetByRole(AriaRole.Button, new() { Name = "WITNESS: I checked" }), DemoPeople.Engines);
        // Five marks are looked at before the PIN; whoever does not gets a word to read first.
        Shop.Time.Advance(TimeSpan.FromSeconds(6));
        await touches.PinAsync(DemoPeople.Engines);
        await page.Locator(".sign-dialog", new() { HasText = "SIGN: done by me" }).WaitForAsync();
        await touches.PinAsync(DemoPeople.Chassis);
        await page.Locator(".signed").WaitForAsync();
        await RowAsync("Five nuts at 110 N·m, the second person, and signed");
        var (fresh, next, more, lowered, last) = (counted[0], counted[1], counted[2], counted[3], counted[4]);
        // Begun on the step where they are run on by hand, and without the way from the floor to the second nut.
        var nuts = fresh.All - before + next.All - 1 + more.All + last.All;
        Row("Five nuts by hand, at 50 and at 110 N·m, every signature and the second person", nuts, more.Signing + last.Signing);
        Row("The same with the lowering, which is once for all four wheels", nuts + lowered.All, more.Signing + last.Signing + lowered.Signing);

        output.WriteLine(string.Join(Environment.NewLine, table));
        Assert.Equal(Kept("One wheel"), table);
        Assert.Equal([], Shop.VerifyAll());

        async Task RowAsync(string task)
        {
            counted.Add(await touches.SoFarAsync());
            Row(task, counted[^1].All, counted[^1].Signing);
        }

        void Row(string task, int all, int signing) => table.Add($"| {task} | {all} | {signing} |");
    }

    // What the docs say is what is measured, row by row.
    private static List<string> Kept(string heading) =>
    [
        .. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "docs", "touches.md"))
            .SkipWhile(line => line != $"## {heading}").Skip(1).TakeWhile(line => !line.StartsWith("## ", StringComparison.Ordinal))
            .Where(line => line.StartsWith("| ", StringComparison.Ordinal)).Skip(1),
    ];

    // The last tick is said by the button that goes on.
    private static async Task TickAllButOneAsync(IPage page)
    {
        foreach (var tick in (await page.Locator(".tick").AllAsync()).SkipLast(1))
        {
            await tick.ClickAsync();
        }
    }

    [Fact]
    public async Task A_number_is_put_right_and_another_nut_is_held_with_the_touches_that_the_docs_say()
    {
        var car = await Shop.CarAsync("Grey");
        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await lead.PutOnAsync(car, "P5", "Wheel, please", Place);
        await lead.CloseAsync();
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        var screen = new StepScreen(page, car, await Shop.JobAsync(car, "fit-up"));
        var touches = new TouchCounter(page);
        foreach (var step in (string[])["faces", "by-hand", "snug"])
        {
            await screen.OpenAsync($"{step}@{Place}");
            await screen.ReportAllAsync();
            await screen.AnswerAsync(step == "by-hand" ? [("turns", 9)] : []);
            await page.Locator(".finish-button").ClickAsync();
            await page.Locator($"[data-step]:not([data-step*='/{step}'])").WaitForAsync();
        }

        await screen.OpenAsync($"stage-50@{Place}");
        await screen.StandsAsAskedAsync();
        await screen.TakeAsync("W8");
        await screen.ReadAsync("51");
        await screen.ReadAsync("58");

        await touches.BeginAsync();
        await page.Locator("[data-last]").ClickAsync();
        await touches.KeyAsync("#right-value", "52");
        await page.GetByRole(AriaRole.Button, new() { Name = "PUT THE NUMBER RIGHT" }).ClickAsync();
        var (withoutPin, _) = await touches.SoFarAsync();
        await touches.PinAsync(DemoPeople.Chassis);
        await page.Locator("[data-cell-status]", new() { HasText = "is 52 N·m" }).WaitForAsync();
        var correct = await touches.SoFarAsync();

        await touches.BeginAsync();
        await page.Locator("[data-touch='4']").ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "HOLD this one" }).ClickAsync();
        await page.Locator(".reason-picks[aria-label='Usual reasons'] .button").First.ClickAsync();
        await page.Locator(".sign-dialog .button-main").ClickAsync();
        await page.Locator(".held-panel", new() { HasText = "4" }).WaitForAsync();
        var hold = await touches.SoFarAsync();

        List<string> table =
        [
            $"| The last number put right: before its PIN {withoutPin} | {correct.All} | {correct.Signing} |",
            $"| Another nut named and held | {hold.All} | {hold.Signing} |",
        ];
        output.WriteLine(string.Join(Environment.NewLine, table));
        Assert.Equal(Kept("Apart from the wheel"), table);
    }

    private static async Task DoneAsync(IPage page, string next)
    {
        await page.Locator(".finish-button").ClickAsync();
        await StandsAtAsync(page, next);
    }

    private static Task StandsAtAsync(IPage page, string step) =>
        page.Locator($"main.page:not(.is-asleep) [data-step*='/{step}']").WaitForAsync();
}
