using System.Reflection;
using Microsoft.AspNetCore.Components;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Bench;
using ShopJobs.Web.Data;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>
/// Every page of the program, found by its route, on the furnished shop: axe in both looks on tablet and phone, the ring of everything that
/// takes the focus, room for a finger, a window 320 px wide, text at 200 %, and forced colours. A new route that is not visited fails.
/// </summary>
[Trait("Takes", "long")]
public sealed class AccessTests : OneTabletTests
{
    private static readonly (string Name, int Width, int Height, ColorScheme Look)[] Looks =
    [
        ("tablet", 1024, 768, ColorScheme.Light), ("tablet, dark", 1024, 768, ColorScheme.Dark),
        ("phone", 390, 844, ColorScheme.Light), ("phone, dark", 390, 844, ColorScheme.Dark),
    ];

    // Where nobody is signed in yet: looked at by a test of their own.
    private static readonly string[] Doors = ["/start", "/enrol", "/sign-in"];

    // Of a program in development alone, for whoever works on it: CataloguePicturesTests looks at it.
    private static readonly string[] ForContributors = ["/catalogue"];

    // Also with the id of a car that is not in the book: the page is its refusal alone.
    private static readonly string[] Absent =
        ["/cars/{Id:guid}", "/cars/{Id:guid}/held", "/cars/{Id:guid}/joints", "/cars/{Id:guid}/results", "/cars/{Id:guid}/as-found", "/cars/{Id:guid}/visit", "/cars/{Id:guid}/photos", "/cars/{Id:guid}/release", "/cars/{Id:guid}/re-torque"];

    private readonly List<string> wrong = [];

    [Fact]
    public async Task Every_page_can_be_read_and_worked_by_everybody()
    {
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        var visits = await VisitsAsync(page);
        var routes = typeof(BenchCard).Assembly.GetTypes().SelectMany(type => type.GetCustomAttributes<RouteAttribute>()).Select(route => route.Template);
        Assert.Equal(routes.Order(StringComparer.Ordinal), visits.Select(visit => visit.Route).Concat(Doors).Concat(ForContributors).Distinct().Order(StringComparer.Ordinal));

        foreach (var (route, address) in visits)
        {
            await LookAsync(page, route, address);
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    [Fact]
    public async Task The_doors_can_be_read_and_worked_by_everybody()
    {
        using var empty = ClockedShop.Open();
        var strangers = await Chromium.ContextAsync(Shop.Address, new());
        foreach (var door in Doors)
        {
            var at = door == "/start" ? await Chromium.ContextAsync(empty.Address, new()) : door == "/enrol" ? strangers : Tablet;
            await LookAsync(await at.NewPageAsync(), door, door);
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    [Fact]
    public async Task Every_dialog_and_panel_can_be_read_and_worked_by_everybody()
    {
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        var (orange, white) = ((await Shop.CarAsync("Orange")).Value, (await Shop.CarAsync("White")).Value);
        (string Name, string Address, string[] Touched, string Seen)[] states =
        [
            ("More menu", "/", [".top-bar-more-button"], "#more-nav"),
            ("joint", $"/cars/{orange}/held", [], "h1"),
            ("start a job", $"/cars/{orange}", ["main button:has-text('Start a job')"], ".start-job"),
            ("take a release back", $"/cars/{white}/release", ["text=Take this release back", "text=No, it never left"], "#road"),
            ("correct an entry", $"/cars/{orange}/logbook", ["text=Correct >> nth=0"], "textarea"),
            ("hold", (await StepsAsync(page, orange.ToString())).First().Address, ["button:has-text('HOLD') >> nth=0"], ".sign-dialog"),
            ("this step is wrong", (await StepsAsync(page, orange.ToString())).First().Address, ["text=This step is wrong >> nth=0"], "main"),
            ("a tool in doubt", "/tools", ["main a[aria-label='View W7']", "main button:has-text('Suspect') >> nth=0"], "#reason"),
        ];
        foreach (var (name, address, touched, seen) in states)
        {
            await page.OpenAsync(address);
            foreach (var touch in touched)
            {
                await page.Locator(touch).First.ClickAsync();
            }

            await page.Locator(seen).First.WaitForAsync();
            await EveryLookAsync(page, name);
        }

        await page.OpenAsync("/");
        await page.EvaluateAsync("document.getElementById('lock').showModal()");
        await EveryLookAsync(page, "lock");

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    private async Task LookAsync(IPage page, string route, string address)
    {
        await page.GotoAsync(address);
        await page.Locator("h1").First.WaitForAsync();
        try
        {
            await page.Locator("main.page.is-asleep").WaitForAsync(new() { State = WaitForSelectorState.Detached });
        }
        catch (TimeoutException)
        {
            Note(route, "has no line to the server after a minute", [address]);
            return;
        }

        await EveryLookAsync(page, route);
    }

    private async Task EveryLookAsync(IPage page, string route)
    {
        foreach (var (name, width, height, look) in Looks)
        {
            await page.SetViewportSizeAsync(width, height);
            await page.EmulateMediaAsync(new() { ColorScheme = look });
            Note(route, $"axe, {name}", await page.AxeAsync());
            if (look == ColorScheme.Light)
            {
                Note(route, $"too small, {name}", await page.TooSmallAsync());
                Note(route, $"no ring, {name}", await page.WithoutRingAsync());
            }
        }

        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
        await page.SetViewportSizeAsync(1024, 768);
        Note(route, "forced colours", await page.LostStatesAsync());
        await page.TextSizeAsync(32);
        Note(route, "text at 200 %, tablet", await page.OverflowAsync());
        await page.SetViewportSizeAsync(390, 844);
        Note(route, "text at 200 %, phone", await page.OverflowAsync());
        await page.TextSizeAsync(16);
        await page.SetViewportSizeAsync(320, 640);
        Note(route, "320 px", await page.OverflowAsync());
        await page.SetViewportSizeAsync(1024, 768);
    }

    private void Note(string route, string what, IReadOnlyList<string> found) => wrong.AddRange(found.Select(one => $"{route}: {what}: {one}"));

    private async Task<IReadOnlyList<(string Route, string Address)>> VisitsAsync(IPage page)
    {
        await using var rows = await Shop.Services.GetRequiredService<IDbContextFactory<ShopDbContext>>().CreateDbContextAsync();
        var (orange, white, blue) = (Car("Orange"), Car("White"), Car("Blue"));
        var fitUp = (await Shop.JobAsync(new CarId(Guid.Parse(orange)), "fit-up")).Value;
        var option = await rows.PartOptions.AsNoTracking().FirstAsync();
        var stack = await rows.WheelStacks.AsNoTracking().FirstAsync();
        var (tool, customer, person) = ((await rows.Tools.FirstAsync(row => row.Name == "W7")).Id, (await rows.Customers.FirstAsync()).Id.Value, (await rows.People.FirstAsync(row => row.Name == DemoPeople.Chassis.Name)).Id.Value);
        var part = (await rows.Parts.AsNoTracking().FirstAsync()).Id.Value;
        var options = $"/cars/{blue}/jobs/{option.JobId.Value}/options/{option.GroupId}";
        await page.OpenAsync("/instruments");
        var gauge = await page.Locator("main a[href^='/instruments/']").First.GetAttributeAsync("href") ?? "";
        await page.OpenAsync("/procedures");
        var procedure = await page.Locator("main a[href^='/procedures/']:not([href$=upload])").First.GetAttributeAsync("href") ?? "";
        return
        [
            ("/", "/"), ("/my-work", "/my-work"), ("/open-joints", "/open-joints"), ("/bench", "/bench"),
            .. BenchCards.Groups.SelectMany(group => group.Cards).Select(card => ("/bench/{Key}", BenchAddress.Of(card))),
            ("/cars", "/cars"), ("/cars/new", "/cars/new"), ("/cars/{Id:guid}", $"/cars/{orange}"), ("/cars/{Id:guid}/change", $"/cars/{orange}/change"),
            ("/cars/{Id:guid}/held", $"/cars/{orange}/held"), ("/cars/{Id:guid}/held/{Key}/{Place}/{Number:int}", $"/cars/{orange}/held/wheel.nut/front-right/5"),
            ("/cars/{Id:guid}/held-work/{Number:long}", $"/cars/{orange}/held-work/1"), ("/cars/{Id:guid}/joints", $"/cars/{orange}/joints"),
            ("/cars/{Id:guid}/results", $"/cars/{orange}/results"), ("/cars/{Id:guid}/visit", $"/cars/{orange}/visit"), ("/cars/{Id:guid}/photos", $"/cars/{blue}/photos"),
            ("/cars/{Id:guid}/as-found", $"/cars/{blue}/as-found"), ("/cars/{Id:guid}/as-found", $"/cars/{white}/as-found"),
            ("/cars/{Id:guid}/release", $"/cars/{white}/release"), ("/cars/{Id:guid}/re-torque", $"/cars/{white}/re-torque"),
            ("/cars/{Id:guid}/summary", $"/cars/{white}/summary"), ("/cars/{Id:guid}/summary/{Number:int}", $"/cars/{white}/summary/1"),
            ("/cars/{Id:guid}/jobs/{Job:guid}/revision", $"/cars/{orange}/jobs/{fitUp}/revision"),
            .. await StepsAsync(page, orange), .. await StepsAsync(page, blue),
            ("/cars/{Id:guid}/jobs/{Job:guid}/options/{Group}", options), ("/cars/{Id:guid}/jobs/{Job:guid}/options/{Group}/new", $"{options}/new"),
            ("/cars/{Id:guid}/jobs/{Job:guid}/options/{Group}/{Option:guid}", $"{options}/{option.Id.Value}"),
            ("/cars/{Id:guid}/jobs/{Job:guid}/options/{Group}/stacks/new", $"{options}/stacks/new"),
            ("/cars/{Id:guid}/jobs/{Job:guid}/options/{Group}/stacks/{Stack:guid}", $"{options}/stacks/{stack.Id}"),
            ("/clock", "/clock"), ("/customers/new", "/customers/new"), ("/customers/{Id:guid}", $"/customers/{customer}"), ("/customers/{Id:guid}/data", $"/customers/{customer}/data"),
            ("/instruments", "/instruments"), ("/instruments/{Id:guid}", gauge), ("/my-pin", "/my-pin"),
            ("/people", "/people"), ("/people/new", "/people/new"), ("/people/{Id:guid}", $"/people/{person}"), ("/people/places/new", "/people/places/new"), ("/people/places/{Key}", "/people/places/LiftA"),
            ("/procedures", "/procedures"), ("/procedures/upload", "/procedures/upload"), ("/procedures/{Digest:length(64)}", procedure), ("/shop/logbook", "/shop/logbook"),
            ("/tools/labels", "/tools/labels"), ("/tools/{Id:guid}/label", $"/tools/{tool}/label"),
            ("/cars/{Id:guid}/jobs/{Job:guid}/card", $"/cars/{orange}/jobs/{fitUp}/card"), ("/cars/{Id:guid}/jobs/{Job:guid}/card/enter", $"/cars/{orange}/jobs/{fitUp}/card/enter"),
            ("/parts", "/parts"), ("/parts/new", "/parts/new"), ("/parts/{Id:guid}", $"/parts/{part}"), ("/parts/import", "/parts/import"),
            ("/tools", "/tools"), ("/tools/new", "/tools/new"), ("/tools/{Id:guid}", $"/tools/{tool}"), ("/tools/{Id:guid}/change", $"/tools/{tool}/change"),
            ("/tools/{Id:guid}/calibrate", $"/tools/{tool}/calibrate"), ("/tools/{ToolId:guid}/logbook", $"/tools/{tool}/logbook"), ("/cars/{CarId:guid}/logbook", $"/cars/{white}/logbook"),
            .. Absent.Select(route => (route, route.Replace("{Id:guid}", Guid.Empty.ToString(), StringComparison.Ordinal))),
            ("/error", "/error"), ("/not-allowed", "/not-allowed"), ("/not-found", "/no-such-page"),
        ];

        string Car(string name) => rows.Cars.Single(car => car.Name == name).Id.Value.ToString();
    }

    private static async Task<IEnumerable<(string Route, string Address)>> StepsAsync(IPage page, string car)
    {
        await page.OpenAsync($"/cars/{car}");
        var steps = await page.Locator("main a[href*='/steps/']").EvaluateAllAsync<string[]>("links => [...new Set(links.map(link => link.getAttribute('href')))]");
        return steps.Take(4).Select(step => ("/cars/{Car:guid}/jobs/{Job:guid}/steps/{Step}", step));
    }
}
