using CsCheck;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Proof;
using ShopJobs.Domain.Tests.Specification.Witnesses;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>The second person on a real stud that a jam pair drives. A stud with locker is looked at after the drive, never re-torqued.</summary>
internal sealed class WitnessedStud : ProductCar
{
    private static readonly JointPosition Stud = new(TestRegister.Stud, TestRegister.Left, 1);
    private static readonly JointPosition Jam = new(TestRegister.Jam, TestRegister.Left, 1);
    private decimal figure = 73;

    public WitnessedStud()
    {
        var studs = TestProcedures.Studs(1);
        var driven = studs.Groups[1];
        Job = Car.StartJob(studs with { Groups = [studs.Groups[0], driven with { Stages = [driven.Stages[0] with { Witness = true }] }] }, TestRegister.Left);
        Car.Open(Zoe, Job, Stud);
    }

    public string? Take(Transition<WitnessedJoint> step)
    {
        var (by, helper) = (Who(step.After.By), step.After.Helper);
        var granted = step.Action switch
        {
            "Record" => Record(by, step.Before.Done, helper),
            "Hold" => Try(by, new HoldPositions([Stud], CarAtWork.Reason)),
            "Use as is" => Try(by, CarWork.Decision(Stud, Disposition.UseAsIs, accepted: true)),
            "Correct" => Correct(by),
            "Re-torque" => true,
            "Open" => Try(by, new OpenPositions([Stud], Job, null)),
            _ => Try(by, CarWork.Looks(Job, "studs", TestRegister.Left, 1)),
        };
        return Differ(
            ($"{step} is accepted", step.Action != "Witness" || step.After.Granted, granted),
            ("the witness", step.After.Witness == People.Nobody ? null : Who(step.After.Witness).Id, WitnessOf(Stud)),
            ("held", step.After.Held, IsHeld(Stud)));
    }

    private bool Record(TestPerson by, Done before, People helper)
    {
        PersonId[] helpers = helper == People.Nobody ? [] : [Who(helper).Id];
        if (before == Done.Opened)
        {
            Car.FitNew(Zoe, Job, "studs", Stud);
            Car.ByHand(Zoe, Job, "studs", Stud);
            Car.ByHand(Zoe, Job, "jam", Jam);
            return Pull(by, "jam", Jam, 1, 90, helpers).Problems.Count == 0;
        }

        return Pull(by, "studs", Stud, 1, figure = 73, helpers).Problems.Count == 0;
    }

    private bool Correct(TestPerson by)
    {
        figure = figure == 73 ? 74 : 73;
        return Try(by, new Restate(Car.State.Of(Stud).Last!.Number, CarAtWork.NewtonMetres(figure), CarAtWork.Reason, CarAtWork.Shown));
    }
}
