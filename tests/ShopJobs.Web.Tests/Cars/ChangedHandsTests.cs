using Bunit;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Web.Components.Cars;
using ShopJobs.Web.Components.Summaries;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Shop;
using ShopJobs.Web.Tests.Shop;
using CarChangePage = ShopJobs.Web.Components.Cars.CarPage;

namespace ShopJobs.Web.Tests.Cars;

/// <summary>What the car's form and the list of links say when a car gets another owner.</summary>
public sealed class ChangedHandsTests : BunitContext, IAsyncLifetime
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private ShopOnDisk shop = default!;
    private Car blue = default!;
    private CustomerForm buyer = default!;

    private CustomerDesk Desk => shop.Get<CustomerDesk>();

    private LinkDesk Links => shop.Get<LinkDesk>();

    public async Task InitializeAsync()
    {
        shop = await ShopOnDisk.OpenAsync();
        await shop.SignInAsync(DemoPeople.Lead);
        Services.AddSingleton(Desk).AddSingleton(Links).AddSingleton(shop.Get<ShopClock>());
        Services.AddSingleton(shop.Get<LinkAddress>()).AddSingleton(shop.Get<IConfiguration>());
        buyer = new CustomerForm { Name = "The next owner" };
        Assert.Null(await Desk.SaveAsync(buyer));
        blue = (await Desk.CarsAsync()).Single(car => car.Name == DemoCars.Blue.Name);
    }

    async Task IAsyncLifetime.DisposeAsync()
    {
        await DisposeComponentsAsync();
        await base.DisposeAsync();
        shop.Dispose();
    }

    [Theory]
    [InlineData(1, "the customer's link made for the owner before ends when you save")]
    [InlineData(3, "3 customer's links made for the owner before end when you save")]
    public async Task The_form_says_before_saving_what_ends(int made, string said)
    {
        await MakeAsync(made);
        var page = Page();
        Assert.DoesNotContain("changes hands", page.Markup, StringComparison.Ordinal);

        await page.Find("#customer").ChangeAsync(new() { Value = buyer.Id.Value.ToString() });

        Assert.Contains(said, page.Find(".form [role=status]").TextContent, StringComparison.Ordinal);
        Assert.All(await Links.OfAsync(blue.Id), link => Assert.Null(link.RevokedAt));
        await page.Find("#customer").ChangeAsync(new() { Value = blue.CustomerId.Value.ToString() });
        Assert.DoesNotContain("changes hands", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Until_when_it_was_the_owner_s_before_is_kept_once_for_each_change()
    {
        var before = blue.CustomerId;
        var form = CarForm.Of(blue);
        form.Note = "Same owner.";
        Assert.Null(await Desk.SaveAsync(form));
        Assert.Empty(await shop.RowsAsync(rows => rows.OwnersBefore.ToListAsync()));

        form = CarForm.Of((await Desk.CarsAsync()).Single(car => car.Id == blue.Id));
        form.Customer = buyer.Id.Value.ToString();
        Assert.Null(await Desk.SaveAsync(form));

        var row = Assert.Single(await shop.RowsAsync(rows => rows.OwnersBefore.ToListAsync()));
        Assert.Equal((blue.Id, before, shop.Time.GetUtcNow().UtcDateTime), (row.CarId, row.CustomerId, row.Until));
    }

    [Fact]
    public async Task Without_an_open_link_it_says_nothing_of_links()
    {
        await MakeAsync(1);
        shop.Time.Advance(TimeSpan.FromDays(30));
        await shop.SignInAsync(DemoPeople.Lead);
        var page = Page();

        await page.Find("#customer").ChangeAsync(new() { Value = buyer.Id.Value.ToString() });

        Assert.DoesNotContain("changes hands", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_list_of_links_says_which_ended_with_the_owner_and_which_were_taken_back()
    {
        await MakeAsync(1);
        Assert.Null(await Links.RevokeAsync((await Links.OfAsync(blue.Id))[0].Id));
        shop.Time.Advance(TimeSpan.FromMinutes(1));
        await MakeAsync(1);
        var page = Page();
        await page.Find("#customer").ChangeAsync(new() { Value = buyer.Id.Value.ToString() });
        await page.Find("form").SubmitAsync();

        var lines = Render<LinkList>(list => list.Add(l => l.Car, blue.Id)).FindAll(".summary-issued li").Select(line => line.TextContent.Trim());

        Assert.Equal(["Made 2 Mar 2026. Ended 2 Mar 2026: the car changed hands.", "Made 2 Mar 2026. Taken back 2 Mar 2026."], lines);
    }

    [Fact]
    public async Task A_change_that_leaves_the_owner_ends_no_link()
    {
        await MakeAsync(1);
        var form = CarForm.Of(blue);
        form.Note = "New plates";

        Assert.Null(await Desk.SaveAsync(form));

        Assert.Null((await Links.OfAsync(blue.Id)).Single().RevokedAt);
    }

    [Fact]
    public async Task A_change_that_is_not_saved_ends_no_link()
    {
        await MakeAsync(1);
        var late = CarForm.Of(blue);
        late.Customer = buyer.Id.Value.ToString();
        Assert.Null(await Desk.SaveAsync(CarForm.Of(blue)));

        Assert.Contains("meanwhile", await Desk.SaveAsync(late), StringComparison.Ordinal);

        Assert.Null((await Links.OfAsync(blue.Id)).Single().RevokedAt);
    }

    [Fact]
    public async Task The_links_of_another_car_stay()
    {
        var other = (await Desk.CarsAsync()).First(car => car.Id != blue.Id);
        Assert.NotNull((await Links.MakeAsync(other.Id, 30)).Token);
        var form = CarForm.Of(blue);
        form.Customer = buyer.Id.Value.ToString();

        Assert.Null(await Desk.SaveAsync(form));

        Assert.Null((await Links.OfAsync(other.Id)).Single().RevokedAt);
    }

    private async Task MakeAsync(int links)
    {
        for (var made = 0; made < links; made++)
        {
            Assert.NotNull((await Links.MakeAsync(blue.Id, 30)).Token);
        }
    }

    private IRenderedComponent<CarChangePage> Page()
    {
        var page = Render<CarChangePage>(parameters => parameters.Add(p => p.Id, blue.Id.Value));
        page.WaitForElement("#customer", Patience);
        return page;
    }
}
