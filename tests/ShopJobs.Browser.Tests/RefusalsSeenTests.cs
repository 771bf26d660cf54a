using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Procedures;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>
/// A form that refuses says why where it can be seen: its button is pressed with the fields empty and with nonsense, and each message has to be
/// visible words that describe a field or a group of fields. <see cref="EveryFormPressedTests"/> says which test presses which form.
/// </summary>
[Trait("Takes", "long")]
public sealed class RefusalsSeenTests : IAsyncLifetime
{
    private static readonly Regex Words = new(@"\S");
    private readonly ClockedShop shop = ClockedShop.Open();
    private ShopBrowser chromium = default!;
    private IBrowserContext lead = default!;

    public async Task InitializeAsync()
    {
        chromium = await ShopBrowser.StartAsync();
        lead = await chromium.ContextAsync(shop.Address, new() { ViewportSize = new() { Width = 1440, Height = 900 } });
        var start = await lead.NewPageAsync();
        await start.GotoAsync("/start");
        await start.PressAsync("Start an empty shop", "", asks: true);
        await start.GotoAsync("/start");
        await start.GetByRole(AriaRole.Button, new() { Name = "Start the demo shop" }).ClickAsync();
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
        var gauge = await HrefAsync(page, "/instruments", "G1");
        var jorn = await HrefAsync(page, "/people", DemoPeople.Chassis.Name);
        var options = (await HrefAsync(page, $"/cars/{(await shop.CarAsync("Blue")).Value}", "a[href*='/options/']")).Split('?')[0];
        (string Address, string? First, string Button)[] forms =
        [
            ("/customers/new", null, "Save the customer"),
            ("/cars/new", null, "Save the car"),
            ("/people/new", null, "Add and make a PIN"),
            ("/people/places/new", null, "Save the place"),
            ("/people/places/LiftA", null, "Save the place"),
            ("/tools/new", null, "Save"),
            ($"{tool}/calibrate", null, "Save"),
            ($"/cars/{orange.Value}/logbook", "Correct", "VOID ENTRY"),
            ($"/cars/{orange.Value}", "Start a job", "Start"),
            ($"/cars/{white.Value}/release", null, "RELEASE TO ROAD"),
            ($"/cars/{white.Value}/release", null, "RELEASE TO A ROAD TEST"),
            ($"/cars/{white.Value}/release", "Take this release back", "TAKE IT BACK"),
            ($"/cars/{white.Value}/summary", null, "Issue version"),
            ($"/cars/{white.Value}/re-torque", "W7", "NOT MOVED"),
            ("/procedures/upload", null, "Import"),
            ("/parts/new", null, "Save the part"),
            ("/parts/import", null, "Look at the file"),
            ($"/cars/{orange.Value}/visit", null, "MOVE IT"),
            ($"/cars/{orange.Value}/visit", null, "IT WAS MOVED"),
            ($"/cars/{orange.Value}/visit", null, "LET IT GO"),
            ($"/cars/{orange.Value}/joints", null, "RECORD MORE"),
            ($"/cars/{orange.Value}/joints", null, "SIGN: IT FOLLOWS THIS"),
            ("/open-joints", "Mark it sooner or later", "KEEP"),
            (jorn, null, "Rename"),
            ("/instruments", null, "Add it"),
            (gauge, null, "ENTER THE CHECK"),
            (gauge, "Edit details", "Save"),
            ("/my-pin", null, "Take a new PIN"),
            ($"/cars/{orange.Value}/results", "Record it", "RECORD "),
            ($"{options}/new", null, "Save the option"),
            ($"{options}/stacks/new", null, "Save the wheel stack"),
            // Last: whatever is typed as its reason is one.
            (tool, "Suspect", "SUSPECT"),
        ];
        // A re-torque is recorded only where somebody has said how the car stands.
        await page.OpenAsync($"/cars/{white.Value}/re-torque");
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^tyre just touching, at ") }).ClickAsync();
        await page.Locator(".retorque-warning button").First.WaitForAsync(new() { State = WaitForSelectorState.Detached });
        foreach (var (address, first, button) in forms)
        {
            foreach (var typed in new[] { "", "\u202e<b>-1e9</b>" })
            {
                await (address is "/procedures/upload" or "/parts/import" ? page.GotoAsync(address) : page.OpenAsync(address));
                if (first is not null)
                {
                    await page.GetByText(first, new() { Exact = true }).First.ClickAsync();
                }

                await page.PressAsync(button, typed, asks: typed.Length == 0);
            }
        }

        // A right without its first day; a PIN that is none; a decision of nothing.
        await page.OpenAsync(jorn);
        await page.Locator("#right-from").FillAsync("");
        await page.PressAsync("Add", null, asks: true);

        await page.OpenAsync(tool);
        await page.GetByText("Suspect", new() { Exact = true }).First.ClickAsync();
        await page.Locator("#reason").FillAsync("Fell from the bench");
        await page.GetByRole(AriaRole.Button, new() { Name = "SUSPECT", Exact = true }).ClickAsync();
        await page.Locator(".said").WaitForAsync();
        foreach (var address in new[] { $"/cars/{white.Value}/held", $"/cars/{white.Value}/held/wheel.nut/front-left/1" })
        {
            await page.OpenAsync(address);
            await page.PressAsync("DECIDE", "", asks: true);
            if (address.EndsWith("/1", StringComparison.Ordinal))
            {
                await page.Locator(".decide-option", new() { HasText = "USE AS IS" }).ClickAsync();
                await page.PressAsync("DECIDE", "x", asks: true);
                await page.GetByText("Nobody is named who accepts it").WaitForAsync();
            }
        }

        var door = await chromium.ContextAsync(shop.Address, new());
        var strange = await door.NewPageAsync();
        foreach (var typed in new[] { "", "x" })
        {
            await strange.GotoAsync("/enrol");
            await strange.PressAsync("Enrol this tablet", typed, asks: true);
            await page.GotoAsync("/sign-in");
            await page.PressAsync("Sign in", typed, asks: true);
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
        await page.PressAsync("TAKE IT BACK", "It was the wrong car", asks: false);
        var dialog = page.Locator(".sign-dialog");
        foreach (var pin in new[] { "12", "000000" })
        {
            await dialog.Locator("#sign-pin").FillAsync(pin);
            await dialog.Locator("button[type=submit]").ClickAsync();
            await dialog.Locator(".door-refusal:visible").WaitForAsync();
            await page.RefusalsAreSeenAsync("a PIN");
        }

        await dialog.GetByRole(AriaRole.Button, new() { Name = "Cancel" }).ClickAsync();

        // A step that somebody says is wrong, and its answer.
        await page.OpenAsync(await HrefAsync(page, $"/cars/{orange.Value}", "a[href*='/steps/']"));
        await page.GetByText("This step is wrong").First.ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "A number is wrong" }).ClickAsync();
        await page.OpenAsync("/my-work");
        await page.GetByRole(AriaRole.Link, new() { Name = "Answer" }).First.ClickAsync();
        await page.Locator("textarea[id^=answer-]").WaitForAsync();
        await page.PressAsync("ANSWER", "", asks: true);

        // A car that has left against its gate is looked over; one that comes in again for a warranty case.
        await GoneAsync(page, orange, against: true);
        await page.PressAsync("SIGN: LOOKED OVER", "", asks: true);
        await GoneAsync(page, white, against: false);
        foreach (var typed in new[] { "", "\u202e<b>-1e9</b>" })
        {
            await page.OpenAsync($"/cars/{white.Value}/visit");
            await page.GetByRole(AriaRole.Button, new() { Name = "It is a warranty case" }).ClickAsync();
            await page.PressAsync("BRING IT IN", typed, asks: true);
            await page.GetByText("Pick the joints the case is about").WaitForAsync();
        }
    }

    [Fact]
    public async Task A_step_a_locked_tablet_and_a_register_that_takes_joints_away_say_it_too()
    {
        var page = await ShopBrowser.SignInAsync(lead, DemoPeople.Lead, "/");
        var orange = await shop.CarAsync("Orange");
        var job = await shop.JobAsync(orange, "fit-up");
        var screen = new StepScreen(page, orange, job);
        await screen.OpenAsync("stage-50@front-right");

        // What is on the thread: nothing chosen, then a product that has no name.
        await page.GetByText("Something was put on the thread, or it was cleaned").ClickAsync();
        await page.PressAsync("ON THE THREAD", typed: null, asks: true);
        await page.Locator(".thread-panel").GetByRole(AriaRole.Button, new() { Name = "Anti-seize" }).ClickAsync();
        await page.PressAsync("ON THE THREAD", typed: "", asks: true);

        // A HOLD and a correction without their reason.
        await page.GetByRole(AriaRole.Button, new() { Name = "HOLD, CALL LEAD" }).First.ClickAsync();
        var dialog = page.Locator(".sign-dialog");
        await dialog.Locator(".button-main").ClickAsync();
        await dialog.Locator("#reason-wrong:visible", new() { HasTextRegex = Words }).WaitForAsync();
        await page.RefusalsAreSeenAsync("HOLD without a reason");
        await dialog.GetByRole(AriaRole.Button, new() { Name = "Cancel" }).ClickAsync();
        await dialog.WaitForAsync(new() { State = WaitForSelectorState.Detached });

        // A value that is no number, where a step measures.
        var grey = await shop.CarAsync("Grey");
        await page.PutOnAsync(grey, "P1", "Struts, please", "front-left");
        await new StepScreen(page, grey, await shop.JobAsync(grey, "strut")).OpenAsync("as-found@front-left");
        await page.Locator("#m-height").FillAsync("<b>-1e9</b>");
        await page.Locator("#m-height").BlurAsync();
        await page.Locator("#p-height:visible").WaitForAsync();
        await page.RefusalsAreSeenAsync("a value that is no number");

        // A register that takes joints away, and nobody who looked.
        await page.GotoAsync("/procedures/upload");
        await page.Locator("#documents").SetInputFilesAsync(new FilePayload { Name = "joint-register.yaml", MimeType = "application/yaml", Buffer = Fewer() });
        await page.GetByRole(AriaRole.Button, new() { Name = "Import" }).ClickAsync();
        await page.GetByText("would have fewer joints").WaitForAsync();
        await page.PressAsync("Take it in", typed: "", asks: true);

        // A file of parts, and a currency that is none.
        await page.GotoAsync("/parts/import");
        await page.Locator("#parts-file").SetInputFilesAsync(new FilePayload { Name = "parts.csv", MimeType = "text/csv", Buffer = Encoding.UTF8.GetBytes("Number,Maker,Name\nX-1,Tarnwick,Rear damper\n") });
        await page.GetByRole(AriaRole.Button, new() { Name = "Look at the file" }).ClickAsync();
        await page.GetByText("1 new, 0 changed, 0 the same").WaitForAsync();
        await page.PressAsync("Look again", typed: "12", asks: true);

        // The lock's curtain, drawn as after a quarter of an hour, and a wrong PIN.
        await page.OpenAsync("/");
        await page.EvaluateAsync("document.getElementById('lock').showModal()");
        var curtain = page.Locator("#lock");
        await curtain.Locator(".person-tile", new() { HasText = DemoPeople.Lead.Name }).ClickAsync();
        await curtain.Locator("#lock-pin").FillAsync("000000");
        await curtain.GetByRole(AriaRole.Button, new() { Name = "Go on" }).ClickAsync();
        await curtain.Locator("#lock-refusal:visible", new() { HasTextRegex = Words }).WaitForAsync();
        await page.RefusalsAreSeenAsync("the lock, a wrong PIN");
    }

    // The seed's register with one wheel nut fewer.
    private static byte[] Fewer()
    {
        var register = SeedDocuments.All.Single(file => file.Name.StartsWith("joint-register", StringComparison.Ordinal));
        var text = Encoding.UTF8.GetString(register.Bytes);
        Assert.Contains("positions: 5", text, StringComparison.Ordinal);
        return Encoding.UTF8.GetBytes(text.Replace("positions: 5", "positions: 4", StringComparison.Ordinal));
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

    private static async Task<string> HrefAsync(IPage page, string list, string name)
    {
        await page.OpenAsync(list);
        return await (name.StartsWith("a[", StringComparison.Ordinal) ? page.Locator(name) : page.GetByRole(AriaRole.Link, new() { Name = name })).First.GetAttributeAsync("href")
            ?? throw new InvalidOperationException($"No link to {name}.");
    }
}
