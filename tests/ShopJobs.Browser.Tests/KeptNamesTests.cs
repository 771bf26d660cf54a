using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>Renaming, putting away and bringing back, and the pages without a circuit, in a real Chromium.</summary>
[Trait("Takes", "long")]
public sealed class KeptNamesTests : IAsyncLifetime
{
    private readonly ClockedShop shop = ClockedShop.Open();
    private ShopBrowser chromium = default!;
    private IBrowserContext lead = default!;

    public async Task InitializeAsync()
    {
        chromium = await ShopBrowser.StartAsync();
        lead = await chromium.ContextAsync(shop.Address, new() { ViewportSize = new() { Width = 1024, Height = 768 } });
    }

    public async Task DisposeAsync()
    {
        await chromium.DisposeAsync();
        await shop.DisposeAsync();
    }

    [Fact]
    public async Task Names_are_kept_apart_things_are_put_away_and_come_back()
    {
        var start = await lead.NewPageAsync();
        await start.GotoAsync("/");
        await start.EvaluateAsync("document.addEventListener('submit', event => { sessionStorage.told = String(!event.target.querySelector('[role=status]').hidden); })");
        await start.GetByRole(AriaRole.Button, new() { Name = "Start the demo shop" }).ClickAsync();
        await start.WaitForURLAsync(url => !url.Contains("/start", StringComparison.Ordinal), new() { Timeout = 240_000 });
        Assert.Equal("true", await start.EvaluateAsync<string>("sessionStorage.told"));
        await start.CloseAsync();
        var page = await ShopBrowser.SignInAsync(lead, DemoPeople.Lead, "/");

        await page.OpenAsync("/people");
        await page.GetByRole(AriaRole.Link, new() { Name = "Edit Sefa" }).ClickAsync();
        await page.Locator("#new-name").FillAsync("Se\u200Bfa");
        await Press(page, "Rename");
        await page.Locator("#new-name-wrong").GetByText("nobody sees").WaitForAsync();
        await page.Locator("#new-name").FillAsync("J\u043Ern");
        await Press(page, "Rename");
        await page.GetByText("looks like “Jorn”").WaitForAsync();
        await page.Locator("#new-name").FillAsync("Sefa Quist");
        await Press(page, "Rename");
        await page.GetByText("Called before: Sefa until").WaitForAsync();
        await page.IsAccessibleEverywhereAsync("person-renamed");

        await page.OpenAsync("/tools");
        await page.Locator("tbody a").First.ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Withdraw it: the calibration of") }).First.ClickAsync();
        await page.Locator("#reason").FillAsync("Of another wrench");
        await Press(page, "WITHDRAW THE CALIBRATION");
        await page.Locator("#sign-pin:focus").WaitForAsync();
        await page.Keyboard.TypeAsync(DemoPeople.Lead.Pin);
        await Press(page, "WITHDRAW: entered by mistake");
        await page.GetByText("The calibration is withdrawn.").WaitForAsync();
        await Press(page, "Out of use for good");
        await page.Locator("#reason").FillAsync("Worn out");
        await page.IsAccessibleEverywhereAsync("tool-for-good");
        await Press(page, "OUT OF USE FOR GOOD");
        await page.GetByRole(AriaRole.Button, new() { Name = "Bring it back" }).WaitForAsync();
        await page.IsAccessibleEverywhereAsync("tool-retired");
        await page.OpenAsync("/tools");
        await page.GetByText("Show those out of use for good too").ClickAsync();
        await page.IsAccessibleEverywhereAsync("tools-retired");

        var car = await shop.CarAsync("Blue");
        await page.OpenAsync($"/cars/{car.Value}/change");
        await Press(page, "Not coming back");
        await Press(page, "Put Blue away now");
        await page.Locator("#away-wrong").GetByText("Blue is here. Send it away first").WaitForAsync();
        await page.RefusalsAreSeenAsync("a car that is here");
        await page.IsAccessibleEverywhereAsync("car-away");

        await page.OpenAsync("/procedures");
        await page.Locator("tbody a").First.ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Retire ") }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new(" now$") }).ClickAsync();
        await page.GetByText("It goes on no new car; running jobs keep it.").WaitForAsync();
        await page.IsAccessibleAsync("procedure-retired");

        foreach (var (address, name) in new[] { ("/procedures/upload", "import"), ("/nothing-here", "nothing-here") })
        {
            await page.GotoAsync(address);
            await page.GetByRole(AriaRole.Navigation).GetByRole(AriaRole.Link, new() { Name = "Not finished" }).WaitForAsync();
            await page.IsAccessibleEverywhereAsync(name);
            Assert.False(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth > document.documentElement.clientWidth"));
        }

        Assert.Equal([], shop.VerifyAll());
    }

    private static Task Press(IPage page, string button) => page.GetByRole(AriaRole.Button, new() { Name = button, Exact = true }).First.ClickAsync();
}
