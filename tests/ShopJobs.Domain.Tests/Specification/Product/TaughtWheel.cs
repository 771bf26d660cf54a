using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Trainees;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>Two steps of a real job: a trainee may sign the first, and the second waits for it.</summary>
internal sealed class TaughtWheel : ProductCar
{
    private const string First = $"clean@{TestRegister.Left}";
    private const string After = $"look@{TestRegister.Left}";

    private static readonly TestPerson Learnt = TestPerson.Tia with { Rights = new HashSet<Right> { Right.Record } };

    private static readonly Procedure Cleaning = new(
        "P5", "Clean the faces", "1", true, [], [],
        [
            TestProcedures.Step("clean", waitsFor: []) with { Places = [TestRegister.Left], Ticks = [new("clean", "Faces bare and dry")] },
            TestProcedures.Step("look", "clean") with { Places = [TestRegister.Left], Ticks = [new("look", "No grease left")] },
        ]);

    private TestPerson trainee = TestPerson.Tia;

    public TaughtWheel() => Job = Car.StartJob(Cleaning, TestRegister.Left);

    public string? Take(Transition<TaughtStep> step)
    {
        var granted = step.Action switch
        {
            "Sign" => Try(Hands(step), CarWork.Sign(Job, First, "clean")),
            "Countersign" => Try(Hands(step), new Countersign([Car.State.Jobs[Job].SignOffs.GetValueOrDefault(First)?.Number ?? 1], CarAtWork.Shown)),
            "Sign the next step" => Try(Zoe, CarWork.Sign(Job, After, "look")),
            "Take the answer back" => Try(TestPerson.Lee, new VoidEntry(Car.State.Jobs[Job].SignOffs[First].Answer!.Number, null, CarAtWork.Reason)),
            _ => Give(),
        };
        return Differ(
            ($"{step} is granted", step.After.Granted, granted),
            ("the step", Standing(step.After.First), Car.Standing(Job, First)),
            ("what waits", step.After.Next, Car.Standing(Job, After) == StepStanding.Signed));
    }

    private static StepStanding Standing(Signature signature) => signature switch
    {
        Signature.None => StepStanding.NotSigned,
        Signature.Learner => StepStanding.AwaitsCountersign,
        Signature.Whole => StepStanding.Signed,
        _ => StepStanding.Void,
    };

    private TestPerson Hands(Transition<TaughtStep> step) => TaughtStep.Hands[step.ArgIndex] == Hand.Trainee ? trainee : TestPerson.Tess;

    private bool Give()
    {
        trainee = Learnt;
        return true;
    }
}
