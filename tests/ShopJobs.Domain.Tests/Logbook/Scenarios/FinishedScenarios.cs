using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.ShopProcedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.ShopProcedures.SeedTools;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook.Scenarios;

/// <summary>A wheel of the shop's own procedure, done in one go: its steps are signed together, and by nobody who did not do them.</summary>
public class FinishedScenarios
{
    private const string Left = "front-left";
    private const string Right = "front-right";
    private static readonly string[] UpToFifty = ["faces", "by-hand", "snug", "stage-50"];
    private readonly SeedJob job = new("P5-wheel-fit-up.yaml", Left, Right);

    private CarAtWork Car => job.Car;

    [Fact]
    public void Four_finished_steps_of_a_wheel_are_signed_with_one_PIN_each_as_an_entry_of_its_own()
    {
        UpToFiftyInOneGo(Left);

        var before = Car.Last;
        Car.Do(Tess, job.ToSign($"stage-50@{Left}") with { With = [.. UpToFifty.SkipLast(1).Select(step => $"{step}@{Left}")] });

        Assert.All(UpToFifty, step => Assert.Equal(StepStanding.Signed, Car.Standing(job.Id, $"{step}@{Left}")));
        Assert.Equal(UpToFifty.Select(step => $"{step}@{Left}"), Car.Book.Skip((int)before).Select(line => ((StepConfirmed)line.Entry).Step));
        Assert.Contains(before + 3, ((StepConfirmed)Car.Book[^1].Entry).RestsOn);
    }

    [Fact]
    public void Each_is_signed_with_what_was_said_when_it_was_finished()
    {
        UpToFiftyInOneGo(Left);

        Car.Do(Tess, job.ToSign($"stage-50@{Left}") with { With = [.. UpToFifty.SkipLast(1).Select(step => $"{step}@{Left}")] });

        var faces = Car.Book.Select(line => line.Entry).OfType<StepConfirmed>().First();
        Assert.Equal(["faces-bare", "cones-bare", "threads-dry", "hub-ring"], faces.Ticks);
    }

    [Fact]
    public void The_wheels_of_two_corners_are_not_signed_with_one_PIN()
    {
        UpToFiftyInOneGo(Left);
        UpToFiftyInOneGo(Right);

        var both = job.ToSign($"stage-50@{Left}") with { With = [$"faces@{Left}", $"by-hand@{Left}", $"snug@{Left}", $"faces@{Right}"] };

        Assert.Equal([HoldReason.NotFinished], Car.Refused(Tess, both));
    }

    [Fact]
    public void The_car_is_not_lowered_over_wheels_that_nobody_has_signed()
    {
        UpToFiftyInOneGo(Left);
        UpToFiftyInOneGo(Right);

        Assert.Contains(HoldReason.StepBefore, Car.Refused(Tess, Finished("lower")));
    }

    [Fact]
    public void An_idle_lock_in_mid_star_and_another_pair_of_hands_the_step_before_is_signed_before_he_goes_on()
    {
        Finish("faces", Left);
        RunDown(Left);
        Finish("by-hand", Left);
        Finish("snug", Left);
        job.Stand("stand", "wheel-up");
        job.Stand("hub", "held");
        Assert.Empty(PullAt50(Tess, 1).Problems);

        // Theo takes over.
        Assert.Equal([HoldReason.StepBefore], PullAt50(Theo, 3).Problems);
    }

    [Fact]
    public void Whoever_signs_in_anew_signs_what_is_done_before_it_goes_on()
    {
        Finish("faces", Left);
        Car.SignInAnew(Tess);

        Assert.Equal([HoldReason.StepBefore], Car.Refused(Tess, Finished($"snug@{Left}")).Intersect([HoldReason.StepBefore]));
        job.Sign($"faces@{Left}");
        RunDown(Left);
        Assert.IsType<StepFinished>(Car.Do(Tess, Finished($"by-hand@{Left}")));
    }

    [Fact]
    public void A_finished_step_is_open_again_when_its_nut_was_taken_off()
    {
        Finish("faces", Left);
        RunDown(Left);
        Finish("by-hand", Left);
        Car.Open(Tess, job.Id, job.At("wheel.nut", Left, 2));

        Assert.Null(FinishedBy($"by-hand@{Left}"));
        Assert.Contains(HoldReason.NotFinished, Car.Refused(Tess, job.ToSign($"snug@{Left}") with { With = [$"by-hand@{Left}"] }));
    }

    [Fact]
    public void A_word_that_a_step_is_done_is_taken_back_and_the_step_after_it_waits()
    {
        Finish("faces", Left);
        RunDown(Left);
        Finish("by-hand", Left);

        Car.Do(Tess, new VoidEntry(Car.State.Jobs[job.Id].Finished[$"faces@{Left}"].Number, null, CarAtWork.Reason));

        Assert.Null(FinishedBy($"faces@{Left}"));
        Assert.Null(FinishedBy($"by-hand@{Left}"));
    }

    [Fact]
    public void The_final_torque_is_signed_by_itself()
    {
        UpToFiftyInOneGo(Left);
        UpToFiftyInOneGo(Right);
        SignWheel(Left);
        SignWheel(Right);
        job.Finish("lower");
        job.Stand("stand", "tyre-on-ground");
        job.Work($"final@{Left}", W5, W7, W9);
        job.Look($"final@{Left}");

        Assert.Equal([HoldReason.SignedByItself, HoldReason.NotFinished], Car.Refused(Tess, job.ToSign($"final@{Left}") with { With = [$"stage-50@{Left}"] }));
        job.Sign($"final@{Left}");
    }

    [Fact]
    public void A_wheel_fit_up_of_two_corners_takes_five_signatures_where_it_took_eleven()
    {
        UpToFiftyInOneGo(Left);
        UpToFiftyInOneGo(Right);
        SignWheel(Left);
        SignWheel(Right);
        job.Finish("lower");
        job.Stand("stand", "tyre-on-ground");
        foreach (var place in new[] { Left, Right })
        {
            job.Work($"final@{place}", W5, W7, W9);
            job.Look($"final@{place}");
            job.Sign($"final@{place}");
        }

        // A wheel takes two, the lowering one; each step is an entry of its own all the same.
        Assert.True(job.IsSigned);
        Assert.Equal(11, Car.Book.Count(line => line.Entry is StepConfirmed));
        Assert.Equal(5, Car.Book.Where(line => line.Entry is StepConfirmed).Select(line => line.At).Distinct().Count());
    }

    [Fact]
    public void The_next_step_of_the_car_is_the_one_that_its_doer_goes_on_with()
    {
        Finish("faces", Left);

        Assert.Equal($"by-hand@{Left}", Car.State.NextStepOf(Car.As(Nobody), [], (_, _) => true)!.Step.Id);
    }

    [Fact]
    public void What_rests_is_said_anew_when_the_job_goes_on()
    {
        Finish("faces", Left);
        Car.Do(Lee, new PutJobOnHold(job.Id, CarAtWork.Reason));
        Car.Do(Lee, new ResumeJob(job.Id, CarAtWork.Shown));

        Assert.Null(FinishedBy($"faces@{Left}"));
    }

    [Fact]
    public void A_step_that_the_lead_has_redone_is_not_finished_any_more()
    {
        Finish("faces", Left);
        Car.Do(Theo, new HoldWork(CarAtWork.Reason) { Job = job.Id, Step = $"faces@{Left}" });
        Car.Do(Lee, new DecideWork(Car.Last, Disposition.Rework, CarAtWork.Reason, null, CarAtWork.Shown));

        Assert.Null(FinishedBy($"faces@{Left}"));
    }

    [Fact]
    public void A_trainees_step_is_signed_and_countersigned_before_anybody_goes_on() =>
        Assert.Contains(HoldReason.NoRight, Car.Refused(Tia, Finished($"faces@{Left}")));

    [Fact]
    public void Yesterdays_pull_that_the_tablet_sends_this_morning_is_recorded_and_held()
    {
        UpToFiftyInOneGo(Left, pulls: 4);
        var book = Car.State.Of(job.At("wheel.nut", Left, 4)[0]);
        var kept = new RecordTorque(job.Id, "wheel-nuts", book.Position, book.Cycle, 1, 4, TorqueKind.SettingConfirmed, CarAtWork.NewtonMetres(50), W5, [])
        {
            MadeIn = Car.SessionOf(Tess),
        };
        Car.SignInAnew(Tess);

        Assert.Contains(HoldReason.EarlierSession, ((TorqueRecorded)Car.Do(Tess, kept)).Problems);
        Assert.Equal(PositionState.Held, Car.Shows(book.Position));
    }

    [Fact]
    public void How_the_car_stood_yesterday_is_not_said_of_today()
    {
        var said = new DeclareCondition([new CarCondition("stand", "wheel-up")]) { Places = [Left], MadeIn = Car.SessionOf(Tess) };
        Car.SignInAnew(Tess);

        Assert.Equal([HoldReason.SaidEarlier], Car.Refused(Tess, said));
    }

    private FinishStep Finished(string step) => job.ToSign(step) is var sign ? new(job.Id, step, sign.Ticks, sign.Values) : throw new InvalidOperationException();

    private void Finish(string step, string place)
    {
        job.Open($"{step}@{place}");
        Car.Do(Tess, Finished($"{step}@{place}"));
    }

    private void RunDown(string place) => Car.ByHand(Tess, job.Id, "wheel-nuts", job.At("wheel.nut", place));

    private FinishedStep? FinishedBy(string step) => Car.State.FinishedOf(Car.State.Jobs[job.Id], job.Placed, job.Placed.Step(step)!);

    private TorqueRecorded PullAt50(TestPerson person, int nut)
    {
        var book = Car.State.Of(job.At("wheel.nut", Left, nut)[0]);
        return (TorqueRecorded)Car.Do(person, new RecordTorque(
            job.Id, "wheel-nuts", book.Position, book.Cycle, 1, nut / 2, TorqueKind.SettingConfirmed, CarAtWork.NewtonMetres(50), W5, []));
    }

    private void UpToFiftyInOneGo(string place, int pulls = 5)
    {
        Finish("faces", place);
        RunDown(place);
        Finish("by-hand", place);
        Finish("snug", place);
        job.Stand("stand", "wheel-up");
        job.Stand("hub", "held");
        for (var pull = 0; pull < pulls; pull++)
        {
            Assert.Empty(job.PullNext($"stage-50@{place}", W5).Problems);
        }

        if (pulls == 5)
        {
            Finish("stage-50", place);
        }
    }

    private void SignWheel(string place) =>
        Car.Do(Tess, job.ToSign($"stage-50@{place}") with { With = [.. UpToFifty.SkipLast(1).Select(step => $"{step}@{place}")] });
}
