using CsCheck;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Product;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Specification.ToolDoubt;

/// <summary>Drives two real wrenches and a car along the specification of a tool in doubt, a day a step. Theo works and may decide.</summary>
internal static class DoubtProduct
{
    private static readonly CalibrationPoint[] GoodReadings = [new(50, 50), new(100, 100), new(190, 190)];
    private static readonly CalibrationPoint[] BadReadings = [new(50, 40), new(100, 80), new(190, 150)];
    private static readonly JobId Studs = DrivenCar.Job(0);
    private static readonly JobId Wheel = DrivenCar.Job(1);

    // At the other corner: it rides on another stud.
    private static readonly JointPosition Nut = new(TestRegister.Nut, TestRegister.Right, 1);

    public static DrivenCar Car()
    {
        var car = new DrivenCar(TestRegister.With(1), [TestRegister.Left, TestRegister.Right], ProductJoints.Studs, ProductJoints.Wheel);
        // The other wrench is good however many days pass.
        var sheet = Sheet(car, GoodReadings, GoodReadings, days: 10_000);
        car.Stands(TestTools.Dial, new Calibrated(sheet.Date, sheet.Due, sheet.Certificate, sheet.AsFound, sheet.AsLeft));
        return car;
    }

    public static string? Step(DrivenCar car, Transition<DoubtState> step)
    {
        car.Wait(TimeSpan.FromDays(1));
        Drive(car, step);
        return new Agreement()
            .On("the nut is in doubt", DoubtState.IsDoubted(step.After.Nut), InDoubt(car, Nut) && step.After.Nut != Stands.Failed)
            .On("the nut counts", DoubtState.Counts(step.After.Nut), car.Counts(1, "nuts", Nut))
            .On("the pair is in doubt", DoubtState.IsDoubted(step.After.Pair), InDoubt(car, ProductJoints.Jam))
            .On("the stud is in doubt", DoubtState.IsDoubted(step.After.Stud), InDoubt(car, ProductJoints.Stud))
            .On("the stud counts", DoubtState.Counts(step.After.Stud), car.Counts(0, "studs", ProductJoints.Stud))
            .On("the signature stands for the step after it", step.After.SignatureStands, car.Takes(TestPerson.Theo, CarWork.Sign(Wheel, $"after@{TestRegister.Right}")))
            .Disagrees;
    }

    private static bool InDoubt(DrivenCar car, JointPosition position) => car.State.DoubtsOn(car.Of(position), car.Tool).Any();

    private static void Drive(DrivenCar car, Transition<DoubtState> step)
    {
        switch (step.Action)
        {
            case "PullNut" or "PullNutWithTheOther":
                Prepare(car, Wheel, "nuts", Nut, fitNew: false);
                Pull(car, 1, "nuts", Nut, 110, other: step.Action != "PullNut");
                break;
            case "Jam" or "JamWithTheOther":
                Prepare(car, Studs, "studs", ProductJoints.Stud, fitNew: true);
                Pull(car, 0, "jam", ProductJoints.Jam, 90, other: step.Action != "Jam");
                break;
            case "DriveWithTheOther":
                Pull(car, 0, "studs", ProductJoints.Stud, 73, other: true);
                break;
            case "TakePairOff":
                car.Do(TestPerson.Theo, new OpenPositions([ProductJoints.Jam], Studs, null));
                break;
            case "OpenNut":
                car.Do(TestPerson.Theo, new OpenPositions([Nut], Wheel, null));
                break;
            case "OpenStud":
                car.Do(TestPerson.Theo, new OpenPositions([ProductJoints.Stud], Studs, null));
                break;
            case "Sign":
                car.Do(TestPerson.Theo, CarWork.Sign(Wheel, $"final@{TestRegister.Right}"));
                break;
            case "DayPasses":
                car.Wait(TimeSpan.FromDays(400));
                break;
            case "DecideByAWorker" or "DecideByAnother":
                car.Do(
                    step.Action == "DecideByAnother" ? TestPerson.Lee : TestPerson.Theo,
                    CarWork.Decision(DoubtActions.Positions[step.ArgIndex] == On.Nut ? Nut : ProductJoints.Stud, Disposition.UseAsIs));
                break;
            default:
                DriveTool(car, step.Action);
                break;
        }
    }

    private static void DriveTool(DrivenCar car, string action)
    {
        switch (action)
        {
            case "DoubtByHand":
                car.Tell(TestTools.Click, TestPerson.Lee, new RaiseDoubt(CarAtWork.Reason));
                break;
            case "FoundBad":
                Calibrate(car, TestTools.Click, Sheet(car, BadReadings, []));
                break;
            case "FoundBadAndAdjusted":
                Calibrate(car, TestTools.Click, Sheet(car, BadReadings, GoodReadings));
                break;
            case "Calibrate":
                Calibrate(car, TestTools.Click, Sheet(car, GoodReadings, GoodReadings));
                break;
            case "ReadAgain":
                Calibrate(car, TestTools.Click, Sheet(car, GoodReadings, []));
                Clear(car);
                break;
            default:
                Clear(car);
                break;
        }
    }

    private static void Calibrate(DrivenCar car, ToolId tool, Calibration calibration) =>
        car.Tell(tool, TestPerson.Lee, new Calibrate(calibration, CarAtWork.Shown, car.Tool(tool).Number));

    private static void Clear(DrivenCar car) =>
        car.Tell(TestTools.Click, TestPerson.Lee, new ClearTool(CarAtWork.Reason, CarAtWork.Shown, car.Tool(TestTools.Click).Number));

    private static void Prepare(DrivenCar car, JobId job, string group, JointPosition position, bool fitNew)
    {
        car.Do(TestPerson.Theo, fitNew ? new FitNew(job, group, [position], "lot 4471") : new OpenPositions([position], job, null));
        car.Do(TestPerson.Theo, new HandTighten(job, group, [position], []));
    }

    private static void Pull(DrivenCar car, int job, string group, JointPosition position, decimal newtonMetres, bool other) =>
        car.Do(TestPerson.Theo, new RecordTorque(
            DrivenCar.Job(job), group, position, car.Of(position).Cycle, 1, 0, other ? TorqueKind.Reading : TorqueKind.SettingConfirmed,
            new EnteredTorque(newtonMetres, TorqueUnit.NewtonMetre), other ? TestTools.Dial : TestTools.Click, []));

    private static Calibration Sheet(DrivenCar car, CalibrationPoint[] found, CalibrationPoint[] left, int days = 365)
    {
        var today = car.As(TestPerson.Lee).Today;
        return new Calibration(today, today.AddDays(days), "Rig sheet", found, left);
    }
}
