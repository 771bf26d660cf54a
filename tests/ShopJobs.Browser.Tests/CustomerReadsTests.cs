using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>A summary is typed, survives a reload, is issued, and is read and confirmed by the customer on a phone without script.</summary>
[Trait("Takes", "long")]
public sealed class CustomerReadsTests : OneTabletTests
{
    private static readonly (string Name, int Width, int Height, ColorScheme Look)[] Sizes =
    [
        ("tablet", 1024, 768, ColorScheme.Light), ("tablet-dark", 1024, 768, ColorScheme.Dark),
        ("phone", 390, 844, ColorScheme.Light), ("phone-dark", 390, 844, ColorScheme.Dark),
    ];


    [Fact]
    public async Task What_is_typed_survives_a_reload_and_the_customer_confirms_what_was_issued()
    {
        var car = await Shop.CarAsync("White");
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await page.OpenAsync($"/cars/{car.Value}/summary");
        await page.Locator("#contact").FillAsync("Ninth Bay, 01632 960100");
        await page.Locator("#advice").PressAsync("Control+A");
        await page.Locator("#advice").PressSequentiallyAsync("Pads near their limit: declined on 2 March.");

        // The field was never left: the server has heard nothing of it.
        await page.ReloadAsync();
        await page.GetByText("not issued yet is back").WaitForAsync();
        Assert.Equal("Pads near their limit: declined on 2 March.", await page.Locator("#advice").InputValueAsync());
        await page.Locator(".summary-preview").GetByText("Pads near their limit").First.WaitForAsync();
        await KeepAllAsync(page, "summary-typed");

        var issue = page.Locator(".page-head .button-main");
        await issue.SignWithAsync(page, DemoPeople.Lead, "SIGN");
        await page.GetByText("is issued. Customers' links show it now.").WaitForAsync();
        await page.ReloadAsync();
        await page.Locator(".summary-preview .sheet-changes").WaitForAsync();
        Assert.Equal("Pads near their limit: declined on 2 March.", await page.Locator("#advice").InputValueAsync());
        Assert.Equal(0, await page.Locator("[data-typed-back]:visible").CountAsync());
        await page.GetByRole(AriaRole.Button, new() { Name = "Make a link" }).ClickAsync();
        var link = new Uri(await page.Locator("#made-link").InputValueAsync()).AbsolutePath;

        await ConfirmAsync(link);

        await page.OpenAsync($"/cars/{car.Value}/summary");
        await page.GetByText("Read by the customer").First.WaitForAsync();
        await page.Locator(".summary-read").GetByText("All clear <b>now</b>.").WaitForAsync();
        await KeepAllAsync(page, "summary-confirmed");
        Assert.Equal([], Shop.VerifyAll());
    }

    [Fact]
    public async Task The_lead_reads_what_goes_and_what_stays_before_a_customer_is_erased()
    {
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await page.OpenAsync("/cars");
        await page.GetByRole(AriaRole.Link, new() { Name = "Edit Benno Hask" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Give out or erase the data" }).ClickAsync();
        await page.GetByRole(AriaRole.Heading, new() { Name = "Data of Benno Hask" }).WaitForAsync();
        await page.Locator("#erase-wrong:visible").GetByText("White is here.").WaitForAsync();
        await page.RefusalsAreSeenAsync("a customer whose car is here");
        await KeepAllAsync(page, "customer-data");

        var file = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new() { Name = "Take the file" }).ClickAsync());

        Assert.Contains("Benno Hask", await File.ReadAllTextAsync(await file.PathAsync()), StringComparison.Ordinal);
    }

    // Without script, and without anything the shop put into this browser.
    private async Task ConfirmAsync(string link)
    {
        var phone = await Chromium.ContextAsync(Shop.Address, new() { ViewportSize = new() { Width = 390, Height = 844 }, HasTouch = true, JavaScriptEnabled = false });
        var page = await phone.NewPageAsync();
        await page.GotoAsync(link);
        await KeepBareAsync(page, "customer-to-confirm");
        await page.Locator("#words").FillAsync(new string('x', 1001));
        await page.GetByRole(AriaRole.Button, new() { Name = "I have read this" }).ClickAsync();
        await page.GetByText("Your words have 1,001 letters, and 1,000 fit.").WaitForAsync();
        await page.RefusalsAreSeenAsync("too many words of a customer");
        Assert.True(await page.Locator("#words-wrong").EvaluateAsync<bool>("box => { const at = box.getBoundingClientRect(); return at.top >= 0 && at.bottom <= innerHeight; }"));
        Assert.Equal(1001, (await page.Locator("#words").InputValueAsync()).Length);
        await KeepBareAsync(page, "customer-too-long");
        await page.Locator("#words").FillAsync("All clear <b>now</b>.");
        await page.GetByRole(AriaRole.Button, new() { Name = "I have read this" }).ClickAsync();
        await page.GetByRole(AriaRole.Heading, new() { Name = "You have read this page" }).WaitForAsync();
        await page.ReloadAsync();
        Assert.Equal("All clear <b>now</b>.", await page.Locator("#read blockquote").TextContentAsync());
        Assert.Equal(0, await page.Locator("form").CountAsync());
        await KeepBareAsync(page, "customer-confirmed");
        Assert.Empty(await phone.CookiesAsync());

        var button = await Chromium.ContextAsync(Shop.Address, new() { ViewportSize = new() { Width = 390, Height = 844 } });
        var checkedPage = await button.NewPageAsync();
        await checkedPage.GotoAsync(link);
        await checkedPage.IsAccessibleAsync("customer-confirmed-axe");
    }

    private static async Task KeepBareAsync(IPage page, string name)
    {
        foreach (var (size, width, height, look) in Sizes)
        {
            await page.SetViewportSizeAsync(width, height);
            await page.EmulateMediaAsync(new() { ColorScheme = look });
            await page.KeepAsync($"{name}-{size}");
        }
    }

    private static async Task KeepAllAsync(IPage page, string name)
    {
        foreach (var (size, width, height, look) in Sizes)
        {
            await page.SetViewportSizeAsync(width, height);
            await page.EmulateMediaAsync(new() { ColorScheme = look });
            await page.IsAccessibleAsync($"{name}-{size}");
        }

        await page.SetViewportSizeAsync(1024, 768);
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
    }
}
