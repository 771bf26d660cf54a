using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.ShopProcedures.SeedTools;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook.ShopProcedures;

/// <summary>P10 of the demo shop: seat and harness, always two persons.</summary>
public class SeatAndHarnessTests
{
    private const string Driver = "driver";
    private const string Base = "base@driver";
    private readonly SeedJob job = new("P10-seat-harness.yaml", Driver);

    [Fact]
    public void Every_step_is_signed_after_fourteen_fasteners_came_to_torque_and_the_locker_cured()
    {
        job.FinishUpTo("pull", W3, W5);
        Assert.Equal([HoldReason.Cure], job.Refusals("pull@driver"));
        job.Car.Wait(TimeSpan.FromHours(24));
        job.FinishUpTo("end", W3, W5);

        Assert.True(job.IsSigned);
        Assert.Equal(24, job.Pulls.Count);
        foreach (var key in (string[])["seat.base", "seat.to-base", "harness.eye"])
        {
            Assert.Equal(PositionState.Checked, job.Car.Shows(key, Driver));
        }
    }

    [Fact]
    public void The_first_stage_of_the_base_is_out_of_the_range_of_W5()
    {
        UpToTheBase();
        var pull = job.PullNext(Base, W5);
        Assert.Equal([HoldReason.ToolOutOfRange], pull.Problems);
        Assert.Equal(PositionState.Held, job.Car.Shows("seat.base", Driver));
    }

    [Fact]
    public void W3_does_the_first_stage_and_W5_the_second_with_the_run_down_torque_that_was_read_once()
    {
        UpToTheBase();
        for (var bolt = 0; bolt < 4; bolt++)
        {
            Assert.Empty(job.PullNext(Base, W3, runDown: 2 + bolt).Problems);
        }

        var second = Enumerable.Range(0, 4).Select(_ => job.PullNext(Base, W5)).ToList();
        Assert.All(second, pull => Assert.Empty(pull.Problems));
        Assert.Equal([32m, 33m, 34m, 35m], second.Select(pull => pull.Value!.Value.Value));
        Assert.All(second, pull => Assert.Equal(30, pull.AtFastener!.Value.Value));
        Assert.Equal([1, 3, 2, 4], second.Select(pull => pull.Position.Number));
    }

    [Fact]
    public void Nobody_signs_the_base_without_a_second_person()
    {
        UpToTheBase();
        job.Work(Base, W3, W5);
        Assert.Equal([HoldReason.NotWitnessed], job.Refusals(Base));
        Assert.Equal([HoldReason.OwnWork], job.Car.Refused(Tess, Looks(job.Id, "base", Driver, 2)));
    }

    [Fact]
    public void A_counter_plate_that_is_too_small_is_refused()
    {
        job.FinishUpTo("floor", W3, W5);
        Assert.Equal([HoldReason.MeasureOutside], job.Refusals("floor@driver", ("plate-area", 39)));
    }

    [Fact]
    public void A_shoulder_strap_that_is_too_steep_is_refused()
    {
        job.FinishUpTo("angles", W3, W5);
        Assert.Equal([HoldReason.MeasureOutside], job.Refusals("angles@driver", ("shoulder", 46)));
        job.Sign("angles@driver", ("shoulder", 8));
    }

    private void UpToTheBase() => job.FinishUpTo("base", W3, W5);
}
