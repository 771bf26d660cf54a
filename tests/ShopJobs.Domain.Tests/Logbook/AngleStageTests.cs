using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>Two bolts, used once, that are snugged at 40 N·m and then turned twice by 90 degrees, 85..95 permitted.</summary>
public sealed class AngleStageTests
{
    private const string Left = TestRegister.Left;
    private readonly CarAtWork car = new();
    private readonly JobId job;
    private readonly IReadOnlyList<JointPosition> bolts;

    public AngleStageTests()
    {
        job = car.StartJob(TestProcedures.Head(), Left);
        bolts = car.Positions(TestRegister.StrutTop, Left);
        car.Open(Tess, job, bolts);
        car.FitNew(Tess, job, "bolts", bolts);
        car.ByHand(Tess, job, "bolts", bolts);
    }

    // Both ends inside, exactly: by the maker's sheet of the invented head, 90 +-5 degrees.
    [Theory]
    [InlineData(85, true)]
    [InlineData(90, true)]
    [InlineData(95, true)]
    [InlineData(84.9, false)]
    [InlineData(95.1, false)]
    [InlineData(0, false)]
    [InlineData(180, false)]
    public void An_angle_counts_from_one_end_of_its_range_to_the_other(double degrees, bool counts)
    {
        Snug();

        var turned = car.Turn(Tess, job, "bolts", bolts[0], 2, (decimal)degrees);

        Assert.Equal(counts ? [] : [HoldReason.TurnOutside], turned.Problems);
        Assert.Equal((TorqueKind.AngleTurned, (decimal)degrees, null), (turned.Kind, turned.AngleDegrees, turned.Value));
        Assert.Equal(counts ? PositionState.Staged : PositionState.Held, car.Shows(bolts[0]));
    }

    [Fact]
    public void An_angle_outside_stops_the_joint_and_says_so_in_words()
    {
        Snug();
        car.Turn(Tess, job, "bolts", bolts[0], 2, 80);

        Assert.IsType<NextAction.Stopped>(car.Next(job, $"turn@{Left}"));
        Assert.Equal("turned outside the permitted angle", HoldWords.Of(car.State.Of(bolts[0]).Holds.Single().Reason));
        Assert.Equal("do not touch it; call the lead, who decides: use as is, rework or replace", HoldWords.Next(HoldReason.TurnOutside));
        Assert.Equal([HoldReason.SecondPull, HoldReason.PositionHeld], car.Turn(Tess, job, "bolts", bolts[0], 2, 90).Problems);
    }

    [Fact]
    public void The_record_keeps_the_angle_that_was_asked_and_the_torque_it_was_turned_from()
    {
        Snug();

        var spec = car.Turn(Tess, job, "bolts", bolts[0], 2, 91.5m).Spec;

        Assert.Equal(new Turn(90, 85, 95), spec.Turn);
        Assert.Equal((38m, 42m, 40m), (spec.Minimum, spec.Maximum, spec.Instructed));
    }

    [Fact]
    public void A_tool_that_measures_no_angle_does_not_count()
    {
        Snug();

        Assert.Equal([HoldReason.EvidenceNotAllowed], car.Turn(Tess, job, "bolts", bolts[0], 2, 90, TestTools.Click).Problems);
        Assert.Equal([HoldReason.EvidenceNotAllowed], Against(2, TestTools.Click));
        Assert.Equal([HoldReason.EvidenceNotAllowed], Against(2, TestTools.Dial));
        Assert.Equal([HoldReason.ToolOverdue, HoldReason.EvidenceNotAllowed], Against(2, TestTools.Overdue));
        Assert.Empty(Against(2, TestTools.Angle));
        Assert.Empty(Against(1, TestTools.Angle));
    }

    [Fact]
    public void An_angle_wrench_past_its_calibration_turns_nothing_that_counts()
    {
        Snug();
        car.Wait(TimeSpan.FromDays(300));

        Assert.Equal([HoldReason.ToolOverdue], car.Turn(Tess, job, "bolts", bolts[0], 2, 90).Problems);
    }

    [Fact]
    public void A_torque_at_an_angle_stage_and_an_angle_at_a_torque_stage_do_not_count()
    {
        Assert.Equal([HoldReason.EvidenceNotAllowed], car.Turn(Tess, job, "bolts", bolts[0], 1, 90).Problems);

        var other = new AngleStageTests();
        other.Snug();
        var pull = new RecordTorque(
            other.job, "bolts", other.bolts[0], 1, 2, 0, TorqueKind.Reading, CarAtWork.NewtonMetres(40), TestTools.Angle, []);
        Assert.Equal([HoldReason.EvidenceNotAllowed], ((TorqueRecorded)other.car.Do(Tess, pull)).Problems);
    }

    [Fact]
    public void A_report_of_an_angle_without_the_angle_does_not_count()
    {
        Snug();
        var empty = new RecordTorque(job, "bolts", bolts[0], 1, 2, 0, TorqueKind.AngleTurned, null, TestTools.Angle, []);

        Assert.Equal([HoldReason.EvidenceNotAllowed], ((TorqueRecorded)car.Do(Tess, empty)).Problems);
    }

    [Fact]
    public void Every_bolt_is_snug_before_the_first_is_turned()
    {
        car.Pull(Tess, job, "bolts", bolts[0], 1, 40, TestTools.Dial);

        Assert.Contains(HoldReason.LowerStageMissing, car.Turn(Tess, job, "bolts", bolts[0], 2, 90).Problems);
    }

    [Fact]
    public void A_bolt_is_not_turned_twice_in_one_stage_and_not_out_of_its_order()
    {
        Snug();
        Assert.Equal([HoldReason.OutOfOrder], car.Turn(Tess, job, "bolts", bolts[1], 2, 90).Problems);

        var other = new AngleStageTests();
        other.Snug();
        other.car.Turn(Tess, other.job, "bolts", other.bolts[0], 2, 90);
        Assert.Equal([HoldReason.SecondPull], other.car.Turn(Tess, other.job, "bolts", other.bolts[0], 2, 90).Problems);
    }

    [Fact]
    public void The_second_turn_waits_for_the_witness_of_the_first()
    {
        Snug();
        car.Turn(Tess, job, "bolts", bolts[0], 2, 90);
        car.Turn(Tess, job, "bolts", bolts[1], 2, 90);

        Assert.Equal([HoldReason.NotWitnessed], car.Refused(Tess, CarWork.Sign(job, $"turn@{Left}")));
        Assert.Equal([HoldReason.StepBefore], car.Turn(Tess, job, "bolts", bolts[1], 3, 90).Problems);
    }

    [Fact]
    public void After_the_last_turn_and_its_witness_the_bolts_are_checked_and_are_owed_no_re_torque()
    {
        Finish();

        Assert.Equal([PositionState.Checked, PositionState.Checked], bolts.Select(car.Shows));
        Assert.False(car.State.OwesReTorque(car.State.Of(bolts[0])));
        var again = new RecordSettled(job, "bolts", bolts, false, null, TorqueKind.Reading, CarAtWork.NewtonMetres(40), TestTools.Angle, 1060, CarAtWork.Shown);
        Assert.Equal([HoldReason.ReTorqueNotDue, HoldReason.EvidenceNotAllowed], ((Settled)car.Do(Tess, again)).Problems);
    }

    [Fact]
    public void A_bolt_that_was_turned_and_opened_again_is_not_used_again()
    {
        Finish();
        car.Open(Tess, job, bolts);

        Assert.Equal([HoldReason.HardwareNotNew], car.ByHand(Tess, job, "bolts", bolts).Problems);
    }

    [Fact]
    public void An_angle_is_never_restated()
    {
        Snug();
        car.Turn(Tess, job, "bolts", bolts[0], 2, 90);

        Assert.Equal([HoldReason.NotRestatable], car.Refused(Tess, new Restate(car.Last, CarAtWork.NewtonMetres(42), CarAtWork.Reason, CarAtWork.Shown)));
    }

    [Theory]
    [InlineData(90)]
    [InlineData(80)]
    public void A_voided_angle_holds_its_bolt_and_nobody_is_asked_to_turn_it_again(int degrees)
    {
        Void(degrees);

        Assert.Equal(PositionState.Held, car.Shows(bolts[0]));
        Assert.IsType<NextAction.Stopped>(car.Next(job, $"turn@{Left}"));
        var hold = car.State.Of(bolts[0]).Holds[^1];
        Assert.Equal((HoldReason.TurnVoided, car.Last, Tess.Id), (hold.Reason, hold.Number, hold.By));
        Assert.StartsWith("do not turn it again before it is decided", HoldWords.Next(hold.Reason), StringComparison.Ordinal);
        Assert.Contains(HoldReason.PositionHeld, car.Turn(Tess, job, "bolts", bolts[0], 2, 90).Problems);
    }

    /// <summary>Whatever was turned is taken out again: the bolts are new before the next turn.</summary>
    [Fact]
    public void After_a_voided_angle_the_lead_decides_and_never_use_as_is()
    {
        Void(90);

        Assert.Contains(HoldReason.VoidedTurn, car.Refused(Lee, CarWork.Decision(bolts[0], Disposition.UseAsIs, accepted: true)));
        Assert.Contains(HoldReason.ReuseNotAllowed, car.Refused(Lee, CarWork.Decision(bolts[0], Disposition.Rework)));
        car.Do(Lee, CarWork.Decision(bolts[0], Disposition.Replace));
        Assert.Equal(bolts, Assert.IsType<NextAction.TakeOff>(car.Next(job, $"turn@{Left}")).Positions);
        car.Open(Tess, job, bolts);
        Assert.IsType<NextAction.Fit>(car.Next(job, $"snug@{Left}"));
    }

    [Fact]
    public void A_second_person_who_confirms_that_it_was_never_turned_lets_it_go_on()
    {
        Void(90);
        var correction = car.Last;

        Assert.Contains(HoldReason.OwnWork, car.Refused(Tess, new ConfirmCorrection(correction, CarAtWork.Reason, CarAtWork.Shown)));
        car.Do(Lee, new ConfirmCorrection(correction, CarAtWork.Reason, CarAtWork.Shown));

        Assert.Equal(bolts[0], Assert.IsType<NextAction.PullNow>(car.Next(job, $"turn@{Left}")).Cell.Position);
        Assert.Empty(car.Turn(Tess, job, "bolts", bolts[0], 2, 92).Problems);
    }

    [Fact]
    public void A_decision_to_replace_is_not_undone_by_confirming_the_void()
    {
        Void(90);
        var correction = car.Last;
        car.Do(Lee, CarWork.Decision(bolts[0], Disposition.Replace));
        car.Do(Lee, new ConfirmCorrection(correction, CarAtWork.Reason, CarAtWork.Shown));

        Assert.IsType<NextAction.TakeOff>(car.Next(job, $"turn@{Left}"));
    }

    /// <summary>The first bolt is turned; then the torque of the second, on which that turn rests, is taken back.</summary>
    [Fact]
    public void A_bolt_whose_turn_no_longer_stands_is_backed_off_and_not_turned_again()
    {
        Snug();
        var torque = car.State.Of(bolts[1]).Last!.Number;
        car.Turn(Tess, job, "bolts", bolts[0], 2, 90);
        car.Do(Tess, new VoidEntry(torque, false, CarAtWork.Reason));
        car.Do(Lee, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown));
        car.Pull(Tess, job, "bolts", bolts[1], 1, 40, TestTools.Dial);

        Assert.Equal(bolts, Assert.IsType<NextAction.TakeOff>(car.Next(job, $"turn@{Left}")).Positions);
        Assert.Contains(HoldReason.SecondPull, car.Turn(Tess, job, "bolts", bolts[0], 2, 90).Problems);
    }

    [Fact]
    public void Another_job_that_asks_another_angle_does_not_take_it()
    {
        Finish();
        var other = car.StartJob(TestProcedures.Head(96), Left);

        Assert.Contains(
            "strut top nut front-left 1: torqued as P6 asks (90°, Dry), here 91 to 101° Dry is asked",
            Assert.IsType<Verdict.Refused>(car.Try(Lee, CarWork.Sign(other, $"turn@{Left}"))).Reasons.Select(point => car.Say(point).Words));
    }

    /// <summary>The strut's own procedure has one stage and uses its nuts again; the head's has three and does not.</summary>
    [Fact]
    public void A_bolt_used_as_is_from_another_job_is_not_turned_before_it_is_new()
    {
        var other = new CarAtWork();
        var strut = other.StartJob(TestProcedures.Strut(), Left);
        other.Open(Tess, strut, bolts);
        other.ByHand(Tess, strut, "tops", bolts);
        other.PullStage(Tess, strut, "tops", Left, 1, TestTools.Dial);
        var head = other.StartJob(TestProcedures.Head(), Left);
        foreach (var bolt in bolts)
        {
            other.Do(Lee, CarWork.Decision(bolt, Disposition.UseAsIs, accepted: true));
        }

        other.Do(Tess, CarWork.Sign(head, $"snug@{Left}"));

        Assert.Equal(bolts, Assert.IsType<NextAction.Fit>(other.Next(head, $"turn@{Left}")).Positions);
    }

    [Fact]
    public void Screens_say_degrees()
    {
        Snug();
        var cell = Assert.IsType<NextAction.PullNow>(car.Next(job, $"turn@{Left}"));

        Assert.Equal("Turn strut top nut front-left 1 by 90°, stage 2 of 3", NextWords.Of(cell, car.As(Tess)));
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(10_000)]
    public void No_angle_below_zero_or_beyond_reason_is_reported(double degrees) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new RecordTorque(
            job, "bolts", bolts[0], 1, 2, 0, TorqueKind.AngleTurned, null, TestTools.Angle, [])
        { AngleDegrees = (decimal)degrees });

    [Theory]
    [InlineData("91,5", 91.5)]
    [InlineData("90", 90.0)]
    [InlineData("-5", null)]
    [InlineData("90°", null)]
    [InlineData("1e2", null)]
    [InlineData("10000", null)]
    [InlineData("", null)]
    [InlineData(null, null)]
    public void A_typed_angle_is_one_clear_number(string? typed, double? degrees) => Assert.Equal((decimal?)degrees, Turn.Read(typed));

    private void Snug()
    {
        foreach (var bolt in bolts)
        {
            Assert.Empty(car.Pull(Tess, job, "bolts", bolt, 1, 40, TestTools.Dial).Problems);
        }

        car.Do(Tess, CarWork.Sign(job, $"snug@{Left}"));
    }

    private void Void(int degrees)
    {
        Snug();
        car.Turn(Tess, job, "bolts", bolts[0], 2, degrees);
        car.Do(Tess, new VoidEntry(car.Last, null, CarAtWork.Reason));
    }

    private void Finish()
    {
        Snug();
        foreach (var (step, stage, order) in new[] { ("turn", 2, bolts), ("turn-again", 3, bolts.Reverse()) })
        {
            foreach (var bolt in order)
            {
                Assert.Empty(car.Turn(Tess, job, "bolts", bolt, stage, 90).Problems);
            }

            car.Do(Theo, CarWork.Looks(job, "bolts", Left, stage));
            car.Do(Tess, CarWork.Sign(job, $"{step}@{Left}"));
        }
    }

    private IReadOnlyList<HoldReason> Against(int stage, ToolId tool)
    {
        var instance = car.Placed(job).Group("bolts", Left)!;
        return car.State.Against(car.As(Tess), car.State.Jobs[job], instance, instance.Group.Stages[stage - 1], tool);
    }
}
