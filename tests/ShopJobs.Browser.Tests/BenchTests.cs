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

    /// <summary>The answer is in the first screen with its picture, before anything is asked, and stays in sight down to the last field.</summary>
    [Theory]
    [InlineData(390, 844)]
    [InlineData(1024, 768)]
    [Trait("Takes", "long")]
    public async Task Every_card_answers_first_and_keeps_its_answer_in_sight(int width, int height)
    {
        var tablet = await shop.Chromium.TabletAsync(shop.Address, new() { ViewportSize = new() { Width = width, Height = height }, HasTouch = true });
        var page = await ShopBrowser.SignInAsync(tablet, DemoPeople.Chassis, "/bench");
        foreach (var card in BenchCards.Groups.SelectMany(group => group.Cards))
        {
            await page.OpenAsync(BenchAddress.Of(card));
            var (answer, picture, asked) = (await BoxAsync(page, ".bench-short"), await BoxAsync(page, ".bench-answer figure svg"), await BoxAsync(page, ".bench-fields .field"));
            Assert.True(answer.Y + answer.Height <= height / 3f, $"{card.Key}: the answer ends at {answer.Y + answer.Height}.");
            Assert.True(answer.Height >= 56 && answer.Height < 100, $"{card.Key}: the answer is {answer.Height} px high.");
            Assert.True(picture.Y + picture.Height <= height, $"{card.Key}: the picture ends at {picture.Y + picture.Height}.");
            Assert.True(width > 900 ? asked.X > answer.X + (answer.Width / 2) : asked.Y > picture.Y, $"{card.Key}: it asks before it answers.");
            Assert.Equal("24px", await page.Locator(".bench-short strong").EvaluateAsync<string>("text => getComputedStyle(text).fontSize"));

            await page.Locator(".bench-fields .field").Last.ScrollIntoViewIfNeededAsync();
            answer = await BoxAsync(page, ".bench-short");
            Assert.True(answer.Y >= 0 && answer.Y + answer.Height <= height, $"{card.Key}: the answer is out of sight at the last field.");
        }
    }

    [Fact]
    public async Task A_link_to_an_answer_is_copied_and_said_to_be()
    {
        var tablet = await shop.Chromium.TabletAsync(shop.Address);
        await tablet.GrantPermissionsAsync(["clipboard-read", "clipboard-write"]);
        var page = await ShopBrowser.SignInAsync(tablet, DemoPeople.Chassis, "/bench/units?torque=47");

        await page.GetByRole(AriaRole.Button, new() { Name = "Copy link to this answer" }).ClickAsync();

        await page.GetByText("Copied.").WaitForAsync();
        Assert.Equal(new Uri(shop.Address, "/bench/units?torque=47&unit=Nm&lengths=mm").ToString(), await page.EvaluateAsync<string>("navigator.clipboard.readText()"));
    }

    private static async Task<LocatorBoundingBoxResult> BoxAsync(IPage page, string what) =>
        await page.Locator(what).First.BoundingBoxAsync() ?? throw new InvalidOperationException($"{what} is not drawn on {page.Url}.");

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
        await Assertions.Expect(answer).ToHaveTextAsync("Set 80 N·m (steps of 1 N·m). 67.8 to 91.3 N·m keeps it inside the permitted range.");
        await Assertions.Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("least=48%20lbf-ft"));
        var address = page.Url;
        await page.CloseAsync();

        var other = await shop.Chromium.TabletAsync(shop.Address);
        var reopened = await ShopBrowser.SignInAsync(other, DemoPeople.Engines, "/bench");
        await reopened.OpenAsync(address);
        await Assertions.Expect(reopened.Locator(".bench-sentence")).ToHaveTextAsync("Set 80 N·m (steps of 1 N·m). 67.8 to 91.3 N·m keeps it inside the permitted range.");
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
