using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Web.Components.Step;

/// <summary>The car's condition for a stage, and what of that nobody has said yet.</summary>
public sealed record StageConditions(StepScene Scene, Stage Stage, GroupInstance Instance)
{
    /// <summary>Conditions that nobody has said, or that do not hold any more.</summary>
    public IReadOnlyList<CarCondition> Asked { get; } =
        [.. Stage.Conditions.Where(asked => Scene.State.Declared(Scene.Reading.Now, asked, Instance.Place) is null)];

    /// <summary>True when the car is as the stage asks.</summary>
    public bool AsMustBe => Stage.Conditions.All(asked => Scene.State.Is(Scene.Reading.Now, asked, Instance.Place));

    /// <summary>Several that are asked of the same places: one touch says them. Empty where they are said one by one.</summary>
    public IReadOnlyList<CarCondition> Together => Asked.Count > 1 && Asked.All(asked => Missing(asked).SequenceEqual(Missing(Asked[0]))) ? Asked : [];

    /// <summary>Every other way the car can stand, in the aspects of this stage.</summary>
    public IEnumerable<CarCondition> Others =>
        from asked in Stage.Conditions
        from value in Scene.Reading.Now.Register.Conditions.GetValueOrDefault(asked.Aspect) ?? []
        where value != asked.Value
        select new CarCondition(asked.Aspect, value);

    /// <summary>The place a condition is said of; null for one of the whole car.</summary>
    public string? PlaceOf(CarCondition condition) => OfPlace(condition) ? Instance.Place : null;

    /// <summary>Every place that this step works and where it is not so yet: one touch says it for all of them.</summary>
    public IReadOnlyList<string> Missing(CarCondition asked) => !OfPlace(asked) ? [] :
    [
        .. Scene.Step.Work.Where(work => work.Stages.Any(stage => work.Instance.Group.Stages[stage - 1].Conditions.Contains(asked)))
            .Select(work => work.Instance.Place).Append(Instance.Place).Distinct()
            .Where(place => !Scene.State.Is(Scene.Reading.Now, asked, place)),
    ];

    /// <summary>The report that says so.</summary>
    public CellReport Say(IReadOnlyList<CarCondition> conditions, IReadOnlyList<string> places) =>
        CellReport.By(Scene, CellReportKind.Condition) with { Conditions = conditions, Places = places.Count == 0 ? null : places };

    /// <summary>What was said before, and why that is not enough.</summary>
    public string LastSaid(CarCondition asked)
    {
        if (Scene.State.LastSaid(Scene.Reading.Now, asked.Aspect, Instance.Place) is not { } said)
        {
            return "Nobody has said how it is.";
        }

        var words = $"Last said: {ConditionSaid.Value(said.Value)}, {ConditionWords.By(said, Scene.Reading.Now, Scene.Names)}";
        return Scene.State.EndOf(Scene.Reading.Now, said) is { } end ? $"{words}; {ConditionWords.Of(end, Scene.Reading.Now)}." : $"{words}.";
    }

    private bool OfPlace(CarCondition condition) => Scene.Reading.Now.Register.AspectOf(condition.Aspect).OfPlace;
}
