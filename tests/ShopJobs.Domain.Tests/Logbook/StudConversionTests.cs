using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>Studs driven by two jammed nuts, one stud after the other.</summary>
public class StudConversionTests
{
    private const string Left = TestRegister.Left;
    private const string Drive = $"drive@{Left}";
    private readonly CarAtWork car = new(nuts: 3);
    private readonly JobId job;
    private readonly IReadOnlyList<JointPosition> studs;
    private readonly IReadOnlyList<JointPosition> jam;

    public StudConversionTests()
    {
        job = car.StartJob(TestProcedures.Studs(1, 2, 3), Left);
        studs = car.Positions(TestRegister.Stud, Left);
        jam = car.Positions(TestRegister.Jam, Left);
        car.FitNew(Tess, job, "studs", studs);
        car.ByHand(Tess, job, "studs", studs);
    }

    [Fact]
    public void The_jam_pair_goes_from_stud_to_stud_and_comes_off_before_the_step_is_signed()
    {
        for (var number = 1; number <= 3; number++)
        {
            var pair = Assert.IsType<NextAction.PullNow>(car.Next(job, Drive)).Cell;
            Assert.Equal(jam[number - 1], pair.Position);
            Assert.Empty(car.Pull(Tess, job, "jam", pair.Position, 1, 90).Problems);
            var stud = Assert.IsType<NextAction.PullNow>(car.Next(job, Drive)).Cell;
            Assert.Equal(studs[number - 1], stud.Position);
            Assert.Empty(car.Pull(Tess, job, "studs", stud.Position, 1, 73).Problems);
            Assert.Equal([jam[number - 1]], Assert.IsType<NextAction.TakeOff>(car.Next(job, Drive)).Positions);
            Assert.Contains(HoldReason.TemporaryFitted, car.Refused(Tess, Sign(job, Drive)));
            Assert.Contains(HoldReason.TemporaryFitted, car.Refused(Lee, To(ReleaseKind.Move)));
            car.Open(Tess, job, jam[number - 1]);
        }

        Assert.IsType<NextAction.Done>(car.Next(job, Drive));
        car.Do(Tess, Sign(job, Drive));
    }

    [Fact]
    public void A_stud_pulled_without_its_jam_pair_is_held() =>
        Assert.Equal([HoldReason.JamPairMissing], car.Pull(Tess, job, "studs", studs[0], 1, 73).Problems);

    [Fact]
    public void A_setting_above_what_the_jam_holds_is_not_accepted()
    {
        car.Pull(Tess, job, "jam", jam[0], 1, 90);
        // JOB figure: 90 x 0.96/1.04 = 83.1 N·m is the most the pair holds; the range alone would permit 95.
        Assert.Equal([HoldReason.SettingNotInstructed], car.Pull(Tess, job, "studs", studs[0], 1, 84).Problems);
    }

    [Fact]
    public void An_over_torqued_stud_is_held_replaced_and_redone_while_the_others_keep_their_torque()
    {
        DriveStud(0);
        DriveStud(1);
        car.Pull(Tess, job, "jam", jam[2], 1, 90);
        Assert.Equal([HoldReason.OverRange], car.Pull(Tess, job, "studs", studs[2], 1, 96, TestTools.Dial).Problems);
        car.Open(Tess, job, jam[2]);
        Assert.Contains(HoldReason.Held, car.Refused(Tess, Sign(job, Drive)));
        Assert.Equal([HoldReason.ReuseNotAllowed], car.Refused(Theo, Decision(studs[2], Disposition.Rework)));
        car.Do(Theo, Decision(studs[2], Disposition.Replace));
        Assert.Equal([studs[2]], Assert.IsType<NextAction.TakeOff>(car.Next(job, Drive)).Positions);

        car.Open(Tess, job, studs[2]);
        Assert.Equal([PositionState.AtTorque, PositionState.AtTorque, PositionState.Open], studs.Select(car.Shows));
        Assert.Equal([HoldReason.HardwareNotNew], car.ByHand(Tess, job, "studs", studs[2]).Problems);
        Assert.IsType<NextAction.Fit>(car.Next(job, Drive));
        car.FitNew(Tess, job, "studs", studs[2]);
        car.ByHand(Tess, job, "studs", studs[2]);
        DriveStud(2);
        car.Do(Tess, Sign(job, Drive));
    }

    [Fact]
    public void A_single_use_stud_is_hand_tight_only_when_new()
    {
        car.Open(Tess, job, studs);
        Assert.Equal([HoldReason.HardwareNotNew], car.ByHand(Tess, job, "studs", studs).Problems);
        Assert.Equal(PositionState.Open, car.Shows(studs[0]));
    }

    [Fact]
    public void New_hardware_on_a_stud_that_was_pulled_while_open_opens_it_first()
    {
        car.Open(Tess, job, studs[0]);
        car.Pull(Tess, job, "jam", jam[0], 1, 90);
        car.Pull(Tess, job, "studs", studs[0], 1, 73);
        car.FitNew(Tess, job, "studs", studs[0]);
        Assert.Empty(car.ByHand(Tess, job, "studs", studs[0]).Problems);
    }

    [Fact]
    public void The_end_of_the_cure_is_told_by_the_clock_on_the_wall()
    {
        DriveStud(0);
        DriveStud(1);
        DriveStud(2);
        var end = car.Book.FindLast(line => line.Entry is TorqueRecorded)!.At.AddHours(24);
        var wheel = car.Shows(Sign(job, $"wheel@{Left}") with { Values = [new MeasuredValue("protrusion", 30.5m, "mm")] });
        var now = car.As(Tess) with { OnTheWall = at => at.AddHours(2) };

        var verdict = car.State.Decide(wheel, now);

        var cure = Assert.Single(Assert.IsType<Verdict.Refused>(verdict).Reasons, point => point.Reason == HoldReason.Cure);
        Assert.EndsWith(FormattableString.Invariant($"cures until {end.AddHours(2):d MMM yyyy, HH:mm}"), now.Say(cure).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_next_step_waits_for_the_cure_of_every_stud()
    {
        var wheel = Sign(job, $"wheel@{Left}") with { Values = [new MeasuredValue("protrusion", 30.5m, "mm")] };
        DriveStud(0);
        DriveStud(1);
        car.Wait(TimeSpan.FromHours(25));
        Assert.Equal([HoldReason.GroupBefore, HoldReason.Cure], car.Refused(Tess, wheel));
        DriveStud(2);
        Assert.Equal([HoldReason.Cure], car.Refused(Tess, wheel));
        car.Wait(TimeSpan.FromHours(24));
        Assert.Equal([HoldReason.MeasureMissing], car.Refused(Tess, wheel with { Values = [] }));
        Assert.Equal([HoldReason.MeasureOutside], car.Refused(Tess, wheel with { Values = [new MeasuredValue("protrusion", 31.5m, "mm")] }));
        car.Do(Tess, wheel);
    }

    [Fact]
    public void A_step_that_waits_for_a_group_is_not_signed_while_a_position_of_it_is_held()
    {
        DriveStud(0);
        DriveStud(1);
        DriveStud(2);
        car.Wait(TimeSpan.FromHours(25));
        car.Do(Theo, new HoldPositions([studs[1]], CarAtWork.Reason));
        var wheel = Sign(job, $"wheel@{Left}") with { Values = [new MeasuredValue("protrusion", 30.5m, "mm")] };
        Assert.Equal([HoldReason.GroupBefore], car.Refused(Tess, wheel));
    }

    private void DriveStud(int index)
    {
        car.Pull(Tess, job, "jam", jam[index], 1, 90);
        car.Pull(Tess, job, "studs", studs[index], 1, 73);
        car.Open(Tess, job, jam[index]);
    }
}
