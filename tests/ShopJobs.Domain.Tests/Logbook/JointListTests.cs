using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarAtWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestRegister;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>Cars whose joints differ from the register's own list.</summary>
public class JointListTests
{
    private const string FourStud = "four-stud";

    [Fact]
    public void A_four_stud_car_is_worked_to_its_release()
    {
        var car = Car();
        car.Do(Lee, Follow(FourStud));
        var job = car.StartJob(TestProcedures.Wheels(1, 3, 2, 4), TestRegister.Left);
        car.TightenWheel(Tess, job, TestRegister.Left);
        car.Do(Theo, CarWork.Looks(job, "nuts", TestRegister.Left, 2));
        car.Do(Tess, CarWork.Sign(job, $"final@{TestRegister.Left}"));

        Assert.Equal(4, car.Placed(job).Group("nuts", TestRegister.Left)!.Count);
        Assert.IsType<Released>(car.Do(Lee, CarWork.To(ReleaseKind.Road)));
    }

    [Fact]
    public void A_five_stud_procedure_is_refused_on_it_with_why()
    {
        var car = Car();
        car.Do(Lee, Follow(FourStud));

        var refused = Assert.IsType<Verdict.Refused>(car.Try(Lee, car.ToStart(new JobId(Guid.NewGuid()), TestProcedures.Wheels(1, 2, 3, 4, 5), [TestRegister.Left])));

        Assert.Equal("P5 works on 5 of wheel nut front-left; this car has 4", car.Say(Assert.Single(refused.Reasons)).Words);
    }

    [Fact]
    public void A_procedure_for_one_kind_of_car_goes_on_no_other()
    {
        var car = Car();
        var procedure = TestProcedures.Wheels(1, 2, 3, 4, 5) with { Fits = [FourStud] };

        var refused = Assert.IsType<Verdict.Refused>(car.Try(Lee, car.ToStart(new JobId(Guid.NewGuid()), procedure, [TestRegister.Left])));

        Assert.Equal("This procedure is for Four studs a wheel; this car follows Test register", car.Say(Assert.Single(refused.Reasons)).Words);
    }

    [Fact]
    public void A_car_that_follows_no_list_is_moved_and_never_driven()
    {
        var car = Car();
        car.Do(Lee, Follow(JointList.None));

        Assert.Equal([HoldReason.NoRegister], car.Refused(Lee, CarWork.To(ReleaseKind.Road)));
        Assert.Equal([HoldReason.NoRegister], car.Refused(Lee, CarWork.To(ReleaseKind.Track, accepted: true)));
        Assert.IsType<Released>(car.Do(Lee, CarWork.To(ReleaseKind.Move)));
    }

    [Fact]
    public void A_car_of_a_kind_that_the_register_has_no_more_follows_none()
    {
        var car = Car();
        car.Do(Lee, Follow(FourStud));
        car.TakeIn(With(5));

        Assert.Equal([HoldReason.NoRegister], car.Refused(Lee, CarWork.To(ReleaseKind.Road)));
    }

    [Fact]
    public void A_new_car_follows_a_kind_of_car_at_once_and_one_that_was_worked_on_after_a_second_look()
    {
        var car = Car();
        Assert.IsType<JointListChanged>(car.Do(Lee, Follow(FourStud)));
        Assert.IsType<JointListChanged>(car.Do(Lee, Follow(JointList.Base)));

        car.Open(Tess, null, new JointPosition(BrakeBolt, Front, 1));
        Assert.IsType<FewerJointsAsked>(car.Do(Lee, Follow(FourStud)));

        Assert.Equal(JointList.Base, car.State.Joints.Follows);
        Assert.Equal([HoldReason.OwnWork], car.Refused(Lee, Looked(car, true)));
        Assert.IsType<JointListChanged>(car.Do(Theo, Looked(car, true)));
        Assert.Equal(FourStud, car.State.Joints.Follows);
        Assert.Empty(car.State.FewerAsked);
    }

    [Fact]
    public void A_second_look_signs_nothing_where_the_list_changed_since_it_was_drawn()
    {
        var car = Car();
        car.Open(Tess, null, new JointPosition(BrakeBolt, Front, 1));
        car.Do(Lee, Follow(FourStud));
        var drawn = car.Shows(Looked(car, true));
        var another = car.Shows(Follow(JointList.None));
        car.Do(Tess, new AddPositions([new JointCount(BrakeBolt, Front, 2)], Reason));

        Assert.Equal([HoldReason.LookAgain], car.Refused(Theo, drawn));
        Assert.Equal([HoldReason.LookAgain], car.Refused(Lee, another));
        Assert.IsType<JointListChanged>(car.Do(Theo, Looked(car, true)));
    }

    [Fact]
    public void A_joint_that_is_taken_away_stays_in_every_release_where_it_was_ever_touched()
    {
        var car = Car();
        car.Open(Tess, null, new JointPosition(Nut, TestRegister.Left, 5));
        car.Do(Lee, Follow(FourStud));
        car.Do(Theo, Looked(car, true));

        Assert.Contains(HoldReason.NotAtStage, car.Refused(Lee, CarWork.To(ReleaseKind.Road)));
    }

    [Fact]
    public void A_car_with_one_more_bolt_has_it_in_the_next_release()
    {
        var car = Car();
        car.Do(Lee, CarWork.To(ReleaseKind.Road));
        car.Do(Tess, new AddPositions([new JointCount(BrakeBolt, Front, 2)], Reason));

        Assert.False(car.State.StandingOf(car.As(Lee), ReleaseKind.Road).IsGood);
        Assert.Contains(new JointPosition(BrakeBolt, Front, 2), ReleaseRules.PositionsOf(car.State, car.As(Lee)));
        Assert.Equal([HoldReason.NoMoreThanNow], car.Refused(Tess, new AddPositions([new JointCount(BrakeBolt, Front, 2)], Reason)));
        Assert.Equal([HoldReason.CountOutside], car.Refused(Tess, new AddPositions([new JointCount(BrakeBolt, Front, 101)], Reason)));
        Assert.Equal([HoldReason.UnknownPosition], car.Refused(Tess, new AddPositions([new JointCount("door.hinge", Front, 2)], Reason)));
    }

    [Fact]
    public void A_running_job_keeps_the_list_that_it_was_started_with()
    {
        var car = Car();
        var job = car.StartJob(TestProcedures.Wheels(1, 2, 3, 4, 5), TestRegister.Left);

        Assert.Equal([HoldReason.FewerInAJob], car.Refused(Lee, Follow(FourStud)));
        car.TakeIn(car.Register with { Kinds = car.Register.Cars[FourStud].Kinds });

        Assert.Equal(5, car.Placed(job).Group("nuts", TestRegister.Left)!.Count);
    }

    private static ChangeJointList Follow(string list) => new(list, [], Reason, Shown);

    private static LookAtJoints Looked(CarAtWork car, bool confirmed) => new(car.State.FewerAsked.Keys.First(), confirmed, Reason, Shown);

    private static CarAtWork Car()
    {
        var register = With(5);
        string[] wheel = [Stud, Nut, Jam];
        var four = register.Kinds.Values.ToDictionary(kind => kind.Key, kind => wheel.Contains(kind.Key) ? kind with { Positions = 4 } : kind);
        return new CarAtWork(register: register with
        {
            Cars = new Dictionary<string, CarKind> { [FourStud] = new(FourStud, "Four studs a wheel", four) },
        });
    }
}
