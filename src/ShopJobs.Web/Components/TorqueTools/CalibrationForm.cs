using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Look;

namespace ShopJobs.Web.Components.TorqueTools;

/// <summary>A calibration as the lead copies it from the certificate: pairs of readings, never a bare percent.</summary>
public sealed class CalibrationForm
{
    /// <summary>The same on each retry.</summary>
    public CommandId Command { get; set; } = new(Guid.NewGuid());

    public DateOnly? Date { get; set; }

    public DateOnly? Due { get; set; }

    public string Certificate { get; set; } = "";

    public List<PointRow> Points { get; } = [];

    /// <summary>One setting with the rig's readings; either may stay empty.</summary>
    public sealed class PointRow
    {
        public string Set { get; set; } = "";

        public string Found { get; set; } = "";

        public string Left { get; set; } = "";

        internal bool IsBlank => string.IsNullOrWhiteSpace(Found) && string.IsNullOrWhiteSpace(Left);
    }

    /// <summary>
    /// A form with the tool's lowest marked value, 60 % of its top and its top, the usual points of ISO 6789 (as calibration
    /// laboratories describe it), and a due day a year on.
    /// </summary>
    public static CalibrationForm For(TorqueTool tool, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(tool);
        var form = new CalibrationForm { Date = today, Due = today.AddYears(1) };
        var middle = Math.Round(tool.Top * 0.6m / tool.Graduation) * tool.Graduation;
        foreach (var set in new[] { tool.LowestMarked, middle, tool.Top }.Distinct().Order())
        {
            form.Points.Add(new PointRow { Set = TypedNumber.Plain(set) });
        }

        return form;
    }

    /// <summary>The calibration, once the form is valid.</summary>
    public Calibration ToCalibration(TorqueTool tool) => new(
        Date!.Value, Due!.Value, Look.Typed.Clean(Certificate), Pairs(tool, row => row.Found), Pairs(tool, row => row.Left));

    private List<CalibrationPoint> Pairs(TorqueTool tool, Func<PointRow, string> rig) =>
    [
        .. from row in Points
           where !string.IsNullOrWhiteSpace(rig(row))
           select new CalibrationPoint(Typing.Torque(row.Set, tool.Unit, out _)!.Value, Typing.Torque(rig(row), tool.Unit, out _)!.Value),
    ];
}
