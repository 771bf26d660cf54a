using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook.Verify;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Data;

/// <summary>
/// A shop that an earlier program wrote, with work of every kind, opens in this one. Its file and what the program that wrote
/// it said of its cars stand in Data/Older and are never changed.
/// </summary>
public sealed class OlderShopTests : IDisposable
{
    private readonly OpenShop shop = new() { OlderFile = OlderShop.Database };

    public OlderShopTests() => shop.Time.SetUtcNow(OlderShop.LookedAt);

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task Its_database_is_brought_up_to_date_and_its_door_opens()
    {
        var answer = await shop.NewBrowser().GetAsync("/healthz");

        Assert.Equal("Healthy", answer.Text);
        Assert.Empty(await shop.RowsAsync(rows => rows.Database.GetPendingMigrationsAsync()));
    }

    [Fact]
    public async Task Every_logbook_verifies_against_the_heads_it_had()
    {
        await shop.NewBrowser().GetAsync("/healthz");
        var verifier = new LogbookVerifier(shop.Services.GetRequiredService<DataFolder>().Database, EntryCodec.KeysOf);

        var report = verifier.Verify();

        Assert.Empty(report.Problems);
        Assert.Equal(OlderShop.Heads(), report.Heads.Select(head => $"{head.Key} {head.Value.Number}:{head.Value.Hash}").Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task What_is_said_of_its_cars_differs_from_then_only_where_it_is_listed()
    {
        await shop.NewBrowser().GetAsync("/healthz");
        var cars = await shop.RowsAsync(rows => rows.Cars.OrderBy(car => car.Name).Select(car => new { car.Id, car.Name }).ToListAsync());
        var desk = shop.Services.GetRequiredService<CarDesk>();

        string[] now = [.. cars.SelectMany(car => OlderShopStandings.LinesOf(car.Name, desk.Read(car.Id, null)))];

        var then = OlderShop.Standings();
        Assert.NotEmpty(then);
        Assert.Equal(
            OlderShop.Differences,
            [.. then.Except(now).Select(line => "- " + line), .. now.Except(then).Select(line => "+ " + line)]);
    }
}
