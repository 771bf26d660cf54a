using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.AsFound;
using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>A real nut of a car that came in, and a step that fits it.</summary>
internal sealed class FoundNut : ProductCar
{
    private const string Wheels = "wheels";

    private static readonly Procedure OneNut = new(
        "P5", "Fit the nut", "1", true, [],
        [TestProcedures.Group("nuts", TestRegister.Nut) with { Stages = [TestProcedures.Stage(1, 110, 105, 115, [1])] }],
        [TestProcedures.Step("fit", waitsFor: []) with { Places = [TestRegister.Left], Work = [new StepWork("nuts", [1])] }]);

    public FoundNut()
    {
        ComeIn();
        Job = Car.StartJob(OneNut, TestRegister.Left);
    }

    public string? Take(Transition<FoundCar> step)
    {
        bool? begins = null, counts = null;
        switch (step.Action)
        {
            case "Write down what is seen":
                Car.Do(Who(People.Ann), new RecordAsFound(Wheels, []) { Words = CarAtWork.Reason });
                break;
            case "Write that it is unknown and the customer told":
                Car.Do(Who(People.Ann), new RecordAsFound(Wheels, []) { Told = CarAtWork.Reason });
                break;
            case "Ask to begin the step":
                var job = Car.State.Jobs[Job];
                var now = Car.As(Zoe);
                begins = HoldRules.Standard.BeforeStart(
                    new StepQuestion(Car.State, now, job, now.Placed(job), now.Placed(job).Steps.Single(), StepAnswers.None) { ForWork = true }).Count == 0;
                break;
            case "Open the nut":
                Car.Open(Zoe, Job, Nut);
                break;
            case "Close the nut":
                Car.ByHand(Zoe, Job, "nuts", Nut);
                counts = Pull(Zoe, "nuts", Nut, 1, 110).Problems.Count == 0;
                break;
            case "Leave and come again":
                Car.Do(Zoe, new ReportGone(WayOut.OnTrailer, CarAtWork.Reason, null, CarAtWork.Reason));
                ComeIn();
                break;
        }

        return Differ(
            ("the step may begin", step.After.MayBegin, begins),
            ("the pull counts", step.After.Counts, counts),
            ("it is lost", step.After.Lost, Car.State.Unseen.ContainsKey(Wheels)),
            ("it is written down", step.After.Known, Car.State.AsFound.GetValueOrDefault(Wheels)?.Fact.IsUnknown switch { null => Known.Nothing, true => Known.Unknown, false => Known.Seen }));
    }

    private void ComeIn() => Car.Do(Zoe, new ComeIn(null, "LiftA", CarAtWork.Reason) { OdometerWhy = CarAtWork.Reason, AsksAsFound = true });
}
