using System.Collections.Concurrent;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Components.Bench;
using ShopJobs.Web.Components.Layout;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>
/// No field and no pad that people type into depends on a round trip: with 300 ms there and back and 60 ms between keys every character
/// stands. The fields are found on the pages of the demo shop, and in the sources: one that is drawn somewhere and was not typed into fails.
/// </summary>
[Trait("Takes", "long")]
public sealed partial class SlowLineFieldsTests : IAsyncLifetime
{
    private const string StepIsWrong = "This step is wrong";
    private static readonly string[] OnThread = ["Something was put on the thread, or it was cleaned", "Oil"];

    // In development the catalogue opens each dialog by its address.
    private readonly ClockedShop shop = ClockedShop.Open("Development");
    private readonly List<TcpProxy> lines = [];
    private readonly ConcurrentBag<string> typed = [];
    private readonly ConcurrentBag<string> lost = [];
    private ShopBrowser chromium = default!;

    // Fields that the demo shop shows nowhere as it stands. Each is made of the same parts as those typed into here, with the reason why it is not seen.
    private static readonly Dictionary<string, string> NotShown = new()
    {
        ["hold-{result.Number}"] = "a result is recorded",
        ["fewer-finding-{Asked.Number}"] = "a lead has asked for fewer joints",
        ["confirm-{correction.Number}"] = "a correction waits",
        ["choose-reason"] = "an option is being chosen",
        ["import-currency"] = "a file of parts is looked at; a form without a circuit",
        ["second-pin"] = "a register takes joints away; a form without a circuit",
        ["{TitleId}-interval"] = "the last day of a re-torque is reached",
        ["{TitleId}-value"] = "a re-torque that reads",
        ["{TitleId}-angle"] = "a fastener has moved",
        ["back-km"] = "a car is on its road test",
        ["back-noticed"] = "a car is on its road test",
        ["answer-{one.Row.Id:N}"] = "somebody has said that a step is wrong",
        ["leave-words"] = "a joint is left half done",
        ["cell-value"] = "The_keypad_keeps_every_digit",
        ["run-down"] = "a locking nut is next",
        ["lot-{Instance.Group.Id}"] = "new hardware is fitted next",
        ["words"] = "the customer's page; a form without a circuit",
        ["come-in-km"] = "a car has left",
        ["come-in-things"] = "a car has left",
        ["come-in-unread"] = "a car has left",
        ["come-in-why"] = "a car has left",
        ["look-over-finding"] = "a car was driven away without a release",
    };

    public async Task InitializeAsync()
    {
        chromium = await ShopBrowser.StartAsync();
        var line = new TcpProxy(shop.Address);
        lines.Add(line);
        var tablet = await chromium.ContextAsync(line.Address, new());
        var hand = new SlowTyping(await tablet.NewPageAsync(), line);
        await hand.OpenAsync("/start", hasLine: false);
        await hand.TypeAsync("main");
        Count(hand);
        line.OneWay = TimeSpan.Zero;
        await tablet.OpenDemoShopAsync();
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
        await TypeAllAsync((tablet, line), new(await PlacesOfDoubtAsync(tablet)));

        Assert.True(lost.IsEmpty, string.Join('\n', lost));
        Assert.Equal([], NotShown.Keys.Except(Declared()));
        var missed = Declared().Where(id => !typed.Any(new Regex($"^{string.Join(".+", Hole().Split(id).Select(Regex.Escape))}$").IsMatch))
            .Except(NotShown.Keys).Order(StringComparer.Ordinal).ToList();
        Assert.True(missed.Count == 0, $"Drawn somewhere, and never typed into:\n{string.Join('\n', missed)}");
    }

    private async Task<List<Place>> PlacesAsync(IPage page)
    {
        var (orangeCar, grey) = (await shop.CarAsync("Orange"), await shop.CarAsync("Grey"));
        var orange = $"/cars/{orangeCar.Value}";
        var white = $"/cars/{(await shop.CarAsync("White")).Value}";
        var blueCar = await shop.CarAsync("Blue");
        var blue = $"/cars/{blueCar.Value}";
        var fitUp = await shop.JobAsync(orangeCar, "fit-up");
        await page.PutOnAsync(grey, "P10", "Seat, please", "driver");
        var seat = await shop.JobAsync(grey, "Seat");
        var tool = await HrefAsync(page, "/tools", "a[aria-label='View W7']");
        var gauge = await HrefAsync(page, "/instruments", "a[aria-label='View G1']");
        var person = await HrefAsync(page, "/people", $"a[aria-label='Edit {DemoPeople.Chassis.Name}']");
        var customer = await HrefAsync(page, "/cars", "a[href^='/customers/']:not([href$='/new'])");
        var options = (await HrefAsync(page, blue, "a[href*='/options/']")).Split('?')[0];
        return
        [
            new("/customers/new"), new(customer), new("/cars/new"), new($"{blue}/change"), new("/people/new"), new(person),
            new("/people/places/new"), new("/people/places/LiftA"), new("/parts"), new("/parts/new"), new("/tools/new"), new($"{tool}/change"), new($"{tool}/calibrate"),
            new(tool, "Suspect"), new("/instruments"), new(gauge, "Edit details"), new(gauge, "Suspect"), new("/my-pin"),
            new("/open-joints", "Mark it sooner or later"),
            new($"{orange}/logbook", "Correct", "The value was typed wrong: restate it"),
            new(orange, "End, hold or cancel", "Put it on hold"), new($"{orange}?joint=wheel.nut&place=front-left#joint"),
            new(orange, "Start a job", "P4"), new(Links.EnterCard(orangeCar, fitUp, "stage-50@front-left")), new(Links.EnterCard(grey, seat, WithRunDown(grey, seat))),
            new($"{white}/release", "Take this release back"),
            new($"{white}/summary"), new($"{white}/re-torque", "W7"), new($"{orange}/visit", "On a trailer"), new($"{white}/visit", "Driven"), new($"{orange}/joints"),
            new($"{blue}/photos"), new(Links.Photos(blueCar, shop.Read(blueCar).State.Photos[0].Number), "Taken by mistake"),
            new($"{orange}/results") { First = "document.querySelectorAll('.result-record').forEach(one => one.open = true)" },
            new($"{blue}/as-found") { First = "document.querySelectorAll('.result-record').forEach(one => one.open = true)" }, new($"{blue}/as-found", "Write it down", "Unknown, customer told"),
            new($"{options}/new"), new($"{options}/stacks/new"),
            new($"{white}/held"), new($"{orange}/held/wheel.nut/front-right/5", "REWORK"),
            new("/catalogue?dialog=sign") { Under = ".mud-dialog" },
            new("/catalogue?dialog=hold", "the lot it came from") { Under = ".mud-dialog" },
            new("/catalogue?dialog=undo") { Under = ".mud-dialog" },
            new("/") { Under = "#lock", First = "document.getElementById('lock').showModal()" },
            .. await StepsAsync(),
            .. BenchCards.Groups.SelectMany(group => group.Cards).Select(card => new Place(BenchAddress.Of(card))),
        ];
    }

    // Once a tool is in doubt, what it tightened waits for a decision.
    private async Task<IEnumerable<Place>> PlacesOfDoubtAsync(IBrowserContext tablet)
    {
        var page = await ShopBrowser.SignInAsync(tablet, DemoPeople.Lead, "/tools");
        await page.OpenAsync(await HrefAsync(page, "/tools", "a[aria-label='View W7']"));
        await page.GetByText("Suspect", new() { Exact = true }).First.ClickAsync();
        await page.Locator("#reason").FillAsync("Fell from the bench");
        await page.GetByRole(AriaRole.Button, new() { Name = "SUSPECT", Exact = true }).ClickAsync();
        await page.Locator(".said").WaitForAsync();
        var tool = new Uri(page.Url).AbsolutePath;
        await page.CloseAsync();
        var white = await shop.CarAsync("White");
        return [new(tool, "Owner told"), new($"/cars/{white.Value}/held/wheel.nut/front-left/1", "USE AS IS", "In writing")];
    }

    private string WithRunDown(CarId car, JobId job) => shop.Read(car) is var reading
        ? reading.Placed(reading.State.Jobs[job]).Steps.First(step => step.Work.Any(work => work.Stages.Count > 0 && work.Instance.Group.RunDown == RunDown.Add)).Id
        : "";

    // Of steps that show the same kind of thing, one.
    private async Task<IEnumerable<Place>> StepsAsync()
    {
        var places = new List<Place>();
        foreach (var name in DemoCars.All.Select(one => one.Name))
        {
            var reading = shop.Read(await shop.CarAsync(name));
            places.AddRange(
                from job in reading.State.Jobs.Values
                let placed = reading.Placed(job)
                from step in placed.Steps
                where reading.State.StandingOf(job, placed, step) != StepStanding.Signed && reading.HoldsBeforeStart(job, step).Count == 0
                let next = reading.State.NextOn(reading.Now, job, placed, step)
                let touched = next is not NextAction.Prepare && step.Work.Any(work => !work.Instance.Group.Temporary) ? [.. OnThread, StepIsWrong] : new[] { StepIsWrong }
                select new Place(Links.Step(reading.Car, job.Id, step.Id), touched) { Shows = $"{next.GetType().Name} {step.Step.Measures.Count > 0}" });
        }

        return places.DistinctBy(place => place.Shows);
    }

    private async Task TypeAllAsync((IBrowserContext Tablet, TcpProxy Line) at, ConcurrentQueue<Place> places)
    {
        var hand = new SlowTyping(await at.Tablet.NewPageAsync(), at.Line);
        while (places.TryDequeue(out var place))
        {
            try
            {
                await hand.OpenAsync(place.Address, hasLine: true, place.First);
                await hand.TypeAsync(place.Under);
                foreach (var words in place.Touched)
                {
                    await hand.TouchAsync(words);
                    await hand.TypeAsync(place.Under);
                }
            }
            catch (TimeoutException late)
            {
                lost.Add($"{place.Address} {string.Join(", ", place.Touched)}: {late.Message}");
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

    // Each is a tablet of its own: whoever signs in ends the session of whoever was signed in at the same one.
    private async Task<(IBrowserContext Tablet, TcpProxy Line)> TabletAsync()
    {
        var line = new TcpProxy(shop.Address);
        lines.Add(line);
        var tablet = await chromium.ContextAsync(line.Address, new() { ViewportSize = new() { Width = 1024, Height = 768 } });
        var page = await tablet.NewPageAsync();
        await page.GotoAsync("/enrol");
        await page.Locator("#tablet-name").FillAsync($"Tablet {lines.Count}");
        await page.Locator("#lead-name").FillAsync(DemoPeople.Lead.Name);
        await page.Locator("input[name='Form.Pin']").FillAsync(DemoPeople.Lead.Pin);
        await page.GetByRole(AriaRole.Button, new() { Name = "Enrol this tablet" }).ClickAsync();
        await page.WaitForURLAsync(url => url.Contains("/sign-in", StringComparison.Ordinal));
        await page.CloseAsync();
        return (tablet, line);
    }

    private static async Task<string> HrefAsync(IPage page, string list, string link)
    {
        await page.OpenAsync(list);
        return await page.Locator(link).First.GetAttributeAsync("href") ?? throw new InvalidOperationException($"No {link} on {list}.");
    }

    // The id of every field in the sources, what is put in when it is drawn standing for anything.
    private static IEnumerable<string> Declared() => new DirectoryInfo(Path.Combine(WorkSeed.Folder.Parent!.FullName, "src", "ShopJobs.Web", "Components"))
        .GetFiles("*.razor", SearchOption.AllDirectories)
        .Where(file => file.Directory!.Name != "Catalogue")
        .SelectMany(file => FieldTag().Matches(File.ReadAllText(file.FullName)))
        .Where(tag => !NotTyped().IsMatch(tag.Value))
        .Select(tag => tag.Groups["id"].Value)
        .Where(id => !id.StartsWith('@'))
        .Distinct(StringComparer.Ordinal);

    [GeneratedRegex("""<(?:input|textarea|InputText|TextField|VisitText|OdometerField|ReasonForm|PinPad)\b[^\n]*?\s[Ii]d="(?:@\(\$"(?<id>[^"]+)"\)|(?<id>[^"]+))[^\n]*""")]
    private static partial Regex FieldTag();

    [GeneratedRegex("""[Tt]ype="(?:date|file|checkbox|radio|hidden)"|\sreadonly\s""")]
    private static partial Regex NotTyped();

    [GeneratedRegex(@"\{[^}]*\}")]
    private static partial Regex Hole();

    private sealed record Place(string Address, params string[] Touched)
    {
        public string Under { get; init; } = "main";

        public string? First { get; init; }

        public string Shows { get; init; } = "";
    }
}
