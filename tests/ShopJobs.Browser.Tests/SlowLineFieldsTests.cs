using System.Collections.Concurrent;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Components.Bench;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>
/// No field and no pad that people type into depends on a round trip: with 300 ms there and back and 60 ms between keys every character
/// stands. The fields are found on the pages of the demo shop, and in the sources: one that is drawn somewhere and was not typed into fails.
/// </summary>
[Trait("Takes", "long")]
public sealed partial class SlowLineFieldsTests : IAsyncLifetime
{
    private readonly ClockedShop shop = ClockedShop.Open();
    private readonly List<TcpProxy> lines = [];
    private readonly ConcurrentBag<string> typed = [];
    private readonly ConcurrentBag<string> lost = [];
    private ShopBrowser chromium = default!;
    private BrowserContextCookiesResult enrolled = default!;

    // Fields that the demo shop shows nowhere without work that other tests do. Each is one of the components typed into here.
    private static readonly Dictionary<string, string> NotShown = [];

    public async Task InitializeAsync()
    {
        chromium = await ShopBrowser.StartAsync();
        var tablet = await chromium.ContextAsync(shop.Address, new());
        await tablet.OpenDemoShopAsync();
        enrolled = (await tablet.CookiesAsync()).Single(cookie => cookie.Name == "shop.tablet");
        await tablet.CloseAsync();
    }

    public async Task DisposeAsync()
    {
        await chromium.DisposeAsync();
        foreach (var line in lines)
        {
            await line.DisposeAsync();
        }

        await shop.DisposeAsync();
    }

    [Fact]
    public async Task Every_field_and_every_pad_keeps_every_character()
    {
        var (tablet, line) = await TabletAsync();
        var first = await ShopBrowser.SignInAsync(tablet, DemoPeople.Lead, "/");
        var places = new ConcurrentQueue<Place>(await PlacesAsync(first));
        await first.CloseAsync();
        await Task.WhenAll(
            TypeAllAsync((tablet, line), places),
            TypeAllAsync(await SignedInAsync(), places),
            TypeAllAsync(await SignedInAsync(), places),
            TypeAtDoorsAsync());

        Assert.True(lost.IsEmpty, string.Join('\n', lost));
        var missed = Declared().Where(id => !typed.Any(id.IsMatch)).Select(id => id.ToString()).Except(NotShown.Keys).Order(StringComparer.Ordinal).ToList();
        Assert.True(missed.Count == 0, $"Drawn somewhere, and never typed into:\n{string.Join('\n', missed)}");
    }

    private async Task<List<Place>> PlacesAsync(IPage page)
    {
        var orange = $"/cars/{(await shop.CarAsync("Orange")).Value}";
        var white = $"/cars/{(await shop.CarAsync("White")).Value}";
        var blue = $"/cars/{(await shop.CarAsync("Blue")).Value}";
        var tool = await HrefAsync(page, "/tools", "a[href^='/tools/']:has-text('W7')");
        var gauge = await HrefAsync(page, "/instruments", "a[href^='/instruments/']:has-text('G1')");
        var person = await HrefAsync(page, "/people", $"a[href^='/people/']:has-text('{DemoPeople.Chassis.Name}')");
        var customer = await HrefAsync(page, "/cars", "a[href^='/customers/']:not([href$='/new'])");
        var options = (await HrefAsync(page, blue, "a[href*='/options/']")).Split('?')[0];
        return
        [
            new("/customers/new"), new(customer), new("/cars/new"), new($"{blue}/change"), new("/people/new"), new(person),
            new("/people/places/new"), new("/people/places/LiftA"), new("/tools/new"), new($"{tool}/change"), new($"{tool}/calibrate"),
            new(tool, "Raise doubt"), new("/instruments"), new(gauge, "Describe it anew"), new(gauge, "Raise doubt"), new("/my-pin"),
            new("/open-joints", "Mark it sooner or later"),
            new($"{orange}/logbook", "Correct"),
            new(orange, "Put a procedure on the car"),
            new($"{white}/release", "Take this release back"),
            new($"{white}/summary"), new($"{white}/re-torque", "W7"), new($"{orange}/visit", "On a trailer"), new($"{orange}/joints"),
            new($"{orange}/results", "Record it"), new($"{options}/new"), new($"{options}/stacks/new"),
            new($"{white}/held"), new($"{white}/held/wheel.nut/front-left/1", "USE AS IS"),
            .. BenchCards.Groups.SelectMany(group => group.Cards).Select(card => new Place(BenchAddress.Of(card))),
        ];
    }

    private async Task TypeAllAsync((IBrowserContext Tablet, TcpProxy Line) at, ConcurrentQueue<Place> places)
    {
        var hand = new SlowTyping(await at.Tablet.NewPageAsync(), at.Line);
        while (places.TryDequeue(out var place))
        {
            await hand.OpenAsync(place.Address, hasLine: true);
            await hand.TypeAsync("main");
            foreach (var words in place.Touched)
            {
                await hand.TouchAsync(words);
                await hand.TypeAsync("main");
            }
        }

        Count(hand);
    }

    // Pages that work without a circuit.
    private async Task TypeAtDoorsAsync()
    {
        var (tablet, line) = await TabletAsync();
        var hand = new SlowTyping(await tablet.NewPageAsync(), line);
        await hand.OpenAsync("/sign-in", hasLine: false);
        await hand.TypeAsync("main");
        await tablet.ClearCookiesAsync();
        await hand.OpenAsync("/enrol", hasLine: false);
        await hand.TypeAsync("main");
        Count(hand);
    }

    private void Count(SlowTyping hand)
    {
        hand.Lost.ForEach(lost.Add);
        foreach (var id in hand.Typed)
        {
            typed.Add(id);
        }
    }

    private async Task<(IBrowserContext Tablet, TcpProxy Line)> SignedInAsync()
    {
        var (tablet, line) = await TabletAsync();
        await (await ShopBrowser.SignInAsync(tablet, DemoPeople.Lead, "/")).CloseAsync();
        return (tablet, line);
    }

    private async Task<(IBrowserContext Tablet, TcpProxy Line)> TabletAsync()
    {
        var line = new TcpProxy(shop.Address);
        lines.Add(line);
        var tablet = await chromium.ContextAsync(line.Address, new() { ViewportSize = new() { Width = 1024, Height = 768 } });
        await tablet.AddCookiesAsync([new() { Name = enrolled.Name, Value = enrolled.Value, Url = line.Address.ToString(), HttpOnly = true, SameSite = SameSiteAttribute.Strict }]);
        return (tablet, line);
    }

    private static async Task<string> HrefAsync(IPage page, string list, string link)
    {
        await page.OpenAsync(list);
        return await page.Locator(link).First.GetAttributeAsync("href") ?? throw new InvalidOperationException($"No {link} on {list}.");
    }

    // The id of every field in the sources, what is put in when it is drawn standing for anything.
    private static IEnumerable<Regex> Declared() => new DirectoryInfo(Path.Combine(WorkSeed.Folder.Parent!.FullName, "src", "ShopJobs.Web", "Components"))
        .GetFiles("*.razor", SearchOption.AllDirectories)
        .SelectMany(file => FieldTag().Matches(File.ReadAllText(file.FullName)))
        .Where(tag => !NotTyped().IsMatch(tag.Value))
        .Select(tag => tag.Groups["id"].Value)
        .Where(id => !id.StartsWith('@'))
        .Distinct(StringComparer.Ordinal)
        .Select(id => new Regex($"^{string.Join(".+", Hole().Split(id).Select(Regex.Escape))}$"));

    [GeneratedRegex("""<(?:input|textarea|InputText|TextField|VisitText|OdometerField|ReasonForm|PinPad)\b[^\n]*?\s[Ii]d="(?:@\(\$"(?<id>[^"]+)"\)|(?<id>[^"]+))[^\n]*""")]
    private static partial Regex FieldTag();

    [GeneratedRegex("""[Tt]ype="(?:date|file|checkbox|radio|hidden)"|\sreadonly\s""")]
    private static partial Regex NotTyped();

    [GeneratedRegex(@"\{[^}]*\}")]
    private static partial Regex Hole();

    private sealed record Place(string Address, params string[] Touched);
}
