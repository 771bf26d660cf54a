using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook.Scenarios;

/// <summary>The car's condition is said of a place, by somebody, and does not last for ever.</summary>
public class ConditionScenarios
{
    private const string Left = TestRegister.Left;
    private const string Right = TestRegister.Right;
    private readonly CarAtWork car = new(register: TestRegister.With(5) with
    {
        Aspects = new Dictionary<string, ConditionAspect> { ["wheel"] = new(OfPlace: true, LastsHours: 12, EndsAt: [TestRegister.Nut]) },
    });

    private readonly JobId job;

    public ConditionScenarios()
    {
        job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), Left, Right);
        foreach (var place in new[] { Left, Right })
        {
            car.Do(Tess, Sign(job, $"faces@{place}", "clean"));
            car.Open(Tess, job, car.Positions(TestRegister.Nut, place));
            car.ByHand(Tess, job, "nuts", car.Positions(TestRegister.Nut, place));
        }
    }

    [Fact]
    public void What_is_said_of_one_wheel_says_nothing_of_another()
    {
        Say(Tess, Left);
        Assert.Empty(Pull(Left).Problems);
        Assert.Equal([HoldReason.WrongCarCondition], Pull(Right).Problems);
    }

    [Fact]
    public void A_pull_keeps_the_declaration_that_it_rested_on()
    {
        Say(Theo, Left);
        var said = car.Last;
        Assert.Equal([said], Pull(Left).Conditions);
        Assert.Equal((Theo.Id, said), (car.State.LastSaid(car.As(Tess), "wheel", Left)!.Person, car.State.LastSaid(car.As(Tess), "wheel", Left)!.Number));
    }

    [Fact]
    public void A_place_has_to_be_named_where_the_register_asks_one() =>
        Assert.Equal([HoldReason.NoPlaceNamed], car.Refused(Tess, new DeclareCondition([TestRegister.WheelUp])));

    [Fact]
    public void It_ends_at_its_age()
    {
        Say(Tess, Left);
        car.Wait(TimeSpan.FromHours(13));
        Assert.Equal([HoldReason.WrongCarCondition], Pull(Left).Problems);
    }

    [Fact]
    public void It_ends_at_an_opening_that_it_depends_on_and_at_that_place_alone()
    {
        Say(Tess, Left, Right);
        car.Open(Tess, job, car.Positions(TestRegister.Nut, Left));
        Assert.False(car.State.Is(car.As(Tess), TestRegister.WheelUp, Left));
        Assert.True(car.State.Is(car.As(Tess), TestRegister.WheelUp, Right));
    }

    [Fact]
    public void It_ends_at_a_release()
    {
        var other = new CarAtWork();
        other.FitLeftWheel();
        Assert.True(other.State.Is(other.As(Tess), TestRegister.WheelDown, Left));
        other.Do(Lee, To(ReleaseKind.Road));
        Assert.False(other.State.Is(other.As(Tess), TestRegister.WheelDown, Left));
    }

    [Fact]
    public void It_ends_when_the_car_leaves()
    {
        var other = new CarAtWork();
        other.FitLeftWheel();
        other.Do(Lee, To(ReleaseKind.Road));
        other.Declare(TestRegister.WheelDown);
        Assert.True(other.State.Is(other.As(Tess), TestRegister.WheelDown, Left));

        other.Do(Tess, new LetGo(WayOut.Driven, CarAtWork.Reason, null));
        other.Do(Tess, new ComeIn(null, "LiftA", CarAtWork.Reason) { OdometerWhy = CarAtWork.Reason });

        Assert.False(other.State.Is(other.As(Tess), TestRegister.WheelDown, Left));
        Assert.IsType<ConditionEnd.ByLeaving>(other.State.EndOf(other.As(Tess), other.State.LastSaid(other.As(Tess), TestRegister.WheelDown.Aspect, Left)!));
    }

    private void Say(TestPerson person, params string[] places) => car.Do(person, new DeclareCondition([TestRegister.WheelUp]) { Places = places });

    private TorqueRecorded Pull(string place) => car.Pull(Tess, job, "nuts", new JointPosition(TestRegister.Nut, place, 1), 1, 50);
}
