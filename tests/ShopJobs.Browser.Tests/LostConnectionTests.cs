using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>
/// A lost connection loses nothing typed and records nothing twice; on return the screen stands at the next position. Real
/// Chromium, the program as a process, and a line between them that is cut in each way. Nut 1 is pulled; the star goes on to nut 3.
/// </summary>
public sealed class LostConnectionTests(LostConnectionShop shop) : IClassFixture<LostConnectionShop>
{
    [Fact]
    public async Task Line_cut_before_the_report_is_sent()
    {
        var tablet = await shop.NextWheelAsync(WorkSeed.WA);
        shop.Line.Cut();

        await tablet.PullAsync("50.5");
        await tablet.SaysAsync("Not saved: wheel nut");
        Assert.Single(await tablet.UnsentAsync());
        shop.Line.Restore();

        await tablet.StandsAtAsync(3);
        Assert.Equal([(1, 50.5m)], tablet.Pulls);
        await tablet.SettledAsync();
    }

    [Fact]
    public async Task Line_breaks_when_the_report_is_on_its_way()
    {
        var tablet = await shop.NextWheelAsync(WorkSeed.WA);
        shop.Line.Expect(Fate.LoseRequest);

        await tablet.PullAsync("50.5");

        await tablet.StandsAtAsync(3);
        Assert.Equal([(1, 50.5m)], tablet.Pulls);
    }

    [Fact]
    public async Task Line_breaks_after_the_commit_and_before_the_answer()
    {
        var tablet = await shop.NextWheelAsync(WorkSeed.WA);
        shop.Line.Expect(Fate.LoseAnswer);

        await tablet.PullAsync("50.5");
        await shop.Line.Answered;

        await tablet.StandsAtAsync(3);
        await tablet.SaysAsync("Saved: wheel nut");
        Assert.Equal([(1, 50.5m)], tablet.Pulls);
    }

    [Fact]
    public async Task Line_goes_silent_before_the_report_arrives()
    {
        var tablet = await shop.NextWheelAsync(WorkSeed.WA);
        shop.Line.Silence();

        await tablet.PullAsync("50.5");
        await tablet.SaysAsync("No answer from the server");
        Assert.Empty(tablet.Pulls);
        shop.Line.Restore();

        await tablet.StandsAtAsync(3);
        Assert.Equal([(1, 50.5m)], tablet.Pulls);
    }

    [Fact]
    public async Task Answer_never_comes_though_the_server_did_it()
    {
        var tablet = await shop.NextWheelAsync(WorkSeed.WA);
        shop.Line.Expect(Fate.HoldAnswer);

        await tablet.PullAsync("50.5");
        await shop.Line.Answered;

        // The tablet gives the silent request up and sends it again under its id on another connection.
        await tablet.SaysAsync("Saved: wheel nut");
        await tablet.StandsAtAsync(3);
        Assert.Equal([(1, 50.5m)], tablet.Pulls);
    }

    [Fact]
    public async Task Server_is_killed_after_the_commit_and_before_the_answer()
    {
        var tablet = await shop.NextWheelAsync(WorkSeed.WA);
        shop.Line.Expect(Fate.HoldAnswer);
        await tablet.PullAsync("50.5");
        await shop.Line.Answered;

        await shop.Server.KillAsync();
        shop.Line.Cut();
        await tablet.SaysAsync("Not saved");
        await shop.Server.StartAsync();
        shop.Line.Restore();

        await tablet.StandsAtAsync(3);
        Assert.Equal([(1, 50.5m)], tablet.Pulls);
        await tablet.SettledAsync();
    }

    [Fact]
    public async Task Server_is_killed_before_the_report_is_sent()
    {
        var tablet = await shop.NextWheelAsync(WorkSeed.WA);
        await tablet.TypeAsync("50.5");
        await shop.Server.KillAsync();

        await tablet.Page.Keyboard.PressAsync("Enter");
        await tablet.SaysAsync("Not saved");
        await shop.Server.StartAsync();

        await tablet.StandsAtAsync(3);
        Assert.Equal([(1, 50.5m)], tablet.Pulls);
    }

    [Fact]
    public async Task Record_that_was_acknowledged_is_there_after_a_kill()
    {
        var tablet = await shop.NextWheelAsync(WorkSeed.WA);
        await tablet.PullAsync("50.5");
        await tablet.SaysAsync("Saved: wheel nut");

        await shop.Server.KillAsync();
        Assert.Equal([(1, 50.5m)], tablet.Pulls);
        await shop.Server.StartAsync();

        await tablet.Page.ReloadAsync();
        await tablet.StandsAtAsync(3);
    }

    [Fact]
    public async Task Digits_without_enter_are_there_after_a_reload_and_said_to_be_unsaved()
    {
        var tablet = await shop.NextWheelAsync(WorkSeed.WA);
        await tablet.TypeAsync("49,5");

        await tablet.Page.ReloadAsync();

        await Assertions.Expect(tablet.Field).ToHaveValueAsync("49,5");
        await tablet.SaysAsync("Not saved yet: 49,5");
        Assert.Empty(tablet.Pulls);
        await tablet.Page.Keyboard.PressAsync("Enter");
        await tablet.StandsAtAsync(3);
        Assert.Equal([(1, 49.5m)], tablet.Pulls);
    }

    [Fact]
    public async Task Page_is_loaded_again_while_the_answer_is_on_its_way()
    {
        var tablet = await shop.NextWheelAsync(WorkSeed.WA);
        shop.Line.Expect(Fate.HoldAnswer);
        await tablet.PullAsync("50.5");
        await shop.Line.Answered;

        await tablet.Page.ReloadAsync();

        await tablet.StandsAtAsync(3);
        await Assertions.Expect(tablet.Page.Locator("[data-key='0']")).ToBeEnabledAsync(new() { Timeout = 60_000 });
        await tablet.SettledAsync();
        Assert.Equal([(1, 50.5m)], tablet.Pulls);
    }

    [Fact]
    public async Task Keys_are_dead_until_the_answer_and_a_double_tap_is_one_pull()
    {
        var tablet = await shop.NextWheelAsync(WorkSeed.W5);
        await tablet.PullAsync("50");
        var clicked = tablet.Page.Locator("[data-keypad-click]");
        await Assertions.Expect(clicked).ToHaveTextAsync("CLICKED 50 N·m");
        shop.Line.Expect(Fate.HoldAllAnswers);

        await clicked.DblClickAsync();
        await shop.Line.Answered;
        await tablet.SaysAsync("Not saved");
        await Assertions.Expect(clicked).ToBeDisabledAsync();
        shop.Line.LetAnswersPass();

        await tablet.StandsAtAsync(3);
        Assert.Equal([(1, 50m)], tablet.Pulls);
        await clicked.ClickAsync();
        await tablet.StandsAtAsync(5);
        Assert.Equal([(1, 50m), (3, 50m)], tablet.Pulls);
    }

    [Fact]
    public async Task Nothing_is_signed_without_the_line_and_the_banner_leaves_the_keypad_free()
    {
        var tablet = await shop.NextWheelAsync(WorkSeed.WA);
        shop.Line.Cut();

        await Assertions.Expect(tablet.Page.Locator(".link-bar.is-shown")).ToBeVisibleAsync(new() { Timeout = 60_000 });
        await Assertions.Expect(tablet.Page.Locator(".sign-button, .witness-panel")).ToHaveCountAsync(0);
        await tablet.Page.Locator("[data-key='5']").ClickAsync();
        await tablet.Page.Locator("[data-key='0']").ClickAsync();
        await Assertions.Expect(tablet.Field).ToHaveValueAsync("50");
        await tablet.Page.Locator("[data-key=enter]").ClickAsync();
        await tablet.SaysAsync("Not saved");
        shop.Line.Restore();

        await tablet.StandsAtAsync(3);
        Assert.Equal([(1, 50m)], tablet.Pulls);
    }

    [Fact]
    public async Task Report_of_somebody_who_was_locked_out_waits_for_that_person_and_is_held_as_one_of_his_earlier_session()
    {
        var tablet = await shop.NextWheelAsync(WorkSeed.WA);
        await tablet.Context.ClearCookiesAsync(new() { Name = "shop.person" });
        await tablet.PullAsync("50.5");
        await tablet.SaysAsync("Nobody is signed in at this tablet");

        var other = await ShopBrowser.SignInAsync(tablet.Context, DemoPeople.Newcomer, tablet.Path);
        await Assertions.Expect(other.Locator("[data-cell-status]")).ToContainTextAsync("Whoever did it signs in here", new() { Timeout = 60_000 });
        Assert.Empty(tablet.Pulls);
        await other.CloseAsync();

        await tablet.Page.CloseAsync();
        var back = await ShopBrowser.SignInAsync(tablet.Context, DemoPeople.Chassis, tablet.Path);
        await Assertions.Expect(back.Locator("[data-cell-status]")).ToContainTextAsync("before its person last signed in", new() { Timeout = 60_000 });
        Assert.Equal([(1, 50.5m)], tablet.Pulls);
    }
}
