using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Logbook.Model;

/// <summary>A group at one place.</summary>
internal sealed record GroupAt(JointGroup Rules, string Place, IReadOnlyList<JointPosition> Positions)
{
    public Joint Joint => new(Rules.Key, Place);

    public Stage Stage(int number) => Rules.Stages[number - 1];
}

/// <summary>A step at one place, or the one of a step per car.</summary>
internal sealed record StepAt(string Id, Step Rules, string? Place);

/// <summary>The model's reading of a procedure at the places of a job.</summary>
internal sealed class JobReading
{
    public JobReading(JobId id, Procedure procedure, JointRegister register, IReadOnlyList<string> places)
    {
        Id = id;
        Procedure = procedure;
        Places = places;
        Groups =
        [
            .. from rules in procedure.Groups
               let kind = register.Kinds.GetValueOrDefault(rules.Key)
               where kind is not null
               from place in kind.Places
               where places.Contains(place)
               select new GroupAt(rules, place, [.. Enumerable.Range(1, kind.Positions).Select(n => new JointPosition(rules.Key, place, n))]),
        ];
        Steps =
        [
            .. from rules in procedure.Steps
               from place in rules.Per == StepPer.Car ? new string?[] { null } : [.. rules.Places.Where(places.Contains)]
               select new StepAt(place is null ? rules.Id : $"{rules.Id}@{place}", rules, place),
        ];
    }

    public JobId Id { get; }

    public Procedure Procedure { get; }

    public IReadOnlyList<string> Places { get; }

    public IReadOnlyList<GroupAt> Groups { get; }

    public IReadOnlyList<StepAt> Steps { get; }

    public GroupAt? Group(string id, string place) => Groups.FirstOrDefault(group => group.Rules.Id == id && group.Place == place);

    public StepAt? Step(string id) => Steps.FirstOrDefault(step => step.Id == id);

    public IEnumerable<GroupAt> GroupsAt(string id, string? place) =>
        Groups.Where(group => group.Rules.Id == id && (place is null || place == group.Place));

    public IReadOnlyList<StepAt> Before(StepAt step) =>
    [
        .. from wait in step.Rules.WaitsFor.OfType<WaitsFor.ForStep>()
           from other in Steps
           where other.Rules.Id == wait.Step && (other.Place is null || step.Place is null || other.Place == step.Place)
           select other,
    ];

    public IReadOnlyList<StepAt> AllBefore(StepAt step) => [.. Before(step).SelectMany(other => AllBefore(other).Append(other)).Distinct()];

    /// <summary>Groups with their stages that are done in a step.</summary>
    public IEnumerable<(GroupAt Group, IReadOnlyList<int> Stages)> WorkOf(StepAt step) =>
        from work in step.Rules.Work
        from at in GroupsAt(work.Group, step.Place)
        select (at, work.Stages);
}
