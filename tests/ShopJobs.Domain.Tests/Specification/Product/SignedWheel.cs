using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Proof;
using ShopJobs.Domain.Tests.Specification.SignOffs;
using SignOff = ShopJobs.Domain.Tests.Specification.SignOffs.SignOff;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>Sign-offs of two real jobs at one wheel: one cleans, fits and looks, the other only takes the nut off.</summary>
internal sealed class SignedWheel : ProductCar
{
    private static readonly Procedure Wheels = new(
        "P5", "Fit the wheel", "1", true, [],
        [TestProcedures.Group("nuts", TestRegister.Nut) with { Stages = [TestProcedures.Stage(1, 110, 105, 115, [1])] }],
        [
            TestProcedures.Step("clean", waitsFor: []) with { Places = [TestRegister.Left], Ticks = [new("clean", "Faces bare and dry")] },
            TestProcedures.Step("fit", "clean") with { Places = [TestRegister.Left], Work = [new StepWork("nuts", [1])] },
            TestProcedures.Step("look", "fit") with { Places = [TestRegister.Left], Ticks = [new("look", "Line across every nut")] },
            TestProcedures.Step("dust", [new WaitsFor.ForGroup("nuts", 1)]) with { Places = [TestRegister.Left], Ticks = [new("dust", "Caps on")] },
            TestProcedures.Step("other", waitsFor: []) with { Places = [TestRegister.Right], Ticks = [new("other", "Tyre as found")] },
        ]);

    private static readonly Procedure Brakes = new(
        "P4", "Take the wheel off", "1", true, [], [],
        [TestProcedures.Step("off", waitsFor: []) with { Places = [TestRegister.Left], Opens = [TestRegister.Nut] }]);

    private readonly JobId brakes;

    public SignedWheel()
    {
        brakes = Car.StartJob(Brakes, TestRegister.Left);
        Begin();
    }

    public string? Take(Transition<PlaceOfWork> step)
    {
        var granted = step.Action switch
        {
            "Open" => Open(step.ArgIndex == (int)Opener.ThisJob),
            "Pull" => Fit(),
            "Correct" => Try(Zoe, new VoidEntry(Book.Last!.Number, true, CarAtWork.Reason)),
            "Sign" => Sign(step.After.Asked),
            "Sign the other job's step" => Try(Zoe, CarWork.Sign(brakes, $"off@{TestRegister.Left}")),
            "Release to road" => Try(Zoe, CarWork.To(ReleaseKind.Road)),
            _ => Begin(),
        };
        return Differ(
            ($"{step} is accepted", step.Action is not ("Sign" or "Release to road") || step.After.Granted, granted),
            ("the step before", Standing(step.After.Clean), Car.Standing(Job, $"clean@{TestRegister.Left}")),
            ("the work", Standing(step.After.Fit), Car.Standing(Job, $"fit@{TestRegister.Left}")),
            ("who waits", Standing(step.After.Look), Car.Standing(Job, $"look@{TestRegister.Left}")),
            ("who waits for the joint", Standing(step.After.Dust), Car.Standing(Job, $"dust@{TestRegister.Left}")),
            ("the other place", Standing(step.After.Other), Car.Standing(Job, $"other@{TestRegister.Right}")),
            ("the other job", Standing(step.After.Off), Car.Standing(brakes, $"off@{TestRegister.Left}")),
            ("the job runs", !step.After.Ended, JobRuns));
    }

    private static StepStanding Standing(SignOff signOff) => signOff switch
    {
        SignOff.None => StepStanding.NotSigned,
        SignOff.Stands => StepStanding.Signed,
        SignOff.Void => StepStanding.Void,
        _ => StepStanding.ToReconfirm,
    };

    private bool Begin()
    {
        Job = Car.StartJob(Wheels, TestRegister.Left, TestRegister.Right);
        Car.Do(Zoe, CarWork.Sign(Job, $"other@{TestRegister.Right}", "other"));
        return true;
    }

    private bool Open(bool byThisJob)
    {
        var job = byThisJob ? Job : brakes;
        Car.Open(Zoe, Car.State.Jobs[job].IsRunning ? job : null, Nut);
        return true;
    }

    private bool Fit()
    {
        Car.ByHand(Zoe, Job, "nuts", Nut);
        return Pull(Zoe, "nuts", Nut, 1, 110).Problems.Count == 0;
    }

    private bool Sign(Asked step) => Try(Zoe, step switch
    {
        Asked.Clean => CarWork.Sign(Job, $"clean@{TestRegister.Left}", "clean"),
        Asked.Fit => CarWork.Sign(Job, $"fit@{TestRegister.Left}"),
        Asked.Dust => CarWork.Sign(Job, $"dust@{TestRegister.Left}", "dust"),
        _ => CarWork.Sign(Job, $"look@{TestRegister.Left}", "look"),
    });
}
