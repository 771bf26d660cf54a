using System.Globalization;
using System.Text.RegularExpressions;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Reference;

public class ToolRowTests
{
    public static TheoryData<string> Adapters => FastenerRows.Of(FastenerRows.Adapters);

    public static TheoryData<string> Bands => FastenerRows.Of(FastenerRows.ToolBands);

    [Theory]
    [MemberData(nameof(Adapters))]
    public void Adapter_changes_the_setting_as_printed(string id)
    {
        var row = FastenerRows.Row(id);
        var inputs = row["inputs"];
        var torque = Regex.Match(inputs, @"^T=(?<text>\S+ \S+)").Groups["text"].Value;
        var sign = inputs.Contains("shortening", StringComparison.Ordinal) ? -1 : 1;
        var angle = inputs.Contains("angle=", StringComparison.Ordinal) ? row.Named("inputs", "angle") : 0;
        var scale = inputs.Contains(" in", StringComparison.Ordinal) ? 25.4 : 1;
        var adapter = new AdapterSetting(
            Length.FromMillimeters(row.Named("inputs", "L") * scale),
            Length.FromMillimeters(row.Named("inputs", "E") * scale * sign),
            Angle.FromDegrees(angle));

        var printed = row["published"].Length > 0 ? row["published"] : row["computed"];
        var setting = adapter.SettingFor(EnteredTorque.Parse(torque));
        row.Near("S", double.Parse(printed, CultureInfo.InvariantCulture), (double)setting.Value, ReferenceRow.HalfDigit(printed));
        Assert.Equal((double)EnteredTorque.Parse(torque).Value, (double)adapter.AtFastener(setting).Value, 1e-9);
    }

    [Theory]
    [MemberData(nameof(Bands))]
    public void Tolerance_spans_the_printed_band(string id)
    {
        var row = FastenerRows.Row(id);
        var set = (decimal)row.Named("inputs", "set");
        var percent = decimal.Parse(Regex.Match(row["inputs"], @"MPD=\+-(?<p>\d+) %").Groups["p"].Value, CultureInfo.InvariantCulture);
        var tool = new TorqueTool(null, "W0", "", ToolKind.Click, TorqueUnit.NewtonMetre, 1, 200, 1, percent);
        var w = tool.ToleranceFor(new EnteredTorque(set, TorqueUnit.NewtonMetre)) / 100;
        var printed = row["published"].Split(';');

        row.Near("least", double.Parse(printed[0], CultureInfo.InvariantCulture), (double)(set * (1 - w)), 1e-9);
        row.Near("greatest", double.Parse(printed[1], CultureInfo.InvariantCulture), (double)(set * (1 + w)), 1e-9);
    }
}
