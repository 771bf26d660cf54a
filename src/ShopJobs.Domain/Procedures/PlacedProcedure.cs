namespace ShopJobs.Domain.Procedures;

/// <summary>One group at one place of the car. Count, pattern, stages and the witness rule hold inside it.</summary>
public sealed record GroupInstance(JointGroup Group, string Place, int Count)
{
    /// <summary>The joint it tightens.</summary>
    public Joint Joint => new(Group.Key, Place);

    /// <summary>Its positions, counted from 1.</summary>
    public IEnumerable<JointPosition> Positions => Enumerable.Range(1, Count).Select(Joint.At);
}

/// <summary>Stages of a group instance that belong to a step instance.</summary>
public sealed record GroupWork(GroupInstance Instance, IReadOnlyList<int> Stages);

/// <summary>One step at one place, or the one instance of a step per car.</summary>
/// <param name="Id"><c>step@place</c>, or the step's id where it is per car.</param>
public sealed record StepInstance(string Id, Step Step, string? Place, IReadOnlyList<GroupWork> Work);

/// <summary>A joint that a procedure works on and that this car has in another number.</summary>
/// <param name="Key">Key of the joint's kind.</param>
/// <param name="Place">Where; null where the car has no such joint at all.</param>
/// <param name="Visits">Positions that the procedure visits.</param>
/// <param name="Has">Positions of the car there.</param>
public sealed record Misfit(string Key, string? Place, int Visits, int Has);

/// <summary>A procedure on a car: its steps and groups at the places chosen for the job.</summary>
public sealed class PlacedProcedure
{
    private readonly Dictionary<string, StepInstance> steps = [];
    private readonly Dictionary<(string Group, string Place), GroupInstance> groups = [];

    /// <summary>Places a procedure.</summary>
    /// <param name="procedure">The job's snapshot.</param>
    /// <param name="register">The joint register the procedure was checked against: it gives the counts.</param>
    /// <param name="places">Places of this job; a step or group elsewhere is left out.</param>
    public PlacedProcedure(Procedure procedure, JointRegister register, IReadOnlyCollection<string> places)
    {
        Procedure = procedure;
        Register = register;
        foreach (var group in procedure.Groups)
        {
            var kind = register.Kinds[group.Key];
            foreach (var place in kind.Places.Where(places.Contains))
            {
                groups[(group.Id, place)] = new GroupInstance(group, place, kind.PositionsAt(place));
            }
        }

        foreach (var step in procedure.Steps)
        {
            foreach (var place in step.Per == StepPer.Car ? [null] : step.Places.Where(places.Contains).Cast<string?>())
            {
                var id = place is null ? step.Id : $"{step.Id}@{place}";
                steps[id] = new StepInstance(id, step, place, [.. WorkOf(step, place)]);
            }
        }
    }

    /// <summary>The document.</summary>
    public Procedure Procedure { get; }

    /// <summary>The register it was placed with.</summary>
    public JointRegister Register { get; }

    /// <summary>Step instances in working order.</summary>
    public IReadOnlyCollection<StepInstance> Steps => steps.Values;

    /// <summary>Every group instance of the job.</summary>
    public IReadOnlyCollection<GroupInstance> Groups => groups.Values;

    /// <summary>The step instance, or null when this job has none of that id.</summary>
    public StepInstance? Step(string id) => steps.GetValueOrDefault(id);

    /// <summary>The group instance, or null when this job has none there.</summary>
    public GroupInstance? Group(string id, string place) => groups.GetValueOrDefault((id, place));

    /// <summary>The instances of a step that concern this place: the one there, or all where either side is per car.</summary>
    public IEnumerable<StepInstance> StepsFor(string step, string? place) =>
        steps.Values.Where(instance => instance.Step.Id == step
            && (place is null || instance.Place is null || instance.Place == place));

    /// <summary>The instances of a group that concern this place.</summary>
    public IEnumerable<GroupInstance> GroupsFor(string group, string? place) =>
        groups.Values.Where(instance => instance.Group.Id == group && (place is null || instance.Place == place));

    /// <summary>The step instances that this one waits for directly.</summary>
    public IEnumerable<StepInstance> Before(StepInstance instance) =>
        instance.Step.WaitsFor.OfType<WaitsFor.ForStep>().SelectMany(wait => StepsFor(wait.Step, instance.Place));

    /// <summary>
    /// All places a procedure can be put on: those of its steps, and those of the joints that its steps per car work or open. A place at
    /// which nothing is done would make an empty job.
    /// </summary>
    public static IReadOnlyList<string> PlacesOf(Procedure procedure, JointRegister register)
    {
        ArgumentNullException.ThrowIfNull(procedure);
        ArgumentNullException.ThrowIfNull(register);
        var perCar = procedure.Steps.Where(step => step.Per == StepPer.Car).ToList();
        var keys = perCar.SelectMany(step => step.Work.Select(work => procedure.Group(work.Group).Key).Concat(step.Opens));
        return [.. procedure.Steps.SelectMany(step => step.Places).Concat(keys.SelectMany(key => register.Kinds.GetValueOrDefault(key)?.Places ?? [])).Distinct()];
    }

    /// <summary>Where a procedure does not fit a car: its visits are not the car's positions at the places it is put on. Empty where it fits.</summary>
    public static IReadOnlyList<Misfit> Misfits(Procedure procedure, JointRegister register, IReadOnlyCollection<string> places)
    {
        ArgumentNullException.ThrowIfNull(procedure);
        ArgumentNullException.ThrowIfNull(register);
        var asked = procedure.Groups.SelectMany(group => register.Kinds.TryGetValue(group.Key, out var kind)
            ? kind.Places.Where(places.Contains).Select(place => new Misfit(group.Key, place, group.Visited, kind.PositionsAt(place)))
            : [new Misfit(group.Key, null, group.Visited, 0)]);
        var opened = procedure.Steps.SelectMany(step => step.Opens).Distinct().Where(key => !register.Kinds.ContainsKey(key)).Select(key => new Misfit(key, null, 1, 0));
        return [.. asked.Where(found => found.Visits != found.Has), .. opened];
    }

    private IEnumerable<GroupWork> WorkOf(Step step, string? place) =>
        from work in step.Work
        from instance in GroupsFor(work.Group, place)
        select new GroupWork(instance, work.Stages);
}
