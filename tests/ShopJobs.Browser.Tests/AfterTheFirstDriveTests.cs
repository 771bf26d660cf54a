using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>A car on new studs is driven, comes back, is re-torqued and goes to the track; another is not brought back in time.</summary>
[Trait("Takes", "long")]
public sealed class AfterTheFirstDriveTests : OneTabletTests
{
    [Fact]
    public async Task New_studs_and_their_wheel_are_driven_torqued_again_and_go_to_the_track()
    {
        var car = await Shop.CarAsync("White");
        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await lead.PutOnAsync(car, "P3", "Studs, please", "front-left");
        await lead.PutOnAsync(car, "P5", "And the wheel on them", "front-left");
        await lead.CloseAsync();
        var studs = await Shop.JobAsync(car, "stud");
        var wheel = await Shop.JobAsync(car, "fit-up");
        await FinishAsync(car, studs, upToCure: true);
        Shop.Time.Advance(TimeSpan.FromHours(25));
        await FinishAsync(car, studs, upToCure: false);
        await FinishAsync(car, wheel, upToCure: false);

        lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await ReleaseAsync(lead, car, "Road", "road", "48220");
        Assert.Equal("NO", await lead.Locator("#track h2 strong").InnerTextAsync());
        await LetGoAsync(lead, car, "Its owner");
        await lead.CloseAsync();

        // A week and 70 km later it comes in for its re-torque.
        Shop.Time.Advance(TimeSpan.FromDays(7));
        lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await lead.OpenAsync($"/cars/{car.Value}/visit");
        await lead.Locator("#come-in-km").FillAsync("48290");
        await lead.Locator("#come-in-why").FillAsync("Re-torque after the first drive");
        await lead.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^Floor space") }).First.ClickAsync();
        await lead.GetByRole(AriaRole.Button, new() { Name = "BRING IT IN" }).ClickAsync();
        await lead.GetByText("Here since").First.WaitForAsync();
        await lead.OpenAsync($"/cars/{car.Value}/re-torque");
        await lead.Locator("#retorque-km").FillAsync("48290");
        await lead.IsAccessibleEverywhereAsync("re-torque-not-said-how-it-stands");
        var joint = lead.Locator(".retorque").First;
        while (await lead.Locator(".retorque").CountAsync() is > 0 and var left)
        {
            await joint.Locator(".choice", new() { HasText = "W7" }).ClickAsync();
            await joint.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^IT IS SO") }).ClickAsync();
            await joint.Locator("input[id$=-value]").FillAsync("110");
            await joint.GetByRole(AriaRole.Button, new() { Name = "ALL 5 PULLED, NONE MOVED" }).SignWithAsync(lead, DemoPeople.Lead, "SIGN");
            await lead.Locator(".retorque").Nth(left - 1).WaitForAsync(new() { State = WaitForSelectorState.Detached });
        }

        await lead.GetByText("No re-torque is due on this car").WaitForAsync();
        await lead.IsAccessibleEverywhereAsync("re-torque-done");

        await ReleaseAsync(lead, car, "Track", "track", "48290");
        await lead.IsAccessibleEverywhereAsync("released-to-track");
        Assert.True(Shop.Read(car).StandingOf(ReleaseKind.Track).IsGood);
        Assert.Equal([], Shop.VerifyAll());
    }

    [Fact]
    public async Task A_release_whose_re_torque_was_not_done_in_its_days_lapses_on_every_page_and_the_car_is_not_let_go()
    {
        var car = await Shop.CarAsync("White");
        Shop.Time.Advance(TimeSpan.FromDays(31));
        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await lead.GetByText("Expired: do not drive").First.WaitForAsync();
        await lead.IsAccessibleEverywhereAsync("floor-expired");
        await lead.OpenAsync($"/cars/{car.Value}/release");
        await lead.Locator("#road", new() { HasText = "Expired" }).WaitForAsync();
        await lead.IsAccessibleEverywhereAsync("release-expired");
        await lead.OpenAsync($"/cars/{car.Value}/visit");
        await lead.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^Driven") }).ClickAsync();
        await lead.Locator("#taken-by").FillAsync("Benno Hask");
        await lead.GetByRole(AriaRole.Button, new() { Name = "LET IT GO" }).ClickAsync();
        await lead.Locator("#leave-refused:visible p").WaitForAsync();
        await lead.IsAccessibleEverywhereAsync("not-let-go");
        Assert.True(Shop.Read(car).State.Visit?.IsOpen ?? true);

        // The page that the customer has already says it in its first line.
        await lead.OpenAsync($"/cars/{car.Value}/summary");
        await lead.GetByRole(AriaRole.Button, new() { Name = "Make a link" }).ClickAsync();
        var link = new Uri(await lead.Locator("#made-link").InputValueAsync()).AbsolutePath;
        var customer = await (await Chromium.ContextAsync(Shop.Address, new())).NewPageAsync();
        await customer.GotoAsync(link);
        await customer.Locator(".sheet-banner.is-grave").GetByText("Do not drive before you have spoken to us").WaitForAsync();
        await customer.Locator(".sheet-banner.is-grave").GetByText("its re-torque is not recorded in time").WaitForAsync();
        await customer.IsAccessibleEverywhereAsync("customer-expired");
        Assert.Equal(ReleaseStandingKind.Lapsed, Shop.Read(car).StandingOf(ReleaseKind.Road).Kind);
        Assert.Equal([], Shop.VerifyAll());
    }

    private async Task FinishAsync(CarId car, JobId job, bool upToCure)
    {
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        var hands = new ProcedureHands(page, Shop, car, job, DemoPeople.Chassis, DemoPeople.Engines);
        await hands.FinishAsync(upToCure ? hands.FirstCure : null);
        await page.CloseAsync();
    }

    private static async Task ReleaseAsync(IPage lead, CarId car, string kind, string card, string odometer)
    {
        await lead.OpenAsync($"/cars/{car.Value}/release");
        await lead.Locator($"#km-{kind}").FillAsync(odometer);
        await lead.TickClosingCheckAsync(kind);
        await lead.Locator($"#{card} button[type=submit]:not([disabled])").SignWithAsync(lead, DemoPeople.Lead, "RELEASE TO");
        await lead.Locator($"#{card} .release-stands", new() { HasText = "Released" }).WaitForAsync();
    }

    private static async Task LetGoAsync(IPage lead, CarId car, string who)
    {
        await lead.OpenAsync($"/cars/{car.Value}/visit");
        await lead.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^Driven") }).ClickAsync();
        await lead.Locator("#taken-by").FillAsync(who);
        await lead.GetByRole(AriaRole.Button, new() { Name = "LET IT GO" }).ClickAsync();
        await lead.GetByText("Left on").First.WaitForAsync();
    }
}
