using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>What opening positions would do, told before it is done by the same functions that record it.</summary>
/// <param name="Opened">The entry it would become.</param>
/// <param name="RecordsVoid">Torque records of the present cycle that become void.</param>
/// <param name="Releases">Releases that end.</param>
/// <param name="Steps">Signed steps of running jobs that are signed no more.</param>
/// <param name="SummaryOutdated">Version of the work summary that is marked out of date; null when none does.</param>
public sealed record OpeningConsequences(
    Opened Opened,
    int RecordsVoid,
    IReadOnlyList<ReleaseKind> Releases,
    IReadOnlyList<StepInstance> Steps,
    int? SummaryOutdated)
{
    /// <summary>Finds them for positions that somebody is about to open.</summary>
    public static OpeningConsequences Of(CarState state, Circumstances now, IReadOnlyList<JointPosition> positions)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        var opened = Opening.Of(state, now, new OpenPositions(positions, null, null));
        var after = state.Apply(new Recorded(state.Number + 1, now.At, now.Person, opened));
        return new OpeningConsequences(
            opened,
            opened.Positions.Concat(opened.AlsoOpened).Sum(position => state.Of(position).Pulls.Count(pull => !pull.Voided)),
            [.. state.Releases.Where(release => release.Value.VoidBy == 0 && after.Releases[release.Key].VoidBy > 0).Select(r => r.Key).Order()],
            [
                .. from job in state.RunningJobs
                   let placed = now.Placed(job)
                   from step in placed.Steps
                   where state.StandingOf(job, placed, step) == StepStanding.Signed
                       && after.StandingOf(after.Jobs[job.Id], placed, step) != StepStanding.Signed
                   select step,
            ],
            state.Summaries is [.., { SupersededBy: 0 } last] ? last.Fact.Version : null);
    }
}
