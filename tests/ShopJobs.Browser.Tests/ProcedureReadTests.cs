using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>A procedure is read at every size: pattern beside the figures, one caution a step in yellow, nothing wider than the screen.</summary>
[Trait("Takes", "long")]
public sealed class ProcedureReadTests : OneTabletTests
{
    [Theory]
    [InlineData("P3")]
    [InlineData("P6")]
    public async Task Pattern_and_figures_are_read_at_every_size(string code)
    {
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/procedures");
        await page.GetByRole(AriaRole.Link, new() { NameRegex = new($"^{code} ") }).ClickAsync();
        await page.Locator(".stage-table").First.WaitForAsync();

        await page.IsAccessibleEverywhereAsync($"procedure-{code}");

        await page.SetViewportSizeAsync(390, 844);
        Assert.False(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth > document.documentElement.clientWidth"));
        Assert.Equal(1, await page.Locator(".demo-data").CountAsync());
        Assert.True(await page.Locator("section.step-panel").CountAsync() >= await page.Locator("section.step-panel .door-note").CountAsync());
    }
}
