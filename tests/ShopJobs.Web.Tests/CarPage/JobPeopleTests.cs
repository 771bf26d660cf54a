using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.CarPage;
using ShopJobs.Web.Components.Floor;
using ShopJobs.Web.Components.Procedures;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Tests.TorqueTools;

namespace ShopJobs.Web.Tests.CarPage;

public sealed class JobPeopleTests : IAsyncLifetime, IDisposable
{
    private static readonly CarId Blue = new(Guid.NewGuid());
    private readonly ToolBench bench = new();
    private JobPeople desk = default!;
    private JobId job;

    public async Task InitializeAsync()
    {
        await bench.OpenAsync();
        var owner = new Customer { Id = new CustomerId(Guid.NewGuid()), Name = "Rasmo Field" };
        await bench.RowsAsync(async shop =>
        {
            shop.Customers.Add(owner);
            shop.Cars.Add(new Car { Id = Blue, CustomerId = owner.Id, Name = "Blue", Model = "Brennock 220" });
            return await shop.SaveChangesAsync();
        });
        await bench.Get<ProcedureImport>().ImportAsync(SeedDocuments.All, bench.Lead);
        var start = bench.Get<NewJob>();
        var digest = await bench.RowsAsync(shop => shop.Procedures.Where(row => row.Code == "P5").Select(row => row.Digest).SingleAsync());
        await start.StartAsync(Blue, start.Read(Blue, digest)!, ["front-left"], "");
        job = await bench.RowsAsync(shop => shop.Jobs.Select(row => row.Id).SingleAsync());
        desk = bench.Get<JobPeople>();
    }

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose() => bench.Dispose();

    [Fact]
    public async Task Lead_puts_a_technician_on_and_the_floor_shows_it()
    {
        Assert.Null(await desk.PutOnAsync(job, null, bench.Technician));
        Assert.Null(await desk.PutOnAsync(job, null, bench.Technician));

        var car = Assert.Single((await bench.Get<FloorBoard>().ReadAsync()).Cars);
        Assert.Equal(["Jorn"], car.People.Select(person => person.Name));
        Assert.Null(car.Glance.Next!.Blocker);
        Assert.Equal(1, await bench.RowsAsync(shop => shop.Assignments.CountAsync()));
    }

    [Fact]
    public async Task Whoever_was_on_an_ended_job_is_on_it_no_more()
    {
        await desk.PutOnAsync(job, null, bench.Technician);
        var rows = bench.Get<CarRows>();
        Assert.Single(await rows.AssignedAsync(Blue));
        Assert.Equal("Blue", (await rows.OnNowAsync())[bench.Technician]);

        await bench.WriteAsync(Folders.LogbookOf(Blue), new JobEnded(job, "s"));

        Assert.Empty(await rows.AssignedAsync(Blue));
        Assert.Empty(await rows.OnNowAsync());
        Assert.Empty(Assert.Single((await bench.Get<FloorBoard>().ReadAsync()).Cars).People);
    }

    [Fact]
    public async Task Taken_off_stays_as_history_and_blocks_the_next_step_again()
    {
        await desk.PutOnAsync(job, null, bench.Technician);
        Assert.Null(await desk.TakeOffAsync(job, null, bench.Technician));

        var car = Assert.Single((await bench.Get<FloorBoard>().ReadAsync()).Cars);
        Assert.Equal(Blocker.Person, car.Glance.Next!.Blocker);
        Assert.NotNull(await bench.RowsAsync(shop => shop.Assignments.Select(row => row.To).SingleAsync()));
    }

    [Fact]
    public async Task Technician_puts_only_himself_on()
    {
        await bench.SignInAsync(bench.Technician);

        Assert.Null(await desk.PutOnAsync(job, "faces@front-left", bench.Technician));
        Assert.NotNull(await desk.PutOnAsync(job, null, bench.Lead));
    }
}
