using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>Judges what results amount to now. Everything here is derived; nothing is stored.</summary>
public static class ResultJudging
{
    /// <summary>Doubts of the instrument that a result was measured with; none where none is registered for it.</summary>
    public static IEnumerable<ToolDoubt> DoubtsOn(this ResultBook result, Func<ToolId, ToolState> tool)
    {
        ArgumentNullException.ThrowIfNull(tool);
        return result.Work() is { } use ? tool(use.Tool).DoubtsOn(use).Select(doubt => new ToolDoubt(use.Tool, doubt.Number)) : [];
    }

    /// <summary>The use of an instrument that a result records; null where none is registered for it.</summary>
    public static ToolWork? Work(this ResultBook result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return ToolWork.Of(result.Fact, result.At);
    }

    /// <summary>True when a result of this name stands, and nothing is in doubt about its instrument.</summary>
    public static bool HasResult(this CarState state, string name, Func<ToolId, ToolState> tool)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Results.TryGetValue(name, out var result) && result.VoidBy == 0 && !result.DoubtsOn(tool).Any();
    }

    /// <summary>The names under which a step's results are recorded: with its place where the register gives each place its own.</summary>
    public static IEnumerable<string> RecordsAt(this PlacedProcedure placed, StepInstance step)
    {
        ArgumentNullException.ThrowIfNull(placed);
        ArgumentNullException.ThrowIfNull(step);
        return step.Step.Records.Select(name => placed.Register.ResultOf(name).At(step.Place));
    }

    /// <summary>The names of the results that a step waits for or records, each once.</summary>
    public static IEnumerable<string> ResultsOf(this PlacedProcedure placed, StepInstance step)
    {
        ArgumentNullException.ThrowIfNull(placed);
        ArgumentNullException.ThrowIfNull(step);
        return step.Step.WaitsFor.OfType<WaitsFor.ForResult>().Select(wait => placed.Register.ResultOf(wait.Name).At(step.Place))
            .Concat(placed.RecordsAt(step)).Distinct();
    }
}
