using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Step;

/// <summary>One tool of the shop beside one stage: may it be taken, and if not, why.</summary>
public sealed record ToolOffer(TorqueTool Tool, ToolId Id, DateOnly? Due, IReadOnlyList<HoldReason> Against)
{
    /// <summary>True when it can do the stage.</summary>
    public bool Fits => Against.Count == 0;

    /// <summary>Why not, in words.</summary>
    public string Why => string.Join("; ", Against.Select(reason =>
        Turns && reason == HoldReason.EvidenceNotAllowed ? "it does not measure the angle turned" : HoldWords.Of(reason)));

    /// <summary>True beside an angle stage.</summary>
    public bool Turns { get; init; }

    /// <summary>What it does, for example "click, 40 to 200 N·m".</summary>
    public string About => FormattableString.Invariant(
        $"{KindWord(Tool.Kind)}, {Tool.LowestMarked:0.##} to {Tool.Top:0.##} {Domain.Fasteners.TorqueUnits.Symbol(Tool.Unit)}");

    /// <summary>Pulls left until it is to be calibrated; null while there are many.</summary>
    public int? FewPullsLeft { get; init; }

    /// <summary>Last day of its calibration.</summary>
    public string DueWords => Due is { } due ? $"calibrated to {due.Day()}" : "no calibration";

    /// <summary>How many pulls are left until it is calibrated; null while there are many.</summary>
    public string? FewWords => FewPullsLeft is { } left ? FormattableString.Invariant($"{left} {(left == 1 ? "pull" : "pulls")} left") : null;

    /// <summary>Every tool for a cell: those that can do it first, by name.</summary>
    /// <param name="runDown">Run-down torque typed for it and not recorded yet.</param>
    public static IReadOnlyList<ToolOffer> For(CarReading reading, JobBook job, Cell cell, EnteredTorque? runDown = null)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(cell);
        return For(reading, job, cell.Instance, cell.Stage, reading.State.Of(cell.Position).RunDownOf() ?? runDown);
    }

    /// <summary>Every tool for a stage: those that can do it first, by name.</summary>
    /// <param name="runDown">Run-down torque that is added to the stage's; null where none is, or it is not known yet.</param>
    public static IReadOnlyList<ToolOffer> For(CarReading reading, JobBook job, GroupInstance instance, Stage stage, EnteredTorque? runDown = null)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(stage);
        return
        [
            .. from tool in reading.Tools
               where tool.Value is { Tool: not null, RetiredBy: 0 }
               let against = reading.State.Against(reading.Now, job, instance, stage, tool.Key, runDown)
               orderby against.Count > 0, tool.Value.Tool!.Name
               select new ToolOffer(tool.Value.Tool!, tool.Key, tool.Value.LastGood?.Due, against) { Turns = stage.Turn is not null, FewPullsLeft = FewLeft(reading, tool.Key, tool.Value.Tool!) },
        ];
    }

    /// <summary>
    /// The tool to begin with: the one chosen if it fits, else the one this person last used on this stage, else on this job. Null
    /// when none of them fits: then a person chooses.
    /// </summary>
    public static ToolOffer? Pick(IReadOnlyList<ToolOffer> offers, ToolId? chosen, CarState state, JobId job, Cell cell, PersonId person)
    {
        ArgumentNullException.ThrowIfNull(offers);
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(cell);
        var mine = state.Positions.Values.SelectMany(book => book.Pulls)
            .Where(pull => pull.Person == person && pull.Fact.Job == job)
            .OrderByDescending(pull => pull.Fact.Group == cell.Instance.Group.Id && pull.Fact.Stage == cell.Stage.Number)
            .ThenByDescending(pull => pull.Number)
            .Select(pull => (ToolId?)pull.Fact.Tool);
        return mine.Prepend(chosen).Select(id => offers.FirstOrDefault(offer => offer.Fits && offer.Id == id)).FirstOrDefault(offer => offer is not null);
    }

    private static int? FewLeft(CarReading reading, ToolId id, TorqueTool tool) =>
        tool.CycleLimit - reading.Now.PullsWith(id) is var left && left <= tool.CycleLimit / 10 ? Math.Max(0, left) : null;

    private static string KindWord(ToolKind kind) => kind switch
    {
        ToolKind.Click => "click",
        ToolKind.Indicating => "shows a reading",
        _ => "torque and angle",
    };
}
