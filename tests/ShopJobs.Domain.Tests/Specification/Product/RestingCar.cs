using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.JobEnds;
using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>A real job of one step at one wheel, which ends, rests, goes on and is given up.</summary>
internal sealed class RestingCar : ProductCar
{
    private const string Place = TestRegister.Left;

    private static readonly Procedure Wheel = new(
        "P5", "Fit the wheel", "1", true, [],
        [TestProcedures.Group("nuts", TestRegister.Nut) with { Stages = [TestProcedures.Stage(1, 110, 105, 115, [1]) with { Conditions = [TestRegister.WheelUp] }] }],
        [TestProcedures.Step("fit", waitsFor: []) with { Places = [Place], Work = [new StepWork("nuts", [1])] }]);

    public RestingCar() => Job = Car.StartJob(Wheel, Place);

    public string? Take(Transition<RestingJob> step)
    {
        var asker = step.ArgIndex == (int)Asker.Lead ? Zoe : TestPerson.Tess;
        var granted = step.Action switch
        {
            "Open" => Open(),
            "Decide and back off" => Try(Who(People.Bob), CarWork.Decision(Nut, Disposition.Rework)) && Open(),
            "Run down by hand" => Try(Zoe, new HandTighten(Job, "nuts", [Nut], [])),
            "Say the condition" => Try(Zoe, new DeclareCondition([TestRegister.WheelUp])),
            "Pull" => Pull(),
            "Sign" => Try(Zoe, CarWork.Sign(Job, $"fit@{Place}")),
            "Put on hold" => Try(asker, new PutJobOnHold(Job, CarAtWork.Reason)),
            "Resume" => Try(asker, new ResumeJob(Job, CarAtWork.Shown)),
            "Cancel" => Try(asker, new CancelJob(Job, CarAtWork.Reason, CarAtWork.Shown)),
            "End" => Try(asker, new EndJob(Job, CarAtWork.Shown)),
            "Close by another job" => Close(),
            _ => Try(Zoe, CarWork.To(ReleaseKind.Road)),
        };
        var book = Car.State.Jobs[Job];
        return Differ(
            ($"{step} is granted", !Asked.Contains(step.Action) || step.After.Granted, granted),
            ("the job", step.After.Job, Standing(book)),
            ("the joint", step.After.Nut, OnTheCar()),
            ("begun", step.After.Begun, book.Begun),
            ("signed", step.After.Signed, Car.Standing(Job, $"fit@{Place}") == StepStanding.Signed),
            ("the condition", step.After.Condition, Car.State.Is(Car.As(Zoe), TestRegister.WheelUp, Place)),
            ("released", step.After.Released, Car.State.StandingOf(Car.As(Zoe), ReleaseKind.Road).IsGood));
    }

    private static readonly string[] Asked = ["Sign", "Put on hold", "Resume", "Cancel", "End", "Release"];

    private static Job Standing(JobBook book) => book switch
    {
        { End: JobEnd.Cancelled } => JobEnds.Job.Cancelled,
        { IsRunning: false } => JobEnds.Job.Ended,
        { OnHold: not null } => JobEnds.Job.OnHold,
        _ => JobEnds.Job.Runs,
    };

    private JobEnds.Nut OnTheCar() => Car.Shows(Nut) switch
    {
        PositionState.AsFound => JobEnds.Nut.AsFound,
        PositionState.Open => JobEnds.Nut.Open,
        PositionState.HandTight => JobEnds.Nut.HandTight,
        PositionState.Held => JobEnds.Nut.Held,
        _ => JobEnds.Nut.AtTorque,
    };

    private bool Open()
    {
        Car.Open(Zoe, JobRuns ? Job : null, Nut);
        return true;
    }

    private bool Pull()
    {
        Pull(Zoe, "nuts", Nut, 1, 110);
        return true;
    }

    private bool Close()
    {
        var other = Car.StartJob(Wheel, Place);
        Car.Open(Zoe, other, Nut);
        Car.Declare(TestRegister.WheelUp);
        Car.ByHand(Zoe, other, "nuts", Nut);
        Car.Pull(Zoe, other, "nuts", Nut, 1, 110);
        Car.Do(Zoe, CarWork.Sign(other, $"fit@{Place}"));
        return Try(Zoe, new EndJob(other, CarAtWork.Shown));
    }
}
