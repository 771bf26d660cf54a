using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.CarPage;
using ShopJobs.Web.Components.Cars;
using ShopJobs.Web.Components.Procedures;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Procedures;

public sealed class ProcedureRetirementTests : IAsyncLifetime
{
    private ShopOnDisk shop = default!;
    private CarId blue;

    private ProcedureRetirement Retirement => shop.Get<ProcedureRetirement>();

    public async Task InitializeAsync()
    {
        shop = await ShopOnDisk.OpenAsync();
        await shop.RowsAsync(async rows => await rows.Procedures.ExecuteDeleteAsync() + await rows.JointRegisters.ExecuteDeleteAsync());
        Assert.True((await shop.Get<ProcedureImport>().ImportAsync([Documents.Register, Documents.WheelFitUp], by: null)).IsTaken);
        await shop.SignInAsync(DemoPeople.Lead);
        blue = (await shop.Get<CustomerDesk>().CarsAsync()).Single(car => car.Name == "Blue").Id;
    }

    public Task DisposeAsync()
    {
        shop.Dispose();
        return Task.CompletedTask;
    }

    [Fact]
    public async Task Retired_procedure_is_not_offered_and_refused_while_a_running_job_keeps_it()
    {
        var digest = await DigestAsync();
        var offer = shop.Get<NewJob>().Read(blue, digest)!;
        Assert.True((await StartAsync(offer, "front-left")).Recorded);

        Assert.Null(await Retirement.SetAsync(digest, retired: true));

        Assert.Empty(await shop.Get<CarRows>().ProceduresAsync());
        var refused = await StartAsync(offer, "front-right");
        Assert.Equal((HoldReason.ProcedureRetired, "P5 is retired and goes on no new car"), (refused.Reasons.Single().Reason, refused.Reasons.Single().Words));
        var reading = shop.Get<CarDesk>().Read(blue, null);
        Assert.NotEmpty(reading.Placed(Assert.Single(reading.State.RunningJobs)).Steps);
    }

    [Fact]
    public async Task Brought_back_it_goes_on_cars_again()
    {
        var digest = await DigestAsync();
        await Retirement.SetAsync(digest, retired: true);

        Assert.Null(await Retirement.SetAsync(digest, retired: false));

        Assert.Single(await shop.Get<CarRows>().ProceduresAsync());
        Assert.True((await StartAsync(shop.Get<NewJob>().Read(blue, digest)!, "front-left")).Recorded);
    }

    [Fact]
    public async Task A_new_revision_and_an_older_one_made_current_take_it_back_in_use()
    {
        var older = await DigestAsync();
        await Retirement.SetAsync(older, retired: true);
        var newer = Documents.WheelFitUp.With("revision: \"2\"\ndemo-data", "revision: \"3\"\ndemo-data");

        await shop.Get<ProcedureImport>().ImportAsync([newer], by: null);
        Assert.Equal("3", Assert.Single(await shop.Get<CarRows>().ProceduresAsync()).Revision);
        Assert.Equal("A newer revision is current. Load the list of procedures again.", await Retirement.SetAsync(older, retired: true));

        await shop.Get<ProcedureImport>().ImportAsync([Documents.WheelFitUp], by: null);
        Assert.Equal("2", Assert.Single(await shop.Get<CarRows>().ProceduresAsync()).Revision);
    }

    [Fact]
    public async Task Only_an_author_retires_one()
    {
        await shop.SignInAsync(DemoPeople.All.First(person => !person.Rights.Contains(Right.Author)));

        Assert.Contains("author's right", await Retirement.SetAsync(await DigestAsync(), retired: true), StringComparison.Ordinal);
        Assert.Single(await shop.Get<CarRows>().ProceduresAsync());
    }

    private Task<string> DigestAsync() => shop.RowsAsync(rows => rows.Procedures.Select(row => row.Digest).SingleAsync());

    private Task<DeskAnswer> StartAsync(Offer offer, string place) => shop.Get<NewJob>().StartAsync(blue, offer, [place], "");
}
