using System.Text;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Procedures;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>A car with four studs a wheel comes in, follows its kind of car and goes to the road, on the screens alone.</summary>
[Trait("Takes", "long")]
public sealed class FourStudCarTests : OneTabletTests
{
    [Fact]
    public async Task It_follows_its_kind_of_car_is_refused_a_procedure_for_five_and_goes_to_the_road_on_four()
    {
        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await lead.OpenAsync("/cars/new");
        await lead.Locator("#name").FillAsync("Silver");
        await lead.Locator("#model").FillAsync("Lorrick 9");
        await lead.Locator("#customer").SelectOptionAsync(new SelectOptionValue { Label = "Ilka Thorne" });
        await lead.GetByRole(AriaRole.Button, new() { Name = "Save the car" }).ClickAsync();
        await lead.WaitForURLAsync(url => url.EndsWith("/visit", StringComparison.Ordinal));
        var car = await Shop.CarAsync("Silver");
        var joints = $"/cars/{car.Value}/joints";

        // Pressed empty it says what is missing; the lead alone says what a new car follows.
        await lead.OpenAsync(joints);
        var follow = lead.GetByRole(AriaRole.Button, new() { Name = "SIGN: IT FOLLOWS THIS" });
        await follow.ClickAsync();
        await lead.GetByText("Pick what the car follows.").WaitForAsync();
        await lead.GetByRole(AriaRole.Button, new() { Name = "four studs a wheel" }).ClickAsync();
        await lead.GetByText("Taken away: wheel nut").WaitForAsync();
        await lead.Locator("#follow-why").FillAsync("Four studs at each wheel");
        await lead.IsAccessibleEverywhereAsync("joints-follow");
        await follow.SignWithAsync(lead, DemoPeople.Lead, "FOLLOWS");
        await lead.GetByText("It follows four studs a wheel").First.WaitForAsync();

        // A procedure for five says why it does not go on.
        await lead.OpenAsync($"/cars/{car.Value}");
        await lead.GetByRole(AriaRole.Button, new() { Name = "Start a job" }).ClickAsync();
        await lead.Locator(".start-job .choice", new() { HasText = "P5" }).First.ClickAsync();
        await lead.GetByText("P5 works on 5 of wheel nut front-left; this car has 4").WaitForAsync();
        await lead.IsAccessibleEverywhereAsync("start-refused-four-studs");

        // The author writes one for four.
        await lead.GotoAsync("/procedures/upload");
        await lead.Locator("#documents").SetInputFilesAsync(new FilePayload { Name = "P15.yaml", MimeType = "application/yaml", Buffer = OnFour() });
        await lead.GetByRole(AriaRole.Button, new() { Name = "Import" }).ClickAsync();
        await lead.GetByText("is in the shop and current").WaitForAsync();
        await lead.PutOnAsync(car, "P15", "Wheels for the road", "front-left");
        var job = await Shop.JobAsync(car, "four cone nuts");
        await lead.CloseAsync();

        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        await new ProcedureHands(page, Shop, car, job, DemoPeople.Chassis, DemoPeople.Engines).FinishAsync();
        await page.CloseAsync();

        lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await lead.OpenAsync($"/cars/{car.Value}/release");
        await lead.Locator("#km-Road").FillAsync("41020");
        await lead.TickClosingCheckAsync("Road");
        await lead.Locator("#road button[type=submit]:not([disabled])").SignWithAsync(lead, DemoPeople.Lead, "RELEASE TO ROAD");
        await lead.Locator("#road .release-stands", new() { HasText = "Released" }).WaitForAsync();
        Assert.Equal(4, Shop.Read(car).State.Positions.Keys.Count(position => position.Joint == new Joint("wheel.nut", "front-left")));
        Assert.Equal([], Shop.VerifyAll());
    }

    [Fact]
    public async Task Fewer_joints_wait_for_a_second_person_and_more_are_there_at_once()
    {
        var car = await Shop.CarAsync("White");
        var joints = $"/cars/{car.Value}/joints";
        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await lead.OpenAsync(joints);
        var send = lead.GetByRole(AriaRole.Button, new() { Name = "RECORD MORE" });
        await send.ClickAsync();
        await lead.GetByText("Type a whole number").WaitForAsync();
        await lead.IsAccessibleAsync("joints-empty");

        await CountAsync(lead, "gearbox.mount driveline", "five");
        await send.ClickAsync();
        await lead.GetByText("Type a whole number").WaitForAsync();
        await CountAsync(lead, "gearbox.mount driveline", "5");
        await send.ClickAsync();
        await lead.GetByText("Added. Every release asks it from now on.").WaitForAsync();

        await CountAsync(lead, "gearbox.mount driveline", "3");
        await lead.GetByRole(AriaRole.Button, new() { Name = "ASK FOR FEWER" }).SignWithAsync(lead, DemoPeople.Lead, "ASKED");
        await lead.GetByText("It changes nothing until a second person has looked").WaitForAsync();
        await lead.IsAccessibleEverywhereAsync("joints-fewer-asked");
        await lead.CloseAsync();

        var second = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/my-work");
        await second.GetByRole(AriaRole.Link, new() { Name = "says that it has fewer joints" }).ClickAsync();
        await second.GetByRole(AriaRole.Button, new() { Name = "SIGN: THEY ARE NOT THERE" }).ClickAsync();
        await second.GetByText("Write what you looked at and what you saw.").WaitForAsync();
        await second.RefusalsAreSeenAsync("fewer joints without a finding");
        await second.Locator("textarea[id^=fewer-finding]").FillAsync("Three bolts, no fourth hole");
        await second.GetByRole(AriaRole.Button, new() { Name = "SIGN: THEY ARE NOT THERE" }).SignWithAsync(second, DemoPeople.Chassis, "LOOKED");
        await second.GetByText("Its own counts: gearbox mount bolt driveline: 3").WaitForAsync();

        Assert.Equal([new JointCount("gearbox.mount", "driveline", 3)], Shop.Read(car).State.Joints.Counts);
        Assert.Equal([], Shop.VerifyAll());
    }

    private static async Task CountAsync(IPage page, string joint, string count)
    {
        await page.Locator("#count-joint").SelectOptionAsync(joint);
        await page.Locator("#count-number").FillAsync(count);
        await page.Locator("#count-why").FillAsync("Counted under the car");
    }

    // The demo's wheel procedure, for four nuts in a cross.
    private static byte[] OnFour() => Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(SeedDocuments.All.Single(file => file.Name.StartsWith("P5", StringComparison.Ordinal)).Bytes)
        .Replace("code: P5", "code: P15", StringComparison.Ordinal)
        .Replace("title: Wheel fit-up, cone nuts on studs", "title: Wheel fit-up, four cone nuts\nfits: [four-stud]", StringComparison.Ordinal)
        .Replace("visits: [1, 3, 5, 2, 4]", "visits: [1, 3, 2, 4]", StringComparison.Ordinal));
}
