using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>A trainee's sign-off for which nobody has answered.</summary>
public sealed record AwaitedAnswer(JobBook Job, StepInstance Step, SignOff Sign);

/// <summary>What a sign-off rests on.</summary>
public static class SignOffs
{
    /// <summary>
    /// Entries that a sign-off of a step would rest on now, lowest first: sign-offs of the steps before it, the pulls of its stages with
    /// what they rest on and their witnesses, and the results it waits for or records.
    /// </summary>
    public static IReadOnlyList<long> RestsOn(CarState state, JobBook job, PlacedProcedure placed, StepInstance step)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(placed);
        ArgumentNullException.ThrowIfNull(step);
        var numbers = new SortedSet<long>(placed.Before(step).Select(before => job.SignOffs.GetValueOrDefault(before.Id)?.Number ?? 0));
        foreach (var work in step.Work.Concat(Waited(placed, step)).Where(work => !work.Instance.Group.Temporary))
        {
            var pulls = work.Instance.Positions.Select(state.Of).SelectMany(book => work.Stages.SelectMany(book.Newest));
            numbers.UnionWith(pulls.SelectMany(pull => pull.Fact.RestsOn.Append(pull.Number).Append(pull.WitnessedBy ?? 0)));
        }

        numbers.UnionWith(placed.ResultsOf(step).Select(name => state.Results.GetValueOrDefault(name)?.Number ?? 0));
        numbers.Remove(0);
        return [.. numbers];
    }

    /// <summary>Sign-offs by trainees, of running jobs, that stand but for their countersignature.</summary>
    public static IEnumerable<AwaitedAnswer> AwaitingCountersign(this CarState state, Circumstances now)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        return from job in state.RunningJobs
               where job.SignOffs.Values.Any(sign => sign.AwaitsCountersign)
               let placed = now.Placed(job)
               from step in placed.Steps
               where state.StandingOf(job, placed, step) == StepStanding.AwaitsCountersign
               select new AwaitedAnswer(job, step, job.SignOffs[step.Id]);
    }

    // The stages of groups that it waits for; a cure runs from the final one.
    private static IEnumerable<GroupWork> Waited(PlacedProcedure placed, StepInstance step) =>
        step.Step.WaitsFor.SelectMany(wait => wait switch
        {
            WaitsFor.ForGroup(var group, var stage) => placed.GroupsFor(group, step.Place).Select(instance => new GroupWork(instance, [stage])),
            WaitsFor.ForCure(var group, _) => placed.GroupsFor(group, step.Place).Select(instance => new GroupWork(instance, [instance.Group.Stages.Count])),
            _ => [],
        });
}
