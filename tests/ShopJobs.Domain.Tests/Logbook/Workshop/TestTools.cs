using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Logbook.Workshop;

/// <summary>The torque tools of the test shop. Invented.</summary>
internal static class TestTools
{
    /// <summary>Click wrench, 40 to 200 N·m, marked every newton metre, 300 mm long.</summary>
    public static readonly ToolId Click = Id(1);

    /// <summary>Indicating wrench, 5 to 150 N·m, 360 mm long.</summary>
    public static readonly ToolId Dial = Id(2);

    /// <summary>Click wrench whose calibration ran out yesterday.</summary>
    public static readonly ToolId Overdue = Id(3);

    /// <summary>Small click wrench, 5 to 25 N·m. Nobody entered its length, as of the one above.</summary>
    public static readonly ToolId Small = Id(4);

    /// <summary>Wrench that measures angle as well as torque, 5 to 200 N·m.</summary>
    public static readonly ToolId Angle = Id(5);

    /// <summary>Scales under the wheels.</summary>
    public static readonly ToolId Scales = Id(6);

    /// <summary>A tool nobody entered at first.</summary>
    public static readonly ToolId Strange = Id(9);

    /// <summary>What the lead enters of it: a click wrench like the first, not calibrated yet.</summary>
    public static readonly ToolEntered StrangeEntered = Entered(Strange, "W9", ToolKind.Click, 40, 200);

    /// <summary>The tools' logbooks as they stand on a day.</summary>
    public static Dictionary<ToolId, List<Recorded>> Logbooks(DateTime at, DateOnly today) => new()
    {
        [Click] = Book(at, Entered(Click, "W7", ToolKind.Click, 40, 200, 300), Good(today.AddDays(-100), today.AddDays(265))),
        [Dial] = Book(at, Entered(Dial, "D1", ToolKind.Indicating, 5, 150, 360), Good(today.AddDays(-100), today.AddDays(265))),
        [Overdue] = Book(at, Entered(Overdue, "W5", ToolKind.Click, 20, 200), Good(today.AddDays(-366), today.AddDays(-1))),
        [Angle] = Book(at, Entered(Angle, "WA", ToolKind.Angle, 5, 200, 300), Good(today.AddDays(-100), today.AddDays(265))),
        [Scales] = Book(at, new InstrumentEntered(Scales, "S1", "NB-S1", InstrumentKind.Scales), Checked(today.AddDays(-100), today.AddDays(265), true, true)),
        [Small] = Book(at, Entered(Small, "W3", ToolKind.Click, 5, 25), Good(today.AddDays(-100), today.AddDays(265))),
    };

    public static Calibrated Good(DateOnly date, DateOnly due) => new(date, due, "Rig sheet", [new(100, 100)], [new(100, 100)]);

    public static InstrumentChecked Checked(DateOnly date, DateOnly due, bool? found, bool left) => new(date, due, "Check weights", found, left);

    private static ToolId Id(int number) => new(new Guid(number, 1, 0, new byte[8]));

    private static ToolEntered Entered(ToolId id, string name, ToolKind kind, decimal lowest, decimal top, decimal? length = null) =>
        new(id, name, $"NB-{name}", kind, TorqueUnit.NewtonMetre, lowest, top, 1, 4) { LengthMm = length };

    private static List<Recorded> Book(DateTime at, params Entry[] entries) =>
        [.. entries.Select((entry, index) => new Recorded(index + 1, at, TestPerson.Lee.Id, entry))];
}
