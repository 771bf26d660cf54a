using System.Globalization;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>What the lead enters before any work: a customer, a car, and a tool with its calibration points, in a real Chromium.</summary>
public sealed class LeadEntersTests : IAsyncLifetime
{
    private readonly ClockedShop shop = ClockedShop.Open();
    private ShopBrowser chromium = default!;
    private IBrowserContext lead = default!;

    public async Task InitializeAsync()
    {
        chromium = await ShopBrowser.StartAsync();
        lead = await chromium.ContextAsync(shop.Address, new() { ViewportSize = new() { Width = 1440, Height = 900 } });
    }

    public async Task DisposeAsync()
    {
        foreach (var (page, number) in lead.Pages.Select((page, number) => (page, number)))
        {
            await page.KeepAsync($"lead-enters-at-the-end-{number}");
        }

        await chromium.DisposeAsync();
        await shop.DisposeAsync();
    }

    [Fact]
    public async Task Customer_car_and_calibrated_tool_are_entered_and_an_empty_form_says_what_is_missing()
    {
        var start = await lead.NewPageAsync();
        await start.GotoAsync("/");
        await start.GetByRole(AriaRole.Button, new() { Name = "Start the demo shop" }).ClickAsync();
        await start.WaitForURLAsync(url => !url.Contains("/start", StringComparison.Ordinal), new() { Timeout = 240_000 });
        await start.CloseAsync();
        var page = await ShopBrowser.SignInAsync(lead, DemoPeople.Lead, "/");

        await page.OpenAsync("/customers/new");
        await FillAsync(page, ("name", "Oda Kerring"), ("contact", "01632 960117"));
        await SaveAsync(page, "Save the customer", "/cars");

        await page.OpenAsync("/cars/new");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save the car" }).ClickAsync();
        await page.Locator("#name-wrong").GetByText(new System.Text.RegularExpressions.Regex(".")).First.WaitForAsync();
        await page.IsAccessibleAsync("car-refused");
        await FillAsync(page, ("name", "Amber"), ("model", "Hollin 7"), ("mark", "DEMO 7"), ("colour", "yellow"));
        await page.Locator("#customer").SelectOptionAsync(new SelectOptionValue { Label = "Oda Kerring" });
        await page.GetByRole(AriaRole.Button, new() { Name = "Save the car" }).ClickAsync();
        await page.WaitForURLAsync(url => url.EndsWith("/visit", StringComparison.Ordinal));
        await page.GetByText("Has not come in yet").WaitForAsync();
        await page.OpenAsync("/cars");
        await page.GetByText("Amber").First.WaitForAsync();

        await page.OpenAsync("/tools/new");
        await FillAsync(page, ("name", "W11"), ("serial", "11-204"), ("lowest", "20"), ("top", "120"), ("graduation", "1"));
        await page.GetByRole(AriaRole.Button, new() { Name = "Save" }).ClickAsync();
        await page.WaitForURLAsync(url => System.Text.RegularExpressions.Regex.IsMatch(url, "/tools/[0-9a-f-]{36}$"));
        var tool = new Uri(page.Url).AbsolutePath;

        await page.OpenAsync($"{tool}/calibrate");
        var today = shop.Time.GetUtcNow().Date;
        await FillAsync(
            page,
            ("date", Day(today)), ("due", Day(today.AddYears(1))), ("certificate", "Rig sheet 88"),
            ("set-0", "24"), ("left-0", "24.2"), ("set-1", "72"), ("left-1", "71.5"), ("set-2", "120"), ("left-2", "119"));
        await page.IsAccessibleAsync("calibration");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save" }).SignWithAsync(page, DemoPeople.Lead, "SIGN");
        await page.WaitForURLAsync(url => new Uri(url).AbsolutePath == tool);
        await page.GetByText("Rig sheet 88").First.WaitForAsync();
        await page.IsAccessibleAsync("tool");
        Assert.NotEqual(default, await shop.CarAsync("Amber"));
        Assert.Equal([], shop.VerifyAll());
    }

    private static async Task FillAsync(IPage page, params (string Id, string Value)[] fields)
    {
        foreach (var (id, value) in fields)
        {
            await page.Locator($"#{id}").FillAsync(value);
            await page.Locator($"#{id}").BlurAsync();
        }
    }

    private static async Task SaveAsync(IPage page, string button, string path)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = button }).ClickAsync();
        await page.WaitForURLAsync(url => new Uri(url).AbsolutePath == path);
    }

    private static string Day(DateTime day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
