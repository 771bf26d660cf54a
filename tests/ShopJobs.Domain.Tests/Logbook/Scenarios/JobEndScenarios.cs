using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestRegister;

namespace ShopJobs.Domain.Tests.Logbook.Scenarios;

/// <summary>How jobs end, rest, go on, are given up, and taken back from the wrong car.</summary>
public class JobEndScenarios
{
    private readonly CarAtWork car = new();
    private readonly JobId job;

    public JobEndScenarios()
    {
        job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Left);
        car.Do(Tess, Sign(job, $"faces@{TestRegister.Left}", "clean"));
    }

    private IReadOnlyList<JointPosition> Nuts => car.Positions(Nut, TestRegister.Left);

    private JobBook Book => car.State.Jobs[job];

    [Fact]
    public void Hand_tight_of_before_a_hold_of_three_months_is_run_down_again()
    {
        HandTight();
        Rest(TimeSpan.FromDays(90));

        Assert.All(Nuts, nut => Assert.Equal(PositionState.Open, car.Shows(nut)));
        Assert.IsType<NextAction.ByHand>(car.Next(job, $"seat@{TestRegister.Left}"));
        var pull = car.Pull(Tess, job, "nuts", Nuts[0], 1, 50);
        Assert.Equal([HoldReason.NotHandTight, HoldReason.WrongCarCondition], pull.Problems);
    }

    [Fact]
    public void A_joint_that_was_half_pulled_is_backed_off_first_and_the_step_below_falls()
    {
        HandTight();
        car.PullStage(Tess, job, "nuts", TestRegister.Left, 1);
        car.Do(Tess, Sign(job, $"seat@{TestRegister.Left}"));
        Rest(TimeSpan.FromDays(1));

        Assert.Equal(StepStanding.Void, car.Standing(job, $"seat@{TestRegister.Left}"));
        Assert.Equal(StepStanding.Signed, car.Standing(job, $"faces@{TestRegister.Left}"));
        Assert.Equal(TakeOffReason.NothingToRestOn, Assert.IsType<NextAction.TakeOff>(car.Next(job, $"seat@{TestRegister.Left}")).Why);
    }

    [Fact]
    public void What_is_at_torque_and_signed_stands_after_a_hold()
    {
        Tighten();
        Rest(TimeSpan.FromDays(90));

        Assert.All(Nuts, nut => Assert.Equal(PositionState.AtTorque, car.Shows(nut)));
        car.Do(Theo, Looks(job, "nuts", TestRegister.Left, 2));
        car.Do(Tess, Sign(job, $"final@{TestRegister.Left}"));
        Assert.False(Book.OnHold is not null);
    }

    [Fact]
    public void What_is_reported_while_it_rests_is_recorded_held_and_does_not_count()
    {
        HandTight();
        car.Do(Lee, new PutJobOnHold(job, CarAtWork.Reason));
        var pull = car.Pull(Tess, job, "nuts", Nuts[0], 1, 50);

        Assert.Equal([HoldReason.JobOnHold], pull.Problems);
        Assert.Equal(PositionState.Held, car.Shows(Nuts[0]));
        Assert.Contains(HoldReason.ResumeFirst, car.Refused(Tess, Sign(job, $"seat@{TestRegister.Left}")));
        Assert.Equal([HoldReason.ResumeFirst], car.Refused(Lee, new PutJobOnHold(job, CarAtWork.Reason)));
        Assert.Contains(HoldReason.StepNotSigned, car.Refused(Lee, To(ReleaseKind.Road)));
    }

    [Fact]
    public void Only_the_lead_puts_a_job_on_hold_resumes_cancels_and_ends_it()
    {
        Assert.Equal([HoldReason.NoRight], car.Refused(Tess, new PutJobOnHold(job, CarAtWork.Reason)));
        Assert.Equal([HoldReason.NoRight], car.Refused(Tess, new CancelJob(job, CarAtWork.Reason, CarAtWork.Shown)));
        Assert.Equal([HoldReason.StepNotSigned], car.Refused(Lee, new EndJob(job, CarAtWork.Shown)));
        Assert.Equal([HoldReason.NotOnHold], car.Refused(Lee, new ResumeJob(job, CarAtWork.Shown)));
    }

    [Fact]
    public void A_cancelled_job_leaves_its_joints_open_and_nothing_closes_them()
    {
        car.Open(Tess, job, Nuts);
        car.Do(Lee, new CancelJob(job, CarAtWork.Reason, CarAtWork.Shown));

        Assert.All(Nuts, nut => Assert.Equal(PositionState.Open, car.Shows(nut)));
        foreach (var kind in Enum.GetValues<ReleaseKind>())
        {
            var against = car.Refused(Lee, To(kind));
            Assert.Contains(HoldReason.NothingCloses, against);
            Assert.DoesNotContain(HoldReason.StepNotSigned, against);
        }

        Assert.Contains(HoldReason.JobNotRunning, car.Refused(Tess, Sign(job, $"seat@{TestRegister.Left}")));
        Assert.Contains(HoldReason.JobClosed, car.ByHand(Tess, job, "nuts", Nuts).Problems);
    }

    [Fact]
    public void A_void_sign_off_sets_a_job_running_again_that_the_lead_ended_and_not_one_he_cancelled()
    {
        Tighten();
        car.Do(Theo, Looks(job, "nuts", TestRegister.Left, 2));
        car.Do(Tess, Sign(job, $"final@{TestRegister.Left}"));
        var cancelled = car.StartJob(TestProcedures.Link(), Front);
        car.Do(Lee, new EndJob(job, CarAtWork.Shown));
        Assert.Equal(JobEnd.ByTheLead, Book.End);

        car.Do(Lee, new CancelJob(cancelled, CarAtWork.Reason, CarAtWork.Shown));
        car.Do(Tess, new VoidEntry(Book.SignOffs[$"final@{TestRegister.Left}"].Number, null, CarAtWork.Reason));
        Assert.True(Book.IsRunning);
        Assert.False(car.State.Jobs[cancelled].IsRunning);
    }

    [Fact]
    public void A_job_on_the_wrong_car_goes_when_each_joint_it_opened_is_closed_or_was_never_open()
    {
        car.Open(Tess, job, Nuts);
        var first = car.Last;
        car.Open(Tess, job, car.Positions(Nut, TestRegister.Right));
        car.Do(Lee, new TakeJobBack(job, CarAtWork.Reason, CarAtWork.Shown));
        Assert.True(Book.IsRunning);

        TakeBack(first);
        Assert.True(Book.IsRunning);
        TakeBack(first + 1);
        Assert.False(Book.IsRunning);
        car.Do(Lee, To(ReleaseKind.Road));
    }

    [Fact]
    public void Whoever_signs_the_end_of_a_job_signs_what_was_shown()
    {
        var shown = car.Shows(new CancelJob(job, CarAtWork.Reason, CarAtWork.Shown));
        car.Open(Tess, job, Nuts);
        Assert.Equal([HoldReason.LookAgain], car.Refused(Lee, shown));
    }

    [Fact]
    public void Openings_taken_back_one_after_the_other_give_a_result_back_that_both_undid()
    {
        car.Do(Tess, new RecordResult("alignment", [new MeasuredValue("toe", 1, "mm")], ResultBasis.Measured, "rig", [], null, null, CarAtWork.Shown));
        car.Open(Tess, null, car.Positions(StrutTop, TestRegister.Left));
        var first = car.Last;
        car.Open(Tess, null, car.Positions(StrutTop, TestRegister.Right));
        TakeBack(first);
        Assert.Contains("alignment", car.State.Undone.Keys);
        TakeBack(first + 1);
        Assert.Empty(car.State.Undone);
        Assert.Equal(0, car.State.Results["alignment"].VoidBy);
        Assert.DoesNotContain(car.State.Results["alignment"].Number, car.State.Fallen.Keys);
    }

    private void HandTight()
    {
        car.Declare(WheelUp);
        car.Open(Tess, job, Nuts);
        car.ByHand(Tess, job, "nuts", Nuts);
    }

    private void Tighten()
    {
        HandTight();
        car.PullStage(Tess, job, "nuts", TestRegister.Left, 1);
        car.Do(Tess, Sign(job, $"seat@{TestRegister.Left}"));
        car.Declare(WheelDown);
        car.PullStage(Tess, job, "nuts", TestRegister.Left, 2);
    }

    private void Rest(TimeSpan time)
    {
        car.Do(Lee, new PutJobOnHold(job, CarAtWork.Reason));
        car.Wait(time);
        car.Do(Lee, new ResumeJob(job, CarAtWork.Shown));
    }

    private void TakeBack(long opening)
    {
        car.Do(Tess, new VoidEntry(opening, null, CarAtWork.Reason));
        car.Do(Theo, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown));
    }
}
