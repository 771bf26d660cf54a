using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace ShopJobs.Browser.Tests.Harness;

/// <summary>The demo shop on a clock of its own, and one tablet in it. What its pages show at the end is kept as pictures.</summary>
public abstract partial class OneTabletTests : IAsyncLifetime
{
    /// <summary>The browser, for whoever looks from elsewhere: a customer on a phone.</summary>
    protected ShopBrowser Chromium { get; private set; } = default!;

    /// <summary>The shop that runs.</summary>
    protected ClockedShop Shop { get; } = ClockedShop.Open();

    /// <summary>The tablet, enrolled and with nobody signed in.</summary>
    protected IBrowserContext Tablet { get; private set; } = default!;

    public async Task InitializeAsync()
    {
        Chromium = await ShopBrowser.StartAsync();
        Tablet = await Chromium.ContextAsync(Shop.Address, new() { ViewportSize = new() { Width = 1024, Height = 768 }, HasTouch = true });
        await Tablet.OpenDemoShopAsync();
        await BeginAsync();
    }

    public async Task DisposeAsync()
    {
        foreach (var (page, number) in Tablet.Pages.Select((page, number) => (page, number)))
        {
            await page.KeepAsync($"{KebabName()}-at-the-end-{number}");
        }

        await Chromium.DisposeAsync();
        await Shop.DisposeAsync();
    }

    /// <summary>What every test of the class begins with.</summary>
    protected virtual Task BeginAsync() => Task.CompletedTask;

    private string KebabName() => Capital().Replace(GetType().Name.Replace("Tests", "", StringComparison.Ordinal), "-$0").TrimStart('-').ToLowerInvariant();

    [GeneratedRegex("[A-Z]")]
    private static partial Regex Capital();
}
