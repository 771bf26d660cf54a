using System.Globalization;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

// The sentences of a tool's logbook.
internal static class ToolEntryWords
{
    public static string Of(Entry entry, EntryNames names) => entry switch
    {
        ToolEntered fact => FormattableString.Invariant(
            $"Entered {fact.Name}, {KindOf(fact.Kind)}, serial {fact.Serial}, {fact.LowestMarked} to {fact.Top} {fact.Unit.Symbol()}, graduation {fact.Graduation}{Class(fact)}{Length(fact)}."),
        Calibrated fact => FormattableString.Invariant(
            $"Calibrated on {WallTime.Day(fact.Date)}, good to {WallTime.Day(fact.Due)}, certificate {fact.Certificate}; {Points("as found", fact.AsFound)}; {Points("as left", fact.AsLeft)}."),
        InstrumentEntered fact => $"Entered {fact.Name}, {KindOf(fact.Kind)}{(fact.Serial.Length > 0 ? $", serial {fact.Serial}" : "")}.",
        InstrumentChecked fact => FormattableString.Invariant(
            $"Checked on {WallTime.Day(fact.Date)}, good to {WallTime.Day(fact.Due)}, certificate {fact.Certificate}; as found {Good(fact.FoundGood)}; as left {Good(fact.LeftGood)}."),
        Quarantined => "Taken out of use.",
        OwnerTold => "Told the owner of a car that it tightened.",
        Doubted => "Put in doubt: everything tightened since the last good calibration.",
        CalibrationWithdrawn fact => FormattableString.Invariant(
            $"Withdrawn: the calibration of entry {fact.Calibration} was entered by mistake. Out of use until the next one; work that relied on it is in doubt."),
        ToolRetired => "Out of use for good.",
        ToolBroughtBack => "Brought back; out of use until it is calibrated, checked or cleared.",
        Cleared { Doubts.Count: 0 } => "Cleared: found good and back in use.",
        Cleared fact => $"Cleared: found good; the doubts of {EntryNames.Numbers(fact.Doubts)} are lifted and it is back in use.",
        _ => throw new ArgumentOutOfRangeException(nameof(entry), entry?.GetType().Name, $"No sentence for this entry; {names.GetType().Name} can't help."),
    };

    internal static string KindOf(ToolKind kind) => kind switch
    {
        ToolKind.Click => "click",
        ToolKind.Indicating => "indicating",
        ToolKind.Angle => "torque and angle",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of tool."),
    };

    internal static string KindOf(InstrumentKind kind) => kind switch
    {
        InstrumentKind.Gauge => "gauge",
        InstrumentKind.Scales => "scales",
        InstrumentKind.AlignmentRig => "alignment rig",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of instrument."),
    };

    private static string Good(bool? good) => good switch
    {
        true => "within its limits",
        false => "outside its limits",
        null => "not read",
    };

    private static string Class(ToolEntered fact) =>
        fact.ClassDeviationPercent is { } percent ? FormattableString.Invariant($", within {percent} %") : "";

    private static string Length(ToolEntered fact) =>
        fact.LengthMm is { } length ? FormattableString.Invariant($", {length} mm from hand to square") : "";

    private static string Points(string what, IReadOnlyList<CalibrationPoint> points) => points.Count == 0
        ? $"no readings {what}"
        : $"{what} {string.Join(", ", points.Select(point => string.Create(CultureInfo.InvariantCulture, $"{point.SetOrShown} read {point.RigRead}")))}";
}
