using System.Globalization;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>
/// Without a line the pulls of a stage go on in its order, each kept with its cycle; on return the server judges them in that order and
/// says what does not hold. A second page of the same tablet stays alive.
/// </summary>
public sealed class WithoutLineTests(LostConnectionShop shop) : IClassFixture<LostConnectionShop>
{
    private static readonly (int Nut, string Digits)[] Star = [(1, "50.1"), (3, "50.3"), (5, "50.5"), (2, "50.2"), (4, "50.4")];

    [Fact]
    public async Task Five_pulls_in_their_order_of_which_one_does_not_hold_on_return()
    {
        var tablet = await shop.NextWheelAsync(WorkSeed.WA);
        shop.Line.Cut();
        await PullAllAsync(tablet);
        await tablet.Page.KeepAsync("without-line-all-kept");
        Assert.Empty(tablet.Pulls);

        // Meanwhile the lead has stopped the last one from elsewhere.
        await shop.Folder.Work.DoAsync(tablet.Car, DemoPeople.Lead.Name, new HoldPositions([tablet.Nuts[3]], ContentDigest.Of([], [])));
        shop.Line.Restore();
        await tablet.SettledAsync();

        await tablet.SaysAsync(HoldWords.Of(HoldReason.PositionHeld));
        await tablet.SaysAsync($"Saved: wheel nut {tablet.Nuts[0].Place} 1");
        await tablet.SaysAsync($"Saved: wheel nut {tablet.Nuts[0].Place} 2");
        Assert.Equal(Star.Select(one => (one.Nut, decimal.Parse(one.Digits, CultureInfo.InvariantCulture))), tablet.Pulls);
        Assert.All(tablet.Facts, fact => Assert.Equal(1, fact.Cycle));
        Assert.All(tablet.Facts.SkipLast(1), fact => Assert.Empty(fact.Problems));
        Assert.Contains(HoldReason.PositionHeld, tablet.Facts[^1].Problems);
        await tablet.Page.KeepAsync("without-line-back");
    }

    [Fact]
    public async Task A_pull_of_a_cycle_that_is_over_on_return_says_so()
    {
        var tablet = await shop.NextWheelAsync(WorkSeed.WA);
        shop.Line.Cut();
        await PullAllAsync(tablet);

        await shop.Folder.Work.DoAsync(tablet.Car, DemoPeople.Lead.Name, new OpenPositions([tablet.Nuts[3]], null, null));
        shop.Line.Restore();
        await tablet.SettledAsync();

        await tablet.SaysAsync(HoldWords.Of(HoldReason.CellMoved));
        Assert.Equal(Star.Select(one => one.Nut), tablet.Pulls.Select(pull => pull.Nut));
        Assert.Single(tablet.Facts.Select(fact => fact.Cycle).Distinct());
        Assert.Contains(HoldReason.CellMoved, tablet.Facts[^1].Problems);
    }

    [Fact]
    public async Task After_a_pull_that_will_be_held_the_next_one_waits_for_the_line()
    {
        var tablet = await shop.NextWheelAsync(WorkSeed.WA);
        shop.Line.Cut();
        await tablet.PullAsync("50.5");
        await tablet.SaysAsync($"Go on with wheel nut {tablet.Nuts[0].Place} 3.");

        // Far from 50 is asked for twice.
        await tablet.PullAsync("75");
        await tablet.SaysAsync("75");
        await tablet.PullAsync("75");

        await tablet.SaysAsync("Wait for the line before the next one.");
        await Assertions.Expect(tablet.Page.Locator("[data-key='0']")).ToBeDisabledAsync();
        shop.Line.Restore();
        await tablet.SettledAsync();
        Assert.Equal([(1, 50.5m), (3, 75m)], tablet.Pulls);
    }

    [Fact]
    public async Task Two_pages_of_one_tablet_at_one_step_are_both_alive()
    {
        var tablet = await shop.NextWheelAsync(WorkSeed.WA);
        var other = await tablet.AnotherPageAsync();
        await other.StandsAtAsync(1);

        await tablet.PullAsync("50.5");
        await tablet.StandsAtAsync(3);
        await other.StandsAtAsync(3);
        await other.PullAsync("50.3");
        await other.StandsAtAsync(5);
        await tablet.StandsAtAsync(5);
        await tablet.PullAsync("50.1");

        await other.StandsAtAsync(2);
        Assert.Equal([(1, 50.5m), (3, 50.3m), (5, 50.1m)], tablet.Pulls);
        Assert.All(tablet.Facts, fact => Assert.Empty(fact.Problems));
    }

    [Fact]
    public async Task What_a_page_kept_that_is_closed_before_the_line_is_back_is_sent_by_the_other()
    {
        var tablet = await shop.NextWheelAsync(WorkSeed.WA);
        var other = await tablet.AnotherPageAsync();
        await other.StandsAtAsync(1);
        shop.Line.Cut();
        await tablet.PullAsync("50.5");
        await tablet.SaysAsync("Not saved: wheel nut");
        await tablet.Page.CloseAsync();
        shop.Line.Restore();

        await other.StandsAtAsync(3);
        Assert.Equal([(1, 50.5m)], other.Pulls);
        await other.PullAsync("50.3");
        await other.StandsAtAsync(5);
        Assert.Equal([(1, 50.5m), (3, 50.3m)], other.Pulls);
    }

    [Fact]
    public async Task The_keypad_keeps_every_digit_on_a_slow_line()
    {
        var tablet = await shop.NextWheelAsync(WorkSeed.WA);
        var hand = new SlowTyping(tablet.Page, shop.Line);

        await hand.TypeAsync("[data-keypad]");
        shop.Line.OneWay = TimeSpan.Zero;

        Assert.Equal(["cell-value"], hand.Typed);
        Assert.Empty(hand.Lost);
    }

    // As the star goes, with nobody to ask; after the fifth there is nothing more.
    private static async Task PullAllAsync(LostConnectionTablet tablet)
    {
        for (var i = 0; i < Star.Length; i++)
        {
            await tablet.PullAsync(Star[i].Digits);
            await tablet.SaysAsync(i + 1 < Star.Length ? $"Go on with wheel nut {tablet.Nuts[0].Place} {Star[i + 1].Nut}." : "That was the last one of this stage.");
            Assert.Equal(i + 1, (await tablet.UnsentAsync()).Length);
        }

        await Assertions.Expect(tablet.Page.Locator("[data-key='0']")).ToBeDisabledAsync();
    }
}
