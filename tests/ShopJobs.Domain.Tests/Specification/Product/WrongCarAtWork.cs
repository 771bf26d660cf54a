using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Proof;
using ShopJobs.Domain.Tests.Specification.WrongCars;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>A real job that was put on the wrong car, with a nut at each of two wheels that it may have opened.</summary>
internal sealed class WrongCarAtWork : ProductCar
{
    private static readonly Procedure Wheels = new(
        "P5", "Fit the wheels", "1", true, [],
        [TestProcedures.Group("nuts", TestRegister.Nut) with { Stages = [TestProcedures.Stage(1, 110, 105, 115, [1])] }],
        [
            TestProcedures.Step("look", waitsFor: []) with { Per = StepPer.Car, Places = [], Ticks = [new("look", "Looked round")] },
            TestProcedures.Step("fit", waitsFor: []) with { Work = [new StepWork("nuts", [1])] },
        ]);

    private long[] voids = [0, 0];

    public WrongCarAtWork()
    {
        Job = Car.StartJob(Wheels, TestRegister.Left, TestRegister.Right);
        Car.Do(Zoe, CarWork.Sign(Job, "look", "look"));
    }

    public string? Take(Transition<WrongJob> step)
    {
        var granted = step.Action switch
        {
            "Open" => Open(step.ArgIndex),
            "Take the job back" => Try(Zoe, new TakeJobBack(Job, CarAtWork.Reason, CarAtWork.Shown)),
            "Say it was never opened" => Say(Word.All[step.ArgIndex]),
            "Confirm" => Try(Who(Word.All[step.ArgIndex].By), new ConfirmCorrection(voids[Word.All[step.ArgIndex].Joint - 1], CarAtWork.Reason, CarAtWork.Shown)),
            "Close by another job" => Close(step.ArgIndex),
            _ => Try(Zoe, CarWork.To(ReleaseKind.Road)),
        };
        var asked = step.Action switch
        {
            "Release" => step.After.Released,
            "Confirm" => step.Before.VoidedBy(Word.All[step.ArgIndex].Joint) != Word.All[step.ArgIndex].By,
            _ => true,
        };
        return Differ(
            ($"{step} is accepted", asked, granted),
            ("the first joint", step.After.First, Of(0)),
            ("the second joint", step.After.Second, Of(1)),
            ("its steps ask", step.After.Unsigned, JobRuns),
            ("it was taken back", step.After.TakenBack, Car.State.Jobs[Job].End == JobEnd.TakenBack));
    }

    /// <summary>The same car, on which something else may happen from here.</summary>
    public static WrongCarAtWork CopyOf(WrongCarAtWork car)
    {
        var copy = Copy(car);
        copy.voids = [.. car.voids];
        return copy;
    }

    private static JointPosition At(int joint) => new(TestRegister.Nut, joint == 0 ? TestRegister.Left : TestRegister.Right, 1);

    private Touched Of(int joint)
    {
        var book = Car.State.Of(At(joint));
        return book.IsAsFound ? Touched.Not
            : Car.State.IsAtTorque(book) ? Touched.Closed
            : Car.State.Corrections.Values.Any(voided => !voided.Confirmed && voided.Fact.Target == book.OpenedBy) ? Touched.OpenVoided
            : Touched.Open;
    }

    private bool Open(int joint)
    {
        Car.Open(Zoe, Job, At(joint));
        return true;
    }

    private bool Say(Word word)
    {
        var said = Try(Who(word.By), new VoidEntry(Car.State.Of(At(word.Joint - 1)).OpenedBy, null, CarAtWork.Reason));
        voids[word.Joint - 1] = Car.Last;
        return said;
    }

    private bool Close(int joint)
    {
        var place = At(joint).Place;
        var other = Car.StartJob(Wheels, place);
        Car.ByHand(Zoe, other, "nuts", At(joint));
        Car.Pull(Zoe, other, "nuts", At(joint), 1, 110);
        Car.Do(Zoe, CarWork.Sign(other, "look", "look"));
        Car.Do(Zoe, CarWork.Sign(other, $"fit@{place}"));
        return Try(Zoe, new EndJob(other, CarAtWork.Shown));
    }
}
