using System.Globalization;
using System.Text.RegularExpressions;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tests.Reference.Statements;
using ShopJobs.Domain.Tools;
using UnitsNet;
using Unit = ShopJobs.Domain.Fasteners.TorqueUnit;

namespace ShopJobs.Domain.Tests.Reference.Checks;

/// <summary>Adapter settings, tolerance bands and rules on tools.</summary>
internal static class WrenchChecks
{
    public static Action<ReferenceRow>? Of(string kind) => kind switch
    {
        "MPD band" => Band,
        "tool rule" => Rule,
        _ when kind.StartsWith("extension adapter", StringComparison.Ordinal) => Adapter,
        _ => null,
    };

    private static void Adapter(ReferenceRow row)
    {
        var torque = EnteredTorque.Parse($"{row.Printed("inputs", "T")} {row.UnitOf("inputs", "T", "")}");
        var sign = row["inputs"].Contains("shortening", StringComparison.Ordinal) ? -1 : 1;
        var adapter = new AdapterSetting(
            RowQuantity.Length(row, "inputs", "L"), RowQuantity.Length(row, "inputs", "E") * sign, Angle.FromDegrees(row.NamedOrNull("inputs", "angle") ?? 0));

        var printed = row.FirstOf("published", "computed");
        var setting = adapter.SettingFor(torque);
        row.Near("S", double.Parse(printed, CultureInfo.InvariantCulture), (double)setting.Value, ReferenceRow.HalfDigit(printed));
        row.Near("T back from S", (double)torque.Value, (double)adapter.AtFastener(setting).Value, 1e-9);
    }

    private static void Band(ReferenceRow row)
    {
        var set = EnteredTorque.Parse($"{row.Printed("inputs", "set")} {row.UnitOf("inputs", "set", "")}");
        var permitted = ToolClasses.Permitted(set, (decimal)row.Named("inputs", "MPD"));
        var printed = row["published"].Split(';');
        row.Near("least", double.Parse(printed[0], CultureInfo.InvariantCulture), (double)permitted.Minimum.Value, 1e-9);
        row.Near("greatest", double.Parse(printed[1], CultureInfo.InvariantCulture), (double)permitted.Maximum.Value, 1e-9);
    }

    /// <summary>A limit of a class of tools is compared with the classes; any other rule with the statements held.</summary>
    private static void Rule(ReferenceRow row)
    {
        if (Regex.Match(row["published"], @"^\+-(?<p>[0-9.]+) %$") is { Success: true } limit)
        {
            ClassLimit(row, double.Parse(limit.Groups["p"].Value, CultureInfo.InvariantCulture));
            return;
        }

        RowWords.MatchesOne(row, row["inputs"], row["published"], [.. PublishedToolRules.All.Select(r => (r.Topic, r.Statement))]);
    }

    /// <summary>"any size" holds below and above 10 N·m; "above", "over" or a greater-than sign above it, anything else up to it.</summary>
    private static void ClassLimit(ReferenceRow row, double printed)
    {
        var words = row["inputs"];
        var toolClass = words.Contains("screwdriver", StringComparison.Ordinal) ? ToolClass.SettingScrewdriver
            : Regex.IsMatch(words, @"\bbar\b|beam") ? ToolClass.IndicatingBar
            : words.Contains("wrench", StringComparison.Ordinal) ? ToolClass.SettingGraduated
            : throw new InvalidDataException($"{row.Id}: no kind of tool in \"{words}\".");
        decimal[] sizes = words.Contains("any size", StringComparison.Ordinal) ? [10, 11]
            : Regex.IsMatch(words, ">(?!=)|above|over") ? [11] : [10];
        foreach (var size in sizes)
        {
            row.Near($"limit at {size} N·m", printed, (double)toolClass.PermittedPercent(new EnteredTorque(size, Unit.NewtonMetre)), 1e-9);
        }
    }
}
