using System.Net;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>A whole wheel with a reading wrench: it types its readings at the first stage and sends them at the last, and no pull is a touch.</summary>
[Trait("Takes", "long")]
public sealed class DeviceWheelTests : OneTabletTests
{
    private const string Place = "front-left";
    private static readonly int[] Star = [1, 3, 5, 2, 4];

    protected override async Task BeginAsync()
    {
        await TouchCounter.CountAsync(Tablet);
        await DeviceSimulator.ListenAsync(Tablet);
    }

    [Fact]
    public async Task A_wheel_is_pulled_by_devices_without_a_touch()
    {
        var car = await Shop.CarAsync("Grey");
        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await lead.PutOnAsync(car, "P5", "Wheel, please", Place);
        var (w8, key) = await NewKeyAsync(lead, "W8");
        await lead.OpenAsync("/tools/labels");
        await lead.Locator(".tool-label").First.WaitForAsync();
        await lead.IsAccessibleEverywhereAsync("device-labels");
        await lead.CloseAsync();

        var job = await Shop.JobAsync(car, "fit-up");
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        var screen = new StepScreen(page, car, job);
        var touches = new TouchCounter(page);
        using var device = new DeviceSimulator(page, Shop.Address);
        await screen.OpenAsync($"faces@{Place}");
        await screen.ReportAllAsync();
        await screen.AnswerAsync();
        await DoneAsync(page, "by-hand");
        await screen.ReportedAsync();
        await screen.AnswerAsync(("turns", 9));
        await DoneAsync(page, "snug");
        await screen.AnswerAsync();
        await DoneAsync(page, "stage-50");
        await screen.StandsAsAskedAsync();
        await page.Locator(".tool-none").WaitForAsync();

        // The first stage: the label picks the wrench, and the wrench types.
        await touches.BeginAsync();
        await device.ScanAsync(w8);
        await page.Locator("[data-keypad][data-mode=reading]").WaitForAsync();
        await device.TonesAsync();
        foreach (var (nut, next) in Star.Zip([.. Star.Skip(1), 0]))
        {
            await StandsAtAsync(page, nut);
            await device.TypeAsync($"50.{nut}");
            await Assertions.Expect(page.Locator("[data-pull-sign] .pull-words")).ToContainTextAsync(next == 0 ? "GO ON" : $"NEXT: {next}");
            await page.WaitForFunctionAsync("() => window.tones.length > 0");
            Assert.Equal<int[]>(next == 0 ? [880, 1320] : [1320], await device.TonesAsync());
        }

        Assert.Equal(0, (await touches.SoFarAsync()).All);
        await page.KeepAsync("device-stage-done");
        await page.Locator(".sign-button:not([disabled])").SignWithAsync(page, DemoPeople.Chassis, "SIGN");
        await page.Locator("[data-kind=signed]").WaitForAsync();
        await screen.OpenAsync("lower");
        await screen.AnswerAsync();
        foreach (var said in await page.Locator(".stage-ahead button.report-main").AllAsync())
        {
            await said.ClickAsync();
        }

        await screen.SignAsync(DemoPeople.Chassis);

        // The last stage: the wrench sends, and out of range is asked beside the keypad.
        await screen.OpenAsync($"final@{Place}");
        await screen.StandsAsAskedAsync();
        await touches.BeginAsync();
        await page.Locator("[data-keypad][data-mode=reading]").WaitForAsync();
        foreach (var nut in Star.Take(2))
        {
            await StandsAtAsync(page, nut);
            Assert.Equal((HttpStatusCode.OK, "recorded", ""), await device.SendAsync(key, Guid.NewGuid(), $"110.{nut}", Shop.Time.GetUtcNow()));
        }

        await page.IsAccessibleEverywhereAsync("device-in-range");
        Assert.Equal(0, (await touches.SoFarAsync()).All);

        await StandsAtAsync(page, 5);
        var over = Guid.NewGuid();
        Assert.Equal("waiting", (await device.SendAsync(key, over, "118.4", Shop.Time.GetUtcNow())).Outcome);
        await page.GetByText("118.4 N·m is outside what is permitted").First.WaitForAsync();
        await page.IsAccessibleEverywhereAsync("device-asked");
        Assert.Equal("waiting", (await device.SendAsync(key, over, "118.4", Shop.Time.GetUtcNow())).Outcome);
        await page.GetByRole(AriaRole.Button, new() { Name = "Leave it out" }).ClickAsync();
        Assert.Equal((HttpStatusCode.UnprocessableEntity, "refused", "It was left out at the tablet."), await device.SendAsync(key, over, "118.4", Shop.Time.GetUtcNow()));

        await touches.BeginAsync();
        foreach (var nut in Star.Skip(2))
        {
            await StandsAtAsync(page, nut);
            var id = Guid.NewGuid();
            Assert.Equal("recorded", (await device.SendAsync(key, id, $"110.{nut}", Shop.Time.GetUtcNow())).Outcome);
            Assert.Equal("duplicate", (await device.SendAsync(key, id, $"110.{nut}", Shop.Time.GetUtcNow())).Outcome);
        }

        Assert.Equal(0, (await touches.SoFarAsync()).All);
        await screen.AnswerAsync();
        await screen.WitnessAsync(DemoPeople.Engines);
        await screen.SignAsync(DemoPeople.Chassis);

        var reading = Shop.Read(car);
        Assert.All(Star, nut => Assert.Equal(
            [(1, 50m + (nut / 10m), w8), (2, 110m + (nut / 10m), w8)],
            reading.State.Of(new JointPosition("wheel.nut", Place, nut)).Pulls.Select(pull => (pull.Fact.Stage, pull.Value!.Value.Value, pull.Fact.Tool))));
        Assert.All(
            reading.State.Of(new JointPosition("wheel.nut", Place, 1)).Pulls,
            pull => Assert.Equal(DemoPeople.Chassis.Name, Shop.NameOf(pull.Person)));
        Assert.Equal([], Shop.VerifyAll());
    }

    private static async Task<(ToolId Tool, string Key)> NewKeyAsync(IPage page, string tool)
    {
        await page.OpenAsync("/tools");
        await page.GetByRole(AriaRole.Link, new() { Name = $"View {tool}" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Make a key" }).ClickAsync();
        var key = await page.Locator(".tool-key-text").InnerTextAsync();
        await page.IsAccessibleAsync("device-key");
        return (new ToolId(Guid.Parse(new Uri(page.Url).Segments[^1])), key);
    }

    private static Task StandsAtAsync(IPage page, int nut) => page.Locator($"[data-next='{nut}']").WaitForAsync();

    private static async Task DoneAsync(IPage page, string next)
    {
        await page.Locator(".finish-button").ClickAsync();
        await page.Locator($"main.page:not(.is-asleep) [data-step$='/{next}@{Place}']").WaitForAsync();
    }
}
