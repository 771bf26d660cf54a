using CsCheck;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Product;

namespace ShopJobs.Domain.Tests.Specification.Joint;

/// <summary>Drives a real wheel of two nuts along the specification of a joint.</summary>
internal static class JointProduct
{
    private static readonly Procedure Wheel = new(
        "P5", "Fit the wheel", "1", true, [],
        [
            TestProcedures.Group("nuts", TestRegister.Nut) with
            {
                Stages = [TestProcedures.Stage(1, 50, 40, 60, [1, 2]), TestProcedures.Stage(2, 110, 105, 115, [1, 2])],
            },
        ],
        [TestProcedures.Step("final", waitsFor: []) with { Work = [new StepWork("nuts", [1, 2])] }]);

    public static DrivenCar Car() => new(TestRegister.With(2), Wheel);

    public static string? Step(DrivenCar car, Transition<JointState> step)
    {
        Drive(car, step);
        var agreement = new Agreement();
        foreach (var nut in JointActions.Nuts)
        {
            agreement
                .On($"nut {nut} sits", step.After[nut].Sits, SitsOf(car.Of(At(nut)).Fitting))
                .On($"nut {nut} held", step.After[nut].IsHeld, car.IsHeld(At(nut)))
                .On($"nut {nut} counts", step.After[nut].Counts, car.Counts(0, "nuts", At(nut)));
        }

        return agreement
            .On("the step may be signed", step.After.All(nut => nut.Counts), car.Takes(TestPerson.Tess, CarWork.Sign(DrivenCar.Job(0), $"final@{TestRegister.Left}")))
            .Disagrees;
    }

    private static void Drive(DrivenCar car, Transition<JointState> step)
    {
        var cell = step.Action.StartsWith("Pull", StringComparison.Ordinal) ? JointActions.Cells[step.ArgIndex] : new Cell(JointActions.Nuts[step.ArgIndex % 2], Stage.Snug);
        var nut = At(cell.Nut);
        var job = DrivenCar.Job(0);
        var isSnug = cell.Stage == Stage.Snug;
        switch (step.Action)
        {
            case "Open":
                car.Do(TestPerson.Tess, new OpenPositions([At(1)], job, null));
                break;
            case "HandTight" or "LateHandTight":
                car.Do(TestPerson.Tess, new HandTighten(job, "nuts", [nut], []) { Cycles = [car.Of(nut).Cycle - (step.Action == "HandTight" ? 0 : 1)] });
                break;
            case "Pull":
                Pull(car, cell, isSnug ? 50 : 110);
                break;
            case "PullShort":
                Pull(car, cell, isSnug ? 30 : 100);
                break;
            case "PullOver":
                Pull(car, cell, isSnug ? 70 : 130);
                break;
            case "LatePull":
                car.Pull(TestPerson.Tess, 0, "nuts", nut, 1, 50, cycle: -1);
                break;
            case "VoidAsPulled" or "VoidAsNeverPulled":
                car.Do(TestPerson.Tess, new VoidEntry(
                    car.Of(nut).Pulls.Last(pull => !pull.Voided).Number, step.Action == "VoidAsPulled", CarAtWork.Reason));
                break;
            case "ConfirmNeverPulled":
                car.Do(TestPerson.Lee, new ConfirmCorrection(car.State.Corrections.Values.Where(
                    correction => car.Of(nut).Pulls.Exists(pull => pull.Number == correction.Fact.Target)).Max(correction => correction.Number), CarAtWork.Reason, CarAtWork.Shown));
                break;
            default:
                car.Do(TestPerson.Lee, CarWork.Decision(nut, Disposition.Rework));
                break;
        }
    }

    private static void Pull(DrivenCar car, Cell cell, decimal newtonMetres) =>
        car.Pull(TestPerson.Tess, 0, "nuts", At(cell.Nut), (int)cell.Stage + 1, newtonMetres);

    private static JointPosition At(int nut) => new(TestRegister.Nut, TestRegister.Left, nut);

    private static Sits SitsOf(Fitting fitting) => fitting switch
    {
        Fitting.AsFound => Sits.AsFound,
        Fitting.HandTight => Sits.HandTight,
        _ => Sits.Open,
    };
}
