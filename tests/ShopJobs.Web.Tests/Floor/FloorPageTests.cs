using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Floor;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Components.Procedures;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Tests.TorqueTools;

namespace ShopJobs.Web.Tests.Floor;

public sealed class FloorPageTests : BunitContext, IAsyncLifetime
{
    private static readonly CarId Blue = new(Guid.NewGuid());
    private readonly ToolBench bench = new();

    public FloorPageTests()
    {
        bench.Register(Services);
        SetRendererInfo(new RendererInfo("Server", true));
    }

    Task IAsyncLifetime.InitializeAsync() => bench.OpenAsync(Services);

    async Task IAsyncLifetime.DisposeAsync()
    {
        await DisposeAsync();
        bench.Dispose();
    }

    [Fact]
    public void Empty_shop_says_how_a_car_gets_here()
    {
        Assert.Contains("No car is here", Render<FloorPage>().Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Joint_opened_elsewhere_shows_without_a_reload()
    {
        await CarAsync();
        var page = Render<FloorPage>();
        Assert.Equal("Nothing going on. Move: YES", page.Find(".bay-lift .car-quiet").TextContent);
        Assert.Contains("Lift A", page.Find(".bay-lift").TextContent, StringComparison.Ordinal);

        var here = await bench.Get<WhoIsHere>().ActingAsync();
        await bench.Get<CarDesk>().RunAsync(
            Blue, new CommandId(Guid.NewGuid()), here!, new OpenPositions([new JointPosition("hub.nut", "rear-left", 1)], null, null));

        page.WaitForAssertion(() => Assert.Equal("1", Count(page, "open")));
        Assert.Equal("Move: NO", page.Find(".car-move-word").TextContent);
    }

    [Fact]
    public async Task What_the_nuts_mean_is_said_once()
    {
        await CarAsync();

        var legend = Render<FloorPage>().FindAll(".state-legend dt").Select(word => word.LastChild!.TextContent.Trim());

        Assert.Equal(Enum.GetValues<PositionState>().Select(state => PositionWords.Of(state)), legend);
    }

    private static string Count(IRenderedComponent<FloorPage> page, string word) => page.FindAll(".count-chip")
        .Single(chip => chip.QuerySelector(".count-word")!.TextContent == word).QuerySelector(".count-number")!.TextContent;

    private async Task CarAsync()
    {
        var owner = new Customer { Id = new CustomerId(Guid.NewGuid()), Name = "Rasmo Field" };
        await bench.RowsAsync(async shop =>
        {
            shop.Customers.Add(owner);
            shop.Cars.Add(new Car { Id = Blue, CustomerId = owner.Id, Name = "Blue", Model = "Brennock 220", Place = "LiftA" });
            return await shop.SaveChangesAsync();
        });
        Assert.True((await bench.Get<ProcedureImport>().ImportAsync(SeedDocuments.All, bench.Lead)).IsTaken);
    }
}
