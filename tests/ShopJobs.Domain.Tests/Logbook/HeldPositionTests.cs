using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>Over, under, second pulls, holds by hand, and what is decided about them.</summary>
public class HeldPositionTests
{
    private const string Left = TestRegister.Left;
    private readonly CarAtWork car = new();
    private readonly JobId job;
    private readonly IReadOnlyList<JointPosition> nuts;

    public HeldPositionTests()
    {
        job = car.FitLeftWheel();
        nuts = car.Positions(TestRegister.Nut, Left);
    }

    [Fact]
    public void A_second_pull_on_a_nut_at_torque_does_not_count_and_holds_it()
    {
        Assert.Equal([HoldReason.SecondPull], car.Pull(Tess, job, "nuts", nuts[0], 2, 110).Problems);
        Assert.Equal(PositionState.Held, car.Shows(nuts[0]));
    }

    [Fact]
    public void Use_as_is_never_stands_in_for_a_missing_stage()
    {
        HandTightAgain();
        Assert.Contains(HoldReason.LowerStageMissing, car.Pull(Tess, job, "nuts", nuts[0], 2, 110).Problems);
        Assert.Equal([HoldReason.NotUsableAsIs], car.Refused(Theo, Decision(nuts[0], Disposition.UseAsIs, accepted: true)));
        car.Do(Theo, Decision(nuts[0], Disposition.Rework));
    }

    [Fact]
    public void Opening_voiding_or_undoing_leaves_a_hold_standing()
    {
        car.Pull(Tess, job, "nuts", nuts[0], 2, 130);
        car.Open(Tess, job, nuts);
        Assert.Equal(PositionState.Held, car.Shows(nuts[0]));
        car.Do(Tess, new VoidEntry(Number<TorqueRecorded>(), null, CarAtWork.Reason));
        Assert.Equal(PositionState.Held, car.Shows(nuts[0]));
        car.StartJob(TestProcedures.Wheels(1, 2, 3, 4, 5), Left);
        Assert.Equal(PositionState.Held, car.Shows(nuts[0]));
    }

    [Fact]
    public void A_hold_is_decided_by_somebody_with_the_right_who_did_not_do_it()
    {
        car.Pull(Theo, job, "nuts", nuts[0], 2, 130, helpers: Lee.Id);
        Assert.Equal([HoldReason.NoRight, HoldReason.OwnWork], car.Refused(Tess, Decision(nuts[0], Disposition.Rework)));
        Assert.Equal([HoldReason.OwnWork], car.Refused(Theo, Decision(nuts[0], Disposition.Rework)));
        Assert.Equal([HoldReason.OwnWork], car.Refused(Lee, Decision(nuts[0], Disposition.Rework)));
    }

    [Fact]
    public void Opening_does_not_make_the_doer_somebody_else()
    {
        car.Pull(Tess, job, "nuts", nuts[0], 2, 130, helpers: Theo.Id);
        car.Open(Tess, job, nuts);
        Assert.Equal([HoldReason.OwnWork], car.Refused(Theo, Decision(nuts[0], Disposition.Rework)));
        car.Do(Lee, Decision(nuts[0], Disposition.Rework));
        Assert.Equal(PositionState.Open, car.Shows(nuts[0]));
    }

    [Fact]
    public void Class_A_is_used_as_is_only_with_a_written_acceptance_and_then_counts()
    {
        car.Pull(Tess, job, "nuts", nuts[0], 2, 130);
        Assert.Equal([HoldReason.AcceptanceMissing], car.Refused(Theo, Decision(nuts[0], Disposition.UseAsIs)));
        car.Do(Theo, Decision(nuts[0], Disposition.UseAsIs, accepted: true));
        Assert.Equal(PositionState.AtTorque, car.Shows(nuts[0]));
        Assert.Equal([HoldReason.DecidedBefore], car.Refused(Theo, Decision(nuts[0], Disposition.Rework)));
    }

    [Fact]
    public void Use_as_is_ends_with_the_next_pull()
    {
        car.Pull(Tess, job, "nuts", nuts[0], 2, 110);
        car.Do(Theo, Decision(nuts[0], Disposition.UseAsIs, accepted: true));
        car.Pull(Tess, job, "nuts", nuts[0], 2, 110);
        Assert.Equal(PositionState.Held, car.Shows(nuts[0]));
        Assert.False(car.State.IsAtTorque(car.State.Of(nuts[0])));
    }

    [Fact]
    public void Over_the_maximum_holds_the_stud_that_the_nut_rides_on_until_that_is_decided_too()
    {
        car.Pull(Tess, job, "nuts", nuts[0], 2, 130);
        var stud = nuts[0] with { Key = TestRegister.Stud };
        Assert.Equal(PositionState.Held, car.Shows(stud));
        car.Do(Theo, Decision(nuts[0], Disposition.Replace));
        Assert.Equal(PositionState.Held, car.Shows(stud));
        car.Open(Tess, job, nuts);
        car.FitNew(Tess, job, "nuts", nuts[0]);
        Assert.Equal([HoldReason.RidesOnLoose], car.ByHand(Tess, job, "nuts", nuts[0]).Problems);
        car.Do(Theo, Decision(stud, Disposition.UseAsIs, accepted: true));
        Assert.Empty(car.ByHand(Tess, job, "nuts", nuts[0]).Problems);
    }

    [Fact]
    public void Over_a_lower_stage_and_not_over_the_joint_holds_the_nut_alone()
    {
        HandTightAgain();
        Assert.Equal([HoldReason.OverRange], car.Pull(Tess, job, "nuts", nuts[0], 1, 70, TestTools.Dial).Problems);
        Assert.Equal(PositionState.AsFound, car.Shows(nuts[0] with { Key = TestRegister.Stud }));
    }

    [Fact]
    public void Rework_holds_until_the_joint_was_opened()
    {
        car.Pull(Tess, job, "nuts", nuts[0], 2, 130);
        car.Do(Theo, Decision(nuts[0], Disposition.Rework));
        Assert.Equal(PositionState.Held, car.Shows(nuts[0]));
        Assert.IsType<NextAction.TakeOff>(car.Next(job, "final@front-left"));
        car.Open(Tess, job, nuts);
        Assert.Equal(PositionState.Open, car.Shows(nuts[0]));
    }

    [Fact]
    public void Replace_asks_for_new_hardware_before_the_nut_counts_again()
    {
        car.Pull(Tess, job, "nuts", nuts[0], 2, 130);
        car.Do(Theo, Decision(nuts[0], Disposition.Replace));
        car.Do(Theo, Decision(nuts[0] with { Key = TestRegister.Stud }, Disposition.UseAsIs, accepted: true));
        car.Open(Tess, job, nuts);
        Assert.Equal([HoldReason.HardwareNotNew], car.ByHand(Tess, job, "nuts", nuts[0]).Problems);
        car.FitNew(Tess, job, "nuts", nuts[0]);
        Assert.Empty(car.ByHand(Tess, job, "nuts", nuts[0]).Problems);
    }

    [Fact]
    public void Replace_decided_after_the_nut_was_run_down_again_still_asks_for_new_hardware()
    {
        car.Do(Theo, new HoldPositions([nuts[0]], CarAtWork.Reason));
        HandTightAgain();
        car.Do(Lee, Decision(nuts[0], Disposition.Replace));
        Assert.Equal([HoldReason.HardwareNotNew], car.Pull(Tess, job, "nuts", nuts[0], 1, 50).Problems);
    }

    [Fact]
    public void A_short_pull_is_backed_off_before_it_is_pulled_again()
    {
        HandTightAgain();
        Assert.Equal([HoldReason.UnderRange], car.Pull(Tess, job, "nuts", nuts[0], 1, 39, TestTools.Dial).Problems);
        Assert.Equal(PositionState.HandTight, car.Shows(nuts[0]));
        Assert.IsType<NextAction.TakeOff>(car.Next(job, "seat@front-left"));
        Assert.Equal([HoldReason.BackOffFirst], car.Pull(Tess, job, "nuts", nuts[0], 1, 50).Problems);
    }

    [Fact]
    public void A_setting_below_the_range_was_not_the_instructed_one()
    {
        HandTightAgain();
        Assert.Equal([HoldReason.SettingNotInstructed], car.Pull(Tess, job, "nuts", nuts[0], 1, 39, TestTools.Overdue).Problems.Except([HoldReason.ToolOverdue]));
    }

    [Theory]
    [InlineData(110, true)]
    [InlineData(110.5, true)]
    [InlineData(110.51, false)]
    [InlineData(109.5, true)]
    [InlineData(109.49, false)]
    public void A_setting_is_within_half_a_graduation_of_the_instructed_one(double set, bool counts)
    {
        HandTightAgain();
        car.PullStage(Tess, job, "nuts", Left, 1);
        car.Declare(TestRegister.WheelDown);
        car.Do(Tess, Sign(job, "seat@front-left"));
        var problems = car.Pull(Tess, job, "nuts", nuts[0], 2, (decimal)set).Problems;
        Assert.Equal(counts ? [] : [HoldReason.SettingNotInstructed], problems);
    }

    [Theory]
    [InlineData("105", true)]
    [InlineData("115", true)]
    [InlineData("104.999", false)]
    [InlineData("115.001", false)]
    public void A_reading_counts_from_end_to_end_of_the_range(string reading, bool counts)
    {
        HandTightAgain();
        car.PullStage(Tess, job, "nuts", Left, 1);
        car.Declare(TestRegister.WheelDown);
        car.Do(Tess, Sign(job, "seat@front-left"));
        var value = EnteredTorque.Parse(reading).Value;
        Assert.Equal(counts, car.Pull(Tess, job, "nuts", nuts[0], 2, value, TestTools.Dial).Problems.Count == 0);
    }

    private void HandTightAgain()
    {
        car.Declare(TestRegister.WheelUp);
        car.Open(Tess, job, nuts);
        car.Do(Tess, Sign(job, "faces@front-left", "clean"));
        car.ByHand(Tess, job, "nuts", nuts);
    }

    private long Number<T>() => car.Book.FindLast(recorded => recorded.Entry is T)!.Number;
}
