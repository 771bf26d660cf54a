using CsCheck;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Product;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Specification.UseAsIs;

/// <summary>Drives a real class A nut along the specification of use as is. Theo works and has the right to decide.</summary>
internal static class UsedProduct
{
    private static readonly JobId Job = DrivenCar.Job(0);

    // Without its stud: over the maximum would hold that too.
    private static readonly JointRegister Register = TestRegister.With(1) with
    {
        Kinds = TestRegister.With(1).Kinds.Values.Where(kind => kind.Key == TestRegister.Nut).Select(kind => kind with { RidesOn = null })
            .ToDictionary(kind => kind.Key),
    };

    private static readonly Procedure Wheel = new(
        "P5", "Fit the wheel", "1", true, [],
        [
            TestProcedures.Group("nuts", TestRegister.Nut) with
            {
                Stages = [TestProcedures.Stage(1, 50, 40, 60, [1]), TestProcedures.Stage(2, 110, 105, 115, [1]) with { Witness = true }],
            },
        ],
        [TestProcedures.Step("final", waitsFor: []) with { Work = [new StepWork("nuts", [1, 2])] }]);

    public static DrivenCar Car()
    {
        var car = new DrivenCar(Register, Wheel);
        car.Do(TestPerson.Theo, new OpenPositions([ProductJoints.Nut], Job, null));
        return car;
    }

    public static string? Step(DrivenCar car, Transition<UsedState> step)
    {
        Drive(car, step);
        return new Agreement()
            .On("held", step.After.IsUndecided, car.IsHeld(ProductJoints.Nut))
            .On("counts", step.After.Counts, car.Counts(0, "nuts", ProductJoints.Nut))
            .On("the step may be signed", step.After.Counts, car.Takes(TestPerson.Theo, CarWork.Sign(Job, $"final@{TestRegister.Left}")))
            .Disagrees;
    }

    private static void Drive(DrivenCar car, Transition<UsedState> step)
    {
        switch (step.Action)
        {
            case "Open":
                car.Do(TestPerson.Theo, new OpenPositions([ProductJoints.Nut], Job, null));
                break;
            case "HandTight":
                car.Do(TestPerson.Theo, new HandTighten(Job, "nuts", [ProductJoints.Nut], []));
                break;
            case "PullSnug":
                car.Pull(TestPerson.Theo, 0, "nuts", ProductJoints.Nut, 1, 50);
                break;
            case "PullSnugOver":
                car.Pull(TestPerson.Theo, 0, "nuts", ProductJoints.Nut, 1, 70);
                break;
            case "PullFinal":
                Pull(car, UsedActions.Values[step.ArgIndex]);
                break;
            case "Hold":
                car.Do(TestPerson.Theo, new HoldPositions([ProductJoints.Nut], CarAtWork.Reason));
                break;
            case "Witness":
                car.Do(TestPerson.Tess, CarWork.Looks(Job, "nuts", TestRegister.Left, 2));
                break;
            case "Rework":
                car.Do(TestPerson.Lee, CarWork.Decision(ProductJoints.Nut, Disposition.Rework));
                break;
            case "UseAsIsByTheDoer":
                car.Do(TestPerson.Theo, CarWork.Decision(ProductJoints.Nut, Disposition.UseAsIs, accepted: true));
                break;
            default:
                car.Do(TestPerson.Lee, CarWork.Decision(ProductJoints.Nut, Disposition.UseAsIs, accepted: step.Action == "UseAsIs"));
                break;
        }
    }

    // The wrench past its day is a click wrench; the other shows its reading.
    private static void Pull(DrivenCar car, Piece value)
    {
        var overdue = value.HasFlag(Piece.Tool);
        car.Do(TestPerson.Theo, new RecordTorque(
            Job, "nuts", ProductJoints.Nut, car.Of(ProductJoints.Nut).Cycle, 2, 0, overdue ? TorqueKind.SettingConfirmed : TorqueKind.Reading,
            new EnteredTorque(value.HasFlag(Piece.Value) ? 130 : 110, TorqueUnit.NewtonMetre), overdue ? TestTools.Overdue : TestTools.Dial, []));
    }
}
