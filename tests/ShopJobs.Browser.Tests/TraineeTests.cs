using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>The lead takes a trainee in, the trainee does a step and pulls a nut, whoever stood by answers for it, on the screens alone.</summary>
[Trait("Takes", "long")]
public sealed class TraineeTests : OneTabletTests
{
    private const string Name = "Tove";

    [Fact]
    public async Task A_trainees_first_wheel_counts_step_by_step_by_the_word_of_whoever_stood_by()
    {
        var car = await Shop.CarAsync("Grey");
        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await lead.PutOnAsync(car, "P5", "Wheel, please", "front-left");
        var job = await Shop.JobAsync(car, "fit-up");
        var tove = new DemoPeople.DemoPerson(Name, "TO", await EnrolAsync(lead), "learns", [Right.Trainee]);
        await lead.CloseAsync();

        // Somebody else made the PIN: the trainee takes one of her own first.
        var page = await ShopBrowser.SignInAsync(Tablet, tove, "/", lands: "/my-pin");
        await page.Locator("#own-pin").FillAsync(tove.Pin);
        await page.GetByRole(AriaRole.Button, new() { Name = "Take a new PIN" }).ClickAsync();
        tove = tove with { Pin = (await page.Locator(".pin-shown").InnerTextAsync()).Trim() };

        var first = Shop.Read(car).Placed(Shop.Read(car).State.Jobs[job]).Steps.First();
        await new ProcedureHands(page, Shop, car, job, tove, DemoPeople.Engines).FinishStepAsync(first.Id);
        await page.GetByRole(AriaRole.Heading, new() { NameRegex = new("^Signed by Tove, a trainee") }).WaitForAsync();
        await page.IsAccessibleEverywhereAsync("trainee-signed");
        Assert.Equal(StepStanding.AwaitsCountersign, Standing(car, job, first.Id));
        await page.OpenAsync("/my-work");
        await page.IsAccessibleAsync("trainee-my-work");
        await page.CloseAsync();

        // Whoever stood by finds it on his list and answers for it.
        page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/my-work");
        await page.GetByText("signed by Tove, a trainee, waits for whoever stood by").WaitForAsync();
        await page.IsAccessibleEverywhereAsync("trainee-waits-for-mate");
        await page.Locator(".decisions-item", new() { HasText = "Countersign" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "COUNTERSIGN: I stood by" }).SignWithAsync(page, DemoPeople.Chassis, "COUNTERSIGN");
        await page.GetByText("stood by and countersigned").First.WaitForAsync();
        await page.IsAccessibleAsync("trainee-countersigned");
        Assert.Equal(StepStanding.Signed, Standing(car, job, first.Id));
        await page.OpenAsync($"/cars/{car.Value}/logbook");
        await page.GetByText("as a trainee").First.WaitForAsync();

        // The rest is done by one who may, and the book is whole.
        await new ProcedureHands(page, Shop, car, job, DemoPeople.Chassis, DemoPeople.Engines).FinishAsync();
        Assert.All(Shop.Read(car).Placed(Shop.Read(car).State.Jobs[job]).Steps, step => Assert.Equal(StepStanding.Signed, Standing(car, job, step.Id)));
        Assert.Equal([], Shop.VerifyAll());
    }

    private StepStanding Standing(CarId car, JobId job, string step)
    {
        var reading = Shop.Read(car);
        var book = reading.State.Jobs[job];
        return reading.State.StandingOf(book, reading.Placed(book), reading.Placed(book).Step(step)!);
    }

    // A trainee holds no other right: the form says so, and takes it once nothing else is ticked.
    private static async Task<string> EnrolAsync(IPage lead)
    {
        await lead.OpenAsync("/people/new");
        await lead.Locator("#name").FillAsync(Name);
        await lead.Locator("label.check", new() { HasText = "learn" }).ClickAsync();
        await lead.GetByRole(AriaRole.Button, new() { Name = "Add and make a PIN" }).ClickAsync();
        await lead.GetByText("A trainee holds no other right").WaitForAsync();
        await lead.IsAccessibleEverywhereAsync("trainee-and-more");
        await lead.Locator("label.check", new() { HasText = "records torque" }).ClickAsync();
        await lead.GetByRole(AriaRole.Button, new() { Name = "Add and make a PIN" }).ClickAsync();
        return (await lead.Locator(".pin-shown").InnerTextAsync()).Trim();
    }
}
