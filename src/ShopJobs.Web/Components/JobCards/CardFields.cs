using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.JobCards;

/// <summary>The fields of a card's form: their ids, and what stands in them.</summary>
internal static class CardFields
{
    /// <summary>Each stage that a step works, with what is typed for its group.</summary>
    public static IEnumerable<(GroupInstance Instance, Stage Stage, TypedGroup Group)> Stages(StepInstance step, TypedCard typed) =>
        from work in step.Work
        from number in work.Stages
        select (work.Instance, work.Instance.Group.Stages[number - 1], typed.Of(work.Instance));

    public static string Cell(GroupInstance instance, Stage stage, int visit) => FormattableString.Invariant($"{Of(instance, stage)}-{visit}");

    public static string Setting(GroupInstance instance, Stage stage) => $"{Of(instance, stage)}-setting";

    public static string Tool(GroupInstance instance, Stage stage) => $"{Of(instance, stage)}-tool";

    /// <summary>The tool that is chosen for a stage; null where none is.</summary>
    public static TorqueTool? ToolOf(CarReading reading, TypedStage typed) => IdOf(typed) is { } id ? reading.Now.Tool(id).Tool : null;

    /// <summary>Its id; null where none is chosen.</summary>
    public static ToolId? IdOf(TypedStage typed) => Guid.TryParse(typed.Tool, out var id) ? new ToolId(id) : null;

    private static string Of(GroupInstance instance, Stage stage) => FormattableString.Invariant($"cell-{instance.Group.Id}-{instance.Place}-{stage.Number}");
}
