using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests.Harness;

/// <summary>Somebody who works with the keyboard alone: Tab, Enter, the space bar, arrows and digits. Nothing is pressed that has not the focus.</summary>
internal sealed class KeyboardHands(IPage page)
{
    private const int MostTabs = 150;

    /// <summary>Goes on with Tab until something has the focus; how many times it took.</summary>
    public async Task<int> ReachAsync(ILocator target)
    {
        await target.First.WaitForAsync();
        for (var tabs = 0; tabs <= MostTabs; tabs++)
        {
            if (await target.First.EvaluateAsync<bool>("element => element === document.activeElement"))
            {
                return tabs;
            }

            await page.Keyboard.PressAsync("Tab");
        }

        throw new InvalidOperationException($"{MostTabs} times Tab do not reach {target} on {page.Url}.");
    }

    /// <summary>Reaches a button or a link and presses it.</summary>
    public async Task<int> PressAsync(ILocator target)
    {
        var tabs = await ReachAsync(target);
        await page.Keyboard.PressAsync("Enter");
        return tabs;
    }

    /// <summary>Presses something that records, and waits until the page shows it.</summary>
    public async Task<int> RecordAsync(ILocator target)
    {
        var before = await page.Locator("[data-step]").GetAttributeAsync("data-number");
        var tabs = await PressAsync(target);
        await page.Locator($"[data-step]:not([data-number='{before}'])").WaitForAsync();
        return tabs;
    }

    /// <summary>Presses every such button until none is left.</summary>
    public async Task RecordAllAsync(ILocator target)
    {
        while (await target.CountAsync() > 0)
        {
            await RecordAsync(target);
        }
    }

    /// <summary>Ticks what is not ticked yet.</summary>
    public async Task TickAllAsync()
    {
        foreach (var tick in await page.Locator(".tick input").AllAsync())
        {
            if (!await tick.IsCheckedAsync())
            {
                await ReachAsync(tick);
                await page.Keyboard.PressAsync("Space");
            }
        }
    }

    /// <summary>Types into a field and leaves it.</summary>
    public async Task TypeAsync(ILocator field, string text)
    {
        await ReachAsync(field);
        await page.Keyboard.TypeAsync(text, new() { Delay = 20 });
        await page.Keyboard.PressAsync("Tab");
    }

    /// <summary>Chooses one's name among the tiles with the arrows, types the PIN and confirms with Enter.</summary>
    public async Task IdentifyAsync(DemoPeople.DemoPerson person, string group, string pin)
    {
        var mine = page.Locator(".person-tile", new() { HasTextRegex = new Regex($"^\\s*{person.Name}\\s*$") }).Locator($"input[name='{group}']");
        if (!await mine.IsCheckedAsync())
        {
            await ReachOneOfAsync($"input[name='{group}']");
            for (var turns = 0; !await mine.IsCheckedAsync(); turns++)
            {
                Assert.True(turns < 10, $"The arrows do not reach {person.Name}.");
                await page.Keyboard.PressAsync(turns == 0 ? "Space" : "ArrowDown");
            }
        }

        await ReachAsync(page.Locator(pin));
        await page.Keyboard.TypeAsync(person.Pin);
        await page.Keyboard.PressAsync("Enter");
    }

    /// <summary>Opens the signature, signs it, and waits until it is closed.</summary>
    public async Task SignAsync(ILocator button, DemoPeople.DemoPerson person)
    {
        await PressAsync(button);
        await page.Locator(".sign-dialog #sign-pin").WaitForAsync();
        await IdentifyAsync(person, "signer", "#sign-pin");
        await page.Locator(".sign-dialog").WaitForAsync(new() { State = WaitForSelectorState.Detached });
    }

    /// <summary>What has been said aloud since it was asked last.</summary>
    public async Task<string> HeardAsync() => await page.Locator("#said-aloud").InnerTextAsync();

    private async Task ReachOneOfAsync(string selector)
    {
        for (var tabs = 0; tabs <= MostTabs; tabs++)
        {
            if (await page.EvaluateAsync<bool>("selector => document.activeElement?.matches(selector) ?? false", selector))
            {
                return;
            }

            await page.Keyboard.PressAsync("Tab");
        }

        throw new InvalidOperationException($"{MostTabs} times Tab do not reach {selector} on {page.Url}.");
    }
}
