using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Web.Desk;

/// <summary>One car as it was at one moment, with everything needed to judge it. Safe to keep on a screen.</summary>
/// <param name="Now">Circumstances of the person who looks; for the customer nobody.</param>
/// <param name="Tools">Every tool of the shop.</param>
public sealed record CarReading(
    CarId Car, CarState State, Circumstances Now, IReadOnlyDictionary<ToolId, ToolState> Tools, string HeadHash)
{
    /// <summary>Set when the logbook can be read only up to an entry: why.</summary>
    public string? Unreadable { get; init; }

    /// <summary>State of a position.</summary>
    public PositionState StateOf(JointPosition position) => State.StateOf(position, Now.Tool);

    /// <summary>The placed procedure of a job.</summary>
    public PlacedProcedure Placed(JobBook job) => Now.Placed(job);

    /// <summary>Every reason why a release waits.</summary>
    public IReadOnlyList<HoldPoint> HoldsOn(ReleaseKind kind, bool customerAccepted = false, decimal? odometerKm = null) =>
        HoldRules.Standard.OnRelease(State, Now, kind, customerAccepted, odometerKm);

    /// <summary>The state of the newest release of a kind.</summary>
    public ReleaseStanding StandingOf(ReleaseKind kind) => State.StandingOf(Now, kind);

    /// <summary>Every reason why a step can't be signed.</summary>
    /// <param name="with">Finished steps that the same PIN signs.</param>
    public IReadOnlyList<HoldPoint> HoldsOn(JobBook job, StepInstance step, StepAnswers answers, IReadOnlyList<string>? with = null) =>
        HoldRules.Standard.OnStep(new StepQuestion(State, Now, job, Placed(job), step, answers) { With = with ?? [] });

    /// <summary>Every reason why a step is not done: what its signature asks, over what the same hand has just finished.</summary>
    public IReadOnlyList<HoldPoint> HoldsOnFinishing(JobBook job, StepInstance step, StepAnswers answers) =>
        HoldRules.Standard.OnStep(new StepQuestion(State, Now, job, Placed(job), step, answers) { ForWork = true });

    /// <summary>Why the work of a step should not start yet.</summary>
    public IReadOnlyList<HoldPoint> HoldsBeforeStart(JobBook job, StepInstance step) => JobEnds.BeforeWork(job) is { Count: > 0 } rests
        ? rests
        : HoldRules.Standard.BeforeStart(new StepQuestion(State, Now, job, Placed(job), step, StepAnswers.None) { ForWork = true });
}
