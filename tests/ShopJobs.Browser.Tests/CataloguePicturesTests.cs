using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>
/// A picture of every page and dialog in the contributors' catalogue, on a phone, a tablet and a desk, light and dark, kept in
/// <c>test-output/catalogue</c>. Each page draws itself without breaking and is no wider than the screen.
/// </summary>
[Trait("Takes", "long")]
public sealed class CataloguePicturesTests : IAsyncLifetime
{
    private static readonly (string Name, int Width, int Height)[] Sizes = [("phone", 390, 844), ("tablet", 1024, 768), ("desk", 1440, 900)];
    private static readonly string Kept = Directory.CreateDirectory(Path.Combine(Pictures.Folder, "catalogue")).FullName;

    private readonly ClockedShop shop = ClockedShop.Open("Development");
    private ShopBrowser chromium = default!;

    public async Task InitializeAsync() => chromium = await ShopBrowser.StartAsync();

    public async Task DisposeAsync()
    {
        await chromium.DisposeAsync();
        await shop.DisposeAsync();
    }

    [Fact]
    public async Task Every_page_in_every_size_and_look()
    {
        var tablet = await chromium.ContextAsync(shop.Address, new() { ViewportSize = new() { Width = 1024, Height = 768 }, HasTouch = true });
        await tablet.OpenDemoShopAsync();
        var page = await ShopBrowser.SignInAsync(tablet, DemoPeople.Lead, "/catalogue");
        var entries = new List<(string Name, string Address)> { ("catalogue", "/catalogue") };
        foreach (var dialog in await page.Locator("[data-catalogue-dialog]").AllAsync())
        {
            var name = await dialog.GetAttributeAsync("data-catalogue-dialog");
            entries.Add(($"dialog-{name}", $"/catalogue?dialog={name}"));
        }

        foreach (var link in await page.Locator("a[data-catalogue]").AllAsync())
        {
            var address = await link.GetAttributeAsync("href") ?? throw new InvalidOperationException("A link without an address.");
            entries.Add((Kebab($"{await link.InnerTextAsync()}"), address));
        }

        var faults = new List<string>();
        page.PageError += (_, error) => faults.Add($"{page.Url}: {error}");
        foreach (var look in new[] { ColorScheme.Light, ColorScheme.Dark })
        {
            await page.EmulateMediaAsync(new() { ColorScheme = look });
            foreach (var (name, address) in entries)
            {
                faults.AddRange(await TakeAsync(page, name, address, look));
            }
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    private static async Task<List<string>> TakeAsync(IPage page, string name, string address, ColorScheme look)
    {
        var wide = new List<string>();
        await page.GotoAsync(address);
        await page.Locator("main:not(.is-asleep) :is(h1, h2)").First.WaitForAsync();
        if (name.StartsWith("dialog-", StringComparison.Ordinal))
        {
            await page.Locator(".sign-dialog").WaitForAsync();
        }

        foreach (var (size, width, height) in Sizes)
        {
            await page.SetViewportSizeAsync(width, height);
            await page.ScreenshotAsync(new() { Path = Path.Combine(Kept, $"{name}-{size}{(look == ColorScheme.Dark ? "-dark" : "")}.png"), FullPage = true, Animations = ScreenshotAnimations.Disabled });
            var wider = await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
            if (wider > 0)
            {
                wide.Add($"{address} is {wider} px wider than a {size}.");
            }
        }

        return wide;
    }

    private static string Kebab(string words) =>
        string.Join('-', new string([.. words.Select(letter => char.IsAsciiLetterOrDigit(letter) ? char.ToLowerInvariant(letter) : ' ')]).Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
