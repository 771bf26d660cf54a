using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.ShopProcedures.SeedTools;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook.ShopProcedures;

/// <summary>P6 of the demo shop: ten head bolts by torque and two angles, then the cam cover.</summary>
public class CylinderHeadTests
{
    private const string Engine = "engine";
    private const string Snug = $"snug@{Engine}";
    private const string Turn = $"turn@{Engine}";
    private const string Again = $"turn-again@{Engine}";
    private static readonly int[] Spiral = [3, 8, 9, 4, 2, 7, 10, 5, 1, 6];
    private readonly SeedJob job = new("P6-head.yaml", Engine);

    public CylinderHeadTests() => job.Stand("engine", "cold");

    [Fact]
    public void Every_step_is_signed_after_21_fasteners_came_to_torque()
    {
        job.FinishUpTo("end", W3, WA);

        Assert.True(job.IsSigned);
        // 10 bolts in three stages, 11 in two.
        Assert.Equal(52, job.Pulls.Count);
        Assert.Equal(Enumerable.Repeat(PositionState.Checked, 10), job.At("engine.head-bolt", Engine).Select(job.Car.Shows));
        Assert.Equal(Enumerable.Repeat(PositionState.AtTorque, 11), job.At("engine.cam-cover", Engine).Select(job.Car.Shows));
        Assert.All([1, 2, 3], stage => Assert.Equal(
            Spiral, job.Pulls.Where(pull => pull.Group == "head" && pull.Stage == stage).Select(pull => pull.Position.Number)));
        Assert.Equal(["1: 40.0 N·m", "2: 90°", "3: 90°"], job.Pulls.Where(pull => pull.Group == "head").Select(pull => $"{pull.Stage}: {pull.Amount()}").Distinct());
    }

    [Fact]
    public void All_ten_finish_a_stage_and_are_looked_at_before_the_next_begins()
    {
        job.FinishUpTo("turn", W3, WA);
        for (var bolt = 0; bolt < 9; bolt++)
        {
            Assert.Empty(job.PullNext(Turn, WA).Problems);
        }

        var early = new RecordTorque(job.Id, "head", job.At("engine.head-bolt", Engine, 3)[0], 1, 3, 0, TorqueKind.AngleTurned, null, WA, []) { AngleDegrees = 90 };
        Assert.Equal([HoldReason.StepBefore, HoldReason.LowerStageMissing], ((TorqueRecorded)job.Car.Do(Tess, early)).Problems);
        Assert.Contains(HoldReason.NotWitnessed, job.Refusals(Turn));
    }

    [Fact]
    public void Each_of_the_three_stages_waits_for_a_second_person()
    {
        foreach (var step in new[] { Snug, Turn, Again })
        {
            job.FinishUpTo(step.Split('@')[0], W3, WA);
            job.Work(step, WA);
            Assert.Equal([HoldReason.NotWitnessed], job.Refusals(step));
        }
    }

    [Fact]
    public void A_click_wrench_does_not_turn_a_bolt()
    {
        job.FinishUpTo("turn", W3, WA);
        Assert.Equal([HoldReason.EvidenceNotAllowed], job.PullNext(Turn, W7).Problems);
    }

    [Fact]
    public void A_bolt_that_was_turned_too_far_is_held_and_the_head_stops()
    {
        job.FinishUpTo("turn-again", W3, WA);
        Assert.Equal([HoldReason.TurnOutside], job.PullNext(Again, WA, setTo: 95.5m).Problems);
        Assert.Equal(3, Assert.IsType<NextAction.Stopped>(job.Car.Next(job.Id, Again)).Position.Number);
        Assert.Contains(HoldReason.Held, job.Refusals(Again));
    }

    [Fact]
    public void Old_bolts_are_scrapped_and_ten_new_ones_go_in()
    {
        Assert.Equal([HoldReason.MeasureOutside, HoldReason.NotYetOpened], job.Refusals($"head-off@{Engine}", ("scrapped", 9)));
        job.FinishUpTo("by-hand", W3, WA);
        Assert.Equal([HoldReason.HardwareNotNew], job.Car.ByHand(Tess, job.Id, "head", job.At("engine.head-bolt", Engine)).Problems);
        Assert.Equal(10, Assert.IsType<NextAction.Fit>(job.Car.Next(job.Id, $"by-hand@{Engine}")).Positions.Count);
    }

    [Fact]
    public void A_warm_engine_is_not_tightened()
    {
        job.FinishUpTo("by-hand", W3, WA);
        Assert.Contains(HoldReason.MeasureOutside, job.Refusals($"by-hand@{Engine}", ("block", 35.1m)));
        job.FinishUpTo("snug", W3, WA);
        job.Stand("engine", "warm");
        Assert.Equal([HoldReason.WrongCarCondition], job.PullNext(Snug, WA).Problems);
    }

    [Fact]
    public void A_face_that_is_not_flat_stops_the_step()
    {
        job.FinishUpTo("faces", W3, WA);
        Assert.Equal([HoldReason.MeasureOutside], job.Refusals($"faces@{Engine}", ("deck-flat", 0.06m)));
        job.Sign($"faces@{Engine}", ("deck-flat", 0.05m));
    }

    [Fact]
    public void The_head_bolts_are_never_re_torqued()
    {
        job.FinishUpTo("end", W3, WA);
        var bolt = job.At("engine.head-bolt", Engine, 1)[0];
        Assert.False(job.Car.State.OwesReTorque(job.Car.State.Of(bolt)));
        var again = new RecordSettled(job.Id, "head", [bolt], false, null, TorqueKind.Reading, CarAtWork.NewtonMetres(40), WA, 1060, CarAtWork.Shown);
        Assert.Contains(HoldReason.ReTorqueNotDue, ((Settled)job.Car.Do(Tess, again)).Problems);
    }

    [Fact]
    public void Opening_the_head_bolts_opens_the_cam_cover_with_them()
    {
        job.FinishUpTo("end", W3, WA);
        job.Car.Open(Tess, job.Id, job.At("engine.head-bolt", Engine));
        Assert.All(job.At("engine.cam-cover", Engine), bolt => Assert.Equal(PositionState.Open, job.Car.Shows(bolt)));
    }

    // The shop's own sheet: snug about 23 of 70 kN proof. The friction it took for oil is 0.12; computed by hand from the long form.
    [Fact]
    public void Forty_newton_metres_only_snug_the_bolt()
    {
        var head = job.Placed.Procedure.Group("head");
        var band = Assert.IsType<ClampBand.Computed>(ClampLoadBand.For(
            head.Final.Value, 4, head.Thread, head.Seat, new FrictionBand(0.10, 0.12, 0.14, "the shop's sheet"), head.Class));
        Assert.Equal(23, band.Nominal.Kilonewtons, 0.5);
        Assert.Equal(70, head.Class!.ProofLoad(head.Thread)!.Value.Kilonewtons, 0.5);
        Assert.Contains(
            ProcedureCautions.For(job.Placed.Procedure, head), caution => caution.Contains("Never pull it to a torque again", StringComparison.Ordinal));
    }
}
