using Bunit;
using ShopJobs.Web.Components.Cars;
using ShopJobs.Web.Tests.TorqueTools;

namespace ShopJobs.Web.Tests.Cars;

/// <summary>A car and a customer are put away and brought back on one page, without loading it again.</summary>
public sealed class PutAwayTests : BunitContext, IAsyncLifetime
{
    private readonly ToolBench bench = new();

    public PutAwayTests() => bench.Register(Services);

    Task IAsyncLifetime.InitializeAsync() => bench.OpenAsync(Services);

    async Task IAsyncLifetime.DisposeAsync()
    {
        await DisposeAsync();
        bench.Dispose();
    }

    [Fact]
    public async Task What_was_put_away_is_offered_to_come_back_at_once()
    {
        var id = await bench.CarAsync();
        var owner = await bench.RowsAsync(async shop =>
        {
            var row = shop.Cars.Single();
            row.CountsAsHere = false;
            await shop.SaveChangesAsync();
            return row.CustomerId;
        });
        var car = Render<ShopJobs.Web.Components.Cars.CarPage>(parameters => parameters.Add(page => page.Id, id.Value));
        await PressAsync(car, "Not coming back");
        await PressAsync(car, "Put Blue away now");
        car.WaitForAssertion(() => Assert.Contains(car.FindAll("button"), button => button.TextContent == "Bring Blue back"));

        var customer = Render<CustomerPage>(parameters => parameters.Add(page => page.Id, owner.Value));
        await PressAsync(customer, "Not coming back");
        await PressAsync(customer, "Put Rasmo Field away now");
        customer.WaitForAssertion(() => Assert.Contains(customer.FindAll("button"), button => button.TextContent == "Bring Rasmo Field back"));
    }

    private static Task PressAsync<T>(IRenderedComponent<T> page, string words)
        where T : Microsoft.AspNetCore.Components.IComponent =>
        page.FindAll("button").Single(button => button.TextContent == words).ClickAsync(new());
}
