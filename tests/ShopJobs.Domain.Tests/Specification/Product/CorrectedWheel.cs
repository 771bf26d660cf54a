using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Corrections;
using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>Corrections of a real final pull.</summary>
internal sealed class CorrectedWheel : ProductCar
{
    public CorrectedWheel()
    {
        Job = Car.StartJob(TestProcedures.Wheels(1), TestRegister.Left);
        SignWhereAsked(Zoe, $"faces@{TestRegister.Left}", "clean");
        Car.Open(Zoe, Job, Nut);
        Car.Declare(TestRegister.WheelUp);
        Car.ByHand(Zoe, Job, "nuts", Nut);
        Pull(Zoe, "nuts", Nut, 1, 50);
        SignWhereAsked(Zoe, $"seat@{TestRegister.Left}");
        Car.Declare(TestRegister.WheelDown);
    }

    public string? Take(Transition<CorrectedPull> step)
    {
        var by = Who(step.After.By);
        var figure = CarAtWork.NewtonMetres(step.After.Now switch
        {
            Figure.Short => 100,
            Figure.Inside => 110,
            Figure.AlsoInside => 108,
            _ => 120,
        });
        var granted = step.Action switch
        {
            "Pull" => Pull(by, "nuts", Nut, 2, figure.Value) is not null,
            "Restate" => Try(by, new Restate(Book.Last!.Number, figure, CarAtWork.Reason, CarAtWork.Shown)),
            "Confirm" => Try(by, new ConfirmCorrection(Car.State.Corrections.Keys.Max(), CarAtWork.Reason, CarAtWork.Shown)),
            "Use as is" => Try(by, CarWork.Decision(Nut, Disposition.UseAsIs, accepted: true)),
            _ => Try(by, CarWork.Looks(Job, "nuts", TestRegister.Left, 2)),
        };
        return Differ(
            ($"{step} is accepted", step.Action is not ("Confirm" or "Use as is") || step.After.Granted, granted),
            ("counts", step.After.Counts, Car.Shows(Nut) is PositionState.AtTorque or PositionState.Checked),
            ("held", step.After.Held, IsHeld(Nut)),
            ("the witness", step.After.Witness == People.Nobody ? null : Who(step.After.Witness).Id, WitnessOf(Nut)));
    }
}
