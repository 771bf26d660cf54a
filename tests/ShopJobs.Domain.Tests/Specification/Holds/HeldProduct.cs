using CsCheck;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Product;

namespace ShopJobs.Domain.Tests.Specification.Holds;

/// <summary>Drives a real nut on its stud along the specification of holds. Theo works and has the right to decide.</summary>
internal static class HeldProduct
{
    private static readonly JobId Wheel = DrivenCar.Job(0);

    public static DrivenCar Car()
    {
        var car = new DrivenCar(TestRegister.With(1), ProductJoints.Wheel, ProductJoints.Studs);
        car.Do(TestPerson.Theo, new OpenPositions([ProductJoints.Nut], Wheel, null));
        return car;
    }

    public static string? Step(DrivenCar car, Transition<HeldState> step)
    {
        Drive(car, step);
        return new Agreement()
            .On("the nut waits for a decision", step.After.IsUndecided, car.IsHeld(ProductJoints.Nut))
            .On("the stud waits for a decision", HeldState.IsUndecidedHold(step.After.Stud), car.IsHeld(ProductJoints.Stud))
            .On("the nut counts", step.After.Counts, car.Counts(0, "nuts", ProductJoints.Nut))
            .Disagrees;
    }

    private static void Drive(DrivenCar car, Transition<HeldState> step)
    {
        switch (step.Action)
        {
            case "Open":
                car.Do(TestPerson.Theo, new OpenPositions([ProductJoints.Nut], Wheel, null));
                break;
            case "FitNew":
                car.Do(TestPerson.Theo, new FitNew(Wheel, "nuts", [ProductJoints.Nut], "lot 4471"));
                break;
            case "HandTight":
                car.Do(TestPerson.Theo, new HandTighten(Wheel, "nuts", [ProductJoints.Nut], []));
                break;
            case "Pull" or "ReportAgain":
                car.Pull(TestPerson.Theo, 0, "nuts", ProductJoints.Nut, 1, 110);
                break;
            case "PullOver":
                car.Pull(TestPerson.Theo, 0, "nuts", ProductJoints.Nut, 1, 130);
                break;
            case "Hold":
                car.Do(TestPerson.Theo, new HoldPositions([ProductJoints.Nut], CarAtWork.Reason));
                break;
            case "NewJob":
                car.StartAnother();
                break;
            case "VoidThePull" or "SayTheSamePull":
                car.Do(TestPerson.Theo, new VoidEntry(car.Of(ProductJoints.Nut).Pulls[^1].Number, step.Action == "VoidThePull", CarAtWork.Reason));
                break;
            case "SayASlip":
                car.Do(TestPerson.Theo, new Restate(
                    car.Of(ProductJoints.Nut).Pulls[^1].Number, CarAtWork.NewtonMetres(110), CarAtWork.Reason, CarAtWork.Shown));
                break;
            case "ConfirmByTheDoer" or "ConfirmByASecond":
                car.Do(
                    step.Action == "ConfirmByASecond" ? TestPerson.Lee : TestPerson.Theo,
                    new ConfirmCorrection(car.State.Corrections.Keys.Max(), CarAtWork.Reason, CarAtWork.Shown));
                break;
            case "Decide" or "DecideByTheDoer":
                car.Do(
                    step.Action == "Decide" ? TestPerson.Lee : TestPerson.Theo,
                    CarWork.Decision(ProductJoints.Nut, DispositionOf(HeldActions.Verdicts[step.ArgIndex])));
                break;
            default:
                car.Do(TestPerson.Lee, CarWork.Decision(ProductJoints.Stud, Enum.Parse<Disposition>(step.Action["DecideStud".Length..])));
                break;
        }
    }

    private static Disposition DispositionOf(Verdict verdict) => Enum.Parse<Disposition>(verdict.ToString());
}
