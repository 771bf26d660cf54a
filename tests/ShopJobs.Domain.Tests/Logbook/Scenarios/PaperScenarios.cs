using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestRegister;

namespace ShopJobs.Domain.Tests.Logbook.Scenarios;

/// <summary>The power was off: a wheel was done by its card, and the card is entered afterwards.</summary>
public class PaperScenarios
{
    private const string Card = "3-5-B5E6";
    private readonly CarAtWork car = new();
    private readonly JobId job;
    private readonly IReadOnlyList<JointPosition> nuts;

    public PaperScenarios()
    {
        job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Left);
        nuts = car.Positions(Nut, TestRegister.Left);
        car.Do(Tess, Sign(job, $"faces@{TestRegister.Left}", "clean"));
        car.Declare(WheelUp);
        car.Open(Tess, job, nuts);
        car.Wait(TimeSpan.FromHours(1));
    }

    [Fact]
    public void What_its_doer_enters_in_the_same_session_counts_and_says_that_it_came_from_a_card()
    {
        car.Do(Tess, ByHand());
        var pulled = nuts.Select((_, visit) => (TorqueRecorded)car.Do(Tess, Pull(visit))).ToList();

        Assert.All(pulled, pull => Assert.Empty(pull.Problems));
        Assert.All(pulled, pull => Assert.Equal(Card, pull.OnPaper?.Card));
        Assert.Equal(PositionState.Staged, car.Shows(nuts[0]));
    }

    [Fact]
    public void What_its_doer_enters_after_he_signed_in_anew_is_recorded_and_held()
    {
        var session = car.SessionOf(Tess);
        car.Do(Tess, ByHand());
        car.SignInAnew(Tess);

        var pull = (TorqueRecorded)car.Do(Tess, Pull(0) with { MadeIn = session });

        Assert.Equal([HoldReason.EarlierSession], pull.Problems);
        Assert.Equal(PositionState.Held, car.Shows(nuts[0]));
    }

    [Fact]
    public void A_card_speaks_of_the_cycle_in_which_it_was_printed_and_of_what_was_opened_by_itself()
    {
        var printed = new CardNumber(car.Last, 0);
        car.Do(Tess, ByHand());
        car.Do(Tess, new OpenPositions([nuts[0]], job, null) { OnPaper = new OnPaper(Card, car.Now) });
        Assert.Equal(car.State.Of(nuts[0]).Cycle, PaperMoments.CycleOn(car.State, nuts[0], printed, Card));

        car.Do(Tess, ByHand());
        car.Open(Tess, job, nuts[0]);
        Assert.Equal(car.State.Of(nuts[0]).Cycle - 1, PaperMoments.CycleOn(car.State, nuts[0], printed, Card));
    }

    [Fact]
    public void A_moment_to_come_and_one_before_the_last_record_are_sent_back()
    {
        Assert.Equal([HoldReason.PaperTimeAhead], car.Refused(Tess, ByHand() with { OnPaper = new OnPaper(Card, car.Now.AddHours(1)) }));
        Assert.Equal([HoldReason.PaperTimeBefore], car.Refused(Tess, ByHand() with { OnPaper = new OnPaper(Card, car.Now.AddHours(-2)) }));
    }

    [Fact]
    public void Declared_by_another_it_does_not_count_and_the_nut_stays_as_it_was()
    {
        car.ByHand(Tess, job, "nuts", nuts);

        var declared = (DeclaredFromPaper)car.Do(Theo, Declared(1));

        Assert.Equal([HoldReason.DeclaredFromPaper], declared.Problems);
        Assert.All(nuts, nut => Assert.Equal(PositionState.HandTight, car.Shows(nut)));
        Assert.Equal(TakeOffReason.DeclaredFromPaper, Assert.IsType<NextAction.TakeOff>(car.Next(job, $"seat@{TestRegister.Left}")).Why);
        var said = HoldRules.Standard.OnStep(new StepQuestion(car.State, car.As(Lee), car.State.Jobs[job], car.Placed(job), car.Placed(job).Step($"seat@{TestRegister.Left}")!, StepAnswers.None));
        Assert.Contains(said.Select(point => car.Say(point).Words), words => words.EndsWith("declared from paper by Somebody, does not count", StringComparison.Ordinal));
    }

    [Fact]
    public void A_pull_on_top_of_a_declared_one_is_held_and_one_after_backing_off_counts()
    {
        car.ByHand(Tess, job, "nuts", nuts);
        car.Do(Theo, Declared(1));
        Assert.Equal([HoldReason.BackOffFirst], car.Copy().Pull(Tess, job, "nuts", nuts[0], 1, 50).Problems);

        car.Open(Tess, job, nuts);
        car.Do(Tess, Sign(job, $"faces@{TestRegister.Left}", "clean"));
        car.Declare(WheelUp);
        car.ByHand(Tess, job, "nuts", nuts);

        Assert.Empty(car.Pull(Tess, job, "nuts", nuts[0], 1, 50).Problems);
    }

    [Fact]
    public void Voided_by_one_it_is_still_backed_off_and_confirmed_by_a_second_it_is_as_never_written()
    {
        car.ByHand(Tess, job, "nuts", nuts);
        car.Do(Theo, Declared(1));
        car.Do(Theo, new VoidEntry(car.Last, false, CarAtWork.Reason));
        var correction = car.Last;
        Assert.True(car.State.GainsByASecond(car.State.Corrections[correction]));
        Assert.Equal([HoldReason.BackOffFirst], car.Copy().Pull(Tess, job, "nuts", nuts[0], 1, 50).Problems);

        car.Do(Lee, new ConfirmCorrection(correction, CarAtWork.Reason, CarAtWork.Shown));

        Assert.Empty(car.Pull(Tess, job, "nuts", nuts[0], 1, 50).Problems);
    }

    [Fact]
    public void Declared_of_what_nobody_here_touched_it_is_held_for_it_is_no_longer_as_found()
    {
        var other = new CarAtWork();
        var its = other.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Left);

        other.Do(Theo, Declared(1) with { Job = its });

        Assert.All(nuts, nut => Assert.Equal(HoldReason.DeclaredFromPaper, Assert.Single(other.State.Of(nut).Holds).Reason));
    }

    [Fact]
    public void An_angle_that_is_declared_is_held_and_not_turned_again()
    {
        var head = new CarAtWork();
        var its = head.StartJob(TestProcedures.Head(), TestProcedures.Head().Steps[0].Places.Count > 0 ? TestProcedures.Head().Steps[0].Places[0] : "engine");
        var group = head.Placed(its).Groups.First();
        head.Open(Tess, its, [.. group.Positions]);

        head.Do(Theo, new DeclareFromPaper(its, group.Group.Id, [.. group.Positions], 2, Tess.Id, CarAtWork.Reason));

        Assert.All(group.Positions, bolt => Assert.Equal(PositionState.Held, head.Shows(bolt)));
    }

    [Fact]
    public void What_is_recorded_already_is_not_declared()
    {
        car.ByHand(Tess, job, "nuts", nuts);
        car.Pull(Tess, job, "nuts", nuts[0], 1, 50);

        Assert.Equal([HoldReason.RecordedAlready], car.Refused(Theo, Declared(1)));
        Assert.Equal([HoldReason.RecordedAlready], car.Refused(Theo, Declared(0)));
    }

    [Fact]
    public void Who_did_it_by_the_paper_is_a_worker_and_no_witness_there()
    {
        car.ByHand(Tess, job, "nuts", nuts);
        car.Do(Lee, Declared(1) with { DoneBy = Theo.Id });

        Assert.Contains(Theo.Id, car.State.Of(nuts[0]).Workers);
    }

    [Theory]
    [InlineData("118-63-", true)]
    [InlineData(" 118 - 63 -", true)]
    [InlineData("119-63-", false)]
    [InlineData("118-64-", false)]
    public void A_mistyped_card_number_is_seen(string typed, bool fits)
    {
        var id = new CarId(Guid.Parse("55555555-0000-4000-8000-000000000005"));
        var card = new CardNumber(118, 63);
        var letters = card.On(id, job)[^4..];

        Assert.Equal(fits ? card : null, CardNumber.Read(typed + letters, id, job));
        Assert.Null(CardNumber.Read(card.On(id, job), id, new JobId(Guid.Parse("66666666-0000-4000-8000-000000000006"))));
    }

    private HandTighten ByHand() => new(job, "nuts", nuts, []) { OnPaper = new OnPaper(Card, car.Now), MadeIn = car.SessionOf(Tess) };

    private RecordTorque Pull(int visit)
    {
        var stage = car.Placed(job).Group("nuts", TestRegister.Left)!.Group.Stages[0];
        var nut = nuts[stage.Visits[visit] - 1];
        return new RecordTorque(job, "nuts", nut, car.State.Of(nut).Cycle, 1, visit, TorqueKind.Reading, CarAtWork.NewtonMetres(50), TestTools.Dial, [])
        {
            OnPaper = new OnPaper(Card, car.Now),
            MadeIn = car.SessionOf(Tess),
        };
    }

    private DeclareFromPaper Declared(int stage) => new(job, "nuts", nuts, stage, Tess.Id, CarAtWork.Reason);
}
