using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Product;

namespace ShopJobs.Domain.Tests.Specification.Before;

/// <summary>Drives a real car with two steps along the specification of what work waits for.</summary>
internal static class BeforeProduct
{
    private static readonly JobId Job = DrivenCar.Job(0);
    private static readonly JointPosition First = new("first.bolt", TestRegister.Left, 1);
    private static readonly JointPosition Second = new("second.bolt", TestRegister.Left, 1);

    private static readonly JointRegister Register = TestRegister.With(1) with
    {
        Kinds = new[] { Kind(First.Key), Kind(Second.Key) }.ToDictionary(kind => kind.Key),
    };

    private static readonly Procedure Bolts = new(
        "P1", "Two bolts", "1", true, [],
        [
            TestProcedures.Group("first", First.Key) with { Stages = [TestProcedures.Stage(1, 80, 75, 85, [1])] },
            TestProcedures.Group("second", Second.Key) with { Stages = [TestProcedures.Stage(1, 80, 75, 85, [1])] },
        ],
        [
            TestProcedures.Step("one", waitsFor: []) with { Places = [TestRegister.Left], Work = [new StepWork("first", [1])] },
            TestProcedures.Step("two", "one") with { Places = [TestRegister.Left], Work = [new StepWork("second", [1])] },
        ]);

    public static DrivenCar Car() => new(Register, Bolts);

    public static string? Step(DrivenCar car, Transition<BeforeState> step)
    {
        Drive(car, step.Action);
        return new Agreement()
            .On("the first counts", step.After.First == Bolt.Good, car.Counts(0, "first", First))
            .On("the first step", step.After.FirstSigned == Signature.Stands, car.Standing(0, $"one@{TestRegister.Left}") == StepStanding.Signed)
            .On("the second counts", step.After.Second == Bolt.Good, car.Counts(0, "second", Second))
            .On("the second is held", step.After.Second == Bolt.Held, car.IsHeld(Second))
            .On("the second step", step.After.SecondSigned == Signature.Stands, car.Standing(0, $"two@{TestRegister.Left}") == StepStanding.Signed)
            .Disagrees;
    }

    private static void Drive(DrivenCar car, string action)
    {
        var second = action.EndsWith("Second", StringComparison.Ordinal);
        var (person, group, at) = second ? (TestPerson.Theo, "second", Second) : (TestPerson.Tess, "first", First);
        switch (action)
        {
            case "OpenFirst" or "OpenSecond":
                car.Do(person, new OpenPositions([at], Job, null));
                break;
            case "HandTightFirst" or "HandTightSecond":
                car.Do(person, new HandTighten(Job, group, [at], []));
                break;
            case "PullFirst" or "PullSecond":
                car.Pull(person, 0, group, at, 1, 80);
                break;
            default:
                car.Do(person, CarWork.Sign(Job, $"{(second ? "two" : "one")}@{TestRegister.Left}"));
                break;
        }
    }

    private static JointKind Kind(string key) => new(
        key, key, "test", [TestRegister.Left], 1, Filling.Bolt, null, [], new Dictionary<ReleaseKind, LeastState>(), null, false);
}
