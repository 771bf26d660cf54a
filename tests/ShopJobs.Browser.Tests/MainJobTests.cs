using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>
/// The shop's main job from the import to the customer's page, in a real Chromium: five studs driven and one wheel fitted on
/// one car, by two technicians and a witness, with one stud over-torqued, held and replaced, and one joint opened again after the
/// release. Nothing is mocked but the clock, which is moved for the locker's cure.
/// </summary>
public sealed class MainJobTests : IAsyncLifetime
{
    private readonly ClockedShop shop = ClockedShop.Open();
    private ShopBrowser chromium = default!;
    private IBrowserContext lead = default!;
    private IBrowserContext tablet = default!;

    public async Task InitializeAsync()
    {
        chromium = await ShopBrowser.StartAsync();
        lead = await chromium.ContextAsync(shop.Address, new() { ViewportSize = new() { Width = 1440, Height = 900 } });
        tablet = await chromium.ContextAsync(shop.Address, new() { ViewportSize = new() { Width = 1024, Height = 768 }, HasTouch = true });
    }

    public async Task DisposeAsync()
    {
        foreach (var (page, number) in lead.Pages.Concat(tablet.Pages).Select((page, number) => (page, number)))
        {
            await page.KeepAsync($"at-the-end-{number}");
        }

        await chromium.DisposeAsync();
        await shop.DisposeAsync();
    }

    [Fact]
    public async Task Studs_and_a_wheel_go_from_the_import_to_the_customers_page_and_are_opened_again()
    {
        var desk = await OpenTheDemoShopAsync();
        await ImportAsync(desk);
        var car = await shop.CarAsync("Grey");
        var floor = await AnotherFloorAsync();
        var studs = await PutOnAsync(desk, car, "P3", "Studs instead of bolts, please", DemoPeople.Chassis);
        var wheel = await PutOnAsync(desk, car, "P5", "Fit the new wheels", DemoPeople.Engines);

        await EnrolAsync();
        var jorn = await ShopBrowser.SignInAsync(tablet, DemoPeople.Chassis, "/my-work");
        await jorn.GetByText("Grey").First.WaitForAsync();
        await jorn.IsAccessibleAsync("my-work");
        await DriveStudsAsync(jorn, desk, car, studs);
        await FitWheelAsync(jorn, car, wheel);

        // A day has passed with the cure: everybody signs in again.
        await desk.CloseAsync();
        await floor.CloseAsync();
        desk = await ShopBrowser.SignInAsync(lead, DemoPeople.Lead, "/");
        floor = await AnotherFloorAsync();
        await ReleaseAsync(desk, car, floor);
        var link = await IssueAsync(desk, car);
        await ReadAsCustomerAsync(link);
        await OpenAgainAsync(desk, floor, car, link);
        Assert.Equal([], shop.VerifyAll());
    }

    private async Task<IPage> OpenTheDemoShopAsync()
    {
        var page = await lead.NewPageAsync();
        await page.GotoAsync("/");
        await page.GetByRole(AriaRole.Button, new() { Name = "Start the demo shop" }).ClickAsync();
        await page.WaitForURLAsync(url => !url.Contains("/start", StringComparison.Ordinal), new() { Timeout = 240_000 });
        await page.IsAccessibleAsync("sign-in");
        await page.CloseAsync();
        return await ShopBrowser.SignInAsync(lead, DemoPeople.Lead, "/");
    }

    private async Task EnrolAsync()
    {
        var page = await tablet.NewPageAsync();
        await page.GotoAsync("/my-work");
        await page.Locator("#tablet-name").FillAsync("Lift A");
        await page.Locator("#lead-name").FillAsync(DemoPeople.Lead.Name);
        await page.Locator("input[name='Form.Pin']").FillAsync(DemoPeople.Lead.Pin);
        await page.IsAccessibleAsync("enrol");
        await page.GetByRole(AriaRole.Button, new() { Name = "Enrol this tablet" }).ClickAsync();
        await page.WaitForURLAsync(url => url.Contains("/sign-in", StringComparison.Ordinal));
        await page.CloseAsync();
    }

    private static async Task ImportAsync(IPage page)
    {
        await page.IsAccessibleAsync("floor");
        var good = await File.ReadAllTextAsync(Path.Combine(WorkSeed.Folder.FullName, "procedures", "P5-wheel-fit-up.yaml"));
        await UploadAsync(page, "broken.yaml", good.Replace("key: wheel.nut", "key: wheel.nutt", StringComparison.Ordinal));
        await page.GetByText(new Regex("wheel\\.nutt")).First.WaitForAsync();
        await page.IsAccessibleAsync("upload-refused");
        await UploadAsync(page, "P5.yaml", good.Replace("revision: \"2\"\ndemo-data", "revision: \"2a\"\ndemo-data", StringComparison.Ordinal));
        // Cars of the demo are at work by the revision before: what that means is shown first.
        await page.GetByText("Jobs and released cars with records under an older revision").WaitForAsync();
        await page.IsAccessibleAsync("upload-effect");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take it in" }).ClickAsync();
        await page.GetByText("is in the shop and current").WaitForAsync();
        await page.OpenAsync("/procedures");
        await page.GetByText("2a").First.WaitForAsync();
        await page.IsAccessibleAsync("procedures");
    }

    private static async Task UploadAsync(IPage page, string name, string yaml)
    {
        await page.GotoAsync("/procedures/upload");
        await page.Locator("input[type=file]").SetInputFilesAsync(new FilePayload
        {
            Name = name,
            MimeType = "application/yaml",
            Buffer = System.Text.Encoding.UTF8.GetBytes(yaml),
        });
        await page.Locator("main form button[type=submit]").ClickAsync();
        await page.WaitForLoadStateAsync(LoadState.NetworkIdle);
    }

    private async Task<IPage> AnotherFloorAsync()
    {
        var page = await lead.NewPageAsync();
        await page.OpenAsync("/");
        await page.GetByText("Grey").First.WaitForAsync();
        return page;
    }

    private async Task<JobId> PutOnAsync(IPage page, CarId car, string code, string askedFor, DemoPeople.DemoPerson who)
    {
        await page.OpenAsync($"/cars/{car.Value}");
        var procedure = page.Locator(".start-job .choice", new() { HasTextRegex = new Regex($"^\\s*{code}\\b") }).First;
        await page.GetByRole(AriaRole.Button, new() { Name = "Start a job" }).ClickAsync();
        await procedure.ClickAsync();
        foreach (var place in new[] { "front-left", "front-right", "rear-left", "rear-right" })
        {
            var choice = page.Locator(".start-job fieldset").Nth(1).GetByRole(AriaRole.Button, new() { Name = place, Exact = true });
            var wanted = place == "front-left" ? "true" : "false";
            if (await choice.GetAttributeAsync("aria-pressed") != wanted)
            {
                await choice.ClickAsync();
            }
        }

        await page.Locator("#asked-for").FillAsync(askedFor);
        await page.GetByRole(AriaRole.Button, new() { Name = $"Start {code}" }).ClickAsync();
        var sheet = page.Locator(".job-sheet", new() { HasText = askedFor });
        await sheet.WaitForAsync();
        var person = sheet.Locator(".assign-people .choice", new() { HasText = who.Name });
        await sheet.GetByRole(AriaRole.Button, new() { Name = "People" }).ClickAsync();
        await person.ClickAsync();
        await sheet.Locator($".assign-people .choice[aria-pressed=true]", new() { HasText = who.Name }).WaitForAsync();
        await page.IsAccessibleAsync($"car-with-{code}");
        return await shop.JobAsync(car, code == "P3" ? "stud" : "fit-up");
    }

    private async Task DriveStudsAsync(IPage page, IPage desk, CarId car, JobId job)
    {
        var step = new StepScreen(page, car, job);
        await step.OpenAsync("wheel-off@front-left");
        await step.ReportAllAsync();
        await step.AnswerAsync(("sheared-screws", 1));
        await page.IsAccessibleAsync("step-wheel-off");
        await step.SignAsync(DemoPeople.Chassis);
        await SignedAsync(step, "compare", ("studs", 5));
        await SignedAsync(step, "threads@front-left");
        await SignedAsync(step, "hold-hub@front-left");

        // The lot on the bag is typed, and the page is loaded again before the studs are in.
        await step.OpenAsync("by-hand@front-left");
        await page.Locator(".lot input").PressSequentiallyAsync("L-4471");
        await step.OpenAsync("by-hand@front-left");
        await Assertions.Expect(page.Locator(".lot input")).ToHaveValueAsync("L-4471");
        await step.ReportAllAsync();
        Assert.DoesNotContain("L-4471", await page.EvaluateAsync<string>("() => JSON.stringify(localStorage)"), StringComparison.Ordinal);
        await step.AnswerAsync();
        await step.SignAsync(DemoPeople.Chassis);

        await step.OpenAsync("drive@front-left");
        await step.StandsAsAskedAsync();
        await DriveOneAsync(step);
        await DriveOneAsync(step);
        await OverTorqueAsync(page, desk, step, car);
        await DriveOneAsync(step);
        await DriveOneAsync(step);
        await DriveOneAsync(step);
        await step.AnswerAsync();
        await step.WitnessAsync(DemoPeople.Engines);
        await step.SignAsync(DemoPeople.Chassis);
        await SignedAsync(step, "shoulder@front-left", ("gaps", 0));
        await SignedAsync(step, "protrusion@front-left", ("shortest", 31.5m), ("spread", 0.2m));

        await step.OpenAsync("cure@front-left");
        await page.Locator(".gate, .sign-panel").GetByText(new Regex("cure", RegexOptions.IgnoreCase)).First.WaitForAsync();
        shop.Time.Advance(TimeSpan.FromHours(24.5));
        await page.CloseAsync();
        page = await ShopBrowser.SignInAsync(tablet, DemoPeople.Chassis, "/my-work");
        step = new StepScreen(page, car, job);
        await SignedAsync(step, "cure@front-left", ("coldest", 21));
        await SignedAsync(step, "wheel-check@front-left", ("engagement", 14), ("nut-room", 2));
        await page.CloseAsync();
    }

    /// <summary>One stud: jam the two nuts at 90, drive to 73, take the nuts off.</summary>
    private static async Task DriveOneAsync(StepScreen step)
    {
        await JamAsync(step);
        await step.StandsAtAsync("wheel stud front-left");
        await step.TakeAsync("W5");
        await step.SetToAsync("73");
        await step.ClickedAsync();
        await step.ReportedAsync();
    }

    private static async Task JamAsync(StepScreen step)
    {
        await step.StandsAtAsync("jam nuts on a wheel stud front-left");
        await step.TakeAsync("W7");
        await step.SetToAsync("90");
        await step.ClickedAsync();
    }

    private async Task OverTorqueAsync(IPage page, IPage desk, StepScreen step, CarId car)
    {
        await JamAsync(step);
        var over = await step.StandsAtAsync("wheel stud front-left");
        await page.IsAccessibleAsync("step-drive");
        await step.TakeAsync("W5");
        await step.SetAnewAsync("97");
        await step.ClickedAsync();
        await page.Locator(".held-panel", new() { HasText = "over the permitted maximum" }).WaitForAsync();
        await page.IsAccessibleAsync("step-held");
        Assert.Equal(1, shop.Read(car).State.Positions.Values.Count(book => !book.Holds.IsEmpty));

        await desk.OpenAsync("/");
        await desk.Locator(".held-band a", new() { HasText = over }).ClickAsync();
        await desk.Locator(".decide-option", new() { HasTextRegex = new Regex("^\\s*REPLACE") }).ClickAsync();
        await desk.Locator("#decide-why").FillAsync("Over 95 N·m: the stud is scrap");
        await desk.IsAccessibleAsync("decide-held");
        await desk.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^DECIDE") }).SignWithAsync(desk, DemoPeople.Lead, "DECIDE");
        await desk.GetByText(new Regex("Decided: replace")).First.WaitForAsync();
        await step.ReportedAsync();

        // A stud that came out takes what was signed of its hole with it: looked at and signed again, then the new one is turned in.
        await page.GetByText("Not yet").First.WaitForAsync();
        await page.IsAccessibleAsync("step-opened-again");
        await SignedAsync(step, "wheel-off@front-left", ("sheared-screws", 1));
        await SignedAsync(step, "compare", ("studs", 5));
        await SignedAsync(step, "threads@front-left");
        await SignedAsync(step, "hold-hub@front-left");
        await step.OpenAsync("by-hand@front-left");
        await step.ReportAllAsync();
        await step.AnswerAsync();
        await step.SignAsync(DemoPeople.Chassis);
        await step.OpenAsync("drive@front-left");
    }

    private static async Task SignedAsync(StepScreen step, string id, params (string Measure, decimal Value)[] values)
    {
        await step.OpenAsync(id);
        await step.AnswerAsync(values);
        await step.SignAsync(DemoPeople.Chassis);
    }

    private async Task FitWheelAsync(IPage closed, CarId car, JobId job)
    {
        Assert.True(closed.IsClosed);
        var page = await ShopBrowser.SignInAsync(tablet, DemoPeople.Engines, "/my-work");
        var step = new StepScreen(page, car, job);
        await step.OpenAsync("faces@front-left");
        await step.ReportAllAsync();
        await step.AnswerAsync();
        await step.SignAsync(DemoPeople.Engines);
        await step.OpenAsync("by-hand@front-left");
        await step.ReportAllAsync();
        await step.AnswerAsync(("turns", 9));
        await step.SignAsync(DemoPeople.Engines);
        await step.OpenAsync("snug@front-left");
        await step.AnswerAsync();
        await step.SignAsync(DemoPeople.Engines);
        await step.OpenAsync("stage-50@front-left");
        await step.PullAllAsync("W7", "50");
        await step.SignAsync(DemoPeople.Engines);
        await step.OpenAsync("lower");
        await step.AnswerAsync();
        await step.SignAsync(DemoPeople.Engines);
        await step.OpenAsync("final@front-left");
        await step.StandsAsAskedAsync();
        Assert.Equal("Wheel nut front-left 1", await step.StandsAtAsync("wheel nut"));
        await page.IsAccessibleAsync("step-final");
        await step.PullAllAsync("W7", "110");
        await step.AnswerAsync();
        await page.Locator(".witness-panel").WaitForAsync();
        await Assertions.Expect(page.Locator(".sign-button")).ToHaveCountAsync(0);

        await page.GetByText("nobody witnesses their own work").WaitForAsync();
        await step.WitnessAsync(DemoPeople.Chassis);
        await page.Locator(".sign-button:not([disabled])").WaitForAsync();
        await page.IsAccessibleAsync("step-witnessed");
        await step.SignAsync(DemoPeople.Engines);
        await page.IsAccessibleAsync("step-signed");
        await page.CloseAsync();
    }

    private static async Task ReleaseAsync(IPage page, CarId car, IPage floor)
    {
        await page.OpenAsync($"/cars/{car.Value}/release");
        await page.Locator("#track.is-no").WaitForAsync();
        var release = page.Locator("#road button[type=submit]:not([disabled])");
        await page.Locator("#km-Road").FillAsync("41230");
        await page.TickClosingCheckAsync("Road");
        await page.IsAccessibleAsync("release");
        await release.SignWithAsync(page, DemoPeople.Lead, "RELEASE TO ROAD");
        await page.Locator("#road", new() { HasTextRegex = new Regex("Released \\d") }).WaitForAsync();
        await Sheet(floor).GetByText("released to road").WaitForAsync();
    }

    private static async Task<string> IssueAsync(IPage page, CarId car)
    {
        await page.OpenAsync($"/cars/{car.Value}/summary");
        await page.Locator("#contact").FillAsync("01632 960100");
        await page.Locator("#contact").BlurAsync();
        await page.IsAccessibleAsync("summary-desk");
        await page.GetByRole(AriaRole.Button, new() { Name = "Issue version 1" }).SignWithAsync(page, DemoPeople.Lead, "SIGN: issue");
        await page.GetByRole(AriaRole.Link, new() { Name = "Version 1" }).WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Make a link" }).ClickAsync();
        var link = await page.Locator("#made-link").InputValueAsync();
        return new Uri(link).AbsolutePath;
    }

    private async Task ReadAsCustomerAsync(string link)
    {
        var phone = await chromium.ContextAsync(shop.Address, new()
        {
            ViewportSize = new() { Width = 390, Height = 844 },
            HasTouch = true,
            JavaScriptEnabled = true,
        });
        var page = await phone.NewPageAsync();
        await page.GotoAsync(link);
        await page.GetByText("Studs instead of bolts, please").WaitForAsync();
        await page.Locator(".sheet-drive", new() { HasText = "Drive on the road: yes, until 41,330 km" }).WaitForAsync();
        Assert.Equal(0, await page.GetByText(DemoPeople.Chassis.Name, new() { Exact = false }).CountAsync());
        await page.IsAccessibleAsync("customer-phone");
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        await page.IsAccessibleAsync("customer-phone-dark");
        await page.EmulateMediaAsync(new() { Media = Media.Print, ColorScheme = ColorScheme.Light });
        await page.KeepAsync("customer-print");
        await phone.CloseAsync();
    }

    private async Task OpenAgainAsync(IPage page, IPage floor, CarId car, string link)
    {
        var issued = await CustomerTextAsync(link);
        await page.OpenAsync($"/cars/{car.Value}");
        await page.Locator("a.joint-tile[href*='wheel.nut'][href*='front-left']").ClickAsync();
        await page.Locator(".open-button").WaitForAsync();
        await page.IsAccessibleAsync("joint-before-opening");
        await page.Locator(".open-button").ClickAsync();
        await page.Locator(".open-sure").ClickAsync();
        await page.GetByText("No job on the car closes it: start one that does").WaitForAsync();
        await page.IsAccessibleAsync("joint-opened");

        await Sheet(floor).GetByText("NO", new() { Exact = true }).WaitForAsync();
        await page.OpenAsync($"/cars/{car.Value}/release");
        await page.Locator("#road", new() { HasTextRegex = new Regex("ended") }).WaitForAsync();
        await page.KeepAsync("release-void");
        await page.OpenAsync($"/cars/{car.Value}/summary");
        await page.Locator(".summary-preview").GetByRole(AriaRole.Heading, new() { Name = "Not finished" }).WaitForAsync();
        var after = await CustomerTextAsync(link);
        Assert.Contains("Out of date", after, StringComparison.Ordinal);
        Assert.Contains("no longer. Speak to us first.", after, StringComparison.Ordinal);
        Assert.Contains(issued[issued.IndexOf("What you do next", StringComparison.Ordinal)..], after, StringComparison.Ordinal);
        Assert.Equal(0, shop.Read(car).State.Releases.Values.Count(release => release.VoidBy == 0 && release.Fact.Kind == ReleaseKind.Road));
    }

    private async Task<string> CustomerTextAsync(string link)
    {
        var phone = await chromium.ContextAsync(shop.Address, new() { ViewportSize = new() { Width = 390, Height = 844 }, HasTouch = true });
        var page = await phone.NewPageAsync();
        await page.GotoAsync(link);
        await page.KeepAsync("customer-now");
        var text = await page.Locator("main").InnerTextAsync();
        await phone.CloseAsync();
        return text;
    }

    private static ILocator Sheet(IPage floor) => floor.Locator("article.car-sheet", new() { HasText = "Grey" });
}
