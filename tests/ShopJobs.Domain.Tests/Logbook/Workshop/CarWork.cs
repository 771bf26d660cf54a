using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Logbook.Workshop;

/// <summary>What people do at a car, one verb each.</summary>
internal static class CarWork
{
    public static void Open(this CarAtWork car, TestPerson person, JobId? job, params IReadOnlyList<JointPosition> positions) =>
        car.Do(person, new OpenPositions(positions, job, null));

    public static HandTightened ByHand(this CarAtWork car, TestPerson person, JobId job, string group, params IReadOnlyList<JointPosition> positions) =>
        (HandTightened)car.Do(person, new HandTighten(job, group, positions, []));

    public static void FitNew(this CarAtWork car, TestPerson person, JobId job, string group, params IReadOnlyList<JointPosition> positions) =>
        car.Do(person, new FitNew(job, group, positions, "lot 4471"));

    public static void Declare(this CarAtWork car, CarCondition condition) => car.Do(TestPerson.Tess, new DeclareCondition([condition]));

    /// <summary>One pull on the first visit of a stage to a position.</summary>
    public static TorqueRecorded Pull(
        this CarAtWork car, TestPerson person, JobId job, string group, JointPosition position, int stage, decimal newtonMetres,
        ToolId? tool = null, int? visit = null, params PersonId[] helpers)
    {
        var visits = car.Placed(job).Group(group, position.Place)!.Group.Stages[stage - 1].Visits;
        return (TorqueRecorded)car.Do(person, new RecordTorque(
            job, group, position, car.State.Of(position).Cycle, stage, visit ?? visits.ToList().IndexOf(position.Number),
            tool == TestTools.Dial ? TorqueKind.Reading : TorqueKind.SettingConfirmed,
            new EnteredTorque(newtonMetres, TorqueUnit.NewtonMetre), tool ?? TestTools.Click, helpers));
    }

    /// <summary>One turn by an angle on the first visit of a stage to a position.</summary>
    public static TorqueRecorded Turn(
        this CarAtWork car, TestPerson person, JobId job, string group, JointPosition position, int stage, decimal degrees, ToolId? tool = null)
    {
        var visits = car.Placed(job).Group(group, position.Place)!.Group.Stages[stage - 1].Visits;
        return (TorqueRecorded)car.Do(person, new RecordTorque(
            job, group, position, car.State.Of(position).Cycle, stage, visits.ToList().IndexOf(position.Number),
            TorqueKind.AngleTurned, null, tool ?? TestTools.Angle, [])
        { AngleDegrees = degrees });
    }

    /// <summary>A whole stage in its order of visits.</summary>
    public static void PullStage(this CarAtWork car, TestPerson person, JobId job, string group, string place, int stage, ToolId? tool = null)
    {
        var instance = car.Placed(job).Group(group, place)!;
        var visits = instance.Group.Stages[stage - 1].Visits;
        for (var visit = 0; visit < visits.Count; visit++)
        {
            car.Pull(person, job, group, instance.Joint.At(visits[visit]), stage, instance.Group.Stages[stage - 1].Value.Value, tool, visit);
        }
    }

    public static Witness Looks(JobId job, string group, string place, int stage, bool accepted = true) =>
        new(job, group, place, stage, WitnessMethod.LookedAtMark, accepted, accepted ? null : CarAtWork.Reason, CarAtWork.Shown);

    public static ConfirmStep Sign(JobId job, string step, params string[] ticks) =>
        new(job, step, ticks, [], false, null, CarAtWork.Shown);

    /// <summary>The word that a step is done, to be signed later.</summary>
    public static FinishStep Finish(JobId job, string step, params string[] ticks) => new(job, step, ticks, []);

    /// <summary>A written acceptance that lacks nothing.</summary>
    public static readonly Acceptance Written = new("Rhea Quill", new DateOnly(2026, 3, 2), SaidHow.InWriting, "folder 7", "go ahead with it") { Kept = CarAtWork.Reason };

    public static DecideHold Decision(JointPosition position, Disposition disposition, bool accepted = false) =>
        new(position, disposition, CarAtWork.Reason, accepted ? Written : null, CarAtWork.Shown);

    public static Release To(ReleaseKind kind, decimal? odometerKm = 1000, bool accepted = false) =>
        new(kind, odometerKm, accepted ? Written : null, CarAtWork.Shown) { Closing = kind == ReleaseKind.Move ? null : ClosingCheck.All };

    /// <summary>Opens the nuts of a wheel and brings them through hand-tight and both stages, unwitnessed.</summary>
    public static void TightenWheel(this CarAtWork car, TestPerson person, JobId job, string place)
    {
        var nuts = car.Positions(TestRegister.Nut, place);
        car.Do(person, Sign(job, $"faces@{place}", "clean"));
        car.Declare(TestRegister.WheelUp);
        car.Open(person, job, nuts);
        car.ByHand(person, job, "nuts", nuts);
        car.PullStage(person, job, "nuts", place, 1);
        car.Do(person, Sign(job, $"seat@{place}"));
        car.Declare(TestRegister.WheelDown);
        car.PullStage(person, job, "nuts", place, 2);
    }

    /// <summary>A job of the wheel procedure on the left wheel, done and signed.</summary>
    public static JobId FitLeftWheel(this CarAtWork car)
    {
        var job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Left);
        car.TightenWheel(TestPerson.Tess, job, TestRegister.Left);
        car.Do(TestPerson.Theo, Looks(job, "nuts", TestRegister.Left, 2));
        car.Do(TestPerson.Tess, Sign(job, $"final@{TestRegister.Left}"));
        return job;
    }
}
