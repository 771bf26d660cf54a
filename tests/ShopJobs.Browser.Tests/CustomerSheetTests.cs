using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Web.Demo;
using UglyToad.PdfPig;

namespace ShopJobs.Browser.Tests;

/// <summary>The customer's page as a customer has it in hand: its first screen on a phone, its calendar file, and its print on two papers.</summary>
[Trait("Takes", "long")]
public sealed class CustomerSheetTests : OneTabletTests
{
    private static readonly (string Paper, string Name)[] Papers = [("A4", "a4"), ("Letter", "letter")];

    private string link = "";

    [Fact]
    public async Task Answers_first_goes_into_a_calendar_and_prints_with_car_version_and_page_on_every_sheet()
    {
        await ReadOnAPhoneWithoutScriptAsync();
        await ReadWithScriptAsync();
        await PrintAsync();
        Assert.Equal([], Shop.VerifyAll());
    }

    protected override async Task BeginAsync()
    {
        var car = await Shop.CarAsync("White");
        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await lead.OpenAsync($"/cars/{car.Value}/summary");
        await lead.Locator("#declined").FillAsync("New brake discs, near their limit: declined on 1 Dec 2026.");
        await lead.Keyboard.PressAsync("Tab");
        await lead.Locator(".summary-preview").GetByText("New brake discs").First.WaitForAsync();
        await lead.Locator(".page-head .button-main").SignWithAsync(lead, DemoPeople.Lead, "SIGN");
        await lead.GetByText("is issued. Customers' links show it now.").WaitForAsync();
        await lead.GetByRole(AriaRole.Button, new() { Name = "Make a link" }).ClickAsync();
        link = new Uri(await lead.Locator("#made-link").InputValueAsync()).AbsolutePath;
        await lead.CloseAsync();
    }

    // The whole answer and what to do with it is on the first screen of a phone, and the page needs no script.
    private async Task ReadOnAPhoneWithoutScriptAsync()
    {
        var phone = await Chromium.ContextAsync(Shop.Address, new() { ViewportSize = new() { Width = 390, Height = 844 }, HasTouch = true, JavaScriptEnabled = false });
        var page = await phone.NewPageAsync();
        var asked = new List<string>();
        page.Request += (_, request) => asked.Add(request.Url);
        await page.GotoAsync(link);

        Assert.Matches(new Regex(@"^Drive on the road:\s+yes, until 48,310 km or \d+ \w{3} \d{4}\.$"), await page.Locator(".sheet-drive dl > div").First.InnerTextAsync());
        Assert.Matches(new Regex(@"^Track:\s+not yet\.$"), await page.Locator(".sheet-drive dl > div").Last.InnerTextAsync());
        foreach (var button in await page.Locator(".sheet-actions > :visible").AllAsync())
        {
            var box = (await button.BoundingBoxAsync())!;
            Assert.True(box.Y + box.Height <= 844, $"“{await button.InnerTextAsync()}” ends at {box.Y + box.Height} of 844 px.");
            Assert.True(box is { Height: >= 44, Width: >= 44 }, $"“{await button.InnerTextAsync()}” is {box.Width} by {box.Height} px.");
        }

        Assert.False(await page.GetByRole(AriaRole.Button, new() { Name = "Print" }).IsVisibleAsync());
        Assert.All(asked, url => Assert.StartsWith(Shop.Address.ToString(), url, StringComparison.Ordinal));

        var file = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new() { Name = "Add to calendar" }).ClickAsync());
        var calendar = await File.ReadAllTextAsync(await file.PathAsync());
        Assert.StartsWith("BEGIN:VCALENDAR\r\n", calendar, StringComparison.Ordinal);
        Assert.Contains("all 20 wheel nuts", calendar.Replace("\r\n ", "", StringComparison.Ordinal), StringComparison.Ordinal);

        await page.GetByText("For the record").ClickAsync();
        await page.GetByText("check code").First.WaitForAsync();
    }

    private async Task ReadWithScriptAsync()
    {
        var page = await (await Chromium.ContextAsync(Shop.Address, new() { ViewportSize = new() { Width = 1024, Height = 768 } })).NewPageAsync();
        await page.GotoAsync(link);
        await page.GetByRole(AriaRole.Button, new() { Name = "Print" }).WaitForAsync();
        await page.SetViewportSizeAsync(390, 844);
        await page.ScreenshotAsync(new() { Path = Path.Combine(Pictures.Folder, "guide-customer.png") });
        await page.IsAccessibleEverywhereAsync("customer-sheet");
        await page.GetByText("For the record").ClickAsync();
        await page.IsAccessibleEverywhereAsync("customer-sheet-record");
        foreach (var width in (int[])[320, 390])
        {
            await page.SetViewportSizeAsync(width, 844);
            Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= innerWidth"), $"The page is wider than {width} px.");
        }
    }

    // Also without script: what is folded on the screen is on the paper.
    private async Task PrintAsync()
    {
        var page = await (await Chromium.ContextAsync(Shop.Address, new() { JavaScriptEnabled = false })).NewPageAsync();
        await page.GotoAsync(link);
        foreach (var (paper, name) in Papers)
        {
            var path = Path.Combine(Pictures.Folder, $"customer-sheet-{name}.pdf");
            await page.PdfAsync(new() { Path = path, Format = paper, PreferCSSPageSize = true });
            using var print = PdfDocument.Open(path);
            var sheets = print.GetPages().ToList();
            Assert.InRange(sheets.Count, 2, 4);
            foreach (var sheet in sheets)
            {
                var words = string.Join(' ', sheet.GetWords().Select(word => word.Text));
                Assert.Contains("White, ", words, StringComparison.Ordinal);
                Assert.Matches(new Regex(@"work summary, version \d+, "), words);
                Assert.Contains($"Page {sheet.Number} of {sheets.Count}", words, StringComparison.Ordinal);
                // In points, to the next pixel of the browser.
                Assert.InRange(sheet.Height - (paper == "A4" ? 842 : 792), -1, 1);
            }

            var all = string.Join(' ', sheets.SelectMany(sheet => sheet.GetWords()).Select(word => word.Text));
            Assert.Contains("check code", all, StringComparison.Ordinal);
            Assert.DoesNotContain("Add to calendar", all, StringComparison.Ordinal);
            Assert.Equal(sheets.Count, Regex.Count(all, @"Page \d+ of \d+"));
        }
    }
}
