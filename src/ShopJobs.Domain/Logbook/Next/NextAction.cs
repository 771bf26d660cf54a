using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>One place for one pull: joint, cycle, stage and visit.</summary>
public sealed record Cell(GroupInstance Instance, JointPosition Position, int Cycle, Stage Stage, int Visit);

/// <summary>The one thing to do next on a step.</summary>
public abstract record NextAction
{
    /// <summary>Put new hardware on.</summary>
    public sealed record Fit(GroupInstance Instance, IReadOnlyList<JointPosition> Positions) : NextAction;

    /// <summary>Clean the threads, or put on what the torque is for: they carry something else.</summary>
    public sealed record Prepare(GroupInstance Instance, IReadOnlyList<JointPosition> Positions) : NextAction;

    /// <summary>Run down by hand.</summary>
    public sealed record ByHand(GroupInstance Instance, IReadOnlyList<JointPosition> Positions) : NextAction;

    /// <summary>Pull this cell.</summary>
    public sealed record PullNow(Cell Cell) : NextAction;

    /// <summary>Open or back off, or remove temporary hardware.</summary>
    public sealed record TakeOff(GroupInstance Instance, IReadOnlyList<JointPosition> Positions, TakeOffReason Why) : NextAction;

    /// <summary>Nothing to do on the joints until a hold is decided.</summary>
    public sealed record Stopped(JointPosition Position) : NextAction;

    /// <summary>What the joint sits on has to be finished first.</summary>
    public sealed record Wait(JointPosition Position, HoldPoint Why) : NextAction;

    /// <summary>A second person must look.</summary>
    public sealed record Look(GroupInstance Instance, Stage Stage) : NextAction;

    /// <summary>Somebody with the right who stood by answers for pulls of somebody without it.</summary>
    public sealed record Countersign(GroupInstance Instance, IReadOnlyList<Pull> Pulls) : NextAction;

    /// <summary>Somebody with the right who stood by answers for a step that a trainee signed.</summary>
    public sealed record CountersignStep(SignOff Sign) : NextAction;

    /// <summary>Every joint of this step is where it should be.</summary>
    public sealed record Done : NextAction;

    private NextAction()
    {
    }
}
