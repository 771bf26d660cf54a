using System.Globalization;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Look;

namespace ShopJobs.Web.Components.TorqueTools;

/// <summary>How the shop speaks of a tool.</summary>
public static class ToolWords
{
    public static string Words(this ToolKind kind) => kind switch
    {
        ToolKind.Click => "click",
        ToolKind.Indicating => "indicating",
        ToolKind.Angle => "torque and angle",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of tool."),
    };

    /// <summary>Lowest marked value to top with the unit, for example "40 to 200 N·m".</summary>
    public static string Range(this TorqueTool tool)
    {
        ArgumentNullException.ThrowIfNull(tool);
        return $"{TypedNumber.Plain(tool.LowestMarked)} to {TypedNumber.Plain(tool.Top)} {tool.Unit.Symbol()}";
    }

    /// <summary>The limit it is judged by, in words.</summary>
    public static string Limit(this TorqueTool tool)
    {
        ArgumentNullException.ThrowIfNull(tool);
        return tool.ClassDeviationPercent is { } percent
            ? string.Create(CultureInfo.InvariantCulture, $"±{percent:0.##} %, stated by its maker")
            : "±6 % up to 10 N·m, ±4 % above (ISO 6789, from memory)";
    }

    /// <summary>Its own length, by which an adapter on it is reckoned.</summary>
    public static string Length(this TorqueTool tool)
    {
        ArgumentNullException.ThrowIfNull(tool);
        return tool.LengthMm is { } length ? $"{TypedNumber.Plain(length)} mm from hand to square" : "not entered: no crowfoot or extension on it";
    }

    /// <summary>Pulls since its calibration beside how many it may make, for example "412 of 5000".</summary>
    public static string Pulls(this TorqueTool tool, int pulls)
    {
        ArgumentNullException.ThrowIfNull(tool);
        return string.Create(CultureInfo.InvariantCulture, $"{pulls} of {tool.CycleLimit}");
    }
}
