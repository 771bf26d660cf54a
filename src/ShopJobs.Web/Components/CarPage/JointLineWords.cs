using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>What an entry says of a joint, in words: kinds of record are never mixed, values stand as they were entered.</summary>
public static class JointLineWords
{
    public static string Of(JointLine line, CarReading reading, IReadOnlyDictionary<ContentDigest, string> texts)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(texts);
        return line.Recorded.Entry switch
        {
            Opened fact => $"OPEN{Said(fact.Reason)}{AlsoRedo(fact)}",
            FittedNew fact => $"FITTED NEW {fact.Hardware}{(fact.Lot is null ? "" : $", lot {fact.Lot}")}",
            HandTightened fact => $"HAND-TIGHT{Problems(fact.Problems)}",
            TorqueRecorded fact => Number($"stage {fact.Stage}/{fact.Spec.Stages}: ") + $"{Of(fact.Kind)} {fact.Value}, {ToolName(reading, fact.Tool)}{Problems(fact.Problems)}",
            Settled fact => $"re-torque after the drive: {(fact.Moved ? $"moved{Angle(fact.AngleDegrees)}" : "not moved")}, {Of(fact.Kind)} {fact.Value}, {ToolName(reading, fact.Tool)}{Problems(fact.Problems)}",
            Witnessed fact => Number($"WITNESS stage {fact.Stage}: ") + $"{Of(fact.Method)}, {(fact.Accepted ? "accepted" : "not accepted")}{Said(fact.Finding)}",
            PositionHeld fact => $"HOLD{Said(fact.Reason)}",
            Decided fact => $"decided: {Of(fact.Disposition)}{Said(fact.Reason)}{(fact.Acceptance is null ? "" : $"; written acceptance{Said(fact.Acceptance)}")}",
            Corrected fact => Number($"entry {fact.Target} corrected: ") + $"{(fact.Restated is { } value ? $"should read {value}" : "void")}{Said(fact.Reason)}",
            CorrectionConfirmed fact => Number($"correction {fact.Correction} confirmed") + Said(fact.Reason),
            var other => other.GetType().Name,
        };

        string Said(ContentDigest? digest) => digest is { } key && texts.GetValueOrDefault(key) is { Length: > 0 } text ? $": {text}" : "";
    }

    /// <summary>The texts an entry names.</summary>
    public static IEnumerable<ContentDigest> TextsOf(Entry entry) => new[]
    {
        (entry as Opened)?.Reason, (entry as Witnessed)?.Finding, (entry as PositionHeld)?.Reason, (entry as Decided)?.Reason,
        (entry as Decided)?.Acceptance, (entry as Corrected)?.Reason, (entry as CorrectionConfirmed)?.Reason,
    }.OfType<ContentDigest>();

    /// <summary>The kind of a torque record. A confirmed setting is never called measured.</summary>
    public static string Of(TorqueKind kind) => kind switch
    {
        TorqueKind.SettingConfirmed => "setting confirmed",
        TorqueKind.Reading => "reading",
        TorqueKind.RunDown => "run-down",
        TorqueKind.BreakAway => "break-away",
        _ => "residual",
    };

    public static string Of(Disposition disposition) => disposition switch
    {
        Disposition.UseAsIs => "use as is",
        Disposition.Rework => "rework",
        _ => "replace",
    };

    public static string ToolName(CarReading reading, ToolId tool)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return reading.Tools.GetValueOrDefault(tool)?.Tool?.Name is { } name ? $"tool {name}" : "unknown tool";
    }

    private static string Of(WitnessMethod method) => method == WitnessMethod.LookedAtMark ? "looked at the mark" : "first movement";

    private static string Problems(IReadOnlyList<HoldReason> problems) =>
        problems.Count == 0 ? "" : $"; does not count: {string.Join(", ", problems.Select(Words.Of))}";

    private static string AlsoRedo(Opened fact) =>
        fact.Undid.Count == 0 ? "" : $"; also redo {string.Join(", ", fact.Undid.Select(undone => undone.Name))}";

    private static string Angle(decimal? degrees) => degrees is { } turned ? Number($" by {turned}°") : "";

    private static string Number(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
