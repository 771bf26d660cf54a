using System.Text;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>A technician photographs a car at the tablet; somebody else's tablet sees it arrive.</summary>
[Trait("Takes", "long")]
public sealed class PhotosTests : OneTabletTests
{
    [Fact]
    public async Task Two_views_are_photographed_and_seen_a_bad_file_is_refused_and_one_is_taken_back()
    {
        var car = await Shop.CarAsync("Orange");
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        await page.OpenAsync($"/cars/{car.Value}");
        await page.GetByRole(AriaRole.Link, new() { Name = "Photos 0 of 8" }).ClickAsync();
        await page.GetByText("0 of 8").First.WaitForAsync();
        await page.IsAccessibleEverywhereAsync("photos-empty");

        await PickAsync(page, "Front", "front.jpg", DemoPhotos.Draw(CarView.Front, new(0x2E, 0x7D, 0x4F)));
        await page.Locator(".photo-tile.is-front img").WaitForAsync();
        await PickAsync(page, "Left", "left.jpg", DemoPhotos.Draw(CarView.Left, new(0x2E, 0x7D, 0x4F)));
        await page.Locator(".photo-tile.is-left-side img").WaitForAsync();
        await page.GetByText("2 of 8").First.WaitForAsync();
        await page.WaitForFunctionAsync("[...document.querySelectorAll('.photo-tile img')].every(image => image.complete && image.naturalWidth === 320)");
        Assert.Equal([CarView.Front, CarView.Left], Shop.Read(car).State.PhotosByView.Keys.Order());

        // A page with a picture's name.
        await PickAsync(page, "Rear", "rear.jpg", Encoding.UTF8.GetBytes("<!DOCTYPE html><script>alert(1)</script>"));
        await page.Locator(".photo-tile.is-rear .photo-said", new() { HasText = "Not saved: That is no photograph" }).WaitForAsync();
        await page.IsAccessibleEverywhereAsync("photos-refused");
        Assert.Equal(2, Shop.Read(car).State.Photos.Count);

        await page.Locator("#photo-caption").FillAsync("Dent in the left sill");
        await PickAsync(page, "other", "dent.jpg", DemoPhotos.Draw(CarView.Rear, new(0x2E, 0x7D, 0x4F)));
        await page.Locator(".photo-list").GetByText("Dent in the left sill").WaitForAsync();

        await page.Locator(".photo-tile.is-left-side .photo-picture").ClickAsync();
        await page.Locator("#photo").GetByText(DemoPeople.Chassis.Name).WaitForAsync();
        await page.IsAccessibleEverywhereAsync("photo-large");
        await page.GetByRole(AriaRole.Button, new() { Name = "Taken by mistake" }).ClickAsync();
        await page.Locator("#photo-why").FillAsync("That is the other car");
        await page.GetByRole(AriaRole.Button, new() { Name = "VOID THIS PHOTOGRAPH" }).ClickAsync();
        await page.GetByText("The photograph is void.").WaitForAsync();
        await page.GetByText("1 of 8").First.WaitForAsync();
        Assert.Equal([], Shop.VerifyAll());
    }

    [Fact]
    public async Task A_picture_that_could_not_be_sent_is_kept_and_sent_again_and_a_second_tablet_sees_it_arrive()
    {
        var car = await Shop.CarAsync("Grey");
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        var watching = await ShopBrowser.SignInAsync(await SecondTabletAsync(), DemoPeople.Engines, "/");
        await watching.OpenAsync($"/cars/{car.Value}/photos");
        await page.OpenAsync($"/cars/{car.Value}/photos");

        await page.RouteAsync("**/photos", route => route.Request.Method == "POST" ? route.AbortAsync() : route.ContinueAsync());
        await PickAsync(page, "Rear", "rear.jpg", DemoPhotos.Draw(CarView.Rear, new(0x83, 0x88, 0x8C)));
        await page.Locator(".photo-tile.is-rear .photo-said", new() { HasText = "Not saved: the server can't be reached" }).WaitForAsync();
        Assert.Empty(Shop.Read(car).State.Photos);

        await page.UnrouteAllAsync();
        await page.Locator(".photo-tile.is-rear .photo-again").ClickAsync();
        await page.Locator(".photo-tile.is-rear img").WaitForAsync();
        await watching.Locator(".photo-tile.is-rear img").WaitForAsync();

        Assert.Single(Shop.Read(car).State.Photos);
    }

    private async Task<IBrowserContext> SecondTabletAsync()
    {
        var second = await Chromium.ContextAsync(Shop.Address, new() { ViewportSize = new() { Width = 1024, Height = 768 } });
        var page = await second.NewPageAsync();
        await page.GotoAsync("/enrol");
        await page.Locator("#tablet-name").FillAsync("Second tablet");
        await page.Locator("#lead-name").FillAsync(DemoPeople.Lead.Name);
        await page.Locator("input[name='Form.Pin']").FillAsync(DemoPeople.Lead.Pin);
        await page.GetByRole(AriaRole.Button, new() { Name = "Enrol this tablet" }).ClickAsync();
        await page.WaitForURLAsync(url => url.Contains("/sign-in", StringComparison.Ordinal));
        await page.CloseAsync();
        return second;
    }

    private static Task PickAsync(IPage page, string view, string name, byte[] bytes) => page.Locator($"form[data-photo={view}] input[type=file]")
        .SetInputFilesAsync(new FilePayload { Name = name, MimeType = "image/jpeg", Buffer = bytes });
}
