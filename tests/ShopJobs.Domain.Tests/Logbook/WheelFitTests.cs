using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook;

public class WheelFitTests
{
    private const string Left = TestRegister.Left;
    private readonly CarAtWork car = new();
    private readonly JobId job;
    private readonly IReadOnlyList<JointPosition> nuts;

    public WheelFitTests()
    {
        job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), Left);
        nuts = car.Positions(TestRegister.Nut, Left);
    }

    private PositionState Wheel => car.Shows(TestRegister.Nut, Left);

    [Fact]
    public void Nuts_go_from_open_through_both_stages_to_checked_and_settled()
    {
        Assert.Equal(PositionState.AsFound, Wheel);
        car.Do(Tess, Sign(job, "faces@front-left", "clean"));
        car.Declare(TestRegister.WheelUp);
        car.Open(Tess, job, nuts);
        Assert.Equal(PositionState.Open, Wheel);
        car.ByHand(Tess, job, "nuts", nuts);
        Assert.Equal(PositionState.HandTight, Wheel);
        car.PullStage(Tess, job, "nuts", Left, 1);
        Assert.Equal(PositionState.Staged, Wheel);
        car.Do(Tess, Sign(job, "seat@front-left"));
        car.Declare(TestRegister.WheelDown);
        car.PullStage(Tess, job, "nuts", Left, 2);
        Assert.Equal(PositionState.AtTorque, Wheel);
        Assert.Equal([HoldReason.NotWitnessed], car.Refused(Tess, Sign(job, "final@front-left")));
        car.Do(Theo, Looks(job, "nuts", Left, 2));
        Assert.Equal(PositionState.Checked, Wheel);
        car.Do(Tess, Sign(job, "final@front-left"));

        var released = (Released)car.Do(Lee, To(ReleaseKind.Road, 1200));
        Assert.Equal([job], released.Closes);
        Assert.Equal(1300, released.LapsesAtKm);
        Assert.Equal(car.Today.AddDays(14), released.LapsesOn);
        Assert.Equal(PositionState.Due, Wheel);
        Assert.Equal([HoldReason.JointNotMadeHere, HoldReason.ReTorqueDue], car.Refused(Lee, To(ReleaseKind.Track, 1200)));
        Assert.Equal([HoldReason.JointNotMadeHere], car.Refused(Lee, To(ReleaseKind.Track, 1200, accepted: true)));

        car.Declare(TestRegister.WheelDown);
        car.Do(Tess, Settle(110));
        Assert.Equal(PositionState.Settled, Wheel);
        car.Do(Lee, To(ReleaseKind.Road, 1260));
        Assert.Null(((Released)car.Book[^1].Entry).LapsesAtKm);
        Assert.Equal([HoldReason.JointNotMadeHere], car.Refused(Lee, To(ReleaseKind.Track, 1260)));
    }

    [Fact]
    public void The_next_action_leads_through_the_whole_step()
    {
        car.Do(Tess, Sign(job, "faces@front-left", "clean"));
        car.Declare(TestRegister.WheelUp);
        Assert.IsType<NextAction.TakeOff>(car.Next(job, "seat@front-left"));
        car.Open(Tess, job, nuts);
        Assert.IsType<NextAction.ByHand>(car.Next(job, "seat@front-left"));
        car.ByHand(Tess, job, "nuts", nuts);
        foreach (var number in new[] { 1, 3, 5, 2, 4 })
        {
            var cell = Assert.IsType<NextAction.PullNow>(car.Next(job, "seat@front-left")).Cell;
            Assert.Equal((nuts[number - 1], 1), (cell.Position, cell.Stage.Number));
            Assert.Empty(car.Pull(Tess, job, "nuts", cell.Position, 1, 50).Problems);
        }

        Assert.IsType<NextAction.Done>(car.Next(job, "seat@front-left"));
    }

    [Fact]
    public void A_witness_is_nobody_who_worked_on_any_stage_of_the_group()
    {
        car.Do(Tess, Sign(job, "faces@front-left", "clean"));
        car.Declare(TestRegister.WheelUp);
        car.Open(Tess, job, nuts);
        car.ByHand(Theo, job, "nuts", nuts[0]);
        car.ByHand(Tess, job, "nuts", nuts.Skip(1).ToList());
        car.PullStage(Tess, job, "nuts", Left, 1);
        car.Do(Tess, Sign(job, "seat@front-left"));
        car.Declare(TestRegister.WheelDown);
        car.PullStage(Tess, job, "nuts", Left, 2);

        Assert.Equal([HoldReason.OwnWork], car.Refused(Theo, Looks(job, "nuts", Left, 2)));
        Assert.Equal([HoldReason.OwnWork], car.Refused(Tess, Looks(job, "nuts", Left, 2)));
        Assert.Equal([HoldReason.NoRight], car.Refused(Nobody, Looks(job, "nuts", Left, 2)));
        car.Do(Lee, Looks(job, "nuts", Left, 2));
        Assert.Equal([HoldReason.NothingToWitness], car.Refused(Lee, Looks(job, "nuts", Left, 2)));
    }

    [Fact]
    public void A_witness_who_does_not_accept_holds_every_nut()
    {
        car.TightenWheel(Tess, job, Left);
        Assert.Equal(
            [HoldReason.FindingMissing],
            car.Refused(Theo, Looks(job, "nuts", Left, 2) with { Accepted = false }));
        car.Do(Theo, Looks(job, "nuts", Left, 2, accepted: false));
        Assert.All(nuts, nut => Assert.Equal(PositionState.Held, car.Shows(nut)));
        Assert.Contains(HoldReason.Held, car.Refused(Tess, Sign(job, "final@front-left")));
    }

    [Fact]
    public void A_nut_out_of_its_order_does_not_count_and_is_held()
    {
        car.Do(Tess, Sign(job, "faces@front-left", "clean"));
        car.Declare(TestRegister.WheelUp);
        car.Open(Tess, job, nuts);
        car.ByHand(Tess, job, "nuts", nuts);
        Assert.Equal([HoldReason.OutOfOrder], car.Pull(Tess, job, "nuts", nuts[2], 1, 50).Problems);
        Assert.Equal(PositionState.Held, car.Shows(nuts[2]));
        Assert.IsType<NextAction.Stopped>(car.Next(job, "seat@front-left"));
    }

    [Fact]
    public void A_final_before_its_lower_stage_does_not_count()
    {
        car.Do(Tess, Sign(job, "faces@front-left", "clean"));
        car.Declare(TestRegister.WheelDown);
        car.Open(Tess, job, nuts);
        car.ByHand(Tess, job, "nuts", nuts);
        Assert.Equal([HoldReason.StepBefore, HoldReason.LowerStageMissing], car.Pull(Tess, job, "nuts", nuts[0], 2, 110).Problems.OrderDescending());
    }

    [Fact]
    public void A_stage_in_the_wrong_car_condition_does_not_count()
    {
        car.Do(Tess, Sign(job, "faces@front-left", "clean"));
        car.Declare(TestRegister.WheelDown);
        car.Open(Tess, job, nuts);
        car.ByHand(Tess, job, "nuts", nuts);
        Assert.Equal([HoldReason.WrongCarCondition], car.Pull(Tess, job, "nuts", nuts[0], 1, 50).Problems);
    }

    [Fact]
    public void A_nut_nobody_ran_down_by_hand_does_not_count()
    {
        car.Do(Tess, Sign(job, "faces@front-left", "clean"));
        car.Declare(TestRegister.WheelUp);
        Assert.Equal([HoldReason.NotHandTight], car.Pull(Tess, job, "nuts", nuts[0], 1, 50).Problems);
        Assert.Equal(PositionState.Held, car.Shows(nuts[0]));
    }

    [Fact]
    public void A_hand_tight_on_a_joint_not_opened_holds_it()
    {
        Assert.Equal([HoldReason.NotOpened], car.ByHand(Tess, job, "nuts", nuts[0]).Problems);
        Assert.Equal(PositionState.Held, car.Shows(nuts[0]));
        Assert.Contains(HoldReason.Held, car.Refused(Lee, To(ReleaseKind.Road)));
    }

    [Fact]
    public void A_pull_on_a_cell_opened_since_it_was_shown_does_not_count()
    {
        car.Do(Tess, Sign(job, "faces@front-left", "clean"));
        car.Declare(TestRegister.WheelUp);
        car.Open(Tess, job, nuts);
        car.ByHand(Tess, job, "nuts", nuts);
        var shown = new RecordTorque(
            job, "nuts", nuts[0], 0, 1, 0, TorqueKind.SettingConfirmed, CarAtWork.NewtonMetres(50), TestTools.Click, []);
        Assert.Equal([HoldReason.CellMoved], ((TorqueRecorded)car.Do(Tess, shown)).Problems);
    }

    [Fact]
    public void A_report_on_a_position_or_job_that_does_not_exist_is_refused()
    {
        Assert.Equal([HoldReason.UnknownPosition], car.Refused(Tess, new OpenPositions([new(TestRegister.Nut, Left, 6)], job, null)));
        Assert.Equal([HoldReason.NoPosition], car.Refused(Tess, new HandTighten(job, "nuts", [], [])));
        Assert.Equal([HoldReason.NotInGroup], car.Refused(Tess, new HandTighten(job, "nuts", [new(TestRegister.Stud, Left, 1)], [])));
        Assert.Equal([HoldReason.UnknownJob], car.Refused(Tess, new OpenPositions(nuts, new JobId(Guid.Empty), null)));
        Assert.Equal([HoldReason.UnknownStep], car.Refused(Tess, Sign(job, "final@front-right")));
    }

    private RecordSettled Settle(decimal newtonMetres) => new(
        job, "nuts", nuts, Moved: false, null, TorqueKind.SettingConfirmed, CarAtWork.NewtonMetres(newtonMetres), TestTools.Click, 1260, CarAtWork.Shown);
}
