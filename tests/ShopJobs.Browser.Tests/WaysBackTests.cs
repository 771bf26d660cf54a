using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>
/// What went wrong and is put right, in a real Chromium: OPEN pressed on the wrong car, and a clock that somebody set while the program ran.
/// </summary>
public sealed class WaysBackTests : OneTabletTests
{
    private static readonly (string Name, int Width, int Height, ColorScheme Look)[] Sizes =
    [
        ("tablet", 1024, 768, ColorScheme.Light), ("desktop-dark", 1440, 900, ColorScheme.Dark), ("phone-dark", 390, 844, ColorScheme.Dark),
    ];


    [Fact]
    public async Task Open_pressed_on_the_wrong_car_is_taken_back_by_two_and_its_release_stands_again()
    {
        var car = await Shop.CarAsync("White");
        Assert.Equal(ReleaseStandingKind.Stands, Shop.Read(car).StandingOf(ReleaseKind.Road).Kind);
        var jorn = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        await jorn.OpenAsync($"/cars/{car.Value}?joint=wheel.nut&place=front-left");
        await jorn.Locator(".open-button").ClickAsync();
        await jorn.Locator(".open-sure").ClickAsync();
        var takeBack = jorn.GetByRole(AriaRole.Link, new() { Name = "Opened by mistake? Take it back" });
        await takeBack.WaitForAsync();
        await jorn.IsAccessibleAsync("opened-by-mistake");
        Assert.Equal(ReleaseStandingKind.Ended, Shop.Read(car).StandingOf(ReleaseKind.Road).Kind);

        await takeBack.ClickAsync();
        var entry = jorn.Locator(".entry.is-marked");
        await entry.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^Correct") }).ClickAsync();
        await entry.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^TAKE BACK") }).ClickAsync();
        await entry.Locator(".form-wrong").WaitForAsync();
        await jorn.IsAccessibleAsync("take-back");
        await entry.Locator("textarea").FillAsync("Wrong car: Orange was meant");
        await entry.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^TAKE BACK") }).ClickAsync();
        await jorn.Locator(".entry-waits").First.WaitForAsync();
        Assert.Equal(ReleaseStandingKind.Ended, Shop.Read(car).StandingOf(ReleaseKind.Road).Kind);
        await jorn.CloseAsync();

        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await lead.OpenAsync($"/cars/{car.Value}/logbook");
        await lead.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^Confirm it") }).ClickAsync();
        await lead.Locator("textarea").FillAsync("Looked: all five have their paint mark");
        await lead.IsAccessibleAsync("take-back-confirm");
        await lead.GetByRole(AriaRole.Button, new() { Name = "Sign as second person" }).SignWithAsync(lead, DemoPeople.Lead, "CONFIRM");
        await lead.GetByText("Taken back as never done").First.WaitForAsync();
        await lead.IsAccessibleAsync("taken-back");

        await lead.OpenAsync($"/cars/{car.Value}/release");
        await lead.IsAccessibleAsync("suspended-after-taking-back");
        Assert.Equal("NO", await lead.Locator("#road h2 strong").InnerTextAsync());
        await lead.GetByRole(AriaRole.Button, new() { Name = "I LOOKED: IT IS VALID AGAIN" }).First.SignWithAsync(lead, DemoPeople.Lead, "VALID AGAIN");
        await lead.Locator(".release-suspended").WaitForAsync(new() { State = WaitForSelectorState.Detached });
        Assert.Equal(ReleaseStandingKind.Stands, Shop.Read(car).StandingOf(ReleaseKind.Road).Kind);
        Assert.Equal([], Shop.VerifyAll());
    }

    [Fact]
    public async Task A_clock_set_back_is_said_on_every_page_until_the_lead_has_signed_the_time()
    {
        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        Shop.Clock.Off = -TimeSpan.FromDays(2);
        await lead.OpenAsync("/");
        var notice = lead.GetByText("The clock was set.");
        await notice.WaitForAsync();
        await lead.IsAccessibleAsync("floor-clock-in-doubt");
        foreach (var (name, width, height, look) in Sizes)
        {
            await lead.SetViewportSizeAsync(width, height);
            await lead.EmulateMediaAsync(new() { ColorScheme = look });
            await lead.OpenAsync("/clock");
            await lead.GetByText("The clock is in doubt").WaitForAsync();
            await lead.IsAccessibleAsync($"clock-{name}");
        }

        await lead.SetViewportSizeAsync(1024, 768);
        await lead.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
        await lead.EmulateMediaAsync(new() { Media = Media.Print });
        await lead.KeepAsync("clock-print");
        await lead.EmulateMediaAsync(new() { Media = Media.Screen });

        Shop.Clock.Off = TimeSpan.Zero;
        await lead.GetByRole(AriaRole.Button, new() { Name = "Look again" }).ClickAsync();
        await lead.GetByText("jumped ahead").WaitForAsync();
        await lead.GetByRole(AriaRole.Button, new() { Name = "The clock is right: sign" }).SignWithAsync(lead, DemoPeople.Lead, "SIGN");
        await lead.GetByText("There is nothing against it").WaitForAsync();
        await lead.IsAccessibleAsync("clock-signed");
        await notice.WaitForAsync(new() { State = WaitForSelectorState.Detached });
        await lead.GetByRole(AriaRole.Link, new() { Name = "The shop's logbook" }).ClickAsync();
        await lead.GetByText("Compared the clock with a trusted one").WaitForAsync();
        await lead.IsAccessibleAsync("shop-logbook");
        Assert.Equal([], Shop.VerifyAll());
    }
}
