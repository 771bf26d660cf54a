using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>A car comes in, its first step waits until it is written down how it was found, and its wheel is finished, on the screens alone.</summary>
[Trait("Takes", "long")]
public sealed class IntakeTests : OneTabletTests
{
    [Fact]
    public async Task A_car_comes_in_is_looked_at_and_its_wheel_is_finished()
    {
        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/cars/new");
        await lead.OpenAsync("/cars/new");
        await lead.Locator("#name").FillAsync("Silver");
        await lead.Locator("#model").FillAsync("Lorrick 9");
        await lead.Locator("#customer").SelectOptionAsync(new SelectOptionValue { Label = "Ilka Thorne" });
        await lead.GetByRole(AriaRole.Button, new() { Name = "Save the car" }).ClickAsync();
        await lead.WaitForURLAsync(url => url.EndsWith("/visit", StringComparison.Ordinal));
        var car = await Shop.CarAsync("Silver");
        await lead.OpenAsync($"/cars/{car.Value}/visit");
        await lead.Locator("#come-in-km").FillAsync("61000");
        await lead.Locator("#come-in-why").FillAsync("Track wheels on");
        await lead.Locator("#come-in-fuel").SelectOptionAsync("3");
        await lead.Locator("#come-in-things").FillAsync("Two keys");
        await lead.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^Floor space") }).First.ClickAsync();
        await lead.GetByRole(AriaRole.Button, new() { Name = "BRING IT IN" }).ClickAsync();
        await lead.GetByText("As found: 0 of 11 systems").WaitForAsync();
        await lead.IsAccessibleEverywhereAsync("intake-came-in");
        await lead.PutOnAsync(car, "P5", "Track wheels", "front-left");
        await lead.CloseAsync();
        var job = await Shop.JobAsync(car, "fit-up");

        // The first step waits, and leads to the sheet.
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        await new StepScreen(page, car, job).OpenAsync("faces@front-left");
        await page.GetByText("Nobody has written down how it was found: wheels").First.WaitForAsync();
        await page.IsAccessibleEverywhereAsync("intake-step-waits");
        await page.GetByRole(AriaRole.Link, new() { Name = "Write down how it was found" }).ClickAsync();
        var wheels = page.Locator(".as-found-card", new() { Has = page.Locator("#found-wheels") });
        await wheels.Locator("summary").ClickAsync();

        // Nothing, then letters: each is said where it is, and what is typed stays.
        await wheels.GetByRole(AriaRole.Button, new() { Name = "AS FOUND: WHEELS" }).ClickAsync();
        await wheels.GetByText("Nothing is filled in.").WaitForAsync();
        await wheels.Locator("#found-wheels-tread-front-left").FillAsync("<b>four</b>");
        await wheels.Locator("#found-wheels-tread-front-right").FillAsync("4,1");
        await wheels.GetByRole(AriaRole.Button, new() { Name = "AS FOUND: WHEELS" }).ClickAsync();
        await wheels.GetByText("is not a number").WaitForAsync();
        await page.IsAccessibleEverywhereAsync("intake-as-found-refused");
        Assert.False(Shop.Read(car).State.AsFound.ContainsKey("wheels"));
        await wheels.Locator("#found-wheels-tread-front-left").FillAsync("4,2");
        await wheels.GetByRole(AriaRole.Button, new() { Name = "AS FOUND: WHEELS" }).ClickAsync();
        await page.GetByText("As found, wheels: written down.").WaitForAsync();
        Assert.Equal(["Least tread, front-left: 4.2 mm", "Least tread, front-right: 4.1 mm"], await wheels.Locator(".figures li").AllInnerTextsAsync());
        Assert.EndsWith(", Jorn", await wheels.Locator("p.quiet").InnerTextAsync(), StringComparison.Ordinal);
        Assert.Equal(0, await page.Locator("#found-hubs ~ ul, #found-hubs ~ p").CountAsync());
        Assert.Equal([4.2m, 4.1m], Shop.Read(car).State.AsFound["wheels"].Fact.Values.Select(value => value.Value));

        // Another system nobody can tell: how the customer was told is asked.
        var engine = page.Locator(".as-found-card", new() { Has = page.Locator("#found-engine") });
        await engine.Locator("summary").ClickAsync();
        await engine.GetByRole(AriaRole.Button, new() { Name = "Unknown, customer told", Exact = true }).ClickAsync();
        await engine.GetByRole(AriaRole.Button, new() { Name = "UNKNOWN, CUSTOMER TOLD", Exact = true }).ClickAsync();
        await engine.GetByText("Write how the customer was told.").WaitForAsync();
        await engine.Locator("#found-engine-told").FillAsync("By telephone at nine: he is content");
        await engine.GetByRole(AriaRole.Button, new() { Name = "UNKNOWN, CUSTOMER TOLD", Exact = true }).ClickAsync();
        await page.GetByText("As found, engine: unknown, customer told.").WaitForAsync();
        Assert.Equal(["“By telephone at nine: he is content”"], await engine.Locator(".figures li").AllInnerTextsAsync());
        await page.IsAccessibleEverywhereAsync("intake-as-found");
        Assert.True(Shop.Read(car).State.AsFound["engine"].Fact.IsUnknown);

        await new ProcedureHands(page, Shop, car, job, DemoPeople.Chassis, DemoPeople.Engines).FinishAsync();
        var (reading, fitted) = (Shop.Read(car), Shop.Read(car).State.Jobs[job]);
        Assert.All(reading.Placed(fitted).Steps, step => Assert.Equal(StepStanding.Signed, reading.State.StandingOf(fitted, reading.Placed(fitted), step)));
        Assert.Equal([], Shop.VerifyAll());
    }
}
