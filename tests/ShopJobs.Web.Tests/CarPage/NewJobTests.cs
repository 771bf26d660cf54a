using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.CarPage;
using ShopJobs.Web.Components.Procedures;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Tests.TorqueTools;

namespace ShopJobs.Web.Tests.CarPage;

/// <summary>The entry that starts a job and the job's row stand or fall together.</summary>
public sealed class NewJobTests : IAsyncLifetime, IDisposable
{
    private static readonly CarId Blue = new(Guid.NewGuid());
    private readonly ToolBench bench = new();
    private NewJob desk = default!;
    private Offer offer = default!;

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
        var report = await bench.Get<ProcedureImport>().ImportAsync(SeedDocuments.All, bench.Lead);
        Assert.True(report.IsTaken);
        desk = bench.Get<NewJob>();
        offer = desk.Read(Blue, await bench.RowsAsync(shop => shop.Procedures.Where(row => row.Code == "P5").Select(row => row.Digest).SingleAsync()))!;
    }

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose() => bench.Dispose();

    [Fact]
    public async Task Started_job_is_in_the_logbook_and_in_the_rows_under_one_id()
    {
        var answer = await desk.StartAsync(Blue, offer, ["front-left", "front-right"], "It knocks <b>in front</b>");

        Assert.True(answer.Counts);
        var job = Assert.Single(State.Jobs.Values);
        var row = await bench.RowsAsync(shop => shop.Jobs.SingleAsync());
        Assert.Equal((job.Id, Blue, bench.Lead), (row.Id, row.CarId, row.StartedBy));
        Assert.Equal(("front-left,front-right", "It knocks <b>in front</b>"), (row.Places, row.AskedFor));
        Assert.Equal(ToolBench.Noon.UtcDateTime, row.StartedAt);
        Assert.Equal(["front-left", "front-right"], job.Fact.Places);
    }

    [Fact]
    public async Task A_car_with_four_studs_is_offered_no_procedure_for_five_and_told_why()
    {
        Assert.NotEmpty(offer.Places);

        await bench.WriteAsync(new LogbookId(LogbookKind.Car, Blue.Value), new JointListChanged("four-stud", [], null, Web.Data.Logbook.NewContent.Of([1]).Digest));

        var four = desk.Read(Blue, offer.ProcedureDigest)!;
        Assert.Empty(four.Places);
        Assert.Contains("P5 works on 5 of wheel nut front-left; this car has 4", four.Against.Select(said => said.Words));
    }

    [Fact]
    public async Task Refused_start_leaves_no_row()
    {
        await bench.SignInAsync(bench.Technician);

        var answer = await desk.StartAsync(Blue, offer, ["front-left"], "");

        Assert.Contains(answer.Reasons, reason => reason.Reason == HoldReason.NoRight);
        await NothingThereAsync();
    }

    [Fact]
    public async Task Without_a_place_nothing_starts()
    {
        var answer = await desk.StartAsync(Blue, offer, [], "");

        Assert.False(answer.Recorded);
        await NothingThereAsync();
    }

    [Fact]
    public async Task Row_that_cannot_be_written_takes_the_entry_with_it()
    {
        // The row names a procedure that no row has, so its foreign key refuses it: a fault of the program, thrown on.
        await Assert.ThrowsAsync<SqliteException>(
            () => desk.StartAsync(Blue, offer with { ProcedureDigest = new string('0', 64) }, ["front-left"], ""));

        await NothingThereAsync();
    }

    [Fact]
    public async Task Nobody_signed_in_starts_nothing()
    {
        bench.SignOut();

        Assert.NotNull((await desk.StartAsync(Blue, offer, ["front-left"], "")).NotSaved);
        await NothingThereAsync();
    }

    private CarState State => bench.Get<CarDesk>().Read(Blue, null).State;

    private async Task NothingThereAsync()
    {
        Assert.Equal(0, State.Number);
        Assert.Empty(await bench.RowsAsync(shop => shop.Jobs.ToListAsync()));
    }
}
