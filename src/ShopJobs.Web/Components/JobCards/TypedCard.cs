using ShopJobs.Domain.Procedures;

namespace ShopJobs.Web.Components.JobCards;

/// <summary>One step of a card as somebody types it.</summary>
public sealed class TypedCard
{
    /// <summary>Most letters of a lot, as at the step.</summary>
    public const int LotLength = Step.CellReport.LotLength;

    /// <summary>Number at the head of the card; empty where it has none.</summary>
    public string Number { get; set; } = "";

    /// <summary>Whoever enters it did it; null while that is not said.</summary>
    public bool? IsOwn { get; set; }

    /// <summary>Who did it by the paper, where another enters it; empty where nobody is named.</summary>
    public string DoneBy { get; set; } = "";

    public DateOnly? Day { get; set; }

    public string Time { get; set; } = "";

    /// <summary>What the step opens outside its groups was taken off.</summary>
    public bool Opened { get; set; }

    /// <summary>How the car was, as far as the paper says it.</summary>
    public HashSet<CarCondition> Conditions { get; } = [];

    /// <summary>What was done on each group of the step, by group and place.</summary>
    public Dictionary<string, TypedGroup> Groups { get; } = [];

    /// <summary>The typed fields of a group at its place.</summary>
    public TypedGroup Of(GroupInstance instance)
    {
        ArgumentNullException.ThrowIfNull(instance);
        var key = $"{instance.Group.Id}-{instance.Place}";
        return Groups.TryGetValue(key, out var group) ? group : Groups[key] = new TypedGroup(instance);
    }
}

/// <summary>One group of a step as somebody types it.</summary>
public sealed class TypedGroup(GroupInstance instance)
{
    /// <summary>It was backed off before.</summary>
    public bool Opened { get; set; }

    /// <summary>New hardware went on.</summary>
    public bool New { get; set; }

    public string Lot { get; set; } = "";

    /// <summary>Run down by hand.</summary>
    public bool ByHand { get; set; }

    /// <summary>Its stages by number.</summary>
    public IReadOnlyDictionary<int, TypedStage> Stages { get; } = instance.Group.Stages.ToDictionary(stage => stage.Number, stage => new TypedStage(stage.Visits.Count));

    /// <summary>True where nothing of it is ticked or typed.</summary>
    public bool IsEmpty => !Opened && !New && !ByHand && Stages.Values.All(stage => stage.IsEmpty);
}

/// <summary>One stage as somebody types it: the tool, and each visit ticked or with its reading.</summary>
public sealed class TypedStage(int visits)
{
    /// <summary>Id of the tool; empty where the paper names none.</summary>
    public string Tool { get; set; } = "";

    /// <summary>What a click wrench was set to.</summary>
    public string Setting { get; set; } = "";

    /// <summary>Visits that are ticked.</summary>
    public bool[] Done { get; } = new bool[visits];

    /// <summary>Readings beside them.</summary>
    public string[] Values { get; } = [.. Enumerable.Repeat("", visits)];

    /// <summary>Run-down torques beside them, where the instruction adds them.</summary>
    public string[] RunDowns { get; } = [.. Enumerable.Repeat("", visits)];

    /// <summary>A visit that is ticked or has a reading.</summary>
    public bool IsDone(int visit) => Done[visit] || Values[visit].Trim().Length > 0;

    /// <summary>True where no visit is.</summary>
    public bool IsEmpty => !Enumerable.Range(0, Done.Length).Any(IsDone);
}
