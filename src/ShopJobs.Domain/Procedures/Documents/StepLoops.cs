namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>
/// Finds steps that wait for each other, directly, through a group's stage, a cure, or through stages in the wrong steps:
/// none of them could ever be signed.
/// </summary>
internal sealed class StepLoops
{
    private readonly ProblemsFound problems;
    private readonly Dictionary<string, StepDraft> steps;
    private readonly Dictionary<string, List<string>> before;

    private StepLoops(ProblemsFound problems, IReadOnlyList<GroupDraft> groups, IReadOnlyList<StepDraft> drafts)
    {
        this.problems = problems;
        steps = drafts.Where(step => step.Id is not null).GroupBy(step => step.Id!).ToDictionary(same => same.Key, same => same.First());
        var finals = groups.Where(group => group.Id is not null).GroupBy(group => group.Id!).ToDictionary(same => same.Key, same => same.First().Stages);
        before = steps.ToDictionary(pair => pair.Key, pair => Before(pair.Value, finals).Where(steps.ContainsKey).Distinct().ToList());
    }

    public static void Check(ProblemsFound problems, IReadOnlyList<GroupDraft> groups, IReadOnlyList<StepDraft> steps) =>
        new StepLoops(problems, groups, steps).Find();

    private IEnumerable<string> Before(StepDraft step, Dictionary<string, int> finals)
    {
        foreach (var wait in step.Waits.Select(draft => draft.Wait))
        {
            var found = wait switch
            {
                WaitsFor.ForStep(var id) => [id],
                WaitsFor.ForGroup(var group, var stage) => Doing(group, stage),
                WaitsFor.ForCure(var group, _) => Doing(group, finals.GetValueOrDefault(group)),
                _ => Array.Empty<string>(),
            };
            foreach (var id in found)
            {
                yield return id;
            }
        }

        foreach (var id in step.Work.Where(work => work.Stages.Count > 0 && work.Stages[0] > 1)
            .SelectMany(work => Doing(work.Group, work.Stages[0] - 1)).Where(id => id != step.Id))
        {
            yield return id;
        }
    }

    private IEnumerable<string> Doing(string group, int stage) =>
        steps.Values.Where(step => step.Work.Any(work => work.Group == group && work.Stages.Contains(stage))).Select(step => step.Id!);

    /// <summary>Walks without recursion: a document may hold thousands of steps in one chain.</summary>
    private void Find()
    {
        var done = new HashSet<string>();
        foreach (var start in steps.Keys.Where(id => !done.Contains(id)))
        {
            var trail = new List<(string Id, int Next)> { (start, 0) };
            var onTrail = new HashSet<string> { start };
            while (trail.Count > 0)
            {
                var (id, next) = trail[^1];
                if (next == before[id].Count)
                {
                    trail.RemoveAt(trail.Count - 1);
                    onTrail.Remove(id);
                    done.Add(id);
                    continue;
                }

                trail[^1] = (id, next + 1);
                var other = before[id][next];
                if (onTrail.Contains(other))
                {
                    Report(trail.Select(part => part.Id).SkipWhile(part => part != other).Append(other));
                }
                else if (!done.Contains(other))
                {
                    trail.Add((other, 0));
                    onTrail.Add(other);
                }
            }
        }
    }

    private void Report(IEnumerable<string> loop)
    {
        var ids = loop.ToList();
        var last = steps[ids[^2]];
        problems.Error(last.Map.At("waits-for"), $"Steps wait for each other: {string.Join(" → ", ids.Take(20))}", "take one of these waits away");
    }
}
