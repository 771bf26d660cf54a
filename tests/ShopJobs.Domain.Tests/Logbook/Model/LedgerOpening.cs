using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Logbook.Model;

// Rule 2: what an opening reaches.
internal sealed partial class Ledger
{
    /// <summary>Everything open, and every result and setting void, after these are opened by hand.</summary>
    private (IReadOnlyList<JointPosition> Opens, IReadOnlyList<JointPosition> Reopens, IReadOnlyList<string> Undoes) OpeningOf(IEnumerable<JointPosition> positions, IEnumerable<Undone>? undone = null)
    {
        var named = positions.SelectMany(WithJoint).Distinct().ToList();
        var reached = named.ToHashSet();
        var undoes = (undone ?? []).Select(one => (one, (string?)null)).ToHashSet();
        int before;
        do
        {
            before = reached.Count + undoes.Count;
            foreach (var position in reached.ToList())
            {
                var kind = register.Kinds[position.Key];
                reached.UnionWith(
                    from rider in register.Kinds.Values
                    where rider.RidesOn == kind.Key && rider.Places.Contains(position.Place)
                    from at in WithJoint(new JointPosition(rider.Key, position.Place, position.Number))
                    select at);
                undoes.UnionWith(kind.Temporary ? [] : kind.Undoes.Select(one => (one, (string?)position.Place)));
            }

            foreach (var (one, place) in undoes.ToList())
            {
                if (one.Kind == UndoneKind.Setting)
                {
                    undoes.UnionWith(register.Settings[one.Name].Select(further => (further, (string?)null)));
                }
                else if (one.Kind == UndoneKind.Joint)
                {
                    var other = register.Kinds[one.Name];
                    reached.UnionWith(other.AllPositions().Where(at => place is null || !other.Places.Contains(place) || at.Place == place));
                }
            }
        }
        while (reached.Count + undoes.Count > before);

        return (
            [.. reached.Where(at => !IsBare(at))],
            [.. named.Where(IsBare)],
            [.. undoes.Where(one => one.one.Kind != UndoneKind.Joint).Select(one => one.one.ToString()).Distinct()]);
    }

    private bool IsBare(JointPosition position) => WhatIsOn(position) == On.Nothing && !IsOn(position);

    private IEnumerable<JointPosition> WithJoint(JointPosition position) =>
        GroupInForce(position) is { Rules: { Redo: RedoScope.Joint, Temporary: false } } group ? group.Positions : [position];

    /// <summary>The group of the job that last opened, fitted or ran it down; else of the newest job that has it.</summary>
    private GroupAt? GroupInForce(JointPosition position)
    {
        var running = jobs.Values.Where(job => !IsClosed(job.Id)).OrderByDescending(job => StartOf(job.Id));
        var first = InForce(position) is { } id ? [jobs[id]] : Enumerable.Empty<JobReading>();
        return first.Concat(running).Select(job => job.Groups.FirstOrDefault(group => group.Joint == position.Joint)).FirstOrDefault(group => group is not null);
    }

    private long StartOf(JobId job) => lines.First(line => line.Entry is JobStarted started && started.Job == job).Number;

    private JobId? InForce(JointPosition position)
    {
        JobId? job = null;
        foreach (var line in lines)
        {
            job = line.Entry switch
            {
                Opened fact when line.Opens.Contains(position) || line.Reopens.Contains(position) => fact.Job ?? job,
                FittedNew fact when fact.Positions.Contains(position) && line.Problems.Count == 0 => fact.Job,
                HandTightened fact when fact.Positions.Contains(position) && line.Problems.Count == 0 => fact.Job,
                TorqueRecorded fact when fact.Position == position => job ?? fact.Job,
                _ => job,
            };
        }

        return job;
    }
}
