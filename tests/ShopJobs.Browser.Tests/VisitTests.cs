using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>A car comes in, is refused to be moved, is moved all the same, is looked over, leaves and comes back, on the screens alone.</summary>
[Trait("Takes", "long")]
public sealed class VisitTests : OneTabletTests
{
    [Fact]
    public async Task A_car_comes_in_is_moved_over_a_no_is_looked_over_leaves_and_comes_again()
    {
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await page.OpenAsync("/cars/new");
        await page.Locator("#name").FillAsync("Silver");
        await page.Locator("#model").FillAsync("Lorrick 9");
        await page.Locator("#customer").SelectOptionAsync(new SelectOptionValue { Label = "Ilka Thorne" });
        await page.GetByRole(AriaRole.Button, new() { Name = "Save the car" }).ClickAsync();
        await page.WaitForURLAsync(url => url.EndsWith("/visit", StringComparison.Ordinal));
        var car = await Shop.CarAsync("Silver");
        var visit = $"/cars/{car.Value}/visit";

        // Empty, unclear, then onto a lift that is taken.
        await page.OpenAsync(visit);
        await page.GetByRole(AriaRole.Button, new() { Name = "BRING IT IN" }).ClickAsync();
        await page.GetByText("Type what the odometer shows").WaitForAsync();
        await page.Locator("#come-in-km").FillAsync("12,5");
        await page.GetByText("can be read in two ways").WaitForAsync();
        await page.IsAccessibleEverywhereAsync("visit-come-in-refused");
        await page.Locator("#come-in-km").FillAsync("61.000");
        await page.GetByText("Read as 61,000 km.").WaitForAsync();
        await page.Locator("#come-in-why").FillAsync("New wheels before the weekend");
        await PlaceAsync(page, "Lift B");
        await page.GetByRole(AriaRole.Button, new() { Name = "BRING IT IN" }).ClickAsync();
        await page.GetByText("Refused. Orange is there.").WaitForAsync();
        await PlaceAsync(page, "Floor space");
        await page.GetByRole(AriaRole.Button, new() { Name = "BRING IT IN" }).ClickAsync();
        await page.GetByText("Here since").First.WaitForAsync();
        Assert.Equal((61_000m, true), (Shop.Read(car).State.Odometer!.Value, Shop.Read(car).State.Visit!.IsOpen));

        // A wheel is opened: the move is refused, with what is loose; it has happened, and is recorded.
        await page.OpenAsync($"/cars/{car.Value}?joint=wheel.nut&place=front-left");
        await page.Locator(".open-button").ClickAsync();
        await page.GetByText("Open now").WaitForAsync();
        await page.OpenAsync(visit);
        await PlaceAsync(page, "Outside");
        await page.GetByRole(AriaRole.Button, new() { Name = "MOVE IT TO OUTSIDE" }).ClickAsync();
        await page.GetByText("Refused.").WaitForAsync();
        await page.IsAccessibleEverywhereAsync("visit-move-refused");
        Assert.Empty(Shop.Read(car).State.ToLookOver);
        await page.GetByRole(AriaRole.Button, new() { Name = "RECORD: IT WAS MOVED" }).ClickAsync();
        await page.GetByText("Write why it was moved all the same.").WaitForAsync();
        await page.Locator("#moved-why").FillAsync("Fire alarm");
        await page.GetByRole(AriaRole.Button, new() { Name = "RECORD: IT WAS MOVED" }).ClickAsync();
        await page.GetByRole(AriaRole.Heading, new() { Name = "Look it over" }).WaitForAsync();
        await page.IsAccessibleEverywhereAsync("visit-to-look-over");
        Assert.Single(Shop.Read(car).State.ToLookOver);
        await page.OpenAsync($"/cars/{car.Value}");
        await page.GetByText("It was moved while it was not to be moved.").WaitForAsync();
        await page.IsAccessibleAsync("car-moved-anyway");

        // Somebody else looks it over.
        await page.OpenAsync(visit);
        await page.Locator("#look-over-finding").FillAsync("All five nuts are off, the wheel stood on its hub");
        await page.GetByRole(AriaRole.Button, new() { Name = "SIGN: LOOKED OVER" }).SignWithAsync(page, DemoPeople.Chassis, "LOOKED OVER");
        await page.GetByRole(AriaRole.Heading, new() { Name = "Look it over" }).WaitForAsync(new() { State = WaitForSelectorState.Detached });
        Assert.Empty(Shop.Read(car).State.ToLookOver);

        // It is not let go; it has left, and is recorded. The floor shows it no more.
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^On a trailer") }).ClickAsync();
        await page.Locator("#taken-by").FillAsync("The owner");
        await page.Locator("#leave-km").FillAsync("61 001");
        await page.GetByRole(AriaRole.Button, new() { Name = "LET IT GO" }).ClickAsync();
        await page.GetByText("Refused.").WaitForAsync();
        await page.Locator("#gone-why").FillAsync("He would not wait");
        await page.GetByRole(AriaRole.Button, new() { Name = "RECORD: IT HAS LEFT" }).ClickAsync();
        await page.GetByText("Left on").First.WaitForAsync();
        await page.OpenAsync("/");
        Assert.Equal(0, await page.Locator(".car-sheet", new() { HasText = "Silver" }).CountAsync());
        await page.OpenAsync("/cars");
        await page.GetByText(new Regex("^Left on")).WaitForAsync();
        await page.IsAccessibleEverywhereAsync("cars-here-and-away");

        // It comes again, lower than before: asked, and taken with a word.
        await page.OpenAsync(visit);
        await page.Locator("#come-in-km").FillAsync("12");
        await page.Locator("#come-in-why").FillAsync("Back with its wheel");
        await PlaceAsync(page, "Floor space");
        await page.GetByRole(AriaRole.Button, new() { Name = "BRING IT IN" }).ClickAsync();
        await page.GetByText("It was at 61,001 km before").WaitForAsync();
        await page.Locator("#come-in-km-why").FillAsync("New instrument");
        await page.GetByRole(AriaRole.Button, new() { Name = "BRING IT IN" }).ClickAsync();
        await page.GetByText("Here since").First.WaitForAsync();
        await page.OpenAsync("/");
        await page.Locator(".car-sheet", new() { HasText = "Silver" }).WaitForAsync();
        await page.IsAccessibleAsync("floor-silver-again");

        await page.OpenAsync($"/cars/{car.Value}");
        await page.Locator("summary", new() { HasText = "its visits" }).ClickAsync();
        var visits = page.Locator(".visit-head");
        Assert.Equal(2, await visits.CountAsync());
        await visits.Nth(1).ClickAsync();
        await page.Locator(".visit-joints").GetByText("opened").First.WaitForAsync();
        await page.IsAccessibleEverywhereAsync("car-visits");
        await page.OpenAsync($"/cars/{car.Value}/logbook");
        await page.Locator(".entry-what > p", new() { HasText = "Recorded that the car was moved from Floor space to Outside, though it was not to be moved" }).First.WaitForAsync();
        Assert.Equal([], Shop.VerifyAll());
    }

    [Fact]
    public async Task A_released_car_is_driven_away_under_its_release()
    {
        var car = await Shop.CarAsync("White");
        Assert.Equal(ReleaseStandingKind.Stands, Shop.Read(car).StandingOf(ReleaseKind.Road).Kind);
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        await page.OpenAsync($"/cars/{car.Value}/visit");
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^Driven") }).ClickAsync();
        await page.Locator("#taken-by").FillAsync("Benno Hask");
        await page.IsAccessibleEverywhereAsync("visit-leaves");
        await page.GetByRole(AriaRole.Button, new() { Name = "LET IT GO" }).ClickAsync();
        await page.GetByText("Left on").First.WaitForAsync();

        var left = Shop.Read(car).State.Visit!.Left!;
        Assert.Equal((Shop.Read(car).StandingOf(ReleaseKind.Road).Release!.Number, 0), (left.Release!.Value, left.Against.Count));
        Assert.Equal(ReleaseStandingKind.Stands, Shop.Read(car).StandingOf(ReleaseKind.Road).Kind);
        Assert.Equal([], Shop.VerifyAll());
    }

    private static Task PlaceAsync(IPage page, string place) =>
        page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex($"^{place}") }).First.ClickAsync();
}
