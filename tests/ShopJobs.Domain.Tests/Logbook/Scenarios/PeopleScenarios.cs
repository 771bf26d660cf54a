using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook.Scenarios;

/// <summary>Ways in which a signature or a second person once said more than was true.</summary>
public class PeopleScenarios
{
    private const string Left = TestRegister.Left;
    private readonly CarAtWork car = new();
    private readonly JobId job;

    public PeopleScenarios()
    {
        job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), Left);
        car.TightenWheel(Tess, job, Left);
    }

    private IReadOnlyList<JointPosition> Nuts => car.Positions(TestRegister.Nut, Left);

    [Fact]
    public void A_witness_signs_nothing_when_a_nut_was_redone_after_the_pulls_were_shown()
    {
        var shown = car.Shows(Looks(job, "nuts", Left, 2));
        car.Do(Tess, new VoidEntry(car.State.Of(Nuts[3]).Last!.Number, false, CarAtWork.Reason));
        car.Do(Lee, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown));
        car.Pull(Tess, job, "nuts", Nuts[3], 2, 110);
        var at = car.Now;

        var refused = Assert.IsType<Verdict.Refused>(car.Try(Theo, shown));
        Assert.Contains(refused.Reasons, point => point is { Reason: HoldReason.LookAgain, About: Change.Pulled } && point.Position == Nuts[3]);
        Assert.Equal($"wheel nut front-left 4 was pulled again at {at:HH:mm}, after this was shown", car.As(Theo).Say(refused.Reasons[0]).Words);
        Assert.Null(car.State.Of(Nuts[3]).Last!.WitnessedBy);
    }

    [Fact]
    public void A_decision_clears_nothing_when_a_hold_came_after_the_others_were_shown()
    {
        car.Do(Tess, new HoldPositions([Nuts[0]], CarAtWork.Reason));
        var shown = car.Shows(Decision(Nuts[0], Disposition.UseAsIs, accepted: true));
        car.Do(Theo, new HoldPositions([Nuts[0]], CarAtWork.Reason));
        Assert.Equal([HoldReason.LookAgain], car.Refused(Lee, shown));
        Assert.Equal(2, car.State.Of(Nuts[0]).Holds.Count);
    }

    [Fact]
    public void A_sign_off_covers_the_pulls_that_were_shown()
    {
        car.Do(Theo, Looks(job, "nuts", Left, 2));
        var shown = car.Shows(Sign(job, $"final@{Left}"));
        car.Pull(Tess, job, "nuts", Nuts[0], 2, 110);
        Assert.Equal([HoldReason.LookAgain], car.Refused(Tess, shown));
    }

    [Fact]
    public void A_release_covers_the_book_as_it_was_shown()
    {
        car.Do(Theo, Looks(job, "nuts", Left, 2));
        car.Do(Tess, Sign(job, $"final@{Left}"));
        var shown = car.Shows(To(ReleaseKind.Road));
        car.Declare(TestRegister.WheelUp);
        Assert.Equal([HoldReason.LookAgain], car.Refused(Lee, shown));
        car.Do(Lee, To(ReleaseKind.Road));
    }

    [Fact]
    public void One_lead_alone_does_not_make_a_short_pull_count()
    {
        var shortPull = Short();
        car.Do(Lee, new Restate(shortPull, CarAtWork.NewtonMetres(130), CarAtWork.Reason, CarAtWork.Shown));
        Assert.Equal(PositionState.Held, car.Shows(Nuts[0]));
        Assert.Equal([HoldReason.OwnWork], car.Refused(Lee, Decision(Nuts[0], Disposition.UseAsIs, accepted: true)));
    }

    [Fact]
    public void Whoever_corrected_a_number_does_not_witness_it()
    {
        car.Do(Lee, new Restate(car.State.Of(Nuts[0]).Last!.Number, CarAtWork.NewtonMetres(110), CarAtWork.Reason, CarAtWork.Shown));
        Assert.Equal([HoldReason.OwnWork], car.Refused(Lee, Looks(job, "nuts", Left, 2)));
    }

    [Fact]
    public void A_witness_who_works_on_the_joint_afterwards_has_not_witnessed_it()
    {
        car.Do(Theo, Looks(job, "nuts", Left, 2));
        car.Do(Tess, Sign(job, $"final@{Left}"));
        car.Do(Theo, new HoldPositions([Nuts[1]], CarAtWork.Reason));
        Assert.Null(car.State.Of(Nuts[0]).Last!.WitnessedBy);
        Assert.Equal(StepStanding.Void, car.Standing(job, $"final@{Left}"));
    }

    [Fact]
    public void A_witness_who_confirms_the_figure_keeps_his_look()
    {
        car.Do(Theo, Looks(job, "nuts", Left, 2));
        car.Do(Tess, Sign(job, $"final@{Left}"));
        car.Do(Tess, new Restate(car.State.Of(Nuts[0]).Last!.Number, CarAtWork.NewtonMetres(110.4m), CarAtWork.Reason, CarAtWork.Shown));
        Assert.Null(car.State.Of(Nuts[0]).Last!.WitnessedBy);
        car.Do(Theo, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown));
        Assert.NotNull(car.State.Of(Nuts[0]).Last!.WitnessedBy);
        Assert.Equal(PositionState.Checked, car.Shows(Nuts[0]));
    }

    [Fact]
    public void A_witness_who_looks_anew_and_then_confirms_the_figure_keeps_both_looks()
    {
        car.Do(Theo, Looks(job, "nuts", Left, 2));
        car.Do(Tess, Sign(job, $"final@{Left}"));
        car.Do(Tess, new Restate(car.State.Of(Nuts[0]).Last!.Number, CarAtWork.NewtonMetres(110.4m), CarAtWork.Reason, CarAtWork.Shown));
        var correction = car.Last;
        car.Do(Theo, Looks(job, "nuts", Left, 2));
        Assert.Equal(StepStanding.Void, car.Standing(job, $"final@{Left}"));
        car.Do(Theo, new ConfirmCorrection(correction, CarAtWork.Reason, CarAtWork.Shown));
        Assert.Equal(StepStanding.Signed, car.Standing(job, $"final@{Left}"));
    }

    [Fact]
    public void A_look_at_two_nuts_stands_again_when_both_figures_are_confirmed()
    {
        car.Do(Theo, Looks(job, "nuts", Left, 2));
        car.Do(Tess, Sign(job, $"final@{Left}"));
        var corrections = new List<long>();
        foreach (var nut in Nuts.Take(2))
        {
            car.Do(Tess, new Restate(car.State.Of(nut).Last!.Number, CarAtWork.NewtonMetres(110.4m), CarAtWork.Reason, CarAtWork.Shown));
            corrections.Add(car.Last);
        }

        car.Do(Theo, new ConfirmCorrection(corrections[1], CarAtWork.Reason, CarAtWork.Shown));
        Assert.Equal(StepStanding.Void, car.Standing(job, $"final@{Left}"));
        car.Do(Theo, new ConfirmCorrection(corrections[0], CarAtWork.Reason, CarAtWork.Shown));
        Assert.Equal(StepStanding.Signed, car.Standing(job, $"final@{Left}"));
    }

    [Fact]
    public void A_confirmed_slip_of_typing_lifts_the_hold_that_only_the_wrong_figure_raised()
    {
        Redo();
        car.Pull(Tess, job, "nuts", Nuts[0], 2, 130, TestTools.Dial);
        Assert.Equal(PositionState.Held, car.Shows(Nuts[0] with { Key = TestRegister.Stud }));
        car.Do(Tess, new Restate(car.Last, CarAtWork.NewtonMetres(110), CarAtWork.Reason, CarAtWork.Shown));
        Assert.Equal(PositionState.Held, car.Shows(Nuts[0]));
        car.Do(Theo, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown));
        Assert.Equal(PositionState.AtTorque, car.Shows(Nuts[0]));
        Assert.Equal(PositionState.AsFound, car.Shows(Nuts[0] with { Key = TestRegister.Stud }));
    }

    [Fact]
    public void A_slip_that_the_lead_says_for_the_doer_lifts_no_hold()
    {
        Redo();
        car.Pull(Tess, job, "nuts", Nuts[0], 2, 130, TestTools.Dial);
        car.Do(Lee, new Restate(car.Last, CarAtWork.NewtonMetres(110), CarAtWork.Reason, CarAtWork.Shown));
        car.Do(Theo, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown));
        Assert.Equal(PositionState.Held, car.Shows(Nuts[0]));
        Assert.Equal(PositionState.Held, car.Shows(Nuts[0] with { Key = TestRegister.Stud }));
    }

    [Fact]
    public void A_confirmed_figure_over_the_maximum_leaves_the_stud_held_where_the_nut_was_used_as_is()
    {
        car.Do(Tess, new Restate(car.State.Of(Nuts[0]).Last!.Number, CarAtWork.NewtonMetres(130), CarAtWork.Reason, CarAtWork.Shown));
        var correction = car.Last;
        car.Do(Lee, Decision(Nuts[0], Disposition.UseAsIs, accepted: true));
        car.Do(Lee, new ConfirmCorrection(correction, CarAtWork.Reason, CarAtWork.Shown));
        Assert.Equal(PositionState.Held, car.Shows(Nuts[0] with { Key = TestRegister.Stud }));
    }

    [Fact]
    public void A_confirmed_figure_does_not_bring_a_hand_tight_back_that_was_voided()
    {
        car.Open(Tess, job, Nuts);
        car.ByHand(Tess, job, "nuts", Nuts);
        var byHand = car.Last;
        car.Do(Tess, Sign(job, $"faces@{Left}", "clean"));
        car.Declare(TestRegister.WheelUp);
        car.Pull(Tess, job, "nuts", Nuts[0], 1, 50);
        var pull = car.Last;
        car.Do(Tess, new VoidEntry(byHand, null, CarAtWork.Reason));
        car.Do(Tess, new Restate(pull, CarAtWork.NewtonMetres(50.4m), CarAtWork.Reason, CarAtWork.Shown));
        car.Do(Theo, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown));
        Assert.Equal(PositionState.Open, car.Shows(Nuts[0]));
    }

    [Fact]
    public void A_jam_nut_is_on_once_its_figure_is_confirmed_whoever_said_the_slip()
    {
        var studs = car.StartJob(TestProcedures.Studs(1, 3, 5, 2, 4), Left);
        var jam = new JointPosition(TestRegister.Jam, Left, 1);
        car.Open(Tess, studs, Nuts[0] with { Key = TestRegister.Stud });
        car.FitNew(Tess, studs, "studs", Nuts[0] with { Key = TestRegister.Stud });
        car.ByHand(Tess, studs, "studs", Nuts[0] with { Key = TestRegister.Stud });
        Assert.Equal([HoldReason.UnderRange], car.Pull(Tess, studs, "jam", jam, 1, 9, TestTools.Dial).Problems);
        car.Do(Lee, new Restate(car.Last, CarAtWork.NewtonMetres(90), CarAtWork.Reason, CarAtWork.Shown));
        car.Do(Theo, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown));
        Assert.Equal(PositionState.AtTorque, car.Shows(jam));
    }

    [Fact]
    public void One_pull_reported_twice_lets_go_once_a_second_person_confirms()
    {
        car.Pull(Tess, job, "nuts", Nuts[0], 2, 110);
        Assert.Equal(PositionState.Held, car.Shows(Nuts[0]));
        car.Do(Tess, new VoidEntry(car.Last, false, CarAtWork.Reason));
        Assert.Equal(PositionState.Held, car.Shows(Nuts[0]));
        car.Do(Theo, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown));
        Assert.Equal(PositionState.AtTorque, car.Shows(Nuts[0]));
    }

    [Fact]
    public void A_pull_without_the_right_is_recorded_and_counts_when_whoever_stood_by_answers_for_it()
    {
        Redo();
        Assert.Equal([HoldReason.NoRightToRecord], car.Pull(Nobody, job, "nuts", Nuts[0], 2, 110).Problems);
        Assert.Equal(PositionState.Staged, car.Shows(Nuts[0]));
        car.Do(Theo, new Countersign([car.Last], CarAtWork.Shown));
        Assert.Equal(PositionState.AtTorque, car.Shows(Nuts[0]));
        Assert.Contains(HoldReason.OwnWork, car.Refused(Theo, Looks(job, "nuts", Left, 2)));
    }

    [Fact]
    public void Nobody_is_the_second_person_for_somebody_who_enrolled_him()
    {
        var tied = car.As(Theo) with { TiedTo = new HashSet<PersonId> { Tess.Id } };
        var verdict = car.State.Decide(car.Shows(Looks(job, "nuts", Left, 2)), tied);
        Assert.Equal([HoldReason.Tied], ((Verdict.Refused)verdict).Reasons.Select(point => point.Reason));
    }

    [Fact]
    public void A_witness_that_only_the_second_job_asks_for_is_offered()
    {
        var wheels = TestProcedures.Wheels(1, 3, 5, 2, 4);
        var group = wheels.Groups[0];
        var unseen = wheels with { Groups = [group with { Stages = [group.Stages[0], group.Stages[1] with { Witness = false }] }] };
        var other = new CarAtWork();
        var first = other.StartJob(unseen, Left);
        other.TightenWheel(Tess, first, Left);
        var second = other.StartJob(wheels, Left);
        Assert.Single(other.State.AwaitingWitness(other.Placed(second)));
        other.Do(Theo, Looks(second, "nuts", Left, 2));
        Assert.Empty(other.State.AwaitingWitness(other.Placed(second)));
    }

    private long Short()
    {
        Redo();
        car.Pull(Tess, job, "nuts", Nuts[0], 2, 100, TestTools.Dial);
        return car.Last;
    }

    // Back off, and up to the lower stage again.
    private void Redo()
    {
        car.Open(Tess, job, Nuts);
        car.Do(Tess, Sign(job, $"faces@{Left}", "clean"));
        car.ByHand(Tess, job, "nuts", Nuts);
        car.Declare(TestRegister.WheelUp);
        car.PullStage(Tess, job, "nuts", Left, 1);
        car.Do(Tess, Sign(job, $"seat@{Left}"));
        car.Declare(TestRegister.WheelDown);
    }
}
