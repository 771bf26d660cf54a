using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.LateReports;
using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>A real nut whose pull waits on a tablet.</summary>
internal sealed class LateNut : ProductCar
{
    private static readonly Procedure OneNut = new(
        "P5", "Fit the nut", "1", true, [],
        [TestProcedures.Group("nuts", TestRegister.Nut) with { Stages = [TestProcedures.Stage(1, 110, 105, 115, [1])] }],
        [TestProcedures.Step("fit", waitsFor: []) with { Places = [TestRegister.Left], Work = [new StepWork("nuts", [1])] }]);

    private RecordTorque? report;

    public LateNut()
    {
        Job = Car.StartJob(OneNut, TestRegister.Left);
        OpenAndRunDown();
    }

    public string? Take(Transition<LateReport> step)
    {
        var counts = false;
        switch (step.Action)
        {
            case "Make it":
                report = new RecordTorque(
                    Job, "nuts", Nut, Book.Cycle, 1, 0, TorqueKind.Reading, CarAtWork.NewtonMetres(110), TestTools.Dial, [])
                { MadeIn = Car.SessionOf(Zoe) };
                break;
            case "Sign in again":
                Car.SignInAnew(Zoe);
                break;
            case "Open the nut and run it down":
                OpenAndRunDown();
                break;
            case "Send it":
                counts = ((TorqueRecorded)Car.Do(Zoe, report!)).Problems.Count == 0;
                break;
        }

        return Differ(
            ("it counts", step.After.Counts, counts),
            ("it is held", step.After is { Sent: true, Counts: false }, IsHeld(Nut)));
    }

    private void OpenAndRunDown()
    {
        Car.Open(Who(People.Ann), Job, Nut);
        Car.ByHand(Who(People.Ann), Job, "nuts", Nut);
    }
}
