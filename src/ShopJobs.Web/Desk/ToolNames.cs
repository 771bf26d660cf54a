using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Names;

namespace ShopJobs.Web.Desk;

/// <summary>
/// Whether a tool or instrument may be called as it is entered. Asked where the entry is decided: everything read is a dependency,
/// so that two entered at once don't both pass. What the tool is called already is not asked again.
/// </summary>
internal static class ToolNames
{
    /// <summary>Why not; null where nothing is against it, or where the command names nothing.</summary>
    public static HoldPoint? Against(LogbookReader reader, ToolId id, ToolState state, ToolCommand command) => command switch
    {
        EnterTool { Tool: var tool } => Name(reader, id, state, tool.Name) ?? Serial(reader, id, state, tool.Serial),
        EnterInstrument { Instrument: var instrument } => Name(reader, id, state, instrument.Name),
        _ => null,
    };

    private static HoldPoint? Name(LogbookReader reader, ToolId id, ToolState state, string name) =>
        state.Name != name && NameLook.FirstAlike(name, Others(reader, id).Select(other => other.Name).OfType<string>()) is { } taken
            ? new HoldPoint(HoldReason.NameTaken) { Name = name, Choices = [taken] }
            : null;

    private static HoldPoint? Serial(LogbookReader reader, ToolId id, ToolState state, string serial) =>
        state.Tool?.Serial != serial && Others(reader, id).FirstOrDefault(other => string.Equals(other.Tool?.Serial, serial, StringComparison.OrdinalIgnoreCase)) is { } same
            ? new HoldPoint(HoldReason.SerialTaken) { Name = serial, Tool = same.Tool }
            : null;

    private static IEnumerable<ToolState> Others(LogbookReader reader, ToolId id) =>
        Surroundings.AllTools(reader).Where(tool => tool.Key != id).Select(tool => tool.Value);
}
