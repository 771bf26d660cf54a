using ShopJobs.Web.Components.Summaries;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Summaries;

public sealed class LinkShelfTests : IAsyncLifetime
{
    private ShopOnDisk shop = default!;
    private SummaryBench bench = default!;

    public async Task InitializeAsync()
    {
        shop = await ShopOnDisk.OpenAsync();
        bench = await SummaryBench.SetUpAsync(shop.Services);
        await shop.SignInAsync(DemoPeople.Lead);
    }

    public Task DisposeAsync()
    {
        shop.Dispose();
        return Task.CompletedTask;
    }

    [Fact]
    public async Task Opens_until_its_last_second_and_not_after()
    {
        var made = await shop.Get<LinkDesk>().MakeAsync(bench.Car, 30);
        shop.Time.Advance(TimeSpan.FromDays(30) - TimeSpan.FromSeconds(1));
        Assert.Equal(bench.Car, await shop.Get<LinkShelf>().OpenAsync(made.Token));

        shop.Time.Advance(TimeSpan.FromSeconds(1));

        Assert.Null(await shop.Get<LinkShelf>().OpenAsync(made.Token));
    }

    [Fact]
    public async Task One_link_taken_back_leaves_the_other()
    {
        var first = await shop.Get<LinkDesk>().MakeAsync(bench.Car, 30);
        shop.Time.Advance(TimeSpan.FromMinutes(1));
        var second = await shop.Get<LinkDesk>().MakeAsync(bench.Car, 30);

        Assert.Null(await shop.Get<LinkDesk>().RevokeAsync((await shop.Get<LinkDesk>().OfAsync(bench.Car))[1].Id));

        Assert.Null(await shop.Get<LinkShelf>().OpenAsync(first.Token));
        Assert.Equal(bench.Car, await shop.Get<LinkShelf>().OpenAsync(second.Token));
    }

    [Theory]
    [InlineData("http://127.0.0.1:5000/", null, "http://127.0.0.1:5000/s/abc")]
    [InlineData("http://127.0.0.1:5000/", "https://pages.example", "https://pages.example/s/abc")]
    public void The_link_starts_with_the_customers_address(string here, string? set, string link)
    {
        var configuration = new Microsoft.Extensions.Configuration.ConfigurationManager { [LinkAddress.Setting] = set };

        Assert.Equal(link, new LinkAddress(configuration).Of("abc", here));
    }
}
