using CsCheck;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Proof;
using ShopJobs.Domain.Tests.Specification.Witnesses;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>The second person on a real wheel nut of two stages, the final one witnessed.</summary>
internal sealed class WitnessedWheel : ProductCar
{
    private decimal figure = 110;

    public WitnessedWheel() => Begin();

    public string? Take(Transition<WitnessedJoint> step)
    {
        var (by, helper) = (Who(step.After.By), step.After.Helper);
        var granted = step.Action switch
        {
            "Record" => Record(by, step.Before.Done, helper),
            "Hold" => Try(by, new HoldPositions([Nut], CarAtWork.Reason)),
            "Use as is" => Try(by, CarWork.Decision(Nut, Disposition.UseAsIs, accepted: true)),
            "Correct" => Correct(by),
            "Re-torque" => ReTorque(by),
            "Open" => Open(by),
            _ => Try(by, CarWork.Looks(Job, "nuts", TestRegister.Left, 2)),
        };
        return Differ(
            ($"{step} is accepted", step.Action != "Witness" || step.After.Granted, granted),
            ("the witness", step.After.Witness == People.Nobody ? null : Who(step.After.Witness).Id, WitnessOf(Nut)),
            ("held", step.After.Held, IsHeld(Nut)));
    }

    private void Begin()
    {
        Job = Car.StartJob(TestProcedures.Wheels(1), TestRegister.Left);
        SignWhereAsked(Zoe, $"faces@{TestRegister.Left}", "clean");
        Car.Open(Zoe, Job, Nut);
    }

    private bool Record(TestPerson by, Done before, People helper)
    {
        PersonId[] helpers = helper == People.Nobody ? [] : [Who(helper).Id];
        if (before == Done.Opened)
        {
            SignWhereAsked(Zoe, $"faces@{TestRegister.Left}", "clean");
            Car.Declare(TestRegister.WheelUp);
            Car.Do(by, new HandTighten(Job, "nuts", [Nut], helpers));
            return Pull(by, "nuts", Nut, 1, 50, helpers).Problems.Count == 0;
        }

        SignWhereAsked(Zoe, $"seat@{TestRegister.Left}");
        Car.Declare(TestRegister.WheelDown);
        return Pull(by, "nuts", Nut, 2, figure = 110, helpers).Problems.Count == 0;
    }

    private bool Correct(TestPerson by)
    {
        figure = figure == 110 ? 111 : 110;
        return Try(by, new Restate(Book.Last!.Number, CarAtWork.NewtonMetres(figure), CarAtWork.Reason, CarAtWork.Shown));
    }

    private bool ReTorque(TestPerson by)
    {
        SignWhereAsked(Zoe, $"final@{TestRegister.Left}");
        Car.Do(Zoe, CarWork.To(ReleaseKind.Road));
        Car.Declare(TestRegister.WheelDown);
        return Try(by, new RecordSettled(Job, "nuts", [Nut], false, null, TorqueKind.Reading, CarAtWork.NewtonMetres(110), TestTools.Dial, 1060, CarAtWork.Shown));
    }

    private bool Open(TestPerson by)
    {
        Car.Open(by, JobRuns ? Job : null, Nut);
        if (!JobRuns)
        {
            Job = Car.StartJob(TestProcedures.Wheels(1), TestRegister.Left);
        }

        return true;
    }
}
