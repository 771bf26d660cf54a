using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Product;

namespace ShopJobs.Domain.Tests.Specification.Riding;

/// <summary>Drives a real stud, pair and nut along the specification of what a joint rides on.</summary>
internal static class RidingProduct
{
    private static readonly JobId Studs = DrivenCar.Job(0);
    private static readonly JobId Wheel = DrivenCar.Job(1);

    public static DrivenCar Car() => new(TestRegister.With(1), ProductJoints.StudsInTime, ProductJoints.Wheel);

    public static string? Step(DrivenCar car, Transition<RidingState> step)
    {
        Drive(car, step);
        var (stud, pair, nut) = (step.After.Stud, step.After.Pair, step.After.Nut);
        return new Agreement()
            .On("the stud sits", stud.Sits, SitsOf(car.Of(ProductJoints.Stud).Fitting))
            .On("the stud is held", stud.Held, car.IsHeld(ProductJoints.Stud))
            .On("the stud counts", stud is { Pulled: Pulled.Good, Held: false }, car.Counts(0, "studs", ProductJoints.Stud))
            .On("its cure is signed", stud.Cured, car.Standing(0, $"cure@{TestRegister.Left}") == StepStanding.Signed)
            .On("the pair is held", pair.Held, car.IsHeld(ProductJoints.Jam))
            .On("the pair is jammed", pair is { Jammed: Pulled.Good, Held: false }, car.State.IsAtTorque(car.Of(ProductJoints.Jam)) && !car.IsHeld(ProductJoints.Jam))
            .On("the nut sits", nut.Sits, SitsOf(car.Of(ProductJoints.Nut).Fitting))
            .On("the nut is held", nut.Held, car.IsHeld(ProductJoints.Nut))
            .On("the nut counts", step.After.NutCounts, car.Counts(1, "nuts", ProductJoints.Nut))
            .Disagrees;
    }

    private static void Drive(DrivenCar car, Transition<RidingState> step)
    {
        switch (step.Action)
        {
            case "OpenStud":
                car.Do(TestPerson.Tess, new OpenPositions([ProductJoints.Stud], Studs, null));
                break;
            case "FitNewStud":
                car.Do(TestPerson.Tess, new FitNew(Studs, "studs", [ProductJoints.Stud], "lot 4471"));
                break;
            case "HandTightStud":
                car.Do(TestPerson.Tess, new HandTighten(Studs, "studs", [ProductJoints.Stud], []));
                break;
            case "Jam":
                car.Pull(TestPerson.Tess, 0, "jam", ProductJoints.Jam, 1, 90);
                break;
            case "DriveStud":
                car.Pull(TestPerson.Tess, 0, "studs", ProductJoints.Stud, 1, 73);
                break;
            case "TakePairOff":
                car.Do(TestPerson.Tess, new OpenPositions([ProductJoints.Jam], Studs, null));
                break;
            case "SignCure":
                car.Wait(TimeSpan.FromHours(step.Before.Stud.Pulled == Pulled.Good ? 25 : 0));
                car.Do(TestPerson.Tess, CarWork.Sign(Studs, $"cure@{TestRegister.Left}"));
                break;
            case "HoldStud":
                car.Do(TestPerson.Tess, new HoldPositions([ProductJoints.Stud], CarAtWork.Reason));
                break;
            case "MinutesPass":
                car.Wait(TimeSpan.FromHours(3));
                break;
            case "OpenNut":
                car.Do(TestPerson.Tess, new OpenPositions([ProductJoints.Nut], Wheel, null));
                break;
            case "HandTightNut":
                car.Do(TestPerson.Tess, new HandTighten(Wheel, "nuts", [ProductJoints.Nut], []));
                break;
            default:
                car.Pull(TestPerson.Tess, 1, "nuts", ProductJoints.Nut, 1, 110);
                break;
        }
    }

    private static Sits SitsOf(Fitting fitting) => fitting switch
    {
        Fitting.AsFound => Sits.AsFound,
        Fitting.HandTight => Sits.HandTight,
        Fitting.NewHardware => Sits.New,
        _ => Sits.Open,
    };
}
