using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Results;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>A real car whose corner weights depend on a wheel nut and are measured with the scales.</summary>
internal sealed class WeighedCar : ProductCar
{
    private const string Weights = "corner-weights";

    public WeighedCar()
        : base(WithWeights())
    {
        Job = Car.StartJob(FittedBy, Place);
    }

    public string? Take(Transition<MeasuredCar> step)
    {
        var taken = step.Action switch
        {
            "Measure" => Try(Zoe, Of(50, TestTools.Scales)),
            "Measure outside" => Try(Zoe, Of(70, TestTools.Scales)),
            "Measure without naming the scales" => Try(Zoe, Of(50, null)),
            "Open the joint" => Open(),
            "Bring it to torque" => Tighten(),
            "Doubt the scales" => Doubt(),
            _ => Clear(),
        };
        return Differ(
            ($"{step} is recorded", step.After.Taken ?? true, taken),
            ("the weights stand", step.After.Stands, Car.State.HasResult(Weights, Car.Tool)),
            ("the weights let the car go", step.After.MayGo, LetsGo(ReleaseKind.Road)),
            ("the weights let the car roll", step.After.MayRoll, LetsGo(ReleaseKind.Move)));
    }

    private static RecordResult Of(decimal cross, ToolId? scales) => new(
        Weights, [new MeasuredValue("cross", cross, "%")], ResultBasis.Measured, null, [], null, null, CarAtWork.Shown)
    { Tool = scales };

    private static JointRegister WithWeights()
    {
        var register = Register();
        var nut = register.Kinds[TestRegister.Nut] with { Undoes = [new Undone(UndoneKind.Result, Weights)] };
        return register with
        {
            Kinds = register.Kinds.Values.Select(kind => kind.Key == nut.Key ? nut : kind).ToDictionary(kind => kind.Key),
            Results = [Weights],
            ResultKinds = new Dictionary<string, ResultKind>
            {
                [Weights] = ResultKind.Bare(Weights) with { NeedsInstrument = true, HoldsMove = true, Measures = [new Measure("cross", "Cross weight", "%", 45, 55)] },
            },
        };
    }

    private bool LetsGo(ReleaseKind kind) =>
        !HoldRules.Standard.OnRelease(Car.State, Car.As(Zoe), kind, customerAccepted: true)
            .Any(point => point.Reason is HoldReason.ResultVoid or HoldReason.ResultInDoubt or HoldReason.NotAtStage);

    private bool Open()
    {
        Car.Open(Zoe, Job, Nut);
        return true;
    }

    private bool Tighten()
    {
        Close();
        return true;
    }

    private bool Doubt()
    {
        Car.TellTool(TestTools.Scales, new Doubted(CarAtWork.Reason));
        return true;
    }

    private bool Clear()
    {
        Car.TellTool(TestTools.Scales, new Cleared([.. Car.Tool(TestTools.Scales).Doubts.Select(doubt => doubt.Number)], CarAtWork.Reason));
        return true;
    }
}
