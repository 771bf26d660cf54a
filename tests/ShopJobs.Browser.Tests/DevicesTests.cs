using System.Net;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Tools;
using ShopJobs.Tests.Shared;

namespace ShopJobs.Browser.Tests;

/// <summary>A wrench and a scanner that type, and a tool that sends, at one wheel on a line of 300 ms and where several things happen at once.</summary>
public sealed class DevicesTests(LostConnectionShop shop) : IClassFixture<LostConnectionShop>
{
    private static readonly TimeSpan OneWay = TimeSpan.FromMilliseconds(150);

    [Fact]
    public async Task On_a_slow_line_nothing_a_wrench_types_is_lost_and_what_came_too_soon_is_asked()
    {
        var tablet = await shop.NextWheelAsync(WorkSeed.WA);
        using var device = new DeviceSimulator(tablet.Page, shop.Server.Address);
        shop.Line.OneWay = OneWay;
        // Also after a touch on a box that keeps the focus.
        await tablet.Page.Locator("[data-with]").First.CheckAsync();
        await device.TypeAsync("50,5");
        await device.TypeAsync("49.8");

        await tablet.StandsAtAsync(3);
        await tablet.Page.GetByText("49.8 N·m came before wheel nut").WaitForAsync();
        await tablet.Page.KeepAsync("device-came-too-soon");
        Assert.Equal([(1, 50.5m)], tablet.Pulls);
        await tablet.Page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Yes: 49.8 N·m at") }).ClickAsync();
        await tablet.StandsAtAsync(5);
        await tablet.SettledAsync();
        Assert.Equal([(1, 50.5m), (3, 49.8m)], tablet.Pulls);
        await device.TypeAsync("50.1");
        await tablet.StandsAtAsync(2);
        Assert.Equal([(1, 50.5m), (3, 49.8m), (5, 50.1m)], tablet.Pulls);
    }

    [Fact]
    public async Task A_label_picks_its_tool_and_one_that_cannot_says_why_not()
    {
        var tablet = await shop.NextWheelAsync(WorkSeed.W5);
        using var device = new DeviceSimulator(tablet.Page, shop.Server.Address);

        await device.ScanAsync(WorkSeed.W3);
        await tablet.SaysAsync("W3 is not taken: outside the tool's range");
        await Assertions.Expect(tablet.Page.Locator(".tool-chip .tool-name")).ToHaveTextAsync("W5");
        await device.ScanAsync(new ToolId(Guid.Empty));
        await tablet.SaysAsync("No tool in use here has the label T00000000");
        await device.TypeAsync("T123");
        await tablet.SaysAsync("T123 is no whole tool label");

        await device.ScanAsync(WorkSeed.WA);
        await tablet.SaysAsync("WA is in hand.");
        await Assertions.Expect(tablet.Page.Locator(".tool-chip .tool-name")).ToHaveTextAsync("WA");
        await device.TypeAsync("50.5");
        await tablet.StandsAtAsync(3);
        Assert.Equal([(1, 50.5m)], tablet.Pulls);
    }

    [Fact]
    public async Task Out_of_range_is_asked_once_whoever_reads_it_and_recorded_as_it_is_it_holds()
    {
        var tablet = await shop.NextWheelAsync(WorkSeed.WA);
        await DeviceSimulator.ListenAsync(tablet.Context);
        await tablet.Page.ReloadAsync();
        await tablet.LiveAsync();
        using var device = new DeviceSimulator(tablet.Page, shop.Server.Address);
        var key = await shop.Folder.NewKeyAsync(WorkSeed.WA);

        await device.TypeAsync("61");
        await tablet.SaysAsync("61 N·m is outside what is permitted");
        Assert.Equal<int[]>([620, 620], await device.TonesAsync());
        Assert.Empty(tablet.Pulls);

        var id = Guid.NewGuid();
        var sent = await device.SendAsync(key, id, "61", DateTimeOffset.UtcNow);
        Assert.True(sent.Outcome == "waiting", $"{sent.Outcome}: {sent.Words}");
        Assert.Empty(tablet.Pulls);
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Record 61 N·m as it is" }).ClickAsync();
        await Assertions.Expect(tablet.Page.Locator("[data-pull-sign=held]")).ToContainTextAsync("HELD");
        await tablet.SettledAsync();
        Assert.Equal([(1, 61m)], tablet.Pulls);
        Assert.Equal((HttpStatusCode.OK, "duplicate"), await device.SendAsync(key, id, "61", DateTimeOffset.UtcNow) is var (status, outcome, words) ? (status, outcome) : default);
        await tablet.Page.WaitForFunctionAsync("() => window.tones.includes(220)");
        await tablet.Page.KeepAsync("device-held");
    }

    [Fact]
    public async Task Muted_a_tablet_sounds_nothing_and_stays_so()
    {
        var tablet = await shop.NextWheelAsync(WorkSeed.WA);
        await DeviceSimulator.ListenAsync(tablet.Context);
        await tablet.Page.ReloadAsync();
        await tablet.LiveAsync();
        using var device = new DeviceSimulator(tablet.Page, shop.Server.Address);
        var sound = tablet.Page.Locator("[data-device-sound]");
        await Assertions.Expect(sound).ToHaveAttributeAsync("aria-pressed", "true");
        await sound.ClickAsync();
        await tablet.Page.ReloadAsync();
        await tablet.LiveAsync();
        await Assertions.Expect(sound).ToHaveAttributeAsync("aria-pressed", "false");

        await device.TypeAsync("50.5");
        await tablet.StandsAtAsync(3);
        await Assertions.Expect(tablet.Page.Locator("[data-pull-sign=in-range]")).ToContainTextAsync("IN RANGE");
        await tablet.SaysAsync("Saved: wheel nut");
        Assert.Empty(await device.TonesAsync());
    }

    [Fact]
    public async Task A_locked_or_left_page_and_a_second_tablet_record_nothing()
    {
        var tablet = await shop.NextWheelAsync(WorkSeed.WA);
        using var device = new DeviceSimulator(tablet.Page, shop.Server.Address);
        var key = await shop.Folder.NewKeyAsync(WorkSeed.WA);
        await tablet.Page.EvaluateAsync("() => document.getElementById('lock').showModal()");
        Assert.Contains("locked", (await SendAsync()).Words, StringComparison.Ordinal);
        await tablet.Page.EvaluateAsync("() => document.getElementById('lock').close()");

        await tablet.Page.GotoAsync("/my-work");
        await tablet.Page.Locator("main.page:not(.is-asleep)").WaitForAsync();
        await Assertions.Expect(tablet.Page.Locator("[data-keypad]")).ToHaveCountAsync(0);
        Assert.Equal("refused", (await SendAsync()).Outcome);
        Assert.Empty(tablet.Pulls);

        async Task<(string Outcome, string Words)> SendAsync() =>
            await device.SendAsync(key, Guid.NewGuid(), "50.5", DateTimeOffset.UtcNow) is var (_, outcome, words) ? (outcome, words) : default;
    }
}
