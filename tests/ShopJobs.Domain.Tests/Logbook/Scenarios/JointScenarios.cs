using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook.Scenarios;

/// <summary>Ways in which a joint once said more than was true.</summary>
public class JointScenarios
{
    private const string Left = TestRegister.Left;
    private static readonly int[] Star = [1, 3, 5, 2, 4];
    private readonly CarAtWork car = new();

    private IReadOnlyList<JointPosition> Nuts => car.Positions(TestRegister.Nut, Left);

    private IReadOnlyList<JointPosition> Studs => car.Positions(TestRegister.Stud, Left);

    [Fact]
    public void Wheel_off_again_for_the_brakes_takes_the_clean_faces_with_it()
    {
        var job = car.FitLeftWheel();
        car.Open(Theo, null, Nuts);
        Assert.Equal(StepStanding.Void, car.Standing(job, $"faces@{Left}"));
        car.Do(Tess, Sign(job, $"faces@{Left}", "clean"));
        Assert.Equal(StepStanding.Signed, car.Standing(job, $"faces@{Left}"));
    }

    [Fact]
    public void The_first_opening_of_a_job_leaves_what_was_signed_before_it()
    {
        var job = car.StartJob(TestProcedures.Wheels(Star), Left);
        car.Do(Tess, Sign(job, $"faces@{Left}", "clean"));
        car.Open(Tess, job, Nuts);
        Assert.Equal(StepStanding.Signed, car.Standing(job, $"faces@{Left}"));
    }

    [Fact]
    public void Opening_what_is_open_starts_no_new_cycle()
    {
        var job = car.StartJob(TestProcedures.Wheels(Star), Left);
        car.Open(Tess, job, Nuts);
        var cycle = car.State.Of(Nuts[0]).Cycle;
        car.Do(Tess, Sign(job, $"faces@{Left}", "clean"));
        car.Open(Tess, job, Nuts);
        Assert.Equal(cycle, car.State.Of(Nuts[0]).Cycle);
        Assert.Equal(StepStanding.Signed, car.Standing(job, $"faces@{Left}"));
    }

    [Fact]
    public void Undo_and_click_again_does_not_count_until_the_nut_was_backed_off()
    {
        var job = Snugged();
        car.Pull(Tess, job, "nuts", Nuts[0], 1, 50);
        car.Do(Tess, new VoidEntry(car.Last, true, CarAtWork.Reason));
        Assert.Equal(Nuts, Assert.IsType<NextAction.TakeOff>(car.Next(job, $"seat@{Left}")).Positions);
        Assert.Equal([HoldReason.BackOffFirst], car.Pull(Tess, job, "nuts", Nuts[0], 1, 50).Problems);
    }

    [Fact]
    public void Undo_of_a_pull_that_never_was_lets_it_be_pulled_once_a_second_person_confirms()
    {
        var job = Snugged();
        car.Pull(Tess, job, "nuts", Nuts[0], 1, 50);
        car.Do(Tess, new VoidEntry(car.Last, false, CarAtWork.Reason));
        Assert.IsType<NextAction.TakeOff>(car.Next(job, $"seat@{Left}"));
        car.Do(Theo, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown));
        Assert.Equal(Nuts[0], Assert.IsType<NextAction.PullNow>(car.Next(job, $"seat@{Left}")).Cell.Position);
        Assert.Empty(car.Pull(Tess, job, "nuts", Nuts[0], 1, 50).Problems);
    }

    [Fact]
    public void The_doubt_of_the_wrench_that_jammed_stays_on_the_stud_when_the_jam_nuts_are_off()
    {
        var job = car.StartJob(TestProcedures.Studs(Star), Left);
        DriveStud(job, 1, jammedWith: TestTools.Dial);
        car.TellTool(TestTools.Dial, new Doubted(CarAtWork.Reason));
        Assert.Equal(PositionState.Doubted, car.Shows(Studs[0]));
        Assert.Contains(
            ToolTraces.Trace(car.Tool(TestTools.Dial), TestTools.Dial, car.State, car.Book), traced => traced.Position == Studs[0] && traced.InDoubt);
    }

    [Fact]
    public void Whoever_jammed_the_pair_does_not_witness_the_stud()
    {
        var job = car.StartJob(TestProcedures.Studs(Star), Left);
        DriveStud(job, 1, jammedBy: Theo);
        Assert.Contains(Theo.Id, car.State.Of(Studs[0]).Workers);
    }

    [Fact]
    public void Nuts_on_open_studs_are_neither_counted_nor_asked_for()
    {
        var job = car.StartJob(TestProcedures.Wheels(Star), Left);
        car.Open(Tess, null, Studs);
        car.Do(Tess, Sign(job, $"faces@{Left}", "clean"));
        Assert.Equal(Studs[0], Assert.IsType<NextAction.Wait>(car.Next(job, $"seat@{Left}")).Why.Position);
        Assert.Equal([HoldReason.RidesOnLoose], car.ByHand(Tess, job, "nuts", Nuts).Problems);
        Assert.Equal(PositionState.Open, car.Shows(Nuts[0]));
    }

    [Fact]
    public void A_nut_stops_counting_when_its_stud_is_held()
    {
        var job = car.FitLeftWheel();
        car.Do(Theo, new HoldPositions([Studs[1]], CarAtWork.Reason));
        Assert.Contains(
            PositionRules.All.SelectMany(rule => rule.Find(new PositionQuestion(car.State, car.As(Lee), car.State.Of(Nuts[1]), null, null, null))),
            point => point.Reason == HoldReason.RidesOnLoose);
        Assert.NotEqual(default, job);
    }

    [Fact]
    public void Wheel_nuts_do_not_count_on_studs_whose_cure_is_not_signed()
    {
        var studs = car.StartJob(TestProcedures.Studs(Star), Left);
        for (var stud = 0; stud < 5; stud++)
        {
            DriveStud(studs, Star[stud]);
        }

        car.Do(Tess, Sign(studs, $"drive@{Left}"));
        var wheels = car.StartJob(TestProcedures.Wheels(Star), Left);
        car.Do(Tess, Sign(wheels, $"faces@{Left}", "clean"));
        Assert.Equal([HoldReason.RidesOnLoose], car.ByHand(Tess, wheels, "nuts", Nuts).Problems);

        car.Wait(TimeSpan.FromHours(25));
        car.Do(Tess, Sign(studs, $"wheel@{Left}") with { Values = [new MeasuredValue("protrusion", 30, "mm")] });
        Assert.Empty(car.ByHand(Tess, wheels, "nuts", Nuts).Problems);
    }

    [Fact]
    public void A_pull_at_a_step_whose_step_before_fell_does_not_count()
    {
        var job = Snugged();
        car.PullStage(Tess, job, "nuts", Left, 1);
        car.Do(Tess, Sign(job, $"seat@{Left}"));
        car.Do(Tess, new VoidEntry(car.State.Jobs[job].SignOffs[$"seat@{Left}"].Number, null, CarAtWork.Reason));
        car.Declare(TestRegister.WheelDown);
        Assert.Equal([HoldReason.StepBefore], car.Pull(Tess, job, "nuts", Nuts[0], 2, 110).Problems);
    }

    [Fact]
    public void A_late_hand_tight_of_an_earlier_cycle_leaves_the_joint_open()
    {
        var job = Snugged();
        car.Open(Theo, job, Nuts);
        var late = (HandTightened)car.Do(Tess, new HandTighten(job, "nuts", Nuts, []) { Cycles = [1, 1, 1, 1, 1] });
        Assert.Equal([HoldReason.CellMoved], late.Problems);
        Assert.Equal(PositionState.Open, car.Shows(Nuts[0]));
    }

    [Fact]
    public void A_late_fitted_new_of_an_earlier_cycle_fits_nothing()
    {
        var job = car.StartJob(TestProcedures.Studs(Star), Left);
        car.Open(Tess, job, Studs);
        car.FitNew(Tess, job, "studs", Studs);
        car.Open(Tess, job, Studs);
        car.Do(Tess, new FitNew(job, "studs", Studs, "lot 4471") { Cycles = [1, 1, 1, 1, 1] });
        Assert.Equal(PositionState.Open, car.Shows(Studs[0]));
    }

    [Fact]
    public void A_late_open_of_an_earlier_cycle_holds_what_was_tightened_since()
    {
        car.FitLeftWheel();
        car.Do(Theo, new OpenPositions([Nuts[0]], null, null) { Cycles = [0] });
        Assert.Equal(PositionState.Held, car.Shows(Nuts[0]));
        Assert.Equal(PositionState.AtTorque, car.Shows(Nuts[1]));
    }

    [Fact]
    public void A_hold_on_a_hand_tight_nut_used_as_is_does_not_make_it_count()
    {
        var job = Snugged();
        car.Do(Theo, new HoldPositions([Nuts[0]], CarAtWork.Reason));
        car.Do(Lee, Decision(Nuts[0], Disposition.UseAsIs, accepted: true));
        Assert.Equal(PositionState.HandTight, car.Shows(Nuts[0]));
        Assert.Contains(HoldReason.NotAtStage, car.Refused(Tess, Sign(job, $"seat@{Left}")));
    }

    [Fact]
    public void A_locker_that_has_begun_to_set_is_too_late()
    {
        var studs = TestProcedures.Studs(Star);
        var job = car.StartJob(studs with { Groups = [studs.Groups[0], studs.Groups[1] with { Within = TimeSpan.FromMinutes(30) }] }, Left);
        TurnedIn(job, 1);
        car.Wait(TimeSpan.FromDays(90));
        car.Pull(Tess, job, "jam", new JointPosition(TestRegister.Jam, Left, 1), 1, 90);
        Assert.Contains(HoldReason.TooLate, car.Pull(Tess, job, "studs", Studs[0], 1, 73).Problems);
    }

    private JobId Snugged()
    {
        var job = car.StartJob(TestProcedures.Wheels(Star), Left);
        car.Do(Tess, Sign(job, $"faces@{Left}", "clean"));
        car.Declare(TestRegister.WheelUp);
        car.Open(Tess, job, Nuts);
        car.ByHand(Tess, job, "nuts", Nuts);
        return job;
    }

    private void TurnedIn(JobId job, int number)
    {
        car.Open(Tess, job, Studs[number - 1]);
        car.FitNew(Tess, job, "studs", Studs[number - 1]);
        car.ByHand(Tess, job, "studs", Studs[number - 1]);
    }

    private void DriveStud(JobId job, int number, ShopJobs.Domain.Tools.ToolId? jammedWith = null, TestPerson? jammedBy = null)
    {
        var jam = new JointPosition(TestRegister.Jam, Left, number);
        TurnedIn(job, number);
        car.Pull(jammedBy ?? Tess, job, "jam", jam, 1, 90, jammedWith);
        Assert.Empty(car.Pull(Tess, job, "studs", Studs[number - 1], 1, 73).Problems);
        car.Open(Tess, job, jam);
    }
}
