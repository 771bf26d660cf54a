using CsCheck;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Cycles;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>A real wrench that may make two pulls, used on a real car and on others.</summary>
internal sealed class SpentWrench : ProductCar
{
    public SpentWrench()
    {
        Job = Car.StartJob(TestProcedures.Wheels(1), Place);
        Car.TellTool(TestTools.Dial, new ToolEntered(TestTools.Dial, "D1", "NB-D1", ToolKind.Indicating, TorqueUnit.NewtonMetre, 20, 200, 1, null) { CycleLimit = SpentTool.Limit });
        Calibrate();
    }

    public string? Take(Transition<SpentTool> step)
    {
        var counted = step.Before.Counted;
        switch (step.Action)
        {
            case "Pull":
                Car.Open(Zoe, Job, Nut);
                Car.ByHand(Zoe, Job, "nuts", Nut);
                counted = !Pull(Zoe, "nuts", Nut, 1, 50).Problems.Contains(HoldReason.ToolAtItsLimit);
                break;
            case "Calibrate":
                Calibrate();
                break;
            default:
                Car.PulledElsewhere++;
                break;
        }

        return Differ(
            ("the pull counts", step.After.Counted, counted),
            ("it may be used", step.After.Pulls < SpentTool.Limit, !Car.As(Zoe).IsAtItsLimit(Car.Tool(TestTools.Dial))));
    }

    private void Calibrate()
    {
        Car.PulledElsewhere = 0;
        Car.TellTool(TestTools.Dial, new Calibrated(
            DateOnly.FromDateTime(CarAtWork.Start), DateOnly.FromDateTime(CarAtWork.Start).AddYears(1), "C1", [], [new CalibrationPoint(100, 100)]));
    }
}
