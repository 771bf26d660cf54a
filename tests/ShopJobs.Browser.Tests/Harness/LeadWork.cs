using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Browser.Tests.Harness;

/// <summary>What a lead does on the screens before the work begins.</summary>
internal static class LeadWork
{
    /// <summary>Opens the demo shop in a browser that nobody used yet.</summary>
    public static async Task OpenDemoShopAsync(this IBrowserContext tablet)
    {
        var start = await tablet.NewPageAsync();
        await start.GotoAsync("/");
        await start.GetByRole(AriaRole.Button, new() { Name = "Start the demo shop" }).ClickAsync();
        await start.WaitForURLAsync(url => !url.Contains("/start", StringComparison.Ordinal), new() { Timeout = 240_000 });
        await start.CloseAsync();
    }

    /// <summary>Ticks the closing check of a release: <c>Road</c>, <c>RoadTest</c> or <c>Track</c>.</summary>
    public static async Task TickClosingCheckAsync(this IPage page, string kind)
    {
        foreach (var item in ClosingCheck.All)
        {
            await page.Locator($"#closing-{kind}-{item}").CheckAsync();
        }
    }

    /// <summary>Puts a procedure on a car at these places and no others.</summary>
    public static async Task PutOnAsync(this IPage page, CarId car, string code, string askedFor, params string[] places)
    {
        await page.OpenAsync($"/cars/{car.Value}");
        await page.GetByRole(AriaRole.Button, new() { Name = "Start a job" }).ClickAsync();
        await page.Locator(".start-job .choice", new() { HasTextRegex = new Regex($"^\\s*{code}\\b") }).First.ClickAsync();
        var choices = page.Locator(".start-job fieldset").Nth(1).GetByRole(AriaRole.Button);
        await choices.First.WaitForAsync();
        foreach (var choice in await choices.AllAsync())
        {
            var wanted = Array.IndexOf(places, (await choice.InnerTextAsync()).Trim()) >= 0 ? "true" : "false";
            if (await choice.GetAttributeAsync("aria-pressed") != wanted)
            {
                await choice.ClickAsync();
            }
        }

        await page.Locator("#asked-for").FillAsync(askedFor);
        await page.GetByRole(AriaRole.Button, new() { Name = $"Start {code}" }).ClickAsync();
        await page.Locator(".job-sheet", new() { HasText = askedFor }).WaitForAsync();
    }
}
