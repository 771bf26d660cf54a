using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Floor;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Tests.CarPage;

/// <summary>The test shop's car as a screen reads it.</summary>
internal static class Readings
{
    public static readonly CarId Id = new(new Guid("00000000-0000-0000-0000-000000000007"));
    public static readonly IReadOnlyDictionary<PersonId, string> Names = TestPerson.All.ToDictionary(person => person.Id, person => person.Name);

    public static Car Row(string name = "Blue", string colour = "blue", string place = "LiftA") =>
        new() { Id = Id, CustomerId = new CustomerId(Guid.Empty), Name = name, Model = "Brennock 220", Colour = colour, Place = place };

    public static CarReading Of(CarAtWork car, TestPerson who)
    {
        ToolId[] tools = [TestTools.Click, TestTools.Dial, TestTools.Overdue, TestTools.Small];
        return new CarReading(Id, car.State, car.As(who), tools.ToDictionary(tool => tool, car.Tool), "head");
    }

    public static FloorCar OnFloor(CarAtWork car, params string[] people)
    {
        var reading = Of(car, TestPerson.Nobody);
        var on = people.Select(name => new OnIt(new PersonId(Guid.NewGuid()), name, name[..2].ToUpperInvariant())).ToList();
        return new FloorCar(Row(), reading, CarGlance.Of(reading.State, reading.Now, reading.Tools.Values, (_, _) => on.Count > 0), on);
    }

    /// <summary>The left wheel with its first nut pulled over the permitted maximum by Tess.</summary>
    public static CarAtWork WithHeldNut()
    {
        var car = WithLooseNuts(out var job, out var nuts);
        car.Pull(TestPerson.Tess, job, "nuts", nuts[0], 1, 75);
        return car;
    }

    /// <summary>A nut of the left wheel, run down by hand, on which somebody stopped the work.</summary>
    public static CarAtWork WithStoppedNut()
    {
        var car = WithLooseNuts(out _, out var nuts);
        car.Do(TestPerson.Tess, new HoldPositions([nuts[0]], CarAtWork.Reason));
        return car;
    }

    private static CarAtWork WithLooseNuts(out JobId job, out IReadOnlyList<JointPosition> nuts)
    {
        var car = new CarAtWork();
        job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Left);
        nuts = car.Positions(TestRegister.Nut, TestRegister.Left);
        car.Do(TestPerson.Tess, CarWork.Sign(job, $"faces@{TestRegister.Left}", "clean"));
        car.Declare(TestRegister.WheelUp);
        car.Open(TestPerson.Tess, job, nuts);
        car.ByHand(TestPerson.Tess, job, "nuts", nuts);
        return car;
    }

    /// <summary>The left wheel done, signed and released to the road.</summary>
    public static CarAtWork OnTheRoad()
    {
        var car = new CarAtWork();
        car.FitLeftWheel();
        car.Do(TestPerson.Lee, CarWork.To(ReleaseKind.Road, 48_210));
        return car;
    }
}
