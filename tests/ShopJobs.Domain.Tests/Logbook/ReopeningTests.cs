using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>Opening a joint voids its records and what it undoes, everywhere.</summary>
public class ReopeningTests
{
    private const string Left = TestRegister.Left;
    private readonly CarAtWork car = new();

    [Fact]
    public void Opening_one_nut_after_release_opens_its_joint_and_ends_release_and_summary_while_the_ended_job_stays_ended()
    {
        var job = car.FitLeftWheel();
        car.Do(Lee, To(ReleaseKind.Road));
        car.Do(Lee, new IssueSummary(CarAtWork.Reason, car.State.Number, CarAtWork.Shown));
        car.Open(Theo, null, new JointPosition(TestRegister.Nut, Left, 2));

        Assert.All(car.Positions(TestRegister.Nut, Left), nut => Assert.Equal(PositionState.Open, car.Shows(nut)));
        Assert.Equal(car.Last, car.State.Releases[ReleaseKind.Road].VoidBy);
        Assert.Equal(car.Last, car.State.Summaries[0].SupersededBy);
        Assert.Equal(StepStanding.Signed, car.Standing(job, $"final@{Left}"));
        Assert.Equal([HoldReason.NotAtStage, HoldReason.NothingCloses], car.Refused(Lee, To(ReleaseKind.Road)));
        car.StartJob(TestProcedures.Wheels(1, 2, 3, 4, 5), Left);
        Assert.Equal([HoldReason.NotAtStage], car.Refused(Lee, To(ReleaseKind.Move)));
    }

    [Fact]
    public void Opening_a_stud_opens_the_nut_on_it_and_not_the_reverse()
    {
        car.FitLeftWheel();
        var stud = new JointPosition(TestRegister.Stud, Left, 2);
        car.Open(Tess, null, stud);
        Assert.Equal(PositionState.Open, car.Shows(TestRegister.Nut, Left));
        Assert.Equal(PositionState.Open, car.Shows(stud));
        Assert.Equal(PositionState.AsFound, car.Shows(stud with { Number = 1 }));
        Assert.Equal(0, car.State.Of(new(TestRegister.Stud, TestRegister.Right, 2)).Cycle);
        car.Open(Tess, null, new JointPosition(TestRegister.Nut, TestRegister.Right, 1));
        Assert.Equal(PositionState.AsFound, car.Shows(new(TestRegister.Stud, TestRegister.Right, 1)));
    }

    [Fact]
    public void Opening_a_joint_undoes_joints_results_and_what_settings_hang_on_transitively()
    {
        foreach (var result in new[] { "alignment", "setting:front-bar", "corner-weights" })
        {
            car.Do(Tess, Result(result));
        }

        car.Open(Tess, null, new JointPosition(TestRegister.StrutClamp, Left, 1));
        Assert.Equal(PositionState.Open, car.Shows(TestRegister.StrutTop, Left));
        Assert.Equal(PositionState.AsFound, car.Shows(TestRegister.StrutTop, TestRegister.Right));
        Assert.Equal(["alignment", "corner-weights", "setting:front-bar"], car.State.Undone.Keys.Order(StringComparer.Ordinal));
        Assert.All(car.State.Results.Values, result => Assert.Equal(car.Last, result.VoidBy));
    }

    [Fact]
    public void A_joint_that_is_open_already_still_passes_on_what_it_undoes()
    {
        car.Open(Tess, null, new JointPosition(TestRegister.StrutTop, Left, 1), new JointPosition(TestRegister.StrutTop, Left, 2));
        Assert.Equal([HoldReason.ResultJointLoose], car.Refused(Tess, Result("alignment")));
        car.Open(Tess, null, new JointPosition(TestRegister.StrutClamp, Left, 1));
        Assert.Contains("alignment", car.State.Undone.Keys);
    }

    [Fact]
    public void Changing_a_setting_undoes_what_hangs_on_it()
    {
        car.Do(Tess, Result("corner-weights"));
        car.Do(Tess, Result("setting:front-bar"));
        Assert.Equal(["corner-weights"], car.State.Undone.Keys);
    }

    [Fact]
    public void A_result_is_signed_only_with_the_joints_it_hangs_on_at_torque()
    {
        var job = car.StartJob(TestProcedures.Strut(), Left);
        var tops = car.Positions(TestRegister.StrutTop, Left);
        var clamp = car.Positions(TestRegister.StrutClamp, Left);
        Assert.Equal([HoldReason.NotYetOpened], car.Refused(Tess, Sign(job, $"out@{Left}")));
        car.Open(Tess, job, [.. tops, .. clamp]);
        car.Do(Tess, Sign(job, $"out@{Left}"));
        car.ByHand(Tess, job, "tops", tops);
        car.ByHand(Tess, job, "clamp", clamp);
        car.PullStage(Tess, job, "tops", Left, 1);
        car.PullStage(Tess, job, "clamp", Left, 1);
        car.Do(Tess, Sign(job, $"in@{Left}"));
        Assert.Equal([HoldReason.ResultMissing], car.Refused(Tess, Sign(job, "align")));
        car.Do(Tess, Result("alignment"));

        car.Open(Tess, job, new JointPosition(TestRegister.StrutTop, TestRegister.Right, 1));
        Assert.Equal([HoldReason.ResultJointLoose], car.Refused(Tess, Result("alignment")));
        Assert.Equal([HoldReason.ResultMissing, HoldReason.ResultJointLoose], car.Refused(Tess, Sign(job, "align")));
    }

    [Fact]
    public void Tightening_marking_witnessing_and_re_torque_do_not_void_a_result()
    {
        var job = car.StartJob(TestProcedures.Strut(), Left);
        var tops = car.Positions(TestRegister.StrutTop, Left);
        var clamp = car.Positions(TestRegister.StrutClamp, Left);
        car.Open(Tess, job, [.. tops, .. clamp]);
        car.Do(Tess, Sign(job, $"out@{Left}"));
        car.ByHand(Tess, job, "tops", tops);
        car.ByHand(Tess, job, "clamp", clamp);
        car.Do(Tess, Result("alignment"));
        car.PullStage(Tess, job, "tops", Left, 1);
        Assert.Equal(0, car.State.Results["alignment"].VoidBy);
    }

    [Fact]
    public void A_strut_waiting_for_ride_height_may_be_moved_hand_tight_but_not_driven()
    {
        var job = car.StartJob(TestProcedures.Strut(), Left);
        var tops = car.Positions(TestRegister.StrutTop, Left);
        car.Open(Tess, job, tops);
        Assert.Equal([HoldReason.NotAtStage], car.Refused(Lee, To(ReleaseKind.Move)));
        car.ByHand(Tess, job, "tops", tops);
        Assert.Contains(HoldReason.NotAtStage, car.Refused(Lee, To(ReleaseKind.Road)));
        car.Do(Lee, To(ReleaseKind.Move));
    }

    private static RecordResult Result(string name) =>
        new(name, [new MeasuredValue("value", 1, "mm")], ResultBasis.Measured, "rig", [], null, null, CarAtWork.Shown);
}
