using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Proof;
using ShopJobs.Domain.Tests.Specification.Revisions;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>A real car whose wheel is fitted by a procedure that is revised.</summary>
internal sealed class RevisedWheel : ProductCar
{
    private static readonly TestPerson NoLead = new("Ned", new PersonId(new Guid(24, 0, 0, new byte[8])), new HashSet<Right> { Right.Record, Right.Witness, Right.Author });
    private Revised by = Revised.First;

    public RevisedWheel() => Job = Car.StartJob(By(Revised.First), Place);

    public string? Take(Transition<RevisedJob> step)
    {
        var granted = step.Action switch
        {
            "Open" => Open(),
            "Pull" => MakeIt(),
            "Sign" => Try(Zoe, CarWork.Sign(Job, $"final@{Place}")),
            "Adopt" => Adopt(Zoe, RevisedJob.Revisions[step.ArgIndex]),
            "Adopt without the lead's right" => Adopt(NoLead, Revised.OtherTorque),
            "Use as is" => Try(Who(People.Bob), CarWork.Decision(Nut, Disposition.UseAsIs, accepted: true)),
            _ => Try(Who(People.Bob), CarWork.Decision(Nut, Disposition.Rework)),
        };
        return Differ(
            ($"{step} is granted", step.After.Granted, granted),
            ("done by", step.After.By.ToString(), Car.State.Jobs[Job].Fact.Revision),
            ("signed", step.After.Signed, Car.Standing(Job, $"final@{Place}") == StepStanding.Signed),
            ("waits for a decision", step.After.Hold == RevisedHold.Waits, IsHeld(Nut)),
            ("to be redone", step.After.Hold == RevisedHold.ToRedo, Book.Holds.Exists(hold => hold.Decision == Disposition.Rework)),
            ("a release is refused for it", step.After.Hold != RevisedHold.None, IsRefusedForHold()));
    }

    private static Procedure By(Revised revision)
    {
        var first = TestProcedures.Wheels(1) with { Revision = revision.ToString() };
        return revision switch
        {
            Revised.SameAgain => first with { Title = "Fit the wheels, said better", Cautions = ["The maker's instruction wins."] },
            Revised.OtherTorque => first with { Groups = [WithFinal(first.Groups[0])] },
            Revised.WithoutIt => first with { Groups = [], Steps = [first.Steps[0]] },
            _ => first,
        };
    }

    private static JointGroup WithFinal(JointGroup nuts) => nuts with
    {
        Stages = [nuts.Stages[0], nuts.Stages[1] with { Value = CarAtWork.NewtonMetres(130), Permitted = new(CarAtWork.NewtonMetres(125), CarAtWork.NewtonMetres(135)) }],
    };

    private bool Adopt(TestPerson person, Revised revision)
    {
        var adopted = Try(person, Car.ToAdopt(Job, By(revision), revision == Revised.First ? "digest" : revision.ToString()));
        by = adopted ? revision : by;
        return adopted;
    }

    private bool Open()
    {
        Car.Open(Zoe, Job, Nut);
        return true;
    }

    // From the open nut to the look of the second person; signed but for its own step.
    private bool MakeIt()
    {
        if (Book.Fitting != Fitting.Open)
        {
            Car.Open(Zoe, Job, Nut);
        }

        SignWhereAsked(Zoe, $"faces@{Place}", "clean");
        Car.Declare(TestRegister.WheelUp);
        Car.ByHand(Zoe, Job, "nuts", Nut);
        Pull(Zoe, "nuts", Nut, 1, 50);
        SignWhereAsked(Zoe, $"seat@{Place}");
        Car.Declare(TestRegister.WheelDown);
        Pull(Zoe, "nuts", Nut, 2, by == Revised.OtherTorque ? 130 : 110);
        Car.Do(Who(People.Cy), CarWork.Looks(Job, "nuts", Place, 2));
        return true;
    }

    private bool IsRefusedForHold() => Car.Rules.OnRelease(Car.State, Car.As(Zoe), ReleaseKind.Road, customerAccepted: false, 1000)
        .Any(reason => reason.Reason == HoldReason.Held && reason.Position == Nut);
}
