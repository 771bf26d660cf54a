using System.Globalization;
using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>Reads numbers with their units. A number without its unit is never taken.</summary>
internal static class Amounts
{
    private const decimal MinutesPerHour = 60;
    private const decimal MostMinutes = 8760 * MinutesPerHour;

    /// <summary>A torque above zero, with its unit: <c>73 N·m</c>.</summary>
    public static EnteredTorque? Torque(DocumentNode node, ProblemsFound problems) =>
        MapReader.TextOf(node, problems) is { } text ? Torque(node, text, problems) : null;

    /// <summary>A range <c>60..95 N·m</c>, or the one value the maker states, <c>90 N·m</c>: then exactly that value is accepted.</summary>
    public static TorqueRange? Range(DocumentNode node, ProblemsFound problems)
    {
        if (MapReader.TextOf(node, problems) is not { } text)
        {
            return null;
        }

        var cut = text.IndexOf("..", StringComparison.Ordinal);
        if (cut < 0)
        {
            return Torque(node, text, problems) is { } one ? new TorqueRange(one, one) : null;
        }

        if (Torque(node, text[(cut + 2)..].Trim(), problems) is not { } most)
        {
            return null;
        }

        var below = text[..cut].Trim();
        if ((TorqueText.Read(below, most.Unit, out var least) ?? TorqueRange.ProblemOf(least, most)) is { } wrong)
        {
            problems.Error(node, wrong.What, wrong.Next);
            return null;
        }

        return new TorqueRange(least, most);
    }

    /// <summary>A number with one of the unit's spellings, such as <c>24 h</c>, <c>13.5 mm</c>.</summary>
    public static decimal? With(DocumentNode node, ProblemsFound problems, string unit, decimal least, decimal most)
    {
        if (MapReader.TextOf(node, problems) is not { } text)
        {
            return null;
        }

        var cut = text.LastIndexOf(' ');
        if (cut > 0 && text[(cut + 1)..] == unit && Number(text[..cut]) is { } value && value >= least && value <= most)
        {
            return value;
        }

        problems.Error(
            node,
            FormattableString.Invariant($"{Wording.Quote(text)} is not a number of {unit} from {least} to {most}"),
            FormattableString.Invariant($"write it with its unit, for example {Math.Max(least, 1):0.##} {unit}"));
        return null;
    }

    /// <summary>A time <c>30 min</c> or <c>2 h</c>, from one minute to a year.</summary>
    public static TimeSpan? Time(DocumentNode node, ProblemsFound problems)
    {
        if (MapReader.TextOf(node, problems) is not { } text)
        {
            return null;
        }

        var cut = text.LastIndexOf(' ');
        var minutes = cut > 0 && Number(text[..cut]) is { } value and >= 0 and <= MostMinutes
            ? text[(cut + 1)..] switch
            {
                "min" => value,
                "h" => value * MinutesPerHour,
                _ => (decimal?)null,
            }
            : null;
        if (minutes is >= 1 and <= MostMinutes)
        {
            return TimeSpan.FromMinutes((double)minutes.Value);
        }

        problems.Error(node, $"{Wording.Quote(text)} is not a time from 1 min to 8760 h", "write it with its unit, for example 30 min or 2 h");
        return null;
    }

    /// <summary>A range of angles <c>85..95 deg</c>; one value alone is none, as a reading is hardly ever exact.</summary>
    public static (decimal Least, decimal Most)? Angles(DocumentNode node, ProblemsFound problems, decimal least, decimal most)
    {
        if (MapReader.TextOf(node, problems) is not { } text)
        {
            return null;
        }

        if (text.EndsWith(" deg", StringComparison.Ordinal) && text[..^" deg".Length].Split("..") is [var from, var to]
            && Number(from) is { } low && Number(to) is { } high && low >= least && high <= most && low <= high)
        {
            return (low, high);
        }

        problems.Error(
            node,
            FormattableString.Invariant($"{Wording.Quote(text)} is not a range of deg from {least} to {most}, the smaller first"),
            "write it with its unit, for example 85..95 deg");
        return null;
    }

    /// <summary>A plain number, comma or point as decimal mark; null for anything else.</summary>
    public static decimal? Number(string text) =>
        text.Length <= 15 && decimal.TryParse(
            text.Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value)
            ? value
            : null;

    private static EnteredTorque? Torque(DocumentNode node, string text, ProblemsFound problems)
    {
        if (TorqueText.Read(text, TorqueUnit.NewtonMetre, out var torque) is { } wrong)
        {
            problems.Error(node, wrong.What, wrong.Next);
            return null;
        }

        if (char.IsAsciiDigit(text[^1]))
        {
            problems.Error(node, $"{Wording.Quote(text)} has no unit", $"write it as the instruction does, for example {text} N·m");
            return null;
        }

        if (torque.Value == 0)
        {
            problems.Error(node, $"{Wording.Quote(text)} is no torque", "write a value above 0");
            return null;
        }

        return torque;
    }
}
