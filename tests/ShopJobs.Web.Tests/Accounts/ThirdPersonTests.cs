using Microsoft.EntityFrameworkCore;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Tests.Shop;
using ShopJobs.Web.Tests.Summaries;

namespace ShopJobs.Web.Tests.Accounts;

public sealed class ThirdPersonTests : IAsyncLifetime
{
    private const string OnTheSummary = "This shop has no third person: nobody independent of whoever did the work has looked at it.";

    private ShopOnDisk shop = default!;

    private Task<string?> MissingAsync() => shop.Get<ThirdPerson>().MissingAsync();

    public async Task InitializeAsync()
    {
        shop = await ShopOnDisk.OpenAsync();
        await shop.SignInAsync(DemoPeople.Lead);
    }

    public Task DisposeAsync()
    {
        shop.Dispose();
        return Task.CompletedTask;
    }

    [Fact]
    public async Task A_shop_with_a_third_person_says_nothing()
    {
        await TieAsync(DoorEvent.PersonAdded, DemoPeople.Engines, DemoPeople.Lead);

        Assert.Null(await MissingAsync());
        Assert.DoesNotContain(OnTheSummary, await CautionsAsync());
    }

    [Fact]
    public async Task A_lead_and_one_technician_he_added_are_told_and_the_summary_says_so()
    {
        await TieAsync(DoorEvent.PersonAdded, DemoPeople.Engines, DemoPeople.Lead);
        await OnlyAsync(DemoPeople.Lead, DemoPeople.Engines);

        Assert.Equal(ThirdPerson.TwoTied, await MissingAsync());
        Assert.Contains(OnTheSummary, await CautionsAsync());
    }

    [Fact]
    public async Task Two_that_a_third_confirmed_before_he_left_are_not()
    {
        await TieAsync(DoorEvent.PersonAdded, DemoPeople.Engines, DemoPeople.Lead);
        await TieAsync(DoorEvent.PersonConfirmed, DemoPeople.Engines, DemoPeople.Chassis);
        await OnlyAsync(DemoPeople.Lead, DemoPeople.Engines);

        Assert.Null(await MissingAsync());
    }

    [Fact]
    public async Task One_person_alone_is_told()
    {
        await OnlyAsync(DemoPeople.Lead);

        Assert.Equal(ThirdPerson.OneAlone, await MissingAsync());
    }

    private async Task<IReadOnlyList<string>> CautionsAsync() =>
        (await (await SummaryBench.SetUpAsync(shop.Services)).DraftAsync()).Page.Cautions;

    private async Task TieAsync(DoorEvent what, DemoPeople.DemoPerson person, DemoPeople.DemoPerson by)
    {
        var (id, doer) = (await shop.IdOfAsync(person.Name), await shop.IdOfAsync(by.Name));
        await shop.RowsAsync(async rows =>
        {
            rows.Note(what, shop.Time.GetUtcNow().UtcDateTime, id, shop.Tablet, doer);
            return await rows.SaveChangesAsync();
        });
    }

    private Task OnlyAsync(params DemoPeople.DemoPerson[] people)
    {
        var names = people.Select(person => person.Name).ToList();
        return shop.RowsAsync(rows => rows.People.Where(person => !names.Contains(person.Name))
            .ExecuteUpdateAsync(row => row.SetProperty(person => person.Active, false)));
    }
}
