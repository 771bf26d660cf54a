using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Instruments;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Demo;

/// <summary>The invented gauges, scales and rig of the demo shop, entered and checked as the lead would.</summary>
internal static class DemoInstruments
{
    private static readonly (string Name, string Serial, InstrumentKind Kind)[] All =
    [
        ("G1", "NB-1101", InstrumentKind.Gauge),
        ("S1", "NB-1202", InstrumentKind.Scales),
        ("R1", "NB-1303", InstrumentKind.AlignmentRig),
    ];

    /// <summary>Enters and checks what of them is not there yet.</summary>
    public static async Task EnterAsync(InstrumentShelf shelf, ToolDesk desk, DemoTablet tablet, ShopClock clock)
    {
        foreach (var (name, serial, kind) in All)
        {
            var there = shelf.All().FirstOrDefault(line => line.Instrument.Name == name);
            var form = new InstrumentForm { Id = there?.Id ?? new ToolId(Guid.NewGuid()), Name = name, Serial = serial, Kind = kind };
            if (there is null)
            {
                DemoTablet.Expect(await shelf.SaveAsync(form), $"enter {name}");
            }

            if (there?.State.LastGood is null)
            {
                var day = clock.Today.AddMonths(-4);
                var asked = InstrumentDialogs.ToCheck(shelf.Find(form.Id)!, new InstrumentCheck(day, day.AddYears(1), $"Demo bench, invented, {serial}", true, true));
                var proof = await tablet.ProveAsync(DemoPeople.Lead, asked.Request.Command, asked.Request.Shown);
                DemoTablet.Expect(await desk.SignAsync(form.Id, proof, asked.Request.Command, asked.Request.Shown, asked.Command, asked.Contents), $"check {name}");
            }
        }
    }
}
