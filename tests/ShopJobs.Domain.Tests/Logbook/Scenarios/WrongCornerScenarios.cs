using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestRegister;

namespace ShopJobs.Domain.Tests.Logbook.Scenarios;

/// <summary>A condition, or new hardware, that was reported of the wrong corner and is taken back; and what somebody did who has left.</summary>
public class WrongCornerScenarios
{
    private readonly CarAtWork car = new();

    [Fact]
    public void A_condition_taken_back_is_asked_again_and_takes_the_pulls_with_it_that_rested_on_it()
    {
        var job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Left);
        car.Do(Tess, Sign(job, $"faces@{TestRegister.Left}", "clean"));
        car.Open(Tess, job, car.Positions(Nut, TestRegister.Left));
        car.ByHand(Tess, job, "nuts", car.Positions(Nut, TestRegister.Left));
        car.Declare(WheelUp);
        var said = car.Last;
        car.PullStage(Tess, job, "nuts", TestRegister.Left, 1);
        car.Do(Tess, Sign(job, $"seat@{TestRegister.Left}"));

        car.Do(Tess, new VoidEntry(said, null, CarAtWork.Reason));
        Assert.False(car.State.Is(car.As(Tess), WheelUp, TestRegister.Left));
        Assert.Equal(StepStanding.Void, car.Standing(job, $"seat@{TestRegister.Left}"));
        Assert.IsType<NextAction.TakeOff>(car.Next(job, $"seat@{TestRegister.Left}"));
        Assert.Equal([HoldReason.AlreadyVoid], car.Refused(Tess, new VoidEntry(said, null, CarAtWork.Reason)));
    }

    [Fact]
    public void Nobody_has_to_confirm_what_only_takes_assurance_away()
    {
        car.Declare(WheelUp);
        car.Do(Tess, new VoidEntry(car.Last, null, CarAtWork.Reason));
        Assert.False(car.State.GainsByASecond(car.State.Corrections[car.Last]));
        Assert.DoesNotContain("second person", car.State.StandingOf(car.Book[0]).Words!, StringComparison.Ordinal);
    }

    [Fact]
    public void New_hardware_taken_back_leaves_the_position_as_it_was()
    {
        var job = car.StartJob(TestProcedures.Brake(), Front);
        var bolt = new JointPosition(BrakeBolt, Front, 1);
        car.Open(Tess, job, bolt);
        car.FitNew(Tess, job, "carrier", bolt);
        car.Do(Tess, new VoidEntry(car.Last, null, CarAtWork.Reason));

        Assert.Equal(PositionState.Open, car.Shows(bolt));
        Assert.Equal([HoldReason.HardwareNotNew], car.ByHand(Tess, job, "carrier", bolt).Problems);
    }

    [Fact]
    public void What_was_pulled_on_hardware_that_was_not_new_is_backed_off()
    {
        var job = car.StartJob(TestProcedures.Brake(), Front);
        var bolt = new JointPosition(BrakeBolt, Front, 1);
        car.Open(Tess, job, bolt);
        car.FitNew(Tess, job, "carrier", bolt);
        var fitted = car.Last;
        car.ByHand(Tess, job, "carrier", bolt);
        car.Pull(Tess, job, "carrier", bolt, 1, 80, TestTools.Dial);
        Assert.Equal(PositionState.AtTorque, car.Shows(bolt));

        car.Do(Tess, new VoidEntry(fitted, null, CarAtWork.Reason));
        Assert.NotEqual(PositionState.AtTorque, car.Shows(bolt));
        Assert.IsType<NextAction.TakeOff>(car.Next(job, $"carrier@{Front}"));
    }

    [Fact]
    public void What_the_lead_reports_for_somebody_who_has_left_is_recorded_held_and_both_are_workers()
    {
        var job = car.StartJob(TestProcedures.Link(), Front);
        var link = new JointPosition(BarLink, Front, 1);
        car.Open(Tess, job, link);
        car.ByHand(Tess, job, "link", link);
        car.Do(Tess, Sign(job, $"by-hand@{Front}"));
        var pull = (TorqueRecorded)car.Do(Lee, new RecordTorque(
            job, "link", link, car.State.Of(link).Cycle, 1, 0, TorqueKind.Reading, CarAtWork.NewtonMetres(60), TestTools.Dial, [])
        { ReportedFor = Theo.Id });

        Assert.Equal([HoldReason.ReportedByAnother], pull.Problems);
        Assert.Equal(PositionState.Held, car.Shows(link));
        Assert.Superset(new HashSet<PersonId> { Lee.Id, Theo.Id }, car.State.Of(link).Workers.ToHashSet());
        Assert.Contains(HoldReason.OwnWork, car.Refused(Theo, Decision(link, Disposition.Rework)));
    }

    [Fact]
    public void A_pull_with_a_tool_that_has_gone_out_of_use_is_recorded_and_held()
    {
        var job = car.StartJob(TestProcedures.Link(), Front);
        var link = new JointPosition(BarLink, Front, 1);
        car.Open(Tess, job, link);
        car.ByHand(Tess, job, "link", link);
        car.Do(Tess, Sign(job, $"by-hand@{Front}"));
        car.TellTool(TestTools.Dial, new Quarantined(CarAtWork.Reason));

        Assert.Equal([HoldReason.ToolQuarantined], car.Pull(Tess, job, "link", link, 1, 60, TestTools.Dial).Problems);
        Assert.Equal(PositionState.Held, car.Shows(link));
    }
}
