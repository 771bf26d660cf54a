using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Summaries;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook.Scenarios;

/// <summary>Cars that come back because of work that was done here.</summary>
public sealed class WarrantyScenarios
{
    private const string Left = TestRegister.Left;
    private readonly CarAtWork car = new();

    private IReadOnlyList<JointPosition> Nuts => car.Positions(TestRegister.Nut, Left);

    [Fact]
    public void A_warranty_case_points_at_its_joints_and_at_the_records_that_stood_on_them()
    {
        car.Do(Tess, new ComeIn(Km(990), "LiftA", CarAtWork.Reason));
        Assert.Empty(car.State.JointsWithRecords());
        car.FitLeftWheel();
        var left = new Joint(TestRegister.Nut, Left);
        Assert.Contains(left, car.State.JointsWithRecords());
        car.Do(Lee, To(ReleaseKind.Road));
        car.Do(Tess, new LetGo(WayOut.Driven, CarAtWork.Reason, Km(1001)));

        var came = (Arrived)car.Do(Tess, new ComeIn(Km(1060), "Floor", CarAtWork.Reason) { Warranty = [left, left] });

        Assert.Equal([left], came.Warranty!.Joints);
        var pulls = Nuts.Select(nut => car.State.Of(nut).Last!.Number).Order().ToList();
        Assert.Equal(pulls, came.Warranty.Records);
        Assert.Equal(pulls, came.Facets().About);
        Assert.Equal(["wheel nut, front-left"], car.Page().Warranty);
        car.Open(Tess, null, Nuts);
        Assert.Equal(pulls, car.State.Visit!.Arrived!.Warranty!.Records);
    }

    [Fact]
    public void A_warranty_case_without_a_joint_or_about_one_the_shop_never_tightened_is_refused()
    {
        var left = new Joint(TestRegister.Nut, Left);

        Assert.Equal([HoldReason.NoPosition], car.Refused(Tess, new ComeIn(Km(990), "LiftA", CarAtWork.Reason) { Warranty = [] }));
        Assert.Equal([HoldReason.UnknownPosition], car.Refused(Tess, new ComeIn(Km(990), "LiftA", CarAtWork.Reason) { Warranty = [left] }));
        car.Do(Tess, new ComeIn(Km(990), "LiftA", CarAtWork.Reason));
        Assert.Null(car.State.Visit!.Arrived!.Warranty);
        Assert.Null(car.Page().Warranty);
    }

    private static OdometerReading Km(decimal value) => new(value, DistanceUnit.Kilometre);
}
