using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Logbook;

public sealed class StepOnScreenTests
{
    private static readonly int[] Star = [1, 3, 5, 2, 4];
    private readonly CarAtWork car = new();

    [Fact]
    public void Step_that_only_runs_down_by_hand_waits_until_every_position_is()
    {
        var byHand = TestProcedures.Step("hand", []) with { Work = [new StepWork("nuts", [])] };
        var job = car.StartJob(TestProcedures.Wheels(Star) with { Steps = [byHand] }, TestRegister.Left);
        var nuts = car.Positions(TestRegister.Nut, TestRegister.Left);
        var sign = CarWork.Sign(job, $"hand@{TestRegister.Left}");
        car.Open(TestPerson.Tess, job, nuts);
        car.ByHand(TestPerson.Tess, job, "nuts", [.. nuts.Take(3)]);

        var refused = Assert.IsType<Verdict.Refused>(car.Try(TestPerson.Tess, sign));

        Assert.Equal(
            [(HoldReason.NotRunDown, nuts[3]), (HoldReason.NotRunDown, nuts[4])],
            refused.Reasons.Select(point => (point.Reason, point.Position!.Value)));
        Assert.Equal("wheel nut front-left 4 is not run down by hand: press HAND-TIGHT when it is", car.Say(refused.Reasons[0]).ToString());

        car.ByHand(TestPerson.Tess, job, "nuts", nuts[3], nuts[4]);
        Assert.IsType<StepConfirmed>(car.Do(TestPerson.Tess, sign));
    }

    [Fact]
    public void Step_that_only_runs_down_by_hand_waits_while_a_position_is_held()
    {
        var byHand = TestProcedures.Step("hand", []) with { Work = [new StepWork("nuts", [])] };
        var job = car.StartJob(TestProcedures.Wheels(Star) with { Steps = [byHand] }, TestRegister.Left);
        var nuts = car.Positions(TestRegister.Nut, TestRegister.Left);
        car.Open(TestPerson.Tess, job, nuts);
        car.ByHand(TestPerson.Tess, job, "nuts", nuts);
        car.Do(TestPerson.Tess, new HoldPositions([nuts[1]], CarAtWork.Reason));

        var refused = Assert.IsType<Verdict.Refused>(car.Try(TestPerson.Tess, CarWork.Sign(job, $"hand@{TestRegister.Left}")));

        Assert.Equal("wheel nut front-left 2 is held: the lead decides", car.Say(Assert.Single(refused.Reasons)).ToString());
    }

    [Fact]
    public void Step_that_runs_down_only_temporary_nuts_by_hand_does_not_ask_for_them()
    {
        var byHand = TestProcedures.Step("hand", []) with { Work = [new StepWork("jam", [])] };
        var job = car.StartJob(TestProcedures.Studs(1, 2, 3, 4, 5) with { Steps = [byHand] }, TestRegister.Left);

        Assert.IsType<StepConfirmed>(car.Do(TestPerson.Tess, CarWork.Sign(job, $"hand@{TestRegister.Left}")));
    }

    [Fact]
    public void Step_by_hand_that_does_not_apply_asks_nothing_of_joints_as_found()
    {
        var byHand = TestProcedures.Step("hand", []) with { Work = [new StepWork("nuts", [])] };
        var job = car.StartJob(TestProcedures.Wheels(Star) with { Steps = [byHand] }, TestRegister.Left);
        var skip = CarWork.Sign(job, $"hand@{TestRegister.Left}") with { NotApplicable = true, Reason = CarAtWork.Reason };

        Assert.IsType<StepConfirmed>(car.Do(TestPerson.Lee, skip));
    }

    [Fact]
    public void Nut_that_was_never_opened_comes_off_once_its_pull_is_void_and_its_hold_decided()
    {
        var job = car.StartJob(TestProcedures.Wheels(Star), TestRegister.Left);
        var nut = car.Positions(TestRegister.Nut, TestRegister.Left)[0];
        car.Do(TestPerson.Tess, CarWork.Sign(job, $"faces@{TestRegister.Left}", "clean"));
        car.Pull(TestPerson.Tess, job, "nuts", nut, 1, 50);
        car.Do(TestPerson.Tess, new VoidEntry(car.Last, null, CarAtWork.Reason));
        car.Do(TestPerson.Lee, CarWork.Decision(nut, Disposition.Rework));

        Assert.IsType<NextAction.TakeOff>(car.Next(job, $"seat@{TestRegister.Left}"));
    }

    [Fact]
    public void Tool_is_refused_for_a_stage_by_the_rules_that_judge_the_pull()
    {
        var job = car.StartJob(TestProcedures.Wheels(Star), TestRegister.Left);

        Assert.Empty(Against(job, 2, TestTools.Click));
        Assert.Empty(Against(job, 2, TestTools.Dial));
        Assert.Equal([HoldReason.ToolOutOfRange], Against(job, 2, TestTools.Small));
        Assert.Equal([HoldReason.ToolOverdue], Against(job, 2, TestTools.Overdue));
        Assert.Equal([HoldReason.ToolUnknown], Against(job, 2, TestTools.Strange));
    }

    [Fact]
    public void Stage_waits_for_a_witness_once_every_position_is_done_and_none_of_its_workers_may_be_it()
    {
        var job = car.StartJob(TestProcedures.Wheels(Star), TestRegister.Left);
        car.TightenWheel(TestPerson.Tess, job, TestRegister.Left);

        var awaited = Assert.Single(car.State.AwaitingWitness(car.Placed(job)));

        Assert.Equal(2, awaited.Stage.Number);
        Assert.Equal(5, awaited.Pulls.Count);
        Assert.Equal([TestPerson.Tess.Id], awaited.Workers);
        car.Do(TestPerson.Theo, CarWork.Looks(job, "nuts", TestRegister.Left, 2));
        Assert.Empty(car.State.AwaitingWitness(car.Placed(job)));
    }

    [Fact]
    public void Stage_that_is_not_done_on_every_position_waits_for_no_witness_yet()
    {
        var job = car.StartJob(TestProcedures.Wheels(Star), TestRegister.Left);
        car.TightenWheel(TestPerson.Tess, job, TestRegister.Left);
        car.Open(TestPerson.Tess, job, car.Positions(TestRegister.Nut, TestRegister.Left)[0]);

        Assert.Empty(car.State.AwaitingWitness(car.Placed(job)));
    }

    [Fact]
    public void Next_action_is_said_with_fastener_torque_and_stage()
    {
        var job = car.StartJob(TestProcedures.Wheels(Star), TestRegister.Left);
        Assert.Equal("Back off all 5 of nuts front-left: as found: open it first, so that its pattern starts from nothing", Said(job, "seat"));

        car.Open(TestPerson.Tess, job, car.Positions(TestRegister.Nut, TestRegister.Left));
        Assert.Equal("Run down by hand: all 5 of nuts front-left", Said(job, "seat"));

        car.ByHand(TestPerson.Tess, job, "nuts", car.Positions(TestRegister.Nut, TestRegister.Left));
        Assert.Equal("Torque wheel nut front-left 1 to 50 N·m, stage 1 of 2", Said(job, "seat"));
    }

    [Fact]
    public void Drawing_shows_what_lies_beneath_a_hold()
    {
        var job = car.StartJob(TestProcedures.Wheels(Star), TestRegister.Left);
        var nut = car.Positions(TestRegister.Nut, TestRegister.Left)[0];
        car.TightenWheel(TestPerson.Tess, job, TestRegister.Left);
        car.Do(TestPerson.Tess, new HoldPositions([nut], CarAtWork.Reason));

        Assert.Equal(PositionState.Held, car.Shows(nut));
        Assert.Equal(PositionState.AtTorque, car.State.StateUnderMarks(nut));
    }

    private IReadOnlyList<HoldReason> Against(JobId job, int stage, ToolId tool)
    {
        var instance = car.Placed(job).Group("nuts", TestRegister.Left)!;
        return car.State.Against(car.As(TestPerson.Tess), car.State.Jobs[job], instance, instance.Group.Stages[stage - 1], tool);
    }

    private string Said(JobId job, string step) => NextWords.Of(car.Next(job, $"{step}@{TestRegister.Left}"), car.As(TestPerson.Tess));
}
