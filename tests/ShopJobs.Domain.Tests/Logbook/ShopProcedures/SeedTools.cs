using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Logbook.ShopProcedures;

/// <summary>The wrenches that the shop's own procedures are written for. Invented; class of 4 %.</summary>
internal static class SeedTools
{
    /// <summary>Click wrench, 5 to 25 N·m, marked every tenth.</summary>
    public static readonly ToolId W3 = Id(3);

    /// <summary>Click wrench, 20 to 100 N·m, marked every half.</summary>
    public static readonly ToolId W5 = Id(5);

    /// <summary>Click wrench, 40 to 200 N·m.</summary>
    public static readonly ToolId W7 = Id(7);

    /// <summary>Click wrench, 100 to 500 N·m, marked every second newton metre.</summary>
    public static readonly ToolId W9 = Id(9);

    /// <summary>Indicating wrench, 20 to 300 N·m.</summary>
    public static readonly ToolId Dial = Id(8);

    /// <summary>Wrench that measures torque and angle, 20 to 200 N·m.</summary>
    public static readonly ToolId WA = Id(10);

    /// <summary>Dial gauge; scales; alignment rig.</summary>
    public static readonly ToolId Gauge = Id(20), Scales = Id(21), Rig = Id(22);

    private static readonly IReadOnlyList<InstrumentEntered> Instruments =
    [
        new(Gauge, "G1", "T-20", InstrumentKind.Gauge),
        new(Scales, "S1", "T-21", InstrumentKind.Scales),
        new(Rig, "R1", "T-22", InstrumentKind.AlignmentRig),
    ];

    private static readonly IReadOnlyList<ToolEntered> All =
    [
        new(W3, "W3", "T-3", ToolKind.Click, TorqueUnit.NewtonMetre, 5, 25, 0.1m, 4) { LengthMm = 320 },
        new(W5, "W5", "T-5", ToolKind.Click, TorqueUnit.NewtonMetre, 20, 100, 0.5m, 4) { LengthMm = 400 },
        new(W7, "W7", "T-7", ToolKind.Click, TorqueUnit.NewtonMetre, 40, 200, 1, 4) { LengthMm = 460 },
        new(Dial, "W8", "T-8", ToolKind.Indicating, TorqueUnit.NewtonMetre, 20, 300, 0.1m, 4) { LengthMm = 480 },
        new(WA, "WA", "T-10", ToolKind.Angle, TorqueUnit.NewtonMetre, 20, 200, 0.1m, 4) { LengthMm = 500 },
        new(W9, "W9", "T-9", ToolKind.Click, TorqueUnit.NewtonMetre, 100, 500, 2, 4) { LengthMm = 650 },
    ];

    /// <summary>A shelf with these wrenches, all calibrated.</summary>
    public static ToolShelf Shelf(DateTime start)
    {
        var shelf = new ToolShelf(start);
        var day = DateOnly.FromDateTime(start);
        foreach (var tool in All)
        {
            shelf.Tell(tool.Tool, tool, start);
            shelf.Tell(tool.Tool, TestTools.Good(day.AddDays(-100), day.AddDays(265)), start);
        }

        foreach (var instrument in Instruments)
        {
            shelf.Tell(instrument.Tool, instrument, start);
            shelf.Tell(instrument.Tool, new InstrumentChecked(day.AddDays(-100), day.AddDays(265), "Bench 7", true, true), start);
        }

        return shelf;
    }

    private static ToolId Id(int number) => new(new Guid(number, 7, 0, new byte[8]));
}
