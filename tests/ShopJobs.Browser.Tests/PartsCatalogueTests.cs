using System.Text;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>The lead hands in a file with a wrong price, the same file put right, and edits a part of it, on the screens alone.</summary>
[Trait("Takes", "long")]
public sealed class PartsCatalogueTests : OneTabletTests
{
    private const string File = "Number;Maker;Name;Price\n=X-1;Tarnwick;Rear damper;{0}\nX-2;Tarnwick;Rear spring;96,50\n";

    [Fact]
    public async Task A_file_is_refused_corrected_taken_in_found_and_edited()
    {
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await page.OpenAsync("/parts");
        await page.IsAccessibleEverywhereAsync("parts-list");
        await FitsAsync(page);
        await page.GetByRole(AriaRole.Link, new() { Name = "Import", Exact = true }).ClickAsync();
        await SendAsync(page, "abc");
        await page.GetByText("Row 2, price: “abc” is no price").WaitForAsync();
        await page.IsAccessibleEverywhereAsync("parts-file-wrong");
        await FitsAsync(page);
        await SendAsync(page, "618,00");
        await page.GetByText("2 new, 0 changed, 0 the same").WaitForAsync();
        await page.ReloadAsync();
        await page.IsAccessibleEverywhereAsync("parts-file-looked-at");
        await FitsAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Take it in" }).ClickAsync();
        await page.GetByText("Taken in.").WaitForAsync();
        await page.IsAccessibleEverywhereAsync("parts-file-taken-in");

        await page.OpenAsync("/parts");
        await page.Locator("#part-search").FillAsync("rear damper");
        await page.Keyboard.PressAsync("Enter");
        await page.GetByText("1 part.").WaitForAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "View Tarnwick =X-1" }).ClickAsync();
        await page.Locator("#part-thread").FillAsync("M12");
        await page.Locator("#part-price").FillAsync("600");
        await page.IsAccessibleEverywhereAsync("part-edited");
        await FitsAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Save the part" }).ClickAsync();
        await page.WaitForURLAsync(url => url.EndsWith("/parts", StringComparison.Ordinal));
        await page.GetByText("600.00 EUR").WaitForAsync();
    }

    // Room for a finger, a window 320 px wide, and text at 200 % on a phone.
    private static async Task FitsAsync(IPage page)
    {
        await page.SetViewportSizeAsync(320, 640);
        Assert.Empty(await page.OverflowAsync());
        Assert.Empty(await page.TooSmallAsync());
        await page.SetViewportSizeAsync(390, 844);
        await page.TextSizeAsync(32);
        Assert.Empty(await page.OverflowAsync());
        await page.TextSizeAsync(16);
        await page.SetViewportSizeAsync(1024, 768);
    }

    private static async Task SendAsync(IPage page, string price)
    {
        var text = File.Replace("{0}", price, StringComparison.Ordinal);
        await page.Locator("#parts-file").SetInputFilesAsync(new FilePayload { Name = "parts.csv", MimeType = "text/csv", Buffer = Encoding.UTF8.GetBytes(text) });
        await page.GetByRole(AriaRole.Button, new() { Name = "Look at the file" }).ClickAsync();
    }
}
