using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>The same dangerous joint on both sides of a car.</summary>
public class TwinWorkTests
{
    private static readonly Joint LeftNuts = new(TestRegister.Nut, TestRegister.Left);
    private readonly CarAtWork car = new();

    [Theory]
    [InlineData("front-left", "front-right")]
    [InlineData("rear-right", "rear-left")]
    [InlineData("left", "right")]
    [InlineData("driveline", null)]
    public void The_other_side_is_found_by_its_place(string place, string? twin) =>
        Assert.Equal(twin is null ? null : new Joint("brake.carrier", twin), TwinWork.TwinOf(new Joint("brake.carrier", place)));

    [Fact]
    public void Whoever_did_the_left_wheel_is_told_before_the_right_one_until_somebody_has_looked()
    {
        var job = Both();
        Assert.Empty(Told(job, Tess));

        car.TightenWheel(Tess, job, TestRegister.Left);

        Assert.Equal([LeftNuts], Told(job, Tess));
        Assert.Empty(Told(job, Theo));

        car.Do(Theo, CarWork.Looks(job, "nuts", TestRegister.Left, 2));
        Assert.Empty(Told(job, Tess));
    }

    [Fact]
    public void A_joint_of_another_class_has_no_twin_to_be_told_of()
    {
        var job = Both(RiskClass.B);
        car.TightenWheel(Tess, job, TestRegister.Left);

        Assert.Empty(Told(job, Tess));
    }

    private JobId Both(RiskClass risk = RiskClass.A)
    {
        var wheels = TestProcedures.Wheels(1, 3, 5, 2, 4);
        return car.StartJob(wheels with { Groups = [wheels.Groups[0] with { Risk = risk }] }, TestRegister.Left, TestRegister.Right);
    }

    private IReadOnlyList<Joint> Told(JobId job, TestPerson person) =>
        TwinWork.Before(car.State, car.Placed(job).Step($"final@{TestRegister.Right}")!, person.Id);
}
