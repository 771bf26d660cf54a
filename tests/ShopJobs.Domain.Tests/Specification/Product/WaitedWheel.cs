using CsCheck;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Proof;
using ShopJobs.Domain.Tests.Specification.Waits;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>Two steps of a real job; what lies between them is in its procedure.</summary>
internal sealed class WaitedWheel : ProductCar
{
    private const string Fit = $"fit@{TestRegister.Left}";
    private const string Cured = "cured";
    private static readonly JointPosition Clamp = new(TestRegister.StrutClamp, TestRegister.Left, 1);

    private Plan plan;

    public string? Take(Transition<TwoSteps> step)
    {
        var granted = Drive(step);
        return Differ(
            ("the second step counts", step.After.Counts, step.After.Second && Book.Pulls is [{ Problems.Count: 0 }]),
            ("both are signed", step.After.BothSigned, step.After.Second && Car.Standing(Job, Fit) == StepStanding.Signed),
            ("the first is signed", step.After.FirstSigned, step.After.FirstBy != People.Nobody && Car.Standing(Job, First) == StepStanding.Signed),
            ("refused", step.After.Refused, step.Action == "Sign both with one PIN" && !granted));
    }

    private bool Drive(Transition<TwoSteps> step)
    {
        var who = Who(step.Before.Who);
        switch (step.Action)
        {
            case "Finish the first step":
                plan = Plan.All[step.ArgIndex];
                Begin(who);
                return Car.Do(who, CarWork.Finish(Job, First, "clean")) is StepFinished;
            case "Sign the first step":
                return Car.Do(who, CarWork.Sign(Job, First, "clean")) is StepConfirmed;
            case "Begin a new session":
                Car.SignInAnew(Who(step.After.Who));
                return true;
            case "Do the second step":
                Car.Open(Zoe, Job, Nut);
                Car.ByHand(who, Job, "nuts", Nut);
                return Pull(who, "nuts", Nut, 1, 110).Problems.Count == 0;
            case "Sign the second step by itself":
                return Car.Do(who, CarWork.Sign(Job, Fit)) is StepConfirmed;
            case "Sign both with one PIN":
                return Try(who, CarWork.Sign(Job, Fit) with { With = [First] });
            default:
                return true;
        }
    }

    private string First => plan.Between == Between.AnotherPlace ? "clean" : $"clean@{TestRegister.Left}";

    // Whatever lies between is done: only the signature is missing.
    private void Begin(TestPerson who)
    {
        Job = Car.StartJob(Planned(), TestRegister.Left);
        if (plan.Between == Between.Result)
        {
            Car.Do(Zoe, new RecordResult("bleed", [new MeasuredValue("value", 1, "mm")], ResultBasis.Measured, null, [], null, null, CarAtWork.Shown));
        }

        if (plan.Between is Between.Witness or Between.Cure)
        {
            Car.Open(Zoe, Job, Clamp);
            Car.ByHand(who, Job, Cured, Clamp);
            Pull(who, Cured, Clamp, 1, 80);
            Car.Wait(TimeSpan.FromHours(3));
        }

        if (plan.Between == Between.Witness)
        {
            Car.Do(Zoe, CarWork.Looks(Job, Cured, TestRegister.Left, 1));
        }
    }

    private Procedure Planned()
    {
        var clamped = plan.Between is Between.Witness or Between.Cure;
        var nuts = TestProcedures.Group("nuts", TestRegister.Nut) with
        {
            Risk = plan.ClassAFinal ? RiskClass.A : RiskClass.B,
            Stages = [TestProcedures.Stage(1, 110, 105, 115, [1])],
        };
        var clamp = TestProcedures.Group(Cured, TestRegister.StrutClamp) with
        {
            Risk = RiskClass.B,
            Stages = [TestProcedures.Stage(1, 80, 75, 85, [1]) with { Witness = plan.Between == Between.Witness }],
        };
        var clean = TestProcedures.Step("clean", waitsFor: []) with
        {
            Per = plan.Between == Between.AnotherPlace ? StepPer.Car : StepPer.Place,
            Places = plan.Between == Between.AnotherPlace ? [] : [TestRegister.Left],
            Ticks = [new("clean", "Faces bare and dry")],
            Work = clamped ? [new StepWork(Cured, [1])] : [],
        };
        WaitsFor[] waits =
        [
            new WaitsFor.ForStep("clean"),
            .. plan.Between == Between.Cure ? [new WaitsFor.ForCure(Cured, 2)] : Array.Empty<WaitsFor>(),
            .. plan.Between == Between.Result ? [new WaitsFor.ForResult("bleed")] : Array.Empty<WaitsFor>(),
        ];
        return new(
            "P5", "Two steps", "1", true, [], clamped ? [nuts, clamp] : [nuts],
            [clean, TestProcedures.Step("fit", waitsFor: waits) with { Places = [TestRegister.Left], Work = [new StepWork("nuts", [1])] }]);
    }
}
