using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>What was done to each joint during a visit, and when.</summary>
public class VisitWorkTests
{
    private readonly CarAtWork car = new();

    public VisitWorkTests()
    {
        car.Do(Tess, new ComeIn(new OdometerReading(990, DistanceUnit.Kilometre), "LiftA", CarAtWork.Reason));
        car.FitLeftWheel();
        car.Do(Lee, CarWork.To(ReleaseKind.Road));
        car.Do(Tess, new LetGo(WayOut.Driven, CarAtWork.Reason, null));
        car.Wait(TimeSpan.FromDays(9));
        car.Do(Tess, new ComeIn(new OdometerReading(1060, DistanceUnit.Kilometre), "LiftA", CarAtWork.Reason));
        car.Open(Tess, null, Nut(1), Nut(2));
        car.Open(Tess, null, new JointPosition(TestRegister.StrutTop, TestRegister.Right, 1));
        car.Do(Tess, new VoidEntry(car.Last, null, CarAtWork.Reason));
        car.Do(Lee, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown));
    }

    [Fact]
    public void A_visit_tells_each_kind_of_work_on_a_joint_once_with_its_fasteners_and_times()
    {
        var wheel = Assert.Single(VisitWork.Of(car.State, car.Book, car.State.Visits[0]));

        Assert.Equal(Nut(1).Joint, wheel.Joint);
        Assert.Equal([JointWork.Opened, JointWork.RunDown, JointWork.Torqued, JointWork.LookedAt], wheel.Done.Select(done => done.Work));
        var torqued = wheel.Done[2];
        Assert.Equal([1, 2, 3, 4, 5], torqued.Numbers);
        Assert.Equal(TimeSpan.FromMinutes(4), torqued.To - torqued.From);
    }

    [Fact]
    public void Another_visit_tells_its_own_work_and_leaves_out_what_was_taken_back()
    {
        var wheel = Assert.Single(VisitWork.Of(car.State, car.Book, car.State.Visits[1]));

        // Two nuts undone open the joint: it is redone as a whole.
        Assert.Equal((JointWork.Opened, "1, 2, 3, 4, 5"), (Assert.Single(wheel.Done).Work, string.Join(", ", wheel.Done[0].Numbers)));
    }

    [Fact]
    public void What_came_before_visits_were_kept_belongs_to_the_one_that_ends_first()
    {
        var older = new CarAtWork();
        older.FitLeftWheel();
        older.Do(Tess, new LetGo(WayOut.OnTrailer, CarAtWork.Reason, null));

        Assert.Single(VisitWork.Of(older.State, older.Book, Assert.Single(older.State.Visits)));
    }

    private static JointPosition Nut(int number) => new(TestRegister.Nut, TestRegister.Left, number);
}
