using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>The demo shop's floor and the page of its car with two jobs, at a desk and on a phone.</summary>
[Trait("Takes", "long")]
public sealed class CarOnOneScreenTests : OneTabletTests
{
    private const int OneScreen = 900;
    private const int PhoneAtMost = 2500;

    [Fact]
    public async Task A_car_with_two_jobs_is_one_screen_at_a_desk_and_short_on_a_phone_and_has_one_button_among_its_steps()
    {
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await page.OpenAsync("/");
        var blue = await HrefAsync(page, "Blue");
        await page.OpenAsync(blue);
        await page.Locator(".step-grid").First.WaitForAsync();

        Assert.Equal(1, await page.Locator(".car-page a.button[href*='/steps/']").CountAsync());
        Assert.Equal(58, await page.Locator("a.step-cell").CountAsync());
        Assert.Equal(1, await page.Locator("a.step-cell.is-next").CountAsync());
        await page.IsAccessibleEverywhereAsync("car-blue");
        await page.SetViewportSizeAsync(1440, OneScreen);
        Assert.InRange(await HeightAsync(page), 0, OneScreen);
        await page.SetViewportSizeAsync(390, 844);
        Assert.InRange(await HeightAsync(page), 0, PhoneAtMost);
    }

    [Fact]
    public async Task The_cars_colour_is_the_edge_of_every_page_about_it_and_its_joints_are_drawn_from_above()
    {
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await page.OpenAsync("/");
        Assert.Equal(0, await page.Locator(".car-edge").CountAsync());
        await page.Locator(".car-sheet .above.is-compact svg[aria-label*='front-right 1 held']").WaitForAsync();
        await page.IsAccessibleEverywhereAsync("floor-from-above");

        var orange = await HrefAsync(page, "Orange");
        foreach (var of in new[] { "", "/logbook", "/release", "/results", "/visit", "/joints", "/change", "/summary" })
        {
            await page.OpenAsync(orange + of);
            var edge = await page.Locator(".car-edge").EvaluateAsync<double[]>("e => [e.getBoundingClientRect().width, e.getBoundingClientRect().height - innerHeight]");
            Assert.Equal([16.0, 0.0], edge);
            Assert.Equal("rgb(226, 122, 27)", await page.Locator(".car-edge").EvaluateAsync<string>("e => getComputedStyle(e).backgroundColor"));
        }

        await page.OpenAsync(orange + "?joint=wheel.nut&place=front-right");
        await page.Locator(".joint-panel .above-marked").First.WaitForAsync();
        await page.IsAccessibleEverywhereAsync("joint-from-above");
    }

    private static async Task<string> HrefAsync(IPage page, string car) =>
        (await page.Locator("a.car-sheet-name", new() { HasText = car }).First.GetAttributeAsync("href"))!;

    private static Task<int> HeightAsync(IPage page) => page.EvaluateAsync<int>("document.documentElement.scrollHeight");
}
