using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Web.Components.PeopleAndPlaces;
using ShopJobs.Web.Data.Shop;
using ShopJobs.Web.Tests.TorqueTools;

namespace ShopJobs.Web.Tests.PeopleAndPlaces;

/// <summary>The form of a place says at each field what is wrong, and loses nothing that was typed.</summary>
public sealed class PlacePageTests : BunitContext, IAsyncLifetime
{
    private readonly ToolBench bench = new();

    public PlacePageTests() => bench.Register(Services);

    Task IAsyncLifetime.InitializeAsync() => bench.OpenAsync(Services);

    async Task IAsyncLifetime.DisposeAsync()
    {
        await DisposeAsync();
        bench.Dispose();
    }

    [Fact]
    public async Task Pressed_empty_each_field_says_what_it_needs_and_is_described_by_it()
    {
        var page = Render<PlacePage>();

        await page.Find("form").SubmitAsync(new());

        Assert.Equal("Write what the shop calls the place, for example Lift C.", Wrong(page, "place-name"));
        Assert.Equal("Choose what it is: a lift holds one car, the others several.", Wrong(page, "place-kind"));
        Assert.Equal("true", page.Find("#place-name").GetAttribute("aria-invalid"));
        Assert.All(["place-name", "place-kind"], id => Assert.Contains($"{id}-wrong", page.Find($"#{id}").GetAttribute("aria-describedby")!, StringComparison.Ordinal));
        Assert.Equal(4, (await bench.Get<PlaceDesk>().AllAsync()).Count);
    }

    [Fact]
    public async Task A_name_that_passes_for_another_is_refused_at_the_name_and_what_was_typed_stays()
    {
        var page = Render<PlacePage>();
        await page.Find("#place-name").ChangeAsync(new ChangeEventArgs { Value = "Lift \u0412" }); // Cyrillic B
        await page.Find("#place-kind").ChangeAsync(new ChangeEventArgs { Value = "Lift" });
        await page.Find("form").SubmitAsync(new());

        page.WaitForAssertion(() => Assert.StartsWith("“Lift \u0412” looks like “Lift B”, the name of another place.", Wrong(page, "place-name"), StringComparison.Ordinal));
        Assert.Equal("Lift \u0412", page.Find("#place-name").GetAttribute("value"));

        await page.Find("#place-name").ChangeAsync(new ChangeEventArgs { Value = "Lift C" });
        await page.Find("#place-after").ChangeAsync(new ChangeEventArgs { Value = "LiftA" });
        await page.Find("form").SubmitAsync(new());

        page.WaitForAssertion(() => Assert.EndsWith("/people", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal));
        Assert.Equal(["Lift A", "Lift C", "Lift B", "Floor space", "Outside"], (await bench.Get<PlaceDesk>().AllAsync()).Select(place => place.Name));
    }

    [Fact]
    public async Task A_place_out_of_use_is_listed_so_and_is_offered_to_come_back()
    {
        var page = Render<PlacePage>(parameters => parameters.Add(place => place.Key, "Floor"));
        await page.FindAll("button").Single(button => button.TextContent == "Take it out of use").ClickAsync(new());
        Assert.Null((await RowAsync("Floor")).RetiredAt);

        await page.FindAll("button").Single(button => button.TextContent == "Take Floor space out of use now").ClickAsync(new());

        page.WaitForAssertion(() => Assert.Contains(page.FindAll("button"), button => button.TextContent == "Bring Floor space back"));
        var list = Render<PlaceList>();
        Assert.Contains("out of use since 12:00", list.FindAll("tbody tr")[^1].TextContent, StringComparison.Ordinal);
        // What is typed is still saved: only the row's revision moved on.
        await page.Find("#place-name").ChangeAsync(new ChangeEventArgs { Value = "Paint booth" });
        await page.Find("form").SubmitAsync(new());
        Assert.Equal("Paint booth", (await RowAsync("Floor")).Name);
    }

    [Fact]
    public async Task A_place_where_a_car_stands_says_why_it_is_not_taken_out_of_use()
    {
        await bench.CarAsync();
        await bench.RowsAsync(async shop =>
        {
            shop.Cars.Single().Place = "LiftB";
            return await shop.SaveChangesAsync();
        });
        var page = Render<PlacePage>(parameters => parameters.Add(place => place.Key, "LiftB"));
        await page.FindAll("button").Single(button => button.TextContent == "Take it out of use").ClickAsync(new());
        await page.FindAll("button").Single(button => button.TextContent == "Take Lift B out of use now").ClickAsync(new());

        page.WaitForAssertion(() => Assert.StartsWith("Blue is there. Move it or send it away first", page.Find("#retire-wrong").TextContent, StringComparison.Ordinal));
        Assert.Equal("retire-wrong", page.FindAll("button").Single(button => button.TextContent == "Take it out of use").GetAttribute("aria-describedby"));
    }

    [Fact]
    public void A_link_to_no_place_says_so() =>
        Assert.Contains("This place is not in the book", Render<PlacePage>(parameters => parameters.Add(place => place.Key, "Nowhere")).Markup, StringComparison.Ordinal);

    private static string Wrong(IRenderedComponent<PlacePage> page, string field) => page.Find($"#{field}-wrong").TextContent.Trim();

    private async Task<PlaceRow> RowAsync(string key) => (await bench.Get<PlaceDesk>().AllAsync()).Single(place => place.Key == key);
}
