using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.TorqueTools;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Demo;

/// <summary>The invented torque tools of the demo shop, entered and calibrated as the lead would.</summary>
internal static class DemoTools
{
    private static readonly DemoTool[] All =
    [
        new("W3", "NB-0311", ToolKind.Click, "5", "25", "0.1", "320", MonthsAgo: [2], ["5", "15", "25"], ["5.1", "15.1", "25.3"]),
        new("W5", "NB-0542", ToolKind.Click, "20", "100", "0.5", "400", MonthsAgo: [24, 12], ["20", "60", "100"], ["20.2", "60.6", "100.5"]),
        new("W7", "NB-0727", ToolKind.Click, "40", "200", "1", "460", MonthsAgo: [14, 3], ["40", "110", "200"], ["40.4", "110.9", "201.5"]),
        new("W8", "NB-0809", ToolKind.Indicating, "20", "200", "0.1", "480", MonthsAgo: [5], ["20", "120", "200"], ["20.1", "120.6", "199.2"]),
        new("WA", "NB-1020", ToolKind.Angle, "20", "200", "0.1", "500", MonthsAgo: [4], ["20", "100", "200"], ["20.1", "100.4", "199.5"]),
        new("W9", "NB-0930", ToolKind.Click, "100", "500", "2", "650", MonthsAgo: [13], ["100", "300", "500"], ["101", "302", "497"]),
    ];

    /// <summary>Enters what of them is not there yet; W9 is past its calibration, W5 is due soon. Gives their ids by name.</summary>
    public static async Task<IReadOnlyDictionary<string, ToolId>> EnterAsync(ToolShelf shelf, ToolDesk desk, DemoTablet tablet, ShopClock clock)
    {
        var ids = new Dictionary<string, ToolId>();
        var known = shelf.All().ToDictionary(line => line.Tool.Name);
        foreach (var tool in All)
        {
            known.TryGetValue(tool.Name, out var there);
            var form = new ToolForm
            {
                Id = there?.Id ?? new ToolId(Guid.NewGuid()),
                Name = tool.Name,
                Serial = tool.Serial,
                Kind = tool.Kind,
                LowestMarked = tool.Lowest,
                Top = tool.Top,
                Graduation = tool.Graduation,
                Length = tool.Length,
            };
            if (there is null)
            {
                DemoTablet.Expect(await shelf.SaveAsync(form), $"enter {tool.Name}");
            }

            foreach (var months in tool.MonthsAgo.Skip(there?.State.Calibrations.Count ?? 0))
            {
                var line = shelf.Find(form.Id)!;
                var calibration = CalibrationOf(tool, line.Tool, clock.Today.AddMonths(-months).AddDays(12));
                var asked = ToolDialogs.ToCalibrate(
                    line, calibration, CalibrationPreview.Of(line.State, calibration, clock.Now), new CommandId(Guid.NewGuid()));
                var (id, shown) = (asked.Request.Command, asked.Request.Shown);
                var proof = await tablet.ProveAsync(DemoPeople.Lead, id, shown);
                DemoTablet.Expect(await desk.SignAsync(form.Id, proof, id, shown, asked.Command, asked.Contents), $"calibrate {tool.Name}");
            }

            ids.Add(tool.Name, form.Id);
        }

        return ids;
    }

    private static Calibration CalibrationOf(DemoTool demo, TorqueTool tool, DateOnly day)
    {
        var form = new CalibrationForm { Date = day, Due = day.AddYears(1), Certificate = $"Demo bench, invented, {demo.Serial}-{day:yyMM}" };
        foreach (var (set, left) in demo.Sets.Zip(demo.Left))
        {
            form.Points.Add(new CalibrationForm.PointRow { Set = set, Found = left, Left = left });
        }

        return form.ToCalibration(tool);
    }

    private sealed record DemoTool(
        string Name, string Serial, ToolKind Kind, string Lowest, string Top, string Graduation, string Length, int[] MonthsAgo, string[] Sets, string[] Left);
}
