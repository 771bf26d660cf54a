using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.TorqueTools;

namespace ShopJobs.Web.Tests.TorqueTools;

public sealed class ToolRecallTests : IAsyncLifetime, IDisposable
{
    private static readonly CarId Blue = new(Guid.Parse("b1000000-0000-4000-8000-000000000001"));
    private static readonly CarId Orange = new(Guid.Parse("b2000000-0000-4000-8000-000000000002"));
    private readonly ToolBench bench = new();

    public Task InitializeAsync() => bench.OpenAsync();

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose() => bench.Dispose();

    [Fact]
    public async Task Positions_on_every_car_are_found_and_counted_by_class()
    {
        var wrench = await bench.WrenchAsync();
        var other = await bench.WrenchAsync("W5");
        await bench.WriteAsync(LogbookId.Of(Blue), Pull(wrench, 1), Pull(wrench, 2), Pull(other, 3));
        await bench.WriteAsync(LogbookId.Of(Orange), Pull(wrench, 1), Open(1), Pull(wrench, 2));

        var cars = bench.Get<ToolRecall>().Of(wrench);

        Assert.Equal([Blue, Orange], cars.Select(car => car.Car));
        Assert.Equal([(2, 0), (1, 1)], cars.Select(car => (car.Count(TraceClass.Live), car.Count(TraceClass.VoidedSince))));
    }

    [Fact]
    public async Task From_the_doubt_on_every_position_shows_doubted_with_no_entry_on_the_car()
    {
        var wrench = await bench.WrenchAsync();
        await bench.WriteAsync(LogbookId.Of(Blue), Pull(wrench, 1));
        var desk = bench.Get<ShopJobs.Web.Desk.CarDesk>();
        Assert.NotEqual(PositionState.Doubted, desk.Read(Blue, null).StateOf(Nut(1)));

        await bench.Get<ToolShelf>().DoubtAsync(wrench, new CommandId(Guid.NewGuid()), "Clicks late");

        Assert.Equal(PositionState.Doubted, desk.Read(Blue, null).StateOf(Nut(1)));
        Assert.Equal(1, desk.Read(Blue, null).State.Number);
        var line = Assert.Single(Assert.Single(bench.Get<ToolRecall>().Of(wrench)).Lines);
        Assert.Equal((true, PositionState.Doubted), (line.Traced.InDoubt, line.State));
    }

    [Fact]
    public async Task A_wrench_that_came_back_low_says_what_each_position_truly_got()
    {
        var wrench = await bench.WrenchAsync();
        await bench.WriteAsync(LogbookId.Of(Blue), Pull(wrench, 1));
        bench.Time.Advance(TimeSpan.FromDays(1));
        await bench.SignInAsync(bench.Lead);

        await bench.CalibrateAsync(wrench, ToolBench.Today.AddDays(1), ["36.4", "100.1", "182"], "40", "110", "200");

        var line = Assert.Single(Assert.Single(bench.Get<ToolRecall>().Of(wrench)).Lines);
        var truly = Assert.IsType<TorqueReview.Known>(line.Traced.Newest.Truly);
        Assert.Equal((new EnteredTorque(100.1m, TorqueUnit.NewtonMetre), true, PositionState.Doubted), (truly.Delivered, truly.IsUnder, line.State));
    }

    [Fact]
    public async Task Pulls_since_its_calibration_are_counted_over_all_cars_each_nut_of_a_re_torque_as_one()
    {
        var wrench = await bench.WrenchAsync();
        Assert.Equal(0, bench.Get<ToolShelf>().Find(wrench)!.Pulls);
        bench.Time.Advance(TimeSpan.FromHours(1));
        await bench.WriteAsync(LogbookId.Of(Blue), Pull(wrench, 1), Pull(wrench, 2), ReTorque(wrench, 1, 2, 3));
        await bench.WriteAsync(LogbookId.Of(Orange), Pull(wrench, 1));

        Assert.Equal(6, bench.Get<ToolShelf>().Find(wrench)!.Pulls);
        Assert.Equal(6, bench.Get<ShopJobs.Web.Desk.CarDesk>().Read(Blue, null).Now.PullsWith(wrench));

        bench.Time.Advance(TimeSpan.FromDays(1));
        await bench.SignInAsync(bench.Lead);
        await bench.CalibrateAsync(wrench, ToolBench.Today.AddDays(1), null, "40", "110", "200");
        Assert.Equal(0, bench.Get<ToolShelf>().Find(wrench)!.Pulls);
    }

    [Fact]
    public async Task A_wrench_whose_pulls_are_used_up_says_so_and_in_its_last_tenth_before()
    {
        var wrench = await bench.WrenchAsync();
        var form = ToolForm.Of(wrench, bench.Get<ToolShelf>().Find(wrench)!.Tool);
        form.CycleLimit = "20";
        Assert.True((await bench.Get<ToolShelf>().SaveAsync(form)).Recorded);
        bench.Time.Advance(TimeSpan.FromHours(1));

        await bench.WriteAsync(LogbookId.Of(Blue), [.. Enumerable.Range(1, 18).Select(number => Pull(wrench, number))]);
        Assert.Equal("due in 2 pulls", bench.Get<ToolShelf>().Find(wrench)!.Standing.Words);
        await bench.WriteAsync(LogbookId.Of(Orange), Pull(wrench, 1), Pull(wrench, 2));

        var standing = bench.Get<ToolShelf>().Find(wrench)!.Standing;
        Assert.Equal(("its pulls are used up", false), (standing.Words, standing.MayBeUsed));
        var now = bench.Get<ShopJobs.Web.Desk.CarDesk>().Read(Blue, null).Now;
        Assert.True(now.IsAtItsLimit(now.Tool(wrench)));
    }

    private static Settled ReTorque(ToolId tool, params int[] numbers) => new(
        [.. numbers.Select(Nut)], new JobId(Guid.Empty), "G1", false, null, TorqueKind.SettingConfirmed, new EnteredTorque(110, TorqueUnit.NewtonMetre), tool, ToolBench.Today, []);

    private static JointPosition Nut(int number) => new("wheel.nut", "front-left", number);

    private static Opened Open(int number) => new([Nut(number)], [], [], null, null);

    private static TorqueRecorded Pull(ToolId tool, int number) => new(
        new JobId(Guid.Empty), "G1", Nut(number), 0, 1, 0, TorqueKind.SettingConfirmed, new EnteredTorque(110, TorqueUnit.NewtonMetre),
        tool, ToolBench.Today, new SpecificationInForce(1, 1, 105, 115, 110, 0.5m, null, false, RiskClass.A, IfShort.BackOff, null), [], [], []);
}
