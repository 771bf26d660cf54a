using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace ShopJobs.Browser.Tests.Harness;

/// <summary>Presses buttons whose forms are empty or hold nonsense, and looks whether what is said can be seen.</summary>
internal static class Refusals
{
    // Messages that nobody sees, or that describe no field or group of fields: each with its words.
    private const string Unseen = """
        () => {
          const described = new Set([...document.querySelectorAll('[aria-describedby]')].flatMap(field => field.getAttribute('aria-describedby').split(/\s+/)));
          return [...document.querySelectorAll('.form-wrong, .door-refusal[role=alert]:not([hidden])')].filter(message => message.textContent.trim() !== '').flatMap(message => {
            const place = message.closest('[id]');
            const seen = message.checkVisibility({ visibilityProperty: true, opacityProperty: true }) && message.getBoundingClientRect().height > 0;
            return [
              ...(seen ? [] : [`hidden: ${message.textContent.trim()}`]),
              ...(place && described.has(place.id) ? [] : [`describes no field: ${message.textContent.trim()}`]),
            ];
          });
        }
        """;

    /// <summary>Fills every field in sight where there is something to type, presses the button, and looks at what is said.</summary>
    public static async Task PressAsync(this IPage page, string button, string? typed, bool asks)
    {
        if (typed is not null)
        {
            foreach (var field in await page.Locator("main input:not([type=checkbox]):not([type=radio]):not([type=date]):not([type=hidden]):not([type=file]):visible, main textarea:visible").AllAsync())
            {
                await field.FillAsync(typed);
            }
        }

        var pressed = page.Locator("main button:not([disabled]):visible", new() { HasText = button }).First;
        if (await pressed.CountAsync() == 0)
        {
            await page.KeepAsync("refusals-no-button");
        }

        await pressed.ClickAsync(new() { Timeout = 15_000 });
        if (asks)
        {
            try
            {
                await page.Locator(".form-wrong:visible, .door-refusal[role=alert]:visible", new() { HasTextRegex = new Regex(@"\S") }).First.WaitForAsync(new() { Timeout = 30_000 });
            }
            catch (TimeoutException)
            {
                await page.KeepAsync("refusals-nothing-said");
                Assert.Fail($"{page.Url}, {button}, typed “{typed}”: nothing is said.");
            }
        }

        await page.RefusalsAreSeenAsync($"{button}, typed “{typed}”");
    }

    /// <summary>Whatever is said on the page now can be seen, and describes a field or a group of fields.</summary>
    public static async Task RefusalsAreSeenAsync(this IPage page, string after)
    {
        var unseen = await page.EvaluateAsync<string[]>(Unseen);
        Assert.True(unseen.Length == 0, $"{page.Url}, {after}: {string.Join("; ", unseen)}");
    }
}
