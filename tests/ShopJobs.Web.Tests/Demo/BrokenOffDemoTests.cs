using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook.Verify;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Demo;

/// <summary>Furnishing the demo shop is broken off by a database that takes no entry after a number of them.</summary>
public sealed class BrokenOffDemoTests(OpenDemo undisturbed) : IClassFixture<OpenDemo>, IDisposable
{
    private readonly OpenShop shop = new();

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData(4)]
    [InlineData(61)]
    [InlineData(112)]
    public async Task Furnishing_goes_on_where_it_was_broken_off(int entries)
    {
        await BreakOffAfterAsync(entries);

        Assert.Equal($$"""{"done":{{entries}},"of":{{DemoWork.Entries}}}""", (await shop.NewBrowser().GetAsync("/start/progress")).Text);
        Assert.Equal("/start", (await shop.NewBrowser().GetAsync("/")).Path);
        var start = await shop.NewBrowser().GetAsync("/start");
        Assert.Contains("Finish the demo shop", start.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Start an empty shop", start.Text, StringComparison.Ordinal);
        var tablet = await shop.OpenDemoAsync();

        Assert.Equal("/", (await tablet.SignInAsync(DemoPeople.Lead.Name, DemoPeople.Lead.Pin)).Path);
        Assert.Equal(await CountsAsync(undisturbed.Shop), await CountsAsync(shop));
        Assert.Empty(new LogbookVerifier(shop.Services.GetRequiredService<DataFolder>().Database, EntryCodec.KeysOf).Verify().Problems);
    }

    [Fact]
    public async Task Half_furnished_shop_does_not_open_as_an_empty_one()
    {
        var late = shop.NewBrowser();
        var token = (await late.GetAsync("/start")).Page.QuerySelector("input[name=__RequestVerificationToken]")!.GetAttribute("value")!;
        await BreakOffAfterAsync(4);

        var answer = await late.PostAsync(
            "/start", ("_handler", "empty"), ("__RequestVerificationToken", token),
            ("Form.ShopName", "Bay Four"), ("Form.LeadName", "Nadja"), ("Form.Zone", "Europe/Vienna"));

        Assert.Empty(answer.Page.QuerySelectorAll(".pin-shown"));
        Assert.Equal(DemoPeople.All.Count, await shop.RowsAsync(rows => rows.People.CountAsync()));
    }

    private async Task BreakOffAfterAsync(int entries)
    {
        await shop.NewBrowser().GetAsync("/start");
        await SqlAsync(
            $"CREATE TRIGGER broken_off BEFORE INSERT ON entries WHEN (SELECT count(*) FROM entries) >= {entries} BEGIN SELECT RAISE(ABORT, 'broken off'); END");
        await shop.OpenDemoAsync();
        await SqlAsync("DROP TRIGGER broken_off");
        Assert.Equal(entries, (await CountsAsync(shop)).Entries);
    }

    private Task SqlAsync(string sql) => shop.RowsAsync(rows => rows.Database.ExecuteSqlRawAsync(sql));

    private static Task<Counts> CountsAsync(OpenShop shop) => shop.RowsAsync(async rows => new Counts(
        await rows.People.CountAsync(),
        await rows.Cars.CountAsync(),
        await rows.Tools.CountAsync(),
        await rows.Procedures.CountAsync(),
        await rows.Jobs.CountAsync(),
        await rows.Assignments.CountAsync(),
        await rows.Database.SqlQuery<int>($"SELECT count(*) AS Value FROM entries").SingleAsync(),
        await rows.Tablets.CountAsync(tablet => tablet.RevokedAt == null)));

    private sealed record Counts(int People, int Cars, int Tools, int Procedures, int Jobs, int Assignments, int Entries, int Tablets);
}
