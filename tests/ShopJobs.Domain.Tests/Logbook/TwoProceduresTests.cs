using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>Two procedures that name one joint, steps not applicable, and jobs that ended.</summary>
public class TwoProceduresTests
{
    private const string Left = TestRegister.Left;
    private readonly CarAtWork car = new();
    private readonly IReadOnlyList<JointPosition> nuts;

    public TwoProceduresTests() => nuts = car.Positions(TestRegister.Nut, Left);

    [Fact]
    public void A_record_of_another_procedure_satisfies_a_step_when_it_passes_there_too()
    {
        car.FitLeftWheel();
        var second = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), Left);
        car.Do(Tess, Sign(second, $"faces@{Left}", "clean"));
        car.Do(Tess, Sign(second, $"seat@{Left}"));
        car.Do(Tess, Sign(second, $"final@{Left}"));
    }

    [Fact]
    public void A_record_outside_the_other_procedure_holds_its_step_until_the_lead_decides()
    {
        car.FitLeftWheel();
        var wheels = TestProcedures.Wheels(1, 3, 5, 2, 4);
        var group = wheels.Groups[0];
        var tighter = wheels with
        {
            Groups = [group with { Stages = [group.Stages[0], TestProcedures.Stage(2, 120, 118, 122, group.Stages[1].Visits)] }],
        };
        var second = car.StartJob(tighter, Left);
        car.Do(Tess, Sign(second, $"faces@{Left}", "clean"));
        car.Do(Tess, Sign(second, $"seat@{Left}"));
        Assert.Equal([HoldReason.OtherSpecification], car.Refused(Tess, Sign(second, $"final@{Left}")));
        foreach (var nut in nuts)
        {
            car.Do(Theo, Decision(nut, Disposition.UseAsIs, accepted: true));
        }

        car.Do(Tess, Sign(second, $"final@{Left}"));
    }

    [Fact]
    public void A_foreign_record_decided_rework_is_held_until_the_joint_is_opened()
    {
        car.FitLeftWheel();
        var wheels = TestProcedures.Wheels(1, 3, 5, 2, 4);
        var oiled = wheels with { Groups = [wheels.Groups[0] with { Hardware = new Hardware("another nut", HardwareReuse.Allowed) }] };
        var second = car.StartJob(oiled, Left);
        car.Do(Tess, Sign(second, $"faces@{Left}", "clean"));
        Assert.Equal([HoldReason.OtherSpecification], car.Refused(Tess, Sign(second, $"seat@{Left}")));
        car.Do(Theo, Decision(nuts[0], Disposition.Rework));
        Assert.Equal(PositionState.Held, car.Shows(nuts[0]));
        car.Open(Tess, second, nuts);
        Assert.Equal(PositionState.Open, car.Shows(nuts[0]));
    }

    [Fact]
    public void A_pull_for_a_job_that_ended_does_not_count()
    {
        var job = car.FitLeftWheel();
        car.Do(Lee, To(ReleaseKind.Road));
        car.Open(Tess, job, nuts);
        Assert.Equal([HoldReason.JobClosed], car.ByHand(Tess, job, "nuts", nuts).Problems);
        Assert.Contains(HoldReason.JobClosed, car.Pull(Tess, job, "nuts", nuts[0], 1, 50).Problems);
    }

    [Fact]
    public void Not_applicable_needs_the_lead_and_a_reason_and_lets_the_next_step_go_on()
    {
        var job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), Left);
        var skip = Sign(job, $"faces@{Left}") with { NotApplicable = true, Reason = CarAtWork.Reason };
        Assert.Equal([HoldReason.NoRight], car.Refused(Tess, skip));
        Assert.Equal([HoldReason.ReasonMissing], car.Refused(Lee, skip with { Reason = null }));
        car.Do(Lee, skip);
        car.Do(Lee, skip with { Step = $"seat@{Left}" });
        car.Do(Lee, skip with { Step = $"final@{Left}" });
        Assert.Equal([HoldReason.AlreadySigned], car.Refused(Lee, skip with { Step = $"final@{Left}" }));
        Assert.Equal([job], ((Released)car.Do(Lee, To(ReleaseKind.Road))).Closes);
    }

    [Fact]
    public void A_step_after_one_not_applicable_asks_nothing_of_joints_never_touched()
    {
        var wheels = TestProcedures.Wheels(1, 3, 5, 2, 4);
        var withLook = wheels with { Steps = [.. wheels.Steps, TestProcedures.Step("look", "final")] };
        var job = car.StartJob(withLook, Left);
        var skip = Sign(job, $"faces@{Left}") with { NotApplicable = true, Reason = CarAtWork.Reason };
        car.Do(Lee, skip);
        car.Do(Lee, skip with { Step = $"seat@{Left}" });
        car.Do(Lee, skip with { Step = $"final@{Left}" });
        car.Do(Tess, Sign(job, $"look@{Left}"));
    }

    [Fact]
    public void A_step_whose_joint_was_opened_is_not_not_applicable()
    {
        var job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), Left);
        var skip = Sign(job, $"faces@{Left}") with { NotApplicable = true, Reason = CarAtWork.Reason };
        car.Do(Lee, skip);
        car.Open(Tess, job, nuts);
        Assert.Equal([HoldReason.WorkBegun], car.Refused(Lee, skip with { Step = $"seat@{Left}" }));
    }

    [Fact]
    public void A_step_signed_anew_makes_the_steps_after_it_be_confirmed_again()
    {
        var job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), Left);
        car.TightenWheel(Tess, job, Left);
        var faces = car.Book.First(recorded => recorded.Entry is StepConfirmed).Number;
        car.Do(Tess, new VoidEntry(faces, null, CarAtWork.Reason));
        Assert.Equal(StepStanding.Void, car.Standing(job, $"faces@{Left}"));
        Assert.Equal(StepStanding.ToReconfirm, car.Standing(job, $"seat@{Left}"));
        car.Do(Tess, Sign(job, $"faces@{Left}", "clean"));
        Assert.Equal(StepStanding.ToReconfirm, car.Standing(job, $"seat@{Left}"));
        Assert.Contains(HoldReason.StepToReconfirm, car.Refused(Lee, To(ReleaseKind.Move)));
        car.Do(Tess, Sign(job, $"seat@{Left}"));
        Assert.Equal(StepStanding.Signed, car.Standing(job, $"seat@{Left}"));
    }

    [Fact]
    public void A_job_is_started_by_the_lead_once_and_at_places_it_has()
    {
        var job = car.StartJob(TestProcedures.Strut(), Left);
        var start = new StartJob(job, TestProcedures.Strut(), "digest", "digest", [Left]);
        Assert.Equal([HoldReason.AlreadyStarted], car.Refused(Lee, start));
        Assert.Equal([HoldReason.NoRight], car.Refused(Tess, start with { Job = new JobId(Guid.Empty) }));
        Assert.Equal([HoldReason.UnknownPlace], car.Refused(Lee, start with { Job = new JobId(Guid.Empty), Places = ["rear"] }));
    }
}
