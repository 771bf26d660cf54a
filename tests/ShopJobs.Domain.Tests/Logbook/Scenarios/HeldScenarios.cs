using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Properties;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook.Scenarios;

/// <summary>HOLD pressed where no fastener is, rows decided at once, and two leads at the same decision.</summary>
public sealed class HeldScenarios
{
    private readonly CarAtWork car = new();

    [Fact]
    public void A_step_that_waits_for_a_result_waits_until_the_held_result_is_decided()
    {
        var (held, job) = Bled();
        held.Do(Tess, new HoldWork(CarAtWork.Reason) { Result = held.State.Results["bleed"].Number });
        Assert.Contains(HoldReason.ResultHeld, held.Refused(Tess, BedIn(job)));

        held.Do(Lee, Decide(held.State.WorkHolds.Keys.Single(), Disposition.UseAsIs));
        Assert.DoesNotContain(HoldReason.ResultHeld, held.Refused(Tess, BedIn(job)));
    }

    [Fact]
    public void Without_that_rule_the_held_result_would_do()
    {
        var (held, job) = Bled(LeftOut.OfHeldWork.Single(rule => rule.Name == "Step without ResultHeld").Without);
        held.Do(Tess, new HoldWork(CarAtWork.Reason) { Result = held.State.Results["bleed"].Number });
        Assert.DoesNotContain(HoldReason.ResultHeld, held.Refused(Tess, BedIn(job)));
    }

    [Fact]
    public void A_step_held_after_the_release_suspends_it_and_done_again_it_is_signed_anew()
    {
        var job = car.FitLeftWheel();
        car.Do(Lee, To(ReleaseKind.Road));
        Assert.Equal(ReleaseStandingKind.Stands, Road());

        car.Do(Tess, new HoldWork(CarAtWork.Reason) { Job = job, Step = "faces@front-left" });
        Assert.Equal(ReleaseStandingKind.Suspended, Road());
        Assert.Contains(HoldReason.StepHeld, car.Refused(Lee, To(ReleaseKind.Move)));

        car.Do(Theo, Decide(car.Last, Disposition.Rework));
        Assert.True(car.State.Jobs[job].IsRunning);
        Assert.Equal(StepStanding.Void, car.Standing(job, "faces@front-left"));
    }

    [Fact]
    public void Nobody_decides_on_a_step_that_he_signed_or_held()
    {
        var job = car.FitLeftWheel();
        car.Do(Lee, new HoldWork(CarAtWork.Reason) { Job = job, Step = "faces@front-left" });
        Assert.Equal([HoldReason.OwnWork], car.Refused(Lee, Decide(car.Last, Disposition.UseAsIs)));
        Assert.Equal([HoldReason.NoRight, HoldReason.OwnWork], car.Refused(Tess, Decide(car.Last, Disposition.UseAsIs)).Order());
    }

    [Theory]
    [InlineData(null, null, null, HoldReason.LotMissing)]
    [InlineData("faces@nowhere", null, null, HoldReason.UnknownStep)]
    [InlineData(null, 1L, null, HoldReason.UnknownResult)]
    [InlineData(null, null, " ", HoldReason.LotMissing)]
    public void A_hold_names_something_that_is_known(string? step, long? result, string? lot, HoldReason reason)
    {
        var job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Left);
        Assert.Equal([reason], car.Refused(Tess, new HoldWork(CarAtWork.Reason) { Job = job, Step = step, Result = result, Lot = lot }));
    }

    [Fact]
    public void Deciding_what_nobody_held_is_refused() =>
        Assert.Equal([HoldReason.UnknownHold], car.Refused(Lee, Decide(7, Disposition.Rework)));

    [Fact]
    public void A_lot_of_a_class_A_joint_is_used_as_is_only_in_writing()
    {
        car.FitLeftWheel();
        car.Do(Tess, new HoldWork(CarAtWork.Reason) { Lot = "4471" });
        Assert.Equal([HoldReason.AcceptanceMissing], car.Refused(Lee, Decide(car.Last, Disposition.UseAsIs) with { Acceptance = null }));
        Assert.Equal(
            [HoldReason.AcceptanceNotWritten],
            car.Refused(Lee, Decide(car.Last, Disposition.UseAsIs) with { Acceptance = Written with { How = SaidHow.ByTelephone } }));
    }

    [Fact]
    public void A_row_of_nuts_is_decided_at_once_and_each_has_its_entry()
    {
        var job = Short();
        car.Do(Tess, new HoldPositions(Nuts, CarAtWork.Reason));
        var row = new DecideRow(Nuts, Disposition.Rework, CarAtWork.Reason, null, CarAtWork.Shown);

        var verdict = Assert.IsType<Verdict.Accepted>(car.Try(Theo, row));

        Assert.Equal(Nuts, verdict.Entries.Cast<Decided>().Select(decided => decided.Position));
        Assert.All(Nuts, nut => Assert.All(car.State.Of(nut).Holds, hold => Assert.Equal(Disposition.Rework, hold.Decision)));
        Assert.True(car.State.Jobs[job].IsRunning);
    }

    [Fact]
    public void A_row_is_decided_whole_or_not_at_all_and_says_which_nut_is_against_it()
    {
        Short();
        car.Do(Tess, new HoldPositions([.. Nuts.Take(4)], CarAtWork.Reason));
        car.Do(Theo, new HoldPositions([Nuts[4]], CarAtWork.Reason));

        var refused = Assert.IsType<Verdict.Refused>(car.Try(Theo, new DecideRow(Nuts, Disposition.Rework, CarAtWork.Reason, null, CarAtWork.Shown)));

        Assert.Equal([(HoldReason.OwnWork, Nuts[4])], refused.Reasons.Select(point => (point.Reason, point.Position!.Value)));
        Assert.All(Nuts, nut => Assert.Null(car.State.Of(nut).Holds[^1].Decision));
    }

    [Fact]
    public void A_row_covers_the_pulls_that_were_shown()
    {
        var job = Short();
        car.Do(Tess, new HoldPositions(Nuts, CarAtWork.Reason));
        var shown = car.Shows(new DecideRow(Nuts, Disposition.Rework, CarAtWork.Reason, null, CarAtWork.Shown));
        car.Pull(Tess, job, "nuts", Nuts[2], 1, 51);

        Assert.Equal([HoldReason.LookAgain], car.Refused(Theo, shown));
    }

    [Fact]
    public void Who_loses_a_race_is_told_who_decided_what_and_when()
    {
        Short();
        car.Do(Tess, new HoldPositions(Nuts, CarAtWork.Reason));
        var shown = car.Shows(Decision(Nuts[0], Disposition.Replace));
        car.Do(Theo, Decision(Nuts[0], Disposition.Rework));

        var lost = Assert.Single(Assert.IsType<Verdict.Refused>(car.Try(Lee, shown)).Reasons);

        Assert.Equal(
            (HoldReason.DecidedBefore, Nuts[0], Theo.Id, Disposition.Rework),
            (lost.Reason, lost.Position!.Value, lost.By!.Value, lost.Decision!.Value));
        Assert.Equal(
            "Theo decided wheel nut front-left 1 before you, on 2 Mar 2026, 07:03: rework",
            HoldWords.Say(lost with { At = CarAtWork.Start.AddMinutes(3) }, new HoldNames(_ => "wheel nut front-left", at => at) { Person = _ => "Theo" }).Words);
    }

    [Theory]
    [InlineData("x", HoldReason.AcceptanceWho)]
    [InlineData(" ", HoldReason.AcceptanceWho)]
    [InlineData("Rhea Quill", null)]
    public void The_letter_x_is_nobodys_acceptance(string who, HoldReason? reason)
    {
        var lacks = (Written with { Who = who, Words = reason is null ? "go ahead" : "x" }).Lacks(new DateOnly(2026, 3, 2), inWriting: true);
        Assert.Equal(reason is null ? [] : [HoldReason.AcceptanceWho, HoldReason.AcceptanceWords], lacks.Select(point => point.Reason));
    }

    [Fact]
    public void What_was_accepted_is_kept_as_one_text() => Assert.Equal(
        "Rhea Quill, 2026-03-02, in writing, kept: folder 7: “go ahead with it”", Written.Text());

    private IReadOnlyList<JointPosition> Nuts => car.Positions(TestRegister.Nut, TestRegister.Left);

    private ReleaseStandingKind Road() => car.State.StandingOf(car.As(Lee), ReleaseKind.Road).Kind;

    private static DecideWork Decide(long hold, Disposition disposition) =>
        new(hold, disposition, CarAtWork.Reason, disposition == Disposition.UseAsIs ? Written : null, CarAtWork.Shown);

    private static ConfirmStep BedIn(JobId job) => Sign(job, "bed-in");

    // A wheel at its first stage.
    private JobId Short()
    {
        var job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Left);
        car.Do(Tess, Sign(job, "faces@front-left", "clean"));
        car.Declare(TestRegister.WheelUp);
        car.Open(Tess, job, Nuts);
        car.ByHand(Tess, job, "nuts", Nuts);
        car.PullStage(Tess, job, "nuts", TestRegister.Left, 1);
        return job;
    }

    private static (CarAtWork Car, JobId Job) Bled(HoldRules? rules = null)
    {
        var bled = new CarAtWork(rules: rules);
        var job = bled.StartJob(TestProcedures.Brake(), TestRegister.Front);
        bled.Do(Tess, new RecordResult("bleed", [new MeasuredValue("volume", 1, "l")], ResultBasis.Measured, null, [], null, null, CarAtWork.Shown));
        return (bled, job);
    }
}
