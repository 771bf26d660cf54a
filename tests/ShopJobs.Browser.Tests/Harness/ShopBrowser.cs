using Microsoft.Playwright;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests.Harness;

/// <summary>A real Chromium. Each tablet is a context of its own.</summary>
public sealed class ShopBrowser : IAsyncDisposable
{
    private static readonly string[] Flags =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
    ];

    private readonly IPlaywright playwright;
    private readonly IBrowser browser;

    private ShopBrowser(IPlaywright playwright, IBrowser browser)
    {
        this.playwright = playwright;
        this.browser = browser;
    }

    /// <summary>Starts the system's Chromium; nothing is downloaded.</summary>
    public static async Task<ShopBrowser> StartAsync()
    {
        var playwright = await Playwright.CreateAsync();
        return new ShopBrowser(playwright, await playwright.Chromium.LaunchAsync(new() { ExecutablePath = "/usr/bin/chromium", Args = Flags }));
    }

    /// <summary>A browser that the shop does not know yet.</summary>
    public async Task<IBrowserContext> ContextAsync(Uri address, BrowserNewContextOptions options)
    {
        options.BaseURL = address.ToString();
        var context = await browser.NewContextAsync(options);
        context.SetDefaultTimeout(60_000);
        return context;
    }

    /// <summary>The enrolled tablet of <see cref="DemoFolder"/>, 1024 by 768 with touch unless told otherwise.</summary>
    public async Task<IBrowserContext> TabletAsync(Uri address, BrowserNewContextOptions? options = null)
    {
        var tablet = await ContextAsync(address, options ?? new() { ViewportSize = new() { Width = 1024, Height = 768 }, HasTouch = true });
        await tablet.AddCookiesAsync([new() { Name = "shop.tablet", Value = WorkSeed.TabletToken, Url = address.ToString(), HttpOnly = true, SameSite = SameSiteAttribute.Strict }]);
        return tablet;
    }

    /// <summary>Signs a person of the demo shop in and goes to a page.</summary>
    /// <param name="lands">Where the person is sent first; null where that is the page.</param>
    public static async Task<IPage> SignInAsync(IBrowserContext tablet, DemoPeople.DemoPerson person, string path, string? lands = null)
    {
        var page = await tablet.NewPageAsync();
        await page.GotoAsync($"/sign-in?returnUrl={Uri.EscapeDataString(path)}");
        await page.Locator($"input[type=radio][value='{person.Name}']").CheckAsync(new() { Force = true });
        await page.Locator("#pin").FillAsync(person.Pin);
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in" }).ClickAsync();
        await page.WaitForURLAsync(url => new Uri(url).AbsolutePath == (lands ?? path.Split('?')[0]));
        await page.Locator("main.page:not(.is-asleep)").WaitForAsync();
        return page;
    }

    public async ValueTask DisposeAsync()
    {
        await browser.DisposeAsync();
        playwright.Dispose();
    }
}
