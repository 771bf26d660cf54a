using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Components.Bench;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>The bench in a real Chromium: every card can be read by everybody, fits a phone, and is opened again from its address.</summary>
public sealed class BenchTests(BenchTests.Shop shop) : IClassFixture<BenchTests.Shop>
{
    [Fact]
    [Trait("Takes", "long")]
    public async Task Every_card_is_accessible_and_fits_a_phone()
    {
        var phone = await shop.Chromium.TabletAsync(shop.Address, new() { ViewportSize = new() { Width = 390, Height = 844 }, HasTouch = true });
        var page = await ShopBrowser.SignInAsync(phone, DemoPeople.Chassis, "/bench");
        await page.IsAccessibleAsync("bench");

        foreach (var card in BenchCards.Groups.SelectMany(group => group.Cards))
        {
            await page.OpenAsync(BenchAddress.Of(card));
            await page.Locator(".bench-sentence").WaitForAsync();
            await page.IsAccessibleAsync($"bench-{card.Key}");
            var wider = await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
            Assert.True(wider <= 0, $"{card.Key} is {wider} px wider than the phone.");
        }
    }

    [Fact]
    public async Task What_is_typed_stands_in_the_address_and_another_person_sees_the_same_answer()
    {
        var tablet = await shop.Chromium.TabletAsync(shop.Address);
        var page = await ShopBrowser.SignInAsync(tablet, DemoPeople.Chassis, "/bench/target");
        await page.Locator("main.page:not(.is-asleep) #bench-least").FillAsync("<b>-1e9</b>");
        await page.Locator("#bench-least-wrong:visible span").WaitForAsync();
        await page.RefusalsAreSeenAsync("a torque that is no number");
        await page.Locator("#bench-least").FillAsync("48 lbf-ft");
        var answer = page.Locator(".bench-sentence");
        await Assertions.Expect(answer).ToHaveTextAsync("Set 80 N·m: 67.8 N·m to 91.3 N·m is safe.");
        await Assertions.Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("least=48%20lbf-ft"));
        var address = page.Url;
        await page.CloseAsync();

        var other = await shop.Chromium.TabletAsync(shop.Address);
        var reopened = await ShopBrowser.SignInAsync(other, DemoPeople.Engines, "/bench");
        await reopened.OpenAsync(address);
        await Assertions.Expect(reopened.Locator(".bench-sentence")).ToHaveTextAsync("Set 80 N·m: 67.8 N·m to 91.3 N·m is safe.");
        await Assertions.Expect(reopened.Locator("label[for=bench-least] .bench-chip")).ToHaveCountAsync(0);
        await Assertions.Expect(reopened.Locator("label[for=bench-greatest] .bench-chip")).ToHaveCountAsync(1);
    }

    /// <summary>The furnished shop as a process, and a browser.</summary>
    public sealed class Shop : IAsyncLifetime
    {
        private DemoFolder folder = default!;
        private ShopServer server = default!;

        public ShopBrowser Chromium { get; private set; } = default!;

        public Uri Address => server.Address;

        public async Task InitializeAsync()
        {
            folder = await DemoFolder.MakeAsync();
            server = await ShopServer.StartAsync(folder.Folder);
            Chromium = await ShopBrowser.StartAsync();
        }

        public async Task DisposeAsync()
        {
            await Chromium.DisposeAsync();
            await server.DisposeAsync();
            await folder.DisposeAsync();
        }
    }
}
