using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Web.Components.TorqueTools;

/// <summary>One tool as it stands today.</summary>
/// <param name="Unreadable">Why its logbook may only be read; null when all is well.</param>
public sealed record ToolLine(ToolId Id, TorqueTool Tool, ToolState State, ToolStanding Standing, string? Unreadable)
{
    /// <summary>Pulls made with it since its last good calibration, on every car.</summary>
    public int Pulls { get; init; }
}
