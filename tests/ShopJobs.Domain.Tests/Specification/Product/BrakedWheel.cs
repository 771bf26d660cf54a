using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Behind;
using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>A real wheel with one nut, and a real bolt behind it.</summary>
internal sealed class BrakedWheel : ProductCar
{
    private static readonly JointPosition Bolt = new(TestRegister.StrutClamp, Place, 1);

    public BrakedWheel()
        : base(WithBoltBehind()) => Job = Car.StartJob(WheelAndBolt(), Place);

    public string? Take(Transition<BehindWheel> step)
    {
        switch (step.Action)
        {
            case "Take the wheel off":
                Car.Open(Zoe, Job, Nut);
                break;
            case "Put the wheel on":
                Car.ByHand(Zoe, Job, "nuts", Nut);
                break;
            case "Tighten the wheel":
                Pull(Zoe, "nuts", Nut, 1, 110);
                break;
            case "Rework the wheel":
                Rework(Nut);
                break;
            case "Open the bolt":
                Car.Open(Zoe, Job, Bolt);
                break;
            case "Run the bolt down":
                Car.ByHand(Zoe, Job, "bolt", Bolt);
                break;
            case "Tighten the bolt":
                Pull(Zoe, "bolt", Bolt, 1, 80);
                break;
            default:
                Rework(Bolt);
                break;
        }

        return Differ(
            ("the wheel", step.After.Wheel, StandsNow(Nut)),
            ("the bolt", step.After.Bolt, StandsNow(Bolt)),
            ("the wheel's step may be signed", step.After.WheelCounts, MaySign("wheel")),
            ("the bolt's step may be signed", step.After.BoltCounts, MaySign("bolt")));
    }

    private static JointRegister WithBoltBehind()
    {
        var register = Register();
        return register with
        {
            Kinds = register.Kinds.Values.Select(kind => kind.Key == TestRegister.StrutClamp ? kind with { Undoes = [], Behind = TestRegister.Nut } : kind)
                .ToDictionary(kind => kind.Key),
        };
    }

    private static Procedure WheelAndBolt() => new(
        "P4", "Bolt and wheel", "1", true, [],
        [
            TestProcedures.Group("bolt", TestRegister.StrutClamp) with { Stages = [TestProcedures.Stage(1, 80, 75, 85, [1])] },
            TestProcedures.Group("nuts", TestRegister.Nut) with { Stages = [TestProcedures.Stage(1, 110, 105, 115, [1])] },
        ],
        [
            TestProcedures.Step("bolt", waitsFor: []) with { Work = [new StepWork("bolt", [1])] },
            TestProcedures.Step("wheel", waitsFor: []) with { Work = [new StepWork("nuts", [1])] },
        ]);

    private void Rework(JointPosition position)
    {
        Car.Do(Who(People.Cy), CarWork.Decision(position, Disposition.Rework));
        Car.Open(Zoe, Job, position);
    }

    private Stands StandsNow(JointPosition position) => Car.State.Of(position) switch
    {
        { IsAsFound: true } => Stands.Found,
        { Holds.IsEmpty: false } => Stands.Wrong,
        { On: 0 } => Stands.Off,
        { Fitting: Fitting.Open } => Stands.Put,
        var book => Car.State.IsAtTorque(book) ? Stands.Tight : Stands.ByHand,
    };

    private bool MaySign(string step) => Car.Copy().Try(Zoe, CarWork.Sign(Job, $"{step}@{Place}")) is Verdict.Accepted;
}
