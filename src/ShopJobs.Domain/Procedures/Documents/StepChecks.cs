namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>Checks of the steps beside the groups, the register and each other.</summary>
internal sealed class StepChecks(
    ProblemsFound problems, JointRegister register, IReadOnlyList<GroupDraft> groups, IReadOnlyList<StepDraft> steps)
{
    private readonly List<string> groupIds = [.. groups.Select(group => group.Id).OfType<string>()];
    private readonly List<string> stepIds = [.. steps.Select(step => step.Id).OfType<string>()];

    public static IReadOnlyCollection<string> ResultsOf(JointRegister register) =>
        [.. register.Results, .. register.Settings.Keys.Select(setting => $"setting:{setting}")];

    public static bool IsResult(JointRegister register, string name) => ResultsOf(register).Contains(name);

    public void Check()
    {
        foreach (var step in steps)
        {
            foreach (var work in step.Work)
            {
                CheckWork(step, work);
            }

            foreach (var wait in step.Waits)
            {
                CheckWait(step, wait);
            }

            CheckOpens(step);
            CheckInterleaving(step);
        }

        foreach (var group in groups.Where(group => group.Id is not null))
        {
            CheckCoverage(group);
        }
    }

    private GroupDraft? Group(string id) => groups.FirstOrDefault(group => group.Id == id);

    private void CheckWork(StepDraft step, WorkDraft work)
    {
        if (Group(work.Group) is not { } group)
        {
            problems.Error(work.At, $"There is no group “{work.Group}”", Wording.Nearest(work.Group, groupIds));
            return;
        }

        foreach (var stage in work.Stages.Where(stage => stage > group.Stages))
        {
            problems.Error(work.At, $"Group “{work.Group}” has no stage {stage}", $"it has {group.Stages}");
        }

        foreach (var place in group.Kind is { } kind ? step.Places.Except(kind.Places) : [])
        {
            problems.Error(work.At, $"“{group.Kind!.Key}” is not at {place}", $"the register has it at {string.Join(", ", group.Kind.Places)}");
        }
    }

    private void CheckWait(StepDraft step, WaitDraft wait)
    {
        switch (wait.Wait)
        {
            case WaitsFor.ForStep(var id) when !stepIds.Contains(id):
                problems.Error(wait.At, $"There is no step “{id}” to wait for", Wording.Nearest(id, stepIds));
                break;
            case WaitsFor.ForStep(var id):
                CheckMeeting(step, wait, steps.First(other => other.Id == id));
                break;
            case WaitsFor.ForGroup(var id, var stage):
                CheckGroupWait(wait, id, stage);
                break;
            case WaitsFor.ForCure(var id, _):
                CheckGroupWait(wait, id, stage: 1);
                break;
            case WaitsFor.ForResult(var name) when !IsResult(register, name):
                problems.Error(wait.At, $"The register has no result {Wording.Quote(name)}", Wording.Nearest(name, ResultsOf(register)));
                break;
            default:
                break;
        }
    }

    private void CheckGroupWait(WaitDraft wait, string id, int stage)
    {
        if (Group(id) is not { } group)
        {
            problems.Error(wait.At, $"There is no group “{id}” to wait for", Wording.Nearest(id, groupIds));
        }
        else if (stage > group.Stages && group.Stages > 0)
        {
            problems.Error(wait.At, $"Group “{id}” has no stage {stage}", $"it has {group.Stages}");
        }
    }

    private void CheckMeeting(StepDraft step, WaitDraft wait, StepDraft other)
    {
        if (step.Per != StepPer.Place || other.Per != StepPer.Place)
        {
            return;
        }

        var alone = step.Places.Except(other.Places).ToList();
        if (alone.Count == step.Places.Count && alone.Count > 0)
        {
            problems.Error(wait.At, $"Step “{step.Id}” waits for “{other.Id}”, which is at none of its places", "name the step that comes before it there, or [] for none");
        }
        else if (alone.Count > 0)
        {
            problems.Caution(wait.At, $"At {string.Join(", ", alone)} step “{step.Id}” does not wait: “{other.Id}” is not there", "name what comes before it there too");
        }
    }

    private void CheckOpens(StepDraft step)
    {
        foreach (var (at, key) in step.Opens)
        {
            if (!register.Kinds.TryGetValue(key, out var kind))
            {
                problems.Error(at, $"The joint register has no “{key}”", Wording.Nearest(key, [.. register.Kinds.Keys]));
            }
            else if (kind.Temporary)
            {
                problems.Error(at, $"“{key}” is temporary", "only joints that stay on the car are opened");
            }
            else if (step.Work.Any(work => Group(work.Group)?.Kind?.Key == key))
            {
                problems.Error(at, $"“{key}” is tightened in this same step", "open it in the step before");
            }
            else if (step.Per == StepPer.Place && step.Places.Except(kind.Places).ToList() is { Count: > 0 } missing)
            {
                problems.Error(at, $"“{key}” is not at {string.Join(", ", missing)}", $"the register has it at {string.Join(", ", kind.Places)}");
            }
        }
    }

    private void CheckInterleaving(StepDraft step)
    {
        if (step.Interleaved && step.Work.Count < 2)
        {
            problems.Error(step.Map.At("interleaved"), $"Step “{step.Id}” has nothing to interleave", "name both groups, or delete the line");
        }

        foreach (var group in step.Work.Where(work => work.Stages.Count > 0).Select(work => Group(work.Group)).OfType<GroupDraft>().Where(group => group.JamGroup is not null))
        {
            if (!step.Work.Any(work => work.Group == group.JamGroup) || !step.Interleaved)
            {
                problems.Error(step.Map.Map, $"Step “{step.Id}” drives “{group.Id}” without its jam nuts “{group.JamGroup}”", "put both groups into this step and write “interleaved: true”");
            }
        }
    }

    /// <summary>Every stage of a group is done by one step at every place.</summary>
    private void CheckCoverage(GroupDraft group)
    {
        for (var stage = 1; stage <= group.Stages; stage++)
        {
            var doing = steps.Where(step => step.Work.Any(work => work.Group == group.Id && work.Stages.Contains(stage))).ToList();
            var name = stage == group.Stages ? $"the final stage of group “{group.Id}”" : $"stage {stage} of group “{group.Id}”";
            if (doing.Count == 0)
            {
                problems.Error(group.Map.Map, $"No step does {name}", "add it to the work of a step");
                continue;
            }

            var places = group.Kind?.Places ?? [];
            foreach (var place in places)
            {
                var here = doing.Where(step => step.Per == StepPer.Car || step.Places.Contains(place)).ToList();
                if (here.Count > 1)
                {
                    problems.Error(here[1].Map.Map, $"Two steps do {name} at {place}: “{here[0].Id}” and “{here[1].Id}”", "leave it to one of them");
                    break;
                }
            }

            var without = places.Where(place => doing.TrueForAll(step => step.Per == StepPer.Place && !step.Places.Contains(place))).ToList();
            if (without.Count > 0)
            {
                problems.Caution(group.Map.Map, $"No step does {name} at {string.Join(", ", without)}", "put this procedure only on the places it covers");
            }
        }
    }
}
