namespace ShopJobs.Domain.Tests.Specification.JobEnds;

/// <summary>How a job stands.</summary>
internal enum Job
{
    Runs,
    OnHold,
    Ended,
    Cancelled,
}

/// <summary>How the one joint of the job stands.</summary>
internal enum Nut
{
    AsFound,
    Open,
    HandTight,
    AtTorque,

    /// <summary>Pulled while the job was on hold: whether it is tight has to be decided.</summary>
    Held,
}

/// <summary>Who asks.</summary>
internal enum Asker
{
    Lead,
    Technician,
}

/// <summary>A job of one step that tightens one joint, and what is asked of it as a whole.</summary>
/// <param name="Begun">Something was opened, run down or pulled under it.</param>
/// <param name="Signed">Its step is signed, and stands.</param>
/// <param name="Condition">The car's condition that the joint asks was said, and is good.</param>
/// <param name="Granted">What was asked last was granted.</param>
internal readonly record struct RestingJob(Job Job, Nut Nut, bool Begun, bool Signed, bool Condition, bool Released, bool Granted)
{
    public static readonly Asker[] Askers = [Asker.Lead, Asker.Technician];

    /// <summary>It runs or rests: its step is asked before the car may go.</summary>
    public bool Asks => Job is Job.Runs or Job.OnHold;

    public bool IsClosed => Nut is Nut.AsFound or Nut.AtTorque;

    public RestingJob Open() => this with
    {
        Nut = Nut.Open,
        Begun = Begun || Asks,
        Signed = Signed && !Asks,
        Released = false,
    };

    // Whatever is reported while it rests is recorded, and does not count.
    public RestingJob RunDown() => this with { Nut = Job == Job.OnHold ? Nut.Open : Nut.HandTight, Begun = true };

    public RestingJob Pull() => this with { Nut = Job == Job.OnHold ? Nut.Held : Nut.AtTorque, Begun = true, Released = false };

    public RestingJob Sign() => Job == Job.Runs && Nut == Nut.AtTorque && !Signed
        ? this with { Signed = true, Begun = true, Granted = true }
        : this with { Granted = false };

    public RestingJob PutOnHold(Asker by) => by == Asker.Lead && Job == Job.Runs
        ? this with { Job = Job.OnHold, Granted = true }
        : this with { Granted = false };

    public RestingJob Resume(Asker by) => by == Asker.Lead && Job == Job.OnHold
        ? this with { Job = Job.Runs, Nut = Nut == Nut.HandTight ? Nut.Open : Nut, Condition = false, Granted = true }
        : this with { Granted = false };

    public RestingJob Cancel(Asker by) => by == Asker.Lead && Asks
        ? this with { Job = Job.Cancelled, Granted = true }
        : this with { Granted = false };

    public RestingJob End(Asker by) => by == Asker.Lead && Job == Job.Runs && Signed
        ? this with { Job = Job.Ended, Granted = true }
        : this with { Granted = false };

    public RestingJob AskRelease() => IsClosed && !(Asks && Begun && !Signed)
        ? this with { Released = true, Job = Asks && Signed ? Job.Ended : Job, Condition = false, Granted = true }
        : this with { Granted = false };
}
