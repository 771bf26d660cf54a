using System.Globalization;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Shop;

namespace ShopJobs.Browser.Tests;

/// <summary>The power is off: two wheels go by a printed card. One is entered by who did it, the other by somebody else.</summary>
[Trait("Takes", "long")]
public sealed class JobCardTests : OneTabletTests
{
    [Fact]
    public async Task A_card_is_printed_entered_by_its_doer_and_declared_by_another()
    {
        var car = await Shop.CarAsync("Grey");
        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await lead.PutOnAsync(car, "P5", "Wheels, please", "front-left", "front-right");
        await lead.CloseAsync();
        var job = await Shop.JobAsync(car, "fit-up");
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        await new ProcedureHands(page, Shop, car, job, DemoPeople.Chassis, DemoPeople.Engines).FinishAsync(upTo: "stage-50");
        Shop.Time.Advance(TimeSpan.FromMinutes(2));

        var card = await PrintAsync(page, car, job);
        Shop.Time.Advance(TimeSpan.FromMinutes(3));
        await EnterAsync(page, car, job, "stage-50@front-left", card, own: true);
        await page.GetByText("This goes in as your late report").WaitForAsync();
        await page.IsAccessibleEverywhereAsync("card-entered-by-doer");
        await page.GetByRole(AriaRole.Button, new() { Name = "ENTER IT" }).ClickAsync();
        await page.Locator("[aria-label='What was entered']").WaitForAsync();
        await page.KeepAsync("card-entered");
        Assert.All(Nuts("front-left"), nut => Assert.Equal(PositionState.Staged, Shop.Read(car).StateOf(nut)));
        Assert.All(Nuts("front-left"), nut => Assert.Equal(card, Shop.Read(car).State.Of(nut).Last!.Fact.OnPaper!.Value.Card));
        await page.CloseAsync();

        page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Engines, "/");
        await EnterAsync(page, car, job, "stage-50@front-right", card, own: false);
        await page.GetByText("This will be declared and will not count").WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "DECLARE IT" }).ClickAsync();
        await page.GetByText("recorded, does not count").WaitForAsync();
        await page.KeepAsync("card-declared");
        Assert.All(Nuts("front-right"), nut => Assert.Equal(PositionState.HandTight, Shop.Read(car).StateOf(nut)));

        await page.OpenAsync($"/cars/{car.Value}/logbook");
        await page.GetByText("Declared from paper").First.WaitForAsync();
        await page.OpenAsync($"/cars/{car.Value}/release");
        await page.GetByText("declared from paper by").First.WaitForAsync();
        await page.KeepAsync("card-declared-release");
        Assert.Equal([], Shop.VerifyAll());
    }

    // Prints the card to a file, and gives its number.
    private static async Task<string> PrintAsync(IPage page, CarId car, JobId job)
    {
        await page.OpenAsync($"/cars/{car.Value}/jobs/{job.Value}/card");
        var number = await page.Locator(".card-head strong").InnerTextAsync();
        await page.IsAccessibleEverywhereAsync("card");
        foreach (var format in (string[])["A4", "Letter"])
        {
            var printed = await page.PdfAsync(new() { Format = format, PreferCSSPageSize = false, Path = Path.Combine(Pictures.Folder, $"card-{format}.pdf") });
            Assert.True(printed.Length > 10_000);
        }

        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await page.SetViewportSizeAsync(794, 1123);
        await page.KeepAsync("card-on-paper");
        Assert.False(await page.Locator(".top-bar").IsVisibleAsync());
        await page.EmulateMediaAsync(new() { Media = Media.Screen });
        await page.SetViewportSizeAsync(1024, 768);
        return number;
    }

    private async Task EnterAsync(IPage page, CarId car, JobId job, string step, string card, bool own)
    {
        await page.OpenAsync($"/cars/{car.Value}/jobs/{job.Value}/card/enter?step={step}");
        var clock = Shop.Services.GetRequiredService<ShopClock>();
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new("ENTER IT|DECLARE IT") }).ClickAsync();
        await page.GetByText("Say whose work it is.").WaitForAsync();
        await page.Locator("#card-number").FillAsync(card[..^1]);
        await page.Locator("#card-time").FillAsync(clock.OnTheWall(clock.Now).ToString("HH:mm", CultureInfo.InvariantCulture));
        await page.Locator(own ? "#card-own" : "#card-other").CheckAsync();
        await page.GetByText("No card of this job has this number").WaitForAsync();
        await page.Locator("#card-number").FillAsync(card);
        foreach (var box in await page.Locator("[id^=card-car-]").AllAsync())
        {
            await box.CheckAsync();
        }

        var wheel = step.Split('@')[1];
        var tools = page.Locator($"#cell-wheel-nuts-{wheel}-1-tool");
        await tools.SelectOptionAsync(await tools.Locator("option", new() { HasText = ", click," }).First.GetAttributeAsync("value") ?? "");
        var setting = page.Locator($"#cell-wheel-nuts-{wheel}-1-setting");
        await setting.FillAsync("fifty");
        await setting.BlurAsync();
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new("ENTER IT|DECLARE IT") }).ClickAsync();
        await page.RefusalsAreSeenAsync("a card's setting in letters");
        await setting.FillAsync("50");
        for (var visit = 0; visit < 5; visit++)
        {
            await page.Locator($"#cell-wheel-nuts-{wheel}-1-{visit}").CheckAsync();
        }
    }

    private static IEnumerable<JointPosition> Nuts(string place) => Enumerable.Range(1, 5).Select(number => new JointPosition("wheel.nut", place, number));
}
