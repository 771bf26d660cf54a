using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.ShopProcedures.SeedTools;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook.ShopProcedures;

/// <summary>P1 of the demo shop: both front struts from the heights as found to the last step signed.</summary>
public class FrontStrutTests
{
    private const string Left = "front-left";
    private static readonly string[] Sides = [Left, "front-right"];
    private readonly SeedJob job = new("P1-front-struts.yaml", Sides);

    [Fact]
    public void Every_step_is_signed_after_ten_fasteners_a_side_came_to_torque()
    {
        job.Stand("steering", "straight");
        foreach (var step in job.Placed.Steps)
        {
            job.Finish(step.Id, W3, W5, W7);
        }

        Assert.True(job.IsSigned);
        // A side: top nuts 3 + 6 pulls, clamp 3 + 3, rod nut 1, bracket 1, rings 2, sensor 1.
        Assert.Equal(40, job.Pulls.Count);
        foreach (var (key, count) in new[] { ("front-strut.top-nut", 3), ("front-strut.knuckle-clamp", 2), ("front-strut.rod-nut", 1), ("front-strut.hose-bracket", 1), ("front-strut.perch-ring", 2) })
        {
            Assert.Equal(Enumerable.Repeat(PositionState.Checked, count), job.At(key, Left).Select(job.Car.Shows));
        }

        Assert.Equal(PositionState.AtTorque, job.Car.Shows(job.At("front-strut.sensor-bolt", Left)[0]));
    }

    [Fact]
    public void Opening_the_strut_voids_alignment_and_weights_and_leaves_link_and_wheel_to_other_procedures()
    {
        job.Stand("steering", "straight");
        foreach (var step in job.Placed.Steps)
        {
            job.Finish(step.Id, W3, W5, W7);
        }

        Assert.Equal(["alignment", "corner-weights", "ride-height", "setting:front-bar"], job.Car.State.Undone.Keys.Order(StringComparer.Ordinal));
        var waits = HoldRules.Standard.OnRelease(job.Car.State, job.Car.As(Lee), ReleaseKind.Road, false);
        Assert.Equal(
            ["front-strut.link-upper", "wheel.nut"],
            waits.Where(point => point.Reason == HoldReason.NothingCloses).Select(point => point.Position!.Value.Key).Distinct().Order(StringComparer.Ordinal));
        Assert.Contains(HoldReason.ResultVoid, job.Car.Refused(Lee, To(ReleaseKind.Road)));
    }

    [Fact]
    public void The_hook_spanner_at_a_right_angle_changes_nothing_and_is_written_down()
    {
        job.FinishUpTo("bench", W3, W5, W7);
        job.Finish($"bench@{Left}", W3, W5, W7);
        var ring = job.Pulls.First(pull => pull.Group == "perch-rings");
        Assert.Equal(("50.0 N·m", "50.0 N·m", 1m), (ring.Value.ToString(), ring.AtFastener.ToString(), ring.Spec.SettingRatio));
        Assert.Equal([1, 2], job.Pulls.Where(pull => pull.Group == "perch-rings").Select(pull => pull.Position.Number));
    }

    [Fact]
    public void The_rod_nut_is_set_to_its_torque_and_its_run_down_torque_together()
    {
        job.FinishUpTo("bench", W3, W5, W7);
        var bench = $"bench@{Left}";
        var nut = job.At("front-strut.rod-nut", Left);
        job.Car.Open(Tess, job.Id, nut);
        job.Car.FitNew(Tess, job.Id, "rod-nut", nut);
        job.Car.ByHand(Tess, job.Id, "rod-nut", nut);
        var pull = job.PullNext(bench, W5, runDown: 6);
        Assert.Empty(pull.Problems);
        // F8: 50 stated + 6 measured on the way down; the record keeps what was set and what tightens.
        Assert.Equal((56m, 50m, 6m), (pull.Value!.Value.Value, pull.AtFastener!.Value.Value, pull.RunDown!.Value.Value));
    }

    [Fact]
    public void A_rod_nut_pulled_without_its_run_down_torque_does_not_count()
    {
        job.FinishUpTo("bench", W3, W5, W7);
        var nut = job.At("front-strut.rod-nut", Left);
        job.Car.Open(Tess, job.Id, nut);
        job.Car.FitNew(Tess, job.Id, "rod-nut", nut);
        job.Car.ByHand(Tess, job.Id, "rod-nut", nut);
        Assert.Equal([HoldReason.ValueMissing], job.PullNext($"bench@{Left}", W5, runDown: null).Problems);
        Assert.Equal(PositionState.Held, job.Car.Shows(nut[0]));
    }

    [Fact]
    public void The_hose_bracket_waits_for_straight_wheels()
    {
        job.Stand("steering", "turned");
        job.FinishUpTo("bracket", W3, W5, W7);
        var bracket = job.At("front-strut.hose-bracket", Left);
        job.Car.ByHand(Tess, job.Id, "sensor-bolt", job.At("front-strut.sensor-bolt", Left));
        job.Car.ByHand(Tess, job.Id, "hose-bracket", bracket);
        job.PullNext($"bracket@{Left}", W3);
        Assert.Equal([HoldReason.WrongCarCondition], job.PullNext($"bracket@{Left}", W3).Problems);
    }
}
