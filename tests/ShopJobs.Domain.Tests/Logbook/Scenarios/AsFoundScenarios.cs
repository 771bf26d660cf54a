using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook.Scenarios;

/// <summary>A strut came out before anybody had counted its clicks; the customer asked for the old setting back, and nobody knew it.</summary>
public class AsFoundScenarios
{
    private static readonly ResultKind Sheet = new("wheels", "wheels")
    {
        Measures = [new Measure("tread", "Tread", "mm", null, null)],
        Notes = [new ResultNote("tyres", "Tyres", ["road", "track"], false)],
    };

    private readonly CarAtWork car = new(register: TestRegister.With(5) with { AsFound = new Dictionary<string, ResultKind> { ["wheels"] = Sheet } });

    private IReadOnlyList<JointPosition> Nuts => car.Positions(TestRegister.Nut, TestRegister.Left);

    [Fact]
    public void A_step_that_opens_a_system_waits_until_it_is_written_down_how_it_was_found()
    {
        Come();
        var job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Left);

        var hold = Assert.Single(Before(job), point => point.Reason == HoldReason.AsFoundMissing);
        Assert.Equal("wheels", hold.Name);

        car.Do(Tess, new RecordAsFound("wheels", [new MeasuredValue("tread", 4.2m, "mm")]) { Notes = [new WrittenNote("tyres", "track")] });
        Assert.DoesNotContain(Before(job), point => point.Reason == HoldReason.AsFoundMissing);
    }

    [Fact]
    public void Opened_all_the_same_the_logbook_says_what_is_lost_and_the_wheel_is_closed_and_counts()
    {
        Come();
        var job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Left);

        var opened = Open(job, [.. Nuts]);

        Assert.Equal(["wheels"], opened.Unseen);
        Assert.DoesNotContain(Before(job), point => point.Reason == HoldReason.AsFoundMissing);
        Assert.Null(Open(job, Nuts[0]).Unseen);
        var told = (AsFoundRecorded)car.Do(Tess, new RecordAsFound("wheels", []) { Told = CarAtWork.Reason });
        Assert.Equal(car.State.Unseen["wheels"], told.After);
    }

    [Fact]
    public void Nothing_is_asked_of_a_car_that_was_here_before_it_was_asked()
    {
        var job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Left);

        Assert.DoesNotContain(Before(job), point => point.Reason == HoldReason.AsFoundMissing);
        Assert.Null(Open(job, [.. Nuts]).Unseen);
    }

    [Fact]
    public void A_sheet_says_something_and_only_what_is_asked()
    {
        Come();

        Assert.Equal([HoldReason.AsFoundEmpty], car.Refused(Tess, new RecordAsFound("wheels", [])));
        Assert.Equal([HoldReason.SeenAndUnknown], car.Refused(Tess, new RecordAsFound("wheels", [new MeasuredValue("tread", 4, "mm")]) { Told = CarAtWork.Reason }));
        Assert.Equal([HoldReason.UnknownSystem], car.Refused(Tess, new RecordAsFound("rockets", []) { Words = CarAtWork.Reason }));
        Assert.Equal([HoldReason.NotOnSheet], car.Refused(Tess, new RecordAsFound("wheels", [new MeasuredValue("tread", 4, "in")])));
        Assert.Equal([HoldReason.NotOnSheet], car.Refused(Tess, new RecordAsFound("wheels", []) { Notes = [new WrittenNote("tyres", "snow")] }));
        car.Do(Tess, new RecordAsFound("wheels", [new MeasuredValue("tread", -1, "mm")]));
        Assert.Equal(-1, car.State.AsFound["wheels"].Fact.Values.Single().Value);
    }

    [Fact]
    public void What_is_written_later_replaces_it_and_the_next_visit_asks_anew()
    {
        Come();
        car.Do(Tess, new RecordAsFound("wheels", [new MeasuredValue("tread", 4.2m, "mm")]));
        car.Do(Tess, new RecordAsFound("wheels", [new MeasuredValue("tread", 2.4m, "mm")]));
        Assert.Equal(2.4m, car.State.AsFound["wheels"].Fact.Values.Single().Value);

        car.Do(Tess, new ReportGone(WayOut.OnTrailer, CarAtWork.Reason, null, CarAtWork.Reason));
        Assert.Equal([HoldReason.NotHere], car.Refused(Tess, new RecordAsFound("wheels", []) { Words = CarAtWork.Reason }));
        Come();
        Assert.True(car.State.LacksAsFound("wheels"));
    }

    [Fact]
    public void A_fuel_gauge_has_eight_eighths()
    {
        Assert.Equal([HoldReason.FuelOutside], car.Refused(Tess, Coming with { FuelEighths = 9 }));
        Assert.Equal([HoldReason.FuelOutside], car.Refused(Tess, Coming with { FuelEighths = -1 }));
        Assert.Equal(8, ((Arrived)car.Do(Tess, Coming with { FuelEighths = 8 })).FuelEighths);
    }

    private static ComeIn Coming => new(null, "LiftA", CarAtWork.Reason) { OdometerWhy = CarAtWork.Reason, AsksAsFound = true };

    private Opened Open(JobId job, params IReadOnlyList<JointPosition> positions) => (Opened)car.Do(Tess, new OpenPositions(positions, job, null));

    private void Come() => car.Do(Tess, Coming);

    private IReadOnlyList<HoldPoint> Before(JobId id)
    {
        var job = car.State.Jobs[id];
        var now = car.As(Tess);
        var placed = now.Placed(job);
        return HoldRules.Standard.BeforeStart(
            new StepQuestion(car.State, now, job, placed, placed.Steps.First(step => step.Work.Count > 0), StepAnswers.None) { ForWork = true });
    }
}
