using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.ShopProcedures.SeedTools;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook.ShopProcedures;

/// <summary>P7 of the demo shop from the first joint opened to the last step signed.</summary>
public class FlywheelAndClutchTests
{
    private const string Line = "driveline";
    private readonly SeedJob job = new("P7-flywheel-clutch.yaml", Line);

    [Fact]
    public void Every_step_is_signed_after_33_fasteners_came_to_torque()
    {
        foreach (var step in job.Placed.Steps)
        {
            job.Finish(step.Id, W3, W5, W7);
        }

        Assert.True(job.IsSigned);
        // 8 + 9 + 6 + 4 fasteners in two stages, 4 + 2 in one.
        Assert.Equal(60, job.Pulls.Count);
        foreach (var (key, count) in new[] { ("engine.flywheel", 8), ("clutch.cover", 9), ("gearbox.bell-housing", 6), ("propshaft.flange", 4), ("gearbox.mount", 4) })
        {
            Assert.Equal(Enumerable.Repeat(PositionState.Checked, count), job.At(key, Line).Select(job.Car.Shows));
        }

        Assert.Equal([1, 4, 7, 2, 5, 8, 3, 6], job.Pulls.Where(pull => pull is { Group: "flywheel", Stage: 2 }).Select(pull => pull.Position.Number));
    }

    [Fact]
    public void Flywheel_bolts_that_were_in_before_are_not_run_down_again()
    {
        Before("flywheel");
        Assert.IsType<NextAction.Fit>(job.Car.Next(job.Id, Flywheel));
        Assert.Equal([HoldReason.HardwareNotNew], job.Car.ByHand(Tess, job.Id, "flywheel", job.At("engine.flywheel", Line)).Problems);
        job.Car.FitNew(Tess, job.Id, "flywheel", job.At("engine.flywheel", Line, 1, 2, 3, 4, 5, 6, 7));
        Assert.Equal([8], Assert.IsType<NextAction.Fit>(job.Car.Next(job.Id, Flywheel)).Positions.Select(position => position.Number));
    }

    [Fact]
    public void The_small_wrench_does_not_reach_the_flywheel_and_the_large_one_does_not_begin_low_enough_for_the_cover()
    {
        Before("flywheel");
        job.Car.FitNew(Tess, job.Id, "flywheel", job.At("engine.flywheel", Line));
        job.Car.ByHand(Tess, job.Id, "flywheel", job.At("engine.flywheel", Line));
        Assert.Equal([HoldReason.ToolOutOfRange], job.PullNext(Flywheel, W3).Problems);

        var other = new SeedJob("P7-flywheel-clutch.yaml", Line);
        other.FinishUpTo("cover", W3, W5, W7);
        other.Car.ByHand(Tess, other.Id, "cover", other.At("clutch.cover", Line));
        Assert.Equal([HoldReason.ToolOutOfRange], other.PullNext($"cover@{Line}", W5).Problems);
    }

    [Fact]
    public void The_flange_is_refused_above_its_run_out()
    {
        Before("flange");
        Assert.Equal([HoldReason.MeasureOutside], job.Refusals($"flange@{Line}", ("run-out", 0.06m)));
        job.Sign($"flange@{Line}", ("run-out", 0.05m));
    }

    [Fact]
    public void The_bell_housing_waits_for_the_clutch_cover_and_its_witness()
    {
        Before("cover");
        job.Work($"cover@{Line}", W3);
        Assert.Equal([HoldReason.NotWitnessed], job.Refusals($"cover@{Line}"));
        Assert.Contains(HoldReason.StepBefore, job.Refusals($"gearbox-in@{Line}"));
    }

    private static string Flywheel => $"flywheel@{Line}";

    private void Before(string step) => job.FinishUpTo(step, W3, W5, W7);
}
