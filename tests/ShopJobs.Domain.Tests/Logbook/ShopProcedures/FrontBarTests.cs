using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.ShopProcedures.SeedTools;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook.ShopProcedures;

/// <summary>P2 of the demo shop: the front bar with its links, from the hole as found to the setup sheet.</summary>
public class FrontBarTests
{
    private const string Left = "front-left";
    private readonly SeedJob job = new("P2-front-bar.yaml", "front", Left, "front-right");

    [Fact]
    public void Every_step_is_signed_after_four_saddles_and_four_link_nuts_came_to_torque()
    {
        job.FinishUpTo("links", W5);
        job.Stand("stand", "on-wheels");
        job.Finish("links", W5);
        job.FinishUpTo("end", W5);

        Assert.True(job.IsSigned);
        Assert.Equal(12, job.Pulls.Count);
        Assert.Equal([1, 4, 2, 3], job.Pulls.Where(pull => pull is { Group: "saddles", Stage: 2 }).Select(pull => pull.Position.Number));
        Assert.Equal(Enumerable.Repeat(62m, 4), job.Pulls.Where(pull => pull.RunDown is not null).Select(pull => pull.Value!.Value.Value));
        Assert.Equal(PositionState.Checked, job.Car.Shows("front-bar.link-lower", Left));
        Assert.Equal(PositionState.Checked, job.Car.Shows("front-strut.link-upper", "front-right"));
        Assert.Empty(job.Car.State.Undone);
    }

    [Fact]
    public void A_link_pulled_while_the_wheels_hang_is_held()
    {
        job.FinishUpTo("links", W5);
        job.Stand("stand", "wheel-up");
        Assert.Equal([HoldReason.WrongCarCondition], job.PullNext("links", W5).Problems);
        Assert.Equal(PositionState.Held, job.Car.Shows("front-bar.link-lower", Left));
    }

    [Fact]
    public void A_nut_that_runs_down_too_easily_does_not_count()
    {
        job.FinishUpTo("links", W5);
        job.Stand("stand", "on-wheels");
        Assert.Equal([HoldReason.ValueOutside], job.PullNext("links", W5, runDown: 0.5m).Problems);
    }

    [Fact]
    public void The_table_value_alone_is_not_the_instructed_setting_of_a_self_locking_nut()
    {
        job.FinishUpTo("links", W5);
        job.Stand("stand", "on-wheels");
        var pull = job.PullNext("links", W5, runDown: 5, setTo: 58);
        Assert.Equal([HoldReason.SettingNotInstructed], pull.Problems);
        Assert.Equal(53, pull.AtFastener!.Value.Value);
    }

    [Fact]
    public void The_setup_sheet_waits_for_the_links_that_the_setting_hangs_on()
    {
        job.FinishUpTo("links", W5);
        job.Result("sheet", "setting:front-bar", ("hole-left", 2), ("hole-right", 2));
        Assert.Contains(HoldReason.ResultJointLoose, job.Refusals("sheet"));
        Assert.Equal(["setting:front-bar"], job.Placed.Step("sheet")!.Step.Records);
    }

    [Fact]
    public void Links_are_re_torqued_after_the_drive_to_the_setting_that_they_had()
    {
        job.FinishUpTo("links", W5);
        job.Stand("stand", "on-wheels");
        job.Finish("links", W5);
        job.FinishUpTo("end", W5);
        job.Car.Do(Lee, To(ReleaseKind.Road, 2000));
        job.Stand("stand", "on-wheels");
        var settled = (Settled)job.Car.Do(Tess, new RecordSettled(
            job.Id, "link-lower", job.At("front-bar.link-lower", Left), false, null, TorqueKind.SettingConfirmed, CarAtWork.NewtonMetres(58 + SeedJob.RunDown), W5, 2060, CarAtWork.Shown));
        Assert.Empty(settled.Problems);
        Assert.Equal(PositionState.Settled, job.Car.Shows("front-bar.link-lower", Left));
        var bare = (Settled)job.Car.Do(Tess, new RecordSettled(
            job.Id, "link-lower", job.At("front-bar.link-lower", "front-right"), false, null, TorqueKind.SettingConfirmed, CarAtWork.NewtonMetres(58), W5, 2060, CarAtWork.Shown));
        Assert.Equal([HoldReason.SettingNotInstructed], bare.Problems);
    }
}
