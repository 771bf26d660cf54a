using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Counts;
using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>A real car whose wheel has two studs with their nuts by the register, or one.</summary>
internal sealed class CountedWheel : ProductCar
{
    private static readonly JointPosition Second = new(TestRegister.Nut, Place, 2);
    private static readonly string[] Riding = [TestRegister.Stud, TestRegister.Nut, TestRegister.Jam];

    public CountedWheel()
        : base(TwoAWheel()) => Car.Declare(TestRegister.WheelUp);

    public string? Take(Transition<CountedCar> step)
    {
        var granted = step.Action switch
        {
            "Touch the second position" => Try(Zoe, new OpenPositions([Second], null, null)),
            "Bring it to torque" => MakeBoth(),
            "The lead lowers the count" => Try(Who(People.Ann), new ChangeJointList(null, Counts(1), CarAtWork.Reason, CarAtWork.Shown)),
            "Somebody looked" => Look(step.ArgIndex == 0 ? People.Ann : People.Bob, confirmed: true),
            "Somebody looked and found both" => Look(People.Bob, confirmed: false),
            "One more is found" => Try(Zoe, new AddPositions(Counts(2), CarAtWork.Reason)),
            "Put a procedure on it" => Begin(TestProcedures.Wheels([.. Enumerable.Range(1, step.ArgIndex + 1)])),
            "The job ends" => Try(Zoe, new CancelJob(Job, CarAtWork.Reason, CarAtWork.Shown)),
            "Release to road" => Try(Zoe, CarWork.To(ReleaseKind.Road)),
            "Empty the register" => TakeIn(TwoAWheel() with { Kinds = new Dictionary<string, JointKind>() }),
            _ => TakeIn(TwoAWheel()),
        };
        return Differ(
            ($"{step} is refused", step.After.Refused, !granted),
            ("positions", step.After.Count, Car.Register.Kinds.Count == 0 ? step.After.Count : Car.As(Zoe).Register.Kinds[TestRegister.Nut].PositionsAt(Place)),
            ("fewer were asked for", step.After.LoweredBy != People.Nobody, !Car.State.FewerAsked.IsEmpty),
            ("a job runs", step.After.JobRuns, Car.State.RunningJobs.Any()));
    }

    private static JointRegister TwoAWheel()
    {
        var register = TestRegister.With(2);
        return register with { Kinds = register.Kinds.Where(kind => kind.Key != TestRegister.BrakeBolt).ToDictionary() };
    }

    private static JointCount[] Counts(int positions) => [.. Riding.Select(key => new JointCount(key, Place, positions))];

    private bool Look(People person, bool confirmed) =>
        Try(Who(person), new LookAtJoints(Car.State.FewerAsked.Keys.First(), confirmed, CarAtWork.Reason, CarAtWork.Shown));

    private bool TakeIn(JointRegister register)
    {
        Car.TakeIn(register);
        return true;
    }

    private bool Begin(Procedure procedure)
    {
        var job = new JobId(new Guid(Car.Procedures.Count + 1, 2, 0, new byte[8]));
        var begun = Try(Zoe, Car.ToStart(job, procedure, [Place]));
        Job = begun ? job : Job;
        return begun;
    }

    // Under a job of its own, which ends with it.
    private bool MakeBoth()
    {
        var running = Job;
        Begin(TestProcedures.Wheels(1, 2));
        JointPosition[] both = [Nut, Second];
        Car.Open(Zoe, Job, both);
        SignWhereAsked(Zoe, $"faces@{Place}", "clean");
        Car.Declare(TestRegister.WheelUp);
        Car.ByHand(Zoe, Job, "nuts", both);
        Car.PullStage(Zoe, Job, "nuts", Place, 1);
        SignWhereAsked(Zoe, $"seat@{Place}");
        Car.Declare(TestRegister.WheelDown);
        Car.PullStage(Zoe, Job, "nuts", Place, 2);
        Car.Do(Who(People.Cy), CarWork.Looks(Job, "nuts", Place, 2));
        SignWhereAsked(Zoe, $"final@{Place}");
        Car.Do(Zoe, new EndJob(Job, CarAtWork.Shown));
        Job = running;
        return true;
    }
}
