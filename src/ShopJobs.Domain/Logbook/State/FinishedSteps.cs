using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>Somebody's word that a step is done; its signature comes later.</summary>
public sealed record FinishedStep(long Number, DateTime At, PersonId Person, StepFinished Fact);

/// <summary>
/// Work over a step that is done and not signed yet: by the same person at the same place in the same session, never across a witness, a
/// cure or a result. Then one PIN signs several of them.
/// </summary>
public static class FinishedSteps
{
    /// <summary>Who has finished a step instance and not signed it, where what was done is still valid; null otherwise.</summary>
    public static FinishedStep? FinishedOf(this CarState state, JobBook job, PlacedProcedure placed, StepInstance step)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(placed);
        ArgumentNullException.ThrowIfNull(step);
        return job.Finished.GetValueOrDefault(step.Id) is { } finished
            && !(job.SignOffs.GetValueOrDefault(step.Id)?.Number > finished.Number)
            && state.IsIntact(job, placed, step, finished.Number, finished.Fact.RestsOn)
            && placed.Before(step).All(before => DoneBy(state, job, placed, before) is > 0 and var done && done < finished.Number)
            ? finished
            : null;
    }

    /// <summary>True where the work of a step goes on over one before it that is finished.</summary>
    internal static bool GoesOn(StepQuestion question, StepInstance before, FinishedStep finished) =>
        finished.Person == question.Now.Person
        && finished.Fact.Session is { } session && session == question.Now.Session
        && before.Place == question.Step.Place
        && !IsHoldPoint(question.Placed, before)
        && !WaitsForCureOrResult(question.Step);

    /// <summary>The steps before one that this person has finished and not signed, in the procedure's order.</summary>
    public static IReadOnlyList<StepInstance> FinishedBefore(this CarState state, PersonId person, JobBook job, PlacedProcedure placed, StepInstance step)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(placed);
        ArgumentNullException.ThrowIfNull(step);
        if (job.Finished.IsEmpty)
        {
            return [];
        }

        var before = placed.AllBefore(step);
        return [.. placed.Steps.Where(other => before.Contains(other) && state.FinishedOf(job, placed, other)?.Person == person)];
    }

    /// <summary>True for a step that brings class A joints to their final stage: it is signed by itself.</summary>
    public static bool IsSignedByItself(this StepInstance step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return step.Work.Any(work => work.Instance.Group is { Temporary: false, Risk: RiskClass.A } group && work.Stages.Contains(group.Stages.Count));
    }

    /// <summary>True where its signature may come later: nothing of it is a hold point, and its work goes on at its place.</summary>
    public static bool MayBeSignedLater(this PlacedProcedure placed, StepInstance step)
    {
        ArgumentNullException.ThrowIfNull(placed);
        ArgumentNullException.ThrowIfNull(step);
        return !IsHoldPoint(placed, step) && !step.IsSignedByItself()
            && placed.Steps.Any(other => other.Place == step.Place && !WaitsForCureOrResult(other) && placed.Before(other).Contains(step));
    }

    /// <summary>Which of these one PIN signs: those of one place together, and what brings class A joints to their final stage by itself.</summary>
    public static IReadOnlyList<IReadOnlyList<StepInstance>> ByOnePin(IReadOnlyList<StepInstance> finished) =>
    [
        .. from step in finished
           group step by (step.Place, Alone: step.IsSignedByItself() ? step.Id : null) into signed
           select signed.ToList(),
    ];

    // By which entry a step is done: its own word, where that still stands and was only signed since; else its signature. 0 where it is not.
    private static long DoneBy(CarState state, JobBook job, PlacedProcedure placed, StepInstance step) =>
        state.StandingOf(job, placed, step) != StepStanding.Signed ? FinishedOf(state, job, placed, step)?.Number ?? 0
        : job.Finished.GetValueOrDefault(step.Id) is { } finished && state.IsIntact(job, placed, step, finished.Number, finished.Fact.RestsOn) ? finished.Number
        : job.SignOffs[step.Id].Number;

    // A witness looks at it, a cure ends with it, or a result is recorded or waited for: it is signed before anybody goes on.
    private static bool IsHoldPoint(PlacedProcedure placed, StepInstance step) =>
        WaitsForCureOrResult(step)
        || placed.RecordsAt(step).Any()
        || step.Work.Any(work => work.Stages.Any(stage => work.Instance.Group.Stages[stage - 1].Witness));

    private static bool WaitsForCureOrResult(StepInstance step) => step.Step.WaitsFor.Any(wait => wait is WaitsFor.ForCure or WaitsFor.ForResult);
}
