using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>A line on which every answer takes at least 300 ms, and people who type faster than that.</summary>
public sealed class SlowLineTests : IAsyncLifetime
{
    private const int BetweenTaps = 120;
    private static readonly TimeSpan OneWay = TimeSpan.FromMilliseconds(150);

    private DemoFolder folder = null!;
    private ShopServer server = null!;
    private TcpProxy Line { get; set; } = null!;
    private ShopBrowser chromium = null!;
    private CarId car;

    public async Task InitializeAsync()
    {
        folder = await DemoFolder.MakeAsync();
        (car, _) = await folder.Work.StartAsync("Grey", "P5", DemoPeople.Chassis.Name, "front-left");
        await folder.Work.DoAsync(car, DemoPeople.Chassis.Name, new HoldPositions([.. Enumerable.Range(1, 5).Select(Nut)], ContentDigest.Of([], [])));
        server = await ShopServer.StartAsync(folder.Folder);
        Line = new TcpProxy(server.Address);
        chromium = await ShopBrowser.StartAsync();
    }

    public async Task DisposeAsync()
    {
        await chromium.DisposeAsync();
        await Line.DisposeAsync();
        await server.DisposeAsync();
        await folder.DisposeAsync();
    }

    [Fact]
    public async Task No_digit_of_five_pins_and_no_letter_of_five_reasons_is_lost()
    {
        var tablet = await chromium.TabletAsync(Line.Address);
        var page = await ShopBrowser.SignInAsync(tablet, DemoPeople.Lead, "/");
        for (var nut = 1; nut <= 5; nut++)
        {
            Line.OneWay = TimeSpan.Zero;
            await page.OpenAsync($"/cars/{car.Value}/held/wheel.nut/front-left/{nut.ToString(CultureInfo.InvariantCulture)}");
            Line.OneWay = OneWay;
            var why = string.Create(CultureInfo.InvariantCulture, $"Back it off, look at cone {nut}");
            await page.Locator(".decide-option", new() { HasTextRegex = new Regex("^\\s*REWORK") }).ClickAsync();
            await page.Locator("#decide-why").PressSequentiallyAsync(why, new() { Delay = 40 });
            Assert.Equal(why, await page.Locator("#decide-why").InputValueAsync());
            await page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^DECIDE") }).ClickAsync();

            var dialog = page.Locator(".sign-dialog");
            await dialog.GetByText($"Why: {why}").WaitForAsync();
            await dialog.Locator(".person-tile", new() { HasText = DemoPeople.Lead.Name }).ClickAsync();
            await TapAsync(dialog, DemoPeople.Lead.Pin);
            Assert.Equal(DemoPeople.Lead.Pin, await dialog.Locator("#sign-pin").InputValueAsync());
            await dialog.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^DECIDE") }).ClickAsync();
            await dialog.WaitForAsync(new() { State = WaitForSelectorState.Detached });
            await page.GetByText(new Regex("Decided: rework")).First.WaitForAsync();
        }

        Assert.All(Enumerable.Range(1, 5), nut => Assert.Equal(Disposition.Rework, folder.Read(car).State.Of(Nut(nut)).Holds[0].Decision));
    }

    [Fact]
    public async Task A_field_touched_as_soon_as_the_page_answers_keeps_the_focus_and_an_untouched_page_begins_at_its_heading()
    {
        var tablet = await chromium.TabletAsync(Line.Address);
        var page = await ShopBrowser.SignInAsync(tablet, DemoPeople.Lead, "/");
        Line.OneWay = OneWay;
        var held = $"/cars/{car.Value}/held/wheel.nut/front-left/1";
        await page.OpenAsync(held);
        await page.Locator("h1:focus").WaitForAsync();

        await page.OpenAsync(held);
        await page.Locator("#decide-why").PressSequentiallyAsync("Back it off, look at the cone", new() { Delay = 40 });
        Assert.Equal("Back it off, look at the cone", await page.Locator("#decide-why").InputValueAsync());
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_button_that_moves_from_under_the_finger_is_pressed_and_what_lies_there_then_is_not(bool byTouch)
    {
        var tablet = await chromium.TabletAsync(server.Address);
        var page = await ShopBrowser.SignInAsync(tablet, DemoPeople.Lead, "/");
        await page.OpenAsync("/customers/new");
        // As a message that is drawn when a field is left.
        await page.EvaluateAsync(
            """
            () => addEventListener('pointerdown', () => {
                const other = Object.assign(document.createElement('button'), { type: 'button', textContent: 'Other', id: 'other', onclick: () => document.title = 'wrong' });
                other.style.cssText = 'display:block;width:100%;height:120px';
                document.querySelector('main form .actions').before(other);
            }, { once: true })
            """);
        var box = await page.GetByRole(AriaRole.Button, new() { Name = "Save the customer" }).BoundingBoxAsync() ?? throw new InvalidOperationException("Not drawn.");
        var (x, y) = (box.X + (box.Width / 2), box.Y + (box.Height / 2));
        if (byTouch)
        {
            await page.Touchscreen.TapAsync(x, y);
        }
        else
        {
            await page.Mouse.MoveAsync(x, y);
            await page.Mouse.DownAsync();
            await page.Locator("#other").WaitForAsync();
            await page.Mouse.UpAsync();
        }

        await page.Locator("#name-wrong:visible").WaitForAsync();
        Assert.NotEqual("wrong", await page.TitleAsync());
    }

    [Fact]
    public async Task A_link_touched_while_the_page_gets_its_line_leads_to_its_page()
    {
        var tablet = await chromium.TabletAsync(Line.Address);
        var page = await ShopBrowser.SignInAsync(tablet, DemoPeople.Lead, "/");
        Line.OneWay = OneWay;
        for (var after = 600; after <= 1400; after += 200)
        {
            await page.GotoAsync($"/cars/{car.Value}");
            // The moment of the touch is what is tried here; nothing is waited for.
            await Task.Delay(after);
            await page.Locator("a[href*='/logbook']").First.ClickAsync();
            await page.WaitForURLAsync("**/logbook*");
            await page.Locator("main.page:not(.is-asleep) h1", new() { HasText = "Logbook of" }).WaitForAsync();
        }
    }

    [Fact]
    public async Task What_was_typed_comes_back_after_a_reload_and_is_gone_once_it_is_recorded()
    {
        var tablet = await chromium.TabletAsync(server.Address);
        var page = await ShopBrowser.SignInAsync(tablet, DemoPeople.Lead, "/");
        var held = $"/cars/{car.Value}/held/wheel.nut/front-left/1";
        await page.OpenAsync(held);
        await page.Locator("#decide-why").PressSequentiallyAsync("Cone was dry");
        await page.OpenAsync(held);
        await Assertions.Expect(page.Locator("#decide-why")).ToHaveValueAsync("Cone was dry");

        await page.Locator(".decide-option", new() { HasTextRegex = new Regex("^\\s*REWORK") }).ClickAsync();
        // Recorded, and the page is left in the same moment.
        await page.EvaluateAsync(
            """
            () => new MutationObserver(() => {
                if (document.body.innerText.includes('Decided: rework')) location.href = '/cars';
            }).observe(document.body, { childList: true, subtree: true, characterData: true })
            """);
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^DECIDE") }).SignWithAsync(page, DemoPeople.Lead, "DECIDE");
        await page.WaitForURLAsync("**/cars");
        await page.OpenAsync(held);
        await page.GetByText(new Regex("Decided: rework")).First.WaitForAsync();
        Assert.Null(await page.EvaluateAsync<string?>("() => Object.entries(localStorage).find(([key]) => key.includes('/held/wheel.nut/front-left/1'))?.[1] ?? null"));

        // A new car half entered, and left by a reload.
        await page.OpenAsync("/cars/new");
        await page.Locator("#name").PressSequentiallyAsync("Ochre");
        await page.Locator("#note").PressSequentiallyAsync("Keys in the safe");
        await page.OpenAsync("/cars/new");
        await Assertions.Expect(page.Locator("#name")).ToHaveValueAsync("Ochre");
        await Assertions.Expect(page.Locator("#note")).ToHaveValueAsync("Keys in the safe");

        // A summary says so, and can begin anew.
        await page.OpenAsync($"/cars/{car.Value}/summary");
        await Assertions.Expect(page.Locator(".summary-back")).ToBeHiddenAsync();
        await page.Locator("#advice").PressSequentiallyAsync("Pads are thin");
        await page.Locator("#advice").BlurAsync();
        await page.Locator(".summary-preview", new() { HasText = "Pads are thin" }).WaitForAsync();
        await page.OpenAsync($"/cars/{car.Value}/summary");
        await Assertions.Expect(page.Locator("#advice")).ToHaveValueAsync("Pads are thin");
        await page.Locator(".summary-preview", new() { HasText = "Pads are thin" }).WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Start again from the last version" }).ClickAsync();
        await Assertions.Expect(page.Locator("#advice")).ToHaveValueAsync("");
        await page.OpenAsync($"/cars/{car.Value}/summary");
        await Assertions.Expect(page.Locator("#advice")).ToHaveValueAsync("");
    }

    /// <summary>One key after the other, at a person's pace whatever the line does.</summary>
    private static async Task TapAsync(ILocator dialog, string pin) => await dialog.EvaluateAsync(
        """
        async (dialog, [pin, pause]) => {
            for (const digit of pin) {
                dialog.querySelector(`[data-pin-key="${digit}"]`).click();
                await new Promise(next => setTimeout(next, pause));
            }
        }
        """,
        new object[] { pin, BetweenTaps });

    private static JointPosition Nut(int number) => new("wheel.nut", "front-left", number);
}
