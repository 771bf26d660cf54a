using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>What blocks a step, in one word.</summary>
public enum Blocker
{
    /// <summary>A position of it is held: the lead decides.</summary>
    Held,

    /// <summary>A cure has not run out.</summary>
    Cure,

    /// <summary>It waits for another step or group.</summary>
    Step,

    /// <summary>No tool in date covers its next torque.</summary>
    Wrench,

    /// <summary>A second person must look.</summary>
    Witness,

    /// <summary>Nobody is on it.</summary>
    Person,
}

/// <summary>The step that comes next on a car.</summary>
/// <param name="Action">The one thing to do on its joints.</param>
/// <param name="Blocker">What blocks it; null when somebody can go on.</param>
/// <param name="Why">The reason, where a rule gives one.</param>
public sealed record NextStep(JobId Job, StepInstance Step, NextAction Action, Blocker? Blocker, HoldPoint? Why);

/// <summary>Finds the step that comes next.</summary>
public static class NextSteps
{
    /// <summary>The next step over all running jobs: the first that somebody can go on with, else the first that is blocked.</summary>
    /// <param name="tools">Every tool of the shop.</param>
    /// <param name="isManned">True when somebody is on this step instance or on its job.</param>
    public static NextStep? NextStepOf(
        this CarState state, Circumstances now, IEnumerable<ToolState> tools, Func<JobId, string, bool> isManned)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(isManned);
        var ready = tools.Where(tool => tool is { Tool: not null, OutOfUseBy: 0 } && now.IsInDate(tool) && !now.IsAtItsLimit(tool)).ToList();
        var found = state.RunningJobs.Where(job => job.IsAtWork).Select(job => OfJob(state, now, job, ready, isManned)).OfType<NextStep>().ToList();
        return found.Find(step => step.Blocker is null) ?? found.FirstOrDefault();
    }

    private static NextStep? OfJob(
        CarState state, Circumstances now, JobBook job, List<ToolState> ready, Func<JobId, string, bool> isManned)
    {
        var placed = now.Placed(job);
        var waiting = (
            from step in placed.Steps
            where state.StandingOf(job, placed, step) != StepStanding.Signed
            let last = LastFinishedBefore(state, job, placed, step)
            let asDoer = last is null ? now : now with { Person = last.Person, Session = last.Fact.Session }
            select (
                Step: step,
                Before: HoldRules.Standard.BeforeStart(new StepQuestion(state, asDoer, job, placed, step, StepAnswers.None) { ForWork = true }),
                Rank: state.FinishedOf(job, placed, step) is not null ? 2 : last is null ? 1 : 0)).ToList();
        if (waiting.Count == 0)
        {
            return null;
        }

        // First where somebody goes on over what he has just finished; what is done and only to be signed comes last.
        var free = waiting.Where(candidate => candidate.Before.Count == 0).OrderBy(candidate => candidate.Rank).ToList();
        var (next, before, _) = free.Count > 0 ? free[0] : waiting[0];
        var action = state.NextOn(now, job, placed, next);
        var blocker = BlockerOf(before, action, ready) ?? (isManned(job.Id, next.Id) ? null : Blocker.Person);
        return new NextStep(job.Id, next, action, blocker, before is [var first, ..] ? first : null);
    }

    // Whoever has finished what comes before it goes on with it, whoever looks.
    private static FinishedStep? LastFinishedBefore(CarState state, JobBook job, PlacedProcedure placed, StepInstance step) => job.Finished.IsEmpty
        ? null
        : placed.AllBefore(step).Select(before => state.FinishedOf(job, placed, before)).OfType<FinishedStep>().MaxBy(finished => finished.Number);

    private static Blocker? BlockerOf(IReadOnlyList<HoldPoint> before, NextAction action, List<ToolState> ready) => action switch
    {
        NextAction.Stopped => Blocker.Held,
        NextAction.Wait => Blocker.Step,
        _ when before.Any(point => point.Reason == HoldReason.Cure) => Blocker.Cure,
        _ when before.Count > 0 => Blocker.Step,
        NextAction.Look or NextAction.Countersign or NextAction.CountersignStep => Blocker.Witness,
        NextAction.PullNow pull when !ready.Exists(tool => Covers(tool.Tool!, pull.Cell)) => Blocker.Wrench,
        _ => null,
    };

    // At an angle stage no torque is asked of the tool, and no lever.
    private static bool Covers(TorqueTool tool, Cell cell) =>
        Enum.GetValues<TorqueKind>().Any(record => cell.Stage.Takes(record) && tool.Kind.Gives(record))
        && (cell.Stage.Turn is not null
            || (cell.Instance.Group.KnowsSettingOf(tool) && tool.IsInRange(cell.Instance.Group.SettingFor(cell.Stage, null, tool))));
}
