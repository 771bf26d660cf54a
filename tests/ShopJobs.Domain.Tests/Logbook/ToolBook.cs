using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>A click wrench of 40..200 N·m and one car, by the entries of their logbooks.</summary>
internal static class ToolBook
{
    public static readonly ToolId Wrench = new(Guid.Parse("22222222-0000-4000-8000-000000000002"));
    public static readonly PersonId Person = new(Guid.Parse("33333333-0000-4000-8000-000000000003"));
    public static readonly JobId Job = new(Guid.Parse("11111111-0000-4000-8000-000000000001"));
    public static readonly DateTime Noon = new(2026, 3, 2, 12, 0, 0, DateTimeKind.Utc);

    public static readonly SpecificationInForce Spec = new(
        1, 1, 105, 115, 110, 0.5m, null, false, RiskClass.A, IfShort.BackOff, null);

    private static readonly ContentDigest Text = new(new string('a', 64));

    public static ToolState Tool(params (DateTime At, Entry Entry)[] entries)
    {
        var entered = new ToolEntered(Wrench, "W7", "S-71", ToolKind.Click, TorqueUnit.NewtonMetre, 40, 200, 1, 4);
        return entries.Prepend((Noon.AddYears(-2), entered))
            .Select((entry, index) => new Recorded(index + 1, entry.Item1, Person, entry.Item2))
            .Aggregate(ToolState.Empty, (state, recorded) => state.Apply(recorded));
    }

    /// <summary>Entered at noon of its date; each reading is the rig's at a setting of 40, 110 and 200.</summary>
    public static (DateTime At, Entry Entry) Calibrated(DateOnly date, decimal foundFactor, decimal leftFactor) => (
        date.ToDateTime(new TimeOnly(12, 0), DateTimeKind.Utc),
        new Calibrated(date, date.AddYears(1), "Lab 12", Points(foundFactor), Points(leftFactor)));

    public static (DateTime At, Entry Entry) Doubted(DateTime at) => (at, new Doubted(Text));

    public static (DateTime At, Entry Entry) Quarantined(DateTime at) => (at, new Quarantined(Text));

    public static (DateTime At, Entry Entry) Cleared(DateTime at, params long[] doubts) => (at, new Cleared(doubts, Text));

    public static JointPosition Nut(int number) => new("wheel.nut", "front-left", number);

    public static Entry Pull(int nut, DateTime at, ToolId? tool = null) => new TorqueRecorded(
        Job, "G1", Nut(nut), 0, 1, 0, TorqueKind.SettingConfirmed, new EnteredTorque(110, TorqueUnit.NewtonMetre), tool ?? Wrench,
        DateOnly.FromDateTime(at), Spec, [], [], []);

    public static Entry Open(int nut) => new Opened([Nut(nut)], [], [], Job, null);

    public static Entry Void(long target) => new Corrected(target, null, Text);

    public static Entry Start { get; } = new JobStarted(Job, "P5", "1", "d", "r", ["front-left"]);

    /// <summary>A car's entries, one minute apart from its start, and the state they give.</summary>
    public static (CarState State, IReadOnlyList<Recorded> Entries) Car(DateTime start, params Func<DateTime, Entry>[] entries)
    {
        var recorded = entries.Prepend(_ => Start)
            .Select((entry, index) => new Recorded(index + 1, start.AddMinutes(index), Person, entry(start.AddMinutes(index)))).ToList();
        return (recorded.Aggregate(CarState.Empty, (state, entry) => state.Apply(entry)), recorded);
    }

    private static CalibrationPoint[] Points(decimal factor) =>
        factor == 0 ? [] : [new(40, 40 * factor), new(110, 110 * factor), new(200, 200 * factor)];
}
