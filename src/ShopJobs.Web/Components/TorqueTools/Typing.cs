using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Look;

namespace ShopJobs.Web.Components.TorqueTools;

/// <summary>Reads the figures of a tool as people type them, with comma or point.</summary>
internal static class Typing
{
    /// <summary>The number in the tool's own unit, above zero; null with the problem in words.</summary>
    internal static decimal? Torque(string text, TorqueUnit unit, out string? problem)
    {
        if (!Enum.IsDefined(unit))
        {
            problem = "Pick the unit marked on the tool first.";
            return null;
        }

        if (!EnteredTorque.TryParse(text, unit, out var value, out problem))
        {
            return null;
        }

        problem = value switch
        {
            _ when value.Unit != unit => $"“{value}” is in {value.Unit.Symbol()}, the tool is in {unit.Symbol()}. Write the number in {unit.Symbol()}.",
            { Value: 0 } => "It must be above 0.",
            _ => TypedTorque.TooMuch(value),
        };
        return problem is null ? value.Value : null;
    }

    /// <summary>A tool's length in mm, above 0 and at most <see cref="TorqueTool.LongestMm"/>; null with the problem in words.</summary>
    internal static decimal? Length(string text, out string? problem)
    {
        var length = TypedNumber.Alone(text, "mm");
        problem = length is null ? "Write the length in mm, for example 320."
            : length is <= 0 or > TorqueTool.LongestMm ? FormattableString.Invariant($"Write a length above 0 and not above {TorqueTool.LongestMm} mm, for example 320.")
            : null;
        return problem is null ? length : null;
    }

    /// <summary>Pulls until a tool is calibrated again, from 1 to <see cref="TorqueTool.StandardCycles"/>; null with the problem in words.</summary>
    internal static int? Cycles(string text, out string? problem)
    {
        var cycles = TypedNumber.Alone(text, "");
        problem = cycles is { } number && number == decimal.Truncate(number) && number >= 1 && number <= TorqueTool.StandardCycles
            ? null
            : FormattableString.Invariant($"Write a whole number of pulls from 1 to {TorqueTool.StandardCycles}, for example 2500.");
        return problem is null ? (int)cycles!.Value : null;
    }

    /// <summary>A percent above 0 and at most 20; null with the problem in words.</summary>
    internal static decimal? Percent(string text, out string? problem)
    {
        var percent = TypedNumber.Alone(text, "%");
        problem = percent is null ? "Write a number of percent without a sign, for example 4."
            : percent is <= 0 or > 20 ? "Write a percent above 0 and not above 20, for example 4."
            : null;
        return problem is null ? percent : null;
    }
}
