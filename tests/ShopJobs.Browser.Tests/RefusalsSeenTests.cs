using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>
/// A form that refuses says why where it can be seen: its button is pressed with the fields empty and with nonsense, and each message has to be
/// visible words that describe a field or a group of fields.
/// </summary>
public sealed class RefusalsSeenTests : IAsyncLifetime
{
    private readonly ClockedShop shop = ClockedShop.Open();
    private ShopBrowser chromium = default!;
    private IBrowserContext lead = default!;

    public async Task InitializeAsync()
    {
        chromium = await ShopBrowser.StartAsync();
        lead = await chromium.ContextAsync(shop.Address, new() { ViewportSize = new() { Width = 1440, Height = 900 } });
        var start = await lead.NewPageAsync();
        await start.GotoAsync("/");
        await start.GetByRole(AriaRole.Button, new() { Name = "Open the demo shop" }).ClickAsync();
        await start.WaitForURLAsync(url => !url.Contains("/start", StringComparison.Ordinal), new() { Timeout = 240_000 });
        await start.CloseAsync();
    }

    public async Task DisposeAsync()
    {
        await chromium.DisposeAsync();
        await shop.DisposeAsync();
    }

    [Fact]
    public async Task Every_form_says_beside_its_field_why_it_is_refused()
    {
        var page = await ShopBrowser.SignInAsync(lead, DemoPeople.Lead, "/");
        var car = await shop.CarAsync("Orange");
        var tool = await ToolAsync(page, "W7");
        (string Address, string? First, string Button)[] forms =
        [
            ("/customers/new", null, "Save the customer"),
            ("/cars/new", null, "Save the car"),
            ("/people/new", null, "Add and make a PIN"),
            ("/tools/new", null, "Enter the tool"),
            ($"{tool}/calibrate", null, "Enter the calibration"),
            (tool, "Raise doubt", "RAISE DOUBT"),
            ($"/cars/{car.Value}/logbook", "Correct", "VOID ENTRY"),
            ($"/cars/{car.Value}/visit", null, "MOVE IT"),
            ($"/cars/{car.Value}/visit", null, "IT WAS MOVED"),
            ($"/cars/{car.Value}/visit", null, "LET IT GO"),
        ];
        foreach (var (address, first, button) in forms)
        {
            foreach (var typed in new[] { "", "\u202e<b>-1e9</b>" })
            {
                await page.OpenAsync(address);
                if (first is not null)
                {
                    await page.GetByText(first, new() { Exact = true }).First.ClickAsync();
                }

                await FillAsync(page, typed);
                await page.Locator("form button[type=submit]", new() { HasText = button }).First.ClickAsync();
                if (typed.Length == 0 || address.StartsWith("/tools", StringComparison.Ordinal) && first is null)
                {
                    await page.Locator(".form-wrong", new() { HasTextRegex = new System.Text.RegularExpressions.Regex(".") }).First.WaitForAsync();
                }

                var unseen = await page.EvaluateAsync<string[]>(Unseen);
                Assert.True(unseen.Length == 0, $"{address}, {button}, typed “{typed}”: {string.Join("; ", unseen)}");
            }
        }
    }

    // Messages that nobody sees, or that describe no field: each with its words.
    private const string Unseen = """
        () => {
          const described = new Set([...document.querySelectorAll('[aria-describedby]')].flatMap(field => field.getAttribute('aria-describedby').split(/\s+/)));
          return [...document.querySelectorAll('main .form-wrong')].filter(message => message.textContent.trim() !== '').flatMap(message => {
            const place = message.closest('[id]');
            const seen = message.checkVisibility({ visibilityProperty: true, opacityProperty: true }) && message.getBoundingClientRect().height > 0;
            return [
              ...(seen ? [] : [`hidden: ${message.textContent.trim()}`]),
              ...(place && described.has(place.id) ? [] : [`describes no field: ${message.textContent.trim()}`]),
            ];
          });
        }
        """;

    private static async Task FillAsync(IPage page, string typed)
    {
        foreach (var field in await page.Locator("main form input:not([type=checkbox]):not([type=radio]):not([type=date]):not([type=hidden]), main form textarea").AllAsync())
        {
            await field.FillAsync(typed);
        }
    }

    private static async Task<string> ToolAsync(IPage page, string name)
    {
        await page.OpenAsync("/tools");
        return await page.GetByRole(AriaRole.Link, new() { Name = name }).First.GetAttributeAsync("href")
            ?? throw new InvalidOperationException($"No tool {name}.");
    }
}
