using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>
/// A form that refuses says why where it can be seen: its button is pressed with the fields empty and with nonsense, and each message has to be
/// visible words that describe a field or a group of fields.
/// </summary>
[Trait("Takes", "long")]
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
        await start.GotoAsync("/start");
        await PressAsync(start, "Open an empty shop", "", asks: true);
        await start.GotoAsync("/start");
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
        var orange = await shop.CarAsync("Orange");
        var white = await shop.CarAsync("White");
        var tool = await HrefAsync(page, "/tools", "W7");
        var jorn = await HrefAsync(page, "/people", DemoPeople.Chassis.Name);
        var options = (await HrefAsync(page, $"/cars/{(await shop.CarAsync("Blue")).Value}", "a[href*='/options/']")).Split('?')[0];
        (string Address, string? First, string Button)[] forms =
        [
            ("/customers/new", null, "Save the customer"),
            ("/cars/new", null, "Save the car"),
            ("/people/new", null, "Add and make a PIN"),
            ("/people/places/new", null, "Save the place"),
            ("/people/places/LiftA", null, "Save the place"),
            ("/tools/new", null, "Enter the tool"),
            ($"{tool}/calibrate", null, "Enter the calibration"),
            ($"/cars/{orange.Value}/logbook", "Correct", "VOID ENTRY"),
            ($"/cars/{orange.Value}", "Put a procedure on the car", "Start"),
            ($"/cars/{white.Value}/release", null, "RELEASE TO ROAD"),
            ($"/cars/{white.Value}/release", "Take this release back", "TAKE IT BACK"),
            ($"/cars/{white.Value}/summary", null, "Issue version"),
            ($"/cars/{white.Value}/re-torque", "W7", "NOT MOVED"),
            ("/procedures/upload", null, "Import"),
            ($"/cars/{orange.Value}/visit", null, "MOVE IT"),
            ($"/cars/{orange.Value}/visit", null, "IT WAS MOVED"),
            ($"/cars/{orange.Value}/visit", null, "LET IT GO"),
            ($"/cars/{orange.Value}/joints", null, "RECORD MORE"),
            ($"/cars/{orange.Value}/joints", null, "SIGN: IT FOLLOWS THIS"),
            ("/open-joints", "Mark it sooner or later", "KEEP"),
            (jorn, null, "Rename"),
            ("/instruments", null, "Add it"),
            ("/my-pin", null, "Take a new PIN"),
            ($"/cars/{orange.Value}/results", "Record it", "RECORD "),
            ($"{options}/new", null, "Save the option"),
            ($"{options}/stacks/new", null, "Save the wheel stack"),
            // Last: whatever is typed as its reason is one.
            (tool, "Raise doubt", "RAISE DOUBT"),
        ];
        foreach (var (address, first, button) in forms)
        {
            foreach (var typed in new[] { "", "\u202e<b>-1e9</b>" })
            {
                await (address == "/procedures/upload" ? page.GotoAsync(address) : page.OpenAsync(address));
                if (first is not null)
                {
                    await page.GetByText(first, new() { Exact = true }).First.ClickAsync();
                }

                await PressAsync(page, button, typed, asks: typed.Length == 0);
            }
        }

        // A right without its first day; a PIN that is none; a decision of nothing.
        await page.OpenAsync(jorn);
        await page.Locator("#right-from").FillAsync("");
        await PressAsync(page, "Give it", null, asks: true);

        await page.OpenAsync(tool);
        await page.GetByText("Raise doubt", new() { Exact = true }).First.ClickAsync();
        await page.Locator("#reason").FillAsync("Fell from the bench");
        await page.GetByRole(AriaRole.Button, new() { Name = "RAISE DOUBT", Exact = true }).ClickAsync();
        await page.Locator(".said").WaitForAsync();
        foreach (var address in new[] { $"/cars/{white.Value}/held", $"/cars/{white.Value}/held/wheel.nut/front-left/1" })
        {
            await page.OpenAsync(address);
            await PressAsync(page, "DECIDE", "", asks: true);
            if (address.EndsWith("/1", StringComparison.Ordinal))
            {
                await page.Locator(".decide-option", new() { HasText = "USE AS IS" }).ClickAsync();
                await PressAsync(page, "DECIDE", "x", asks: true);
                await page.GetByText("Nobody is named who accepts it").WaitForAsync();
            }
        }

        var door = await chromium.ContextAsync(shop.Address, new());
        var strange = await door.NewPageAsync();
        foreach (var typed in new[] { "", "x" })
        {
            await strange.GotoAsync("/enrol");
            await PressAsync(strange, "Enrol this tablet", typed, asks: true);
            await page.GotoAsync("/sign-in");
            await PressAsync(page, "Sign in", typed, asks: true);
        }
    }

    [Fact]
    public async Task What_is_asked_only_after_something_happened_says_so_too()
    {
        var page = await ShopBrowser.SignInAsync(lead, DemoPeople.Lead, "/");
        var orange = await shop.CarAsync("Orange");
        var white = await shop.CarAsync("White");

        // A signature with a PIN that is none, and with a wrong one.
        await page.OpenAsync($"/cars/{white.Value}/release");
        await page.GetByText("Take this release back", new() { Exact = true }).First.ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "No, it never left" }).First.ClickAsync();
        await PressAsync(page, "TAKE IT BACK", "It was the wrong car", asks: false);
        var dialog = page.Locator(".sign-dialog");
        foreach (var pin in new[] { "12", "000000" })
        {
            await dialog.Locator("#sign-pin").FillAsync(pin);
            await dialog.Locator("button[type=submit]").ClickAsync();
            await dialog.Locator(".door-refusal:visible").WaitForAsync();
            Assert.Empty(await page.EvaluateAsync<string[]>(Unseen));
        }

        await dialog.GetByRole(AriaRole.Button, new() { Name = "Not now" }).ClickAsync();

        // A step that somebody says is wrong, and its answer.
        await page.OpenAsync(await HrefAsync(page, $"/cars/{orange.Value}", "a[href*='/steps/']"));
        await page.GetByText("This step is wrong").First.ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "A number is wrong" }).ClickAsync();
        await page.OpenAsync("/my-work");
        await page.GetByRole(AriaRole.Link, new() { Name = "Answer" }).First.ClickAsync();
        await page.Locator("textarea[id^=answer-]").WaitForAsync();
        await PressAsync(page, "ANSWER", "", asks: true);

        // A car that has left against its gate is looked over; one that comes in again for a warranty case.
        await GoneAsync(page, orange, against: true);
        await PressAsync(page, "SIGN: LOOKED OVER", "", asks: true);
        await GoneAsync(page, white, against: false);
        foreach (var typed in new[] { "", "\u202e<b>-1e9</b>" })
        {
            await page.OpenAsync($"/cars/{white.Value}/visit");
            await page.GetByRole(AriaRole.Button, new() { Name = "It is a warranty case" }).ClickAsync();
            await PressAsync(page, "BRING IT IN", typed, asks: true);
            await page.GetByText("Pick the joints the case is about").WaitForAsync();
        }
    }

    private static async Task GoneAsync(IPage page, CarId car, bool against)
    {
        await page.OpenAsync($"/cars/{car.Value}/visit");
        await page.Locator("button.choice", new() { HasText = "On a trailer" }).ClickAsync();
        await page.Locator("#taken-by").FillAsync("The owner");
        if (against)
        {
            await page.Locator("#gone-why").FillAsync("He would not wait");
        }

        await page.GetByRole(AriaRole.Button, new() { Name = against ? "RECORD: IT HAS LEFT" : "LET IT GO" }).ClickAsync();
        await page.GetByText("Left on").First.WaitForAsync();
    }

    // Fills every field in sight, presses the button, and looks at what is said.
    private static async Task PressAsync(IPage page, string button, string? typed, bool asks)
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
                await page.Locator(".form-wrong:visible, .door-refusal[role=alert]:visible", new() { HasTextRegex = new System.Text.RegularExpressions.Regex(@"\S") }).First.WaitForAsync(new() { Timeout = 30_000 });
            }
            catch (TimeoutException)
            {
                await page.KeepAsync("refusals-nothing-said");
                Assert.Fail($"{page.Url}, {button}, typed “{typed}”: nothing is said.");
            }
        }

        var unseen = await page.EvaluateAsync<string[]>(Unseen);
        Assert.True(unseen.Length == 0, $"{page.Url}, {button}, typed “{typed}”: {string.Join("; ", unseen)}");
    }

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

    private static async Task<string> HrefAsync(IPage page, string list, string name)
    {
        await page.OpenAsync(list);
        return await (name.StartsWith("a[", StringComparison.Ordinal) ? page.Locator(name) : page.GetByRole(AriaRole.Link, new() { Name = name })).First.GetAttributeAsync("href")
            ?? throw new InvalidOperationException($"No link to {name}.");
    }
}
