using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>The lead adds a lift, one car comes onto it and no second one, it is renamed and taken out of use, on the screens alone.</summary>
[Trait("Takes", "long")]
public sealed class PlacesTests : OneTabletTests
{
    [Fact]
    public async Task A_lift_of_the_shops_own_takes_one_car_and_the_floor_shows_the_name_it_has_now()
    {
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await page.OpenAsync("/people");
        await page.IsAccessibleEverywhereAsync("places-list");
        await page.GetByRole(AriaRole.Link, new() { Name = "Add a place" }).ClickAsync();
        await page.Locator("#place-name").FillAsync("Lift \u0410"); // Cyrillic A
        await Press(page, "Save the place");
        await page.Locator("#place-kind-wrong").GetByText("Choose what it is").WaitForAsync();
        await page.Locator("#place-kind").SelectOptionAsync("Lift");
        await Press(page, "Save the place");
        await page.Locator("#place-name-wrong").GetByText("looks like “Lift A”").WaitForAsync();
        await page.IsAccessibleEverywhereAsync("place-refused");
        await page.Locator("#place-name").FillAsync("Lift C");
        await page.Locator("#place-after").SelectOptionAsync(new SelectOptionValue { Label = "Lift B" });
        await Press(page, "Save the place");
        await page.GetByRole(AriaRole.Link, new() { Name = "Edit Lift C" }).WaitForAsync();

        // Silver comes in onto it; Grey is refused there by its name.
        await page.OpenAsync("/cars/new");
        await page.Locator("#name").FillAsync("Silver");
        await page.Locator("#model").FillAsync("Lorrick 9");
        await page.Locator("#customer").SelectOptionAsync(new SelectOptionValue { Label = "Ilka Thorne" });
        await Press(page, "Save the car");
        await page.WaitForURLAsync(url => url.EndsWith("/visit", StringComparison.Ordinal));
        await page.Locator("#come-in-km").FillAsync("61000");
        await page.Locator("#come-in-why").FillAsync("New wheels");
        await PlaceAsync(page, "Lift C");
        await Press(page, "BRING IT IN");
        await page.GetByText(new Regex("^Here since .*, Lift C")).First.WaitForAsync();
        var grey = await Shop.CarAsync("Grey");
        await page.OpenAsync($"/cars/{grey.Value}/visit");
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^Lift C Silver is there") }).ClickAsync();
        await Press(page, "MOVE IT TO LIFT C");
        await page.Locator("#move-refused").GetByText("Refused. Silver is there.").WaitForAsync();
        await page.IsAccessibleEverywhereAsync("place-taken");

        await page.OpenAsync("/people");
        await page.GetByRole(AriaRole.Link, new() { Name = "Edit Lift C" }).ClickAsync();
        await Press(page, "Take it out of use");
        await Press(page, "Take Lift C out of use now");
        await page.Locator("#retire-wrong").GetByText("Silver is there. Move it or send it away first").WaitForAsync();
        await page.RefusalsAreSeenAsync("a place that is taken");
        await page.IsAccessibleEverywhereAsync("place-in-use");
        await page.Locator("#place-name").FillAsync("Rig lift");
        await Press(page, "Save the place");
        await page.GetByRole(AriaRole.Link, new() { Name = "Edit Rig lift" }).WaitForAsync();
        await page.OpenAsync("/");
        await page.GetByRole(AriaRole.Region, new() { Name = "Rig lift" }).GetByText("Silver").WaitForAsync();
        await page.IsAccessibleEverywhereAsync("floor-three-lifts");

        // Empty, it goes out of use: offered no more, found in the book, and brought back.
        var silver = await Shop.CarAsync("Silver");
        await page.OpenAsync($"/cars/{silver.Value}/visit");
        await PlaceAsync(page, "Floor space");
        await Press(page, "MOVE IT TO FLOOR SPACE");
        await page.GetByText(new Regex("^Here since .*, Floor space")).First.WaitForAsync();
        await page.OpenAsync("/people");
        await page.GetByRole(AriaRole.Link, new() { Name = "Edit Rig lift" }).ClickAsync();
        await Press(page, "Take it out of use");
        await Press(page, "Take Rig lift out of use now");
        await page.GetByRole(AriaRole.Button, new() { Name = "Bring Rig lift back" }).WaitForAsync();
        await page.IsAccessibleEverywhereAsync("place-out-of-use");
        await page.OpenAsync($"/cars/{silver.Value}/visit");
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^Outside") }).WaitForAsync();
        Assert.Equal(0, await page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^Rig lift") }).CountAsync());
        await page.OpenAsync("/");
        Assert.Equal(0, await page.GetByRole(AriaRole.Region, new() { Name = "Rig lift" }).CountAsync());
        await page.OpenAsync($"/cars/{silver.Value}/logbook");
        await page.Locator(".entry-what > p", new() { HasText = "Moved from Rig lift to Floor space." }).WaitForAsync();
        await page.Locator(".entry-what > p", new() { HasText = "it is at Rig lift." }).WaitForAsync();
        await page.IsAccessibleAsync("logbook-places");

        // Others look and don't touch.
        var other = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        await other.GotoAsync("/people/places/new");
        await other.GetByText("This page needs a right you do not have").WaitForAsync();
        Assert.Equal([], Shop.VerifyAll());
    }

    private static Task Press(IPage page, string button) => page.GetByRole(AriaRole.Button, new() { Name = button, Exact = true }).First.ClickAsync();

    private static Task PlaceAsync(IPage page, string place) =>
        page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex($"^{place}") }).First.ClickAsync();
}
