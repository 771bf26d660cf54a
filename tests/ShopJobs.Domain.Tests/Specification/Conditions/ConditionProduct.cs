using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Product;

namespace ShopJobs.Domain.Tests.Specification.Conditions;

/// <summary>Drives a real car with two wheels along the specification of its condition.</summary>
internal static class ConditionProduct
{
    private static readonly CarCondition Cold = new("engine", "cold");
    private static readonly JobId Job = DrivenCar.Job(0);

    private static readonly JointRegister Register = TestRegister.With(1) with
    {
        Conditions = new Dictionary<string, IReadOnlyList<string>> { ["wheel"] = ["up", "down"], ["engine"] = ["cold", "warm"] },
        Aspects = new Dictionary<string, ConditionAspect>
        {
            ["wheel"] = new(OfPlace: true, LastsHours: 48, EndsAt: [TestRegister.Nut]),
            ["engine"] = new(OfPlace: false, LastsHours: 48, EndsAt: []),
        },
    };

    private static readonly Procedure Wheels = new(
        "P5", "Fit the wheels", "1", true, [],
        [
            TestProcedures.Group("nuts", TestRegister.Nut) with
            {
                Stages = [TestProcedures.Stage(1, 110, 105, 115, [1]) with { Conditions = [TestRegister.WheelUp, Cold] }],
            },
        ],
        [TestProcedures.Step("final", waitsFor: []) with { Work = [new StepWork("nuts", [1])] }]);

    public static DrivenCar Car()
    {
        var car = new DrivenCar(Register, [TestRegister.Left, TestRegister.Right], Wheels);
        foreach (var corner in ConditionActions.Corners)
        {
            car.Do(TestPerson.Tess, new OpenPositions([At(corner)], Job, null));
        }

        return car;
    }

    public static string? Step(DrivenCar car, Transition<ConditionState> step)
    {
        Drive(car, step);
        var now = car.As(TestPerson.Tess);
        var agreement = new Agreement().On("the engine is cold", step.After.Cold, car.State.Is(now, Cold, TestRegister.Left));
        foreach (var corner in ConditionActions.Corners)
        {
            agreement
                .On($"{corner}: the wheel is up", step.After[corner].Wheel == Wheel.Up, car.State.Is(now, TestRegister.WheelUp, At(corner).Place))
                .On($"{corner}: the wheel is down", step.After[corner].Wheel == Wheel.Down, car.State.Is(now, TestRegister.WheelDown, At(corner).Place))
                .On($"{corner}: what its pull rested on stands", step.After[corner].Keeps == Keeps.Standing, KeepsStanding(car, now, At(corner)))
                .On($"{corner}: counts", step.After[corner].Nut == Nut.Good, car.Counts(0, "nuts", At(corner)));
        }

        return agreement.Disagrees;
    }

    private static void Drive(DrivenCar car, Transition<ConditionState> step)
    {
        var at = At(ConditionActions.Corners[step.ArgIndex]);
        switch (step.Action)
        {
            case "WheelUp":
                car.Do(TestPerson.Tess, new DeclareCondition([TestRegister.WheelUp]) { Places = [at.Place] });
                break;
            case "WheelDown":
                car.Do(TestPerson.Tess, new DeclareCondition([TestRegister.WheelDown]) { Places = [at.Place] });
                break;
            case "EngineCold":
                car.Do(TestPerson.Tess, new DeclareCondition([Cold]));
                break;
            case "Open":
                car.Do(TestPerson.Tess, new OpenPositions([at], Job, null));
                break;
            case "HandTight":
                car.Do(TestPerson.Tess, new HandTighten(Job, "nuts", [at], []));
                break;
            case "Pull":
                car.Do(TestPerson.Tess, new RecordTorque(
                    Job, "nuts", at, car.Of(at).Cycle, 1, 0, TorqueKind.Reading, CarAtWork.NewtonMetres(110), TestTools.Dial, []));
                break;
            case "Release":
                car.Do(TestPerson.Lee, CarWork.To(ReleaseKind.Move, null));
                break;
            case "LeaveAndReturn":
                car.Do(TestPerson.Tess, new LetGo(WayOut.OnTrailer, CarAtWork.Reason, null));
                car.Do(TestPerson.Tess, new ComeIn(null, "LiftA", CarAtWork.Reason) { OdometerWhy = CarAtWork.Reason });
                break;
            default:
                car.Wait(TimeSpan.FromDays(3));
                break;
        }
    }

    private static bool KeepsStanding(DrivenCar car, Circumstances now, JointPosition at) =>
        car.Of(at).Last is { Fact: { Problems.Count: 0, Conditions: { } kept } }
        && new[] { TestRegister.WheelUp, Cold }.All(condition => car.State.Declared(now, condition, at.Place) is { } said && kept.Contains(said.Number));

    private static JointPosition At(Corner corner) => new(TestRegister.Nut, corner == Corner.Left ? TestRegister.Left : TestRegister.Right, 1);
}
