using System.Collections.Concurrent;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Tests.Logbook.Properties;

/// <summary>Counts what the generated histories reached.</summary>
internal sealed class Tally
{
    private readonly ConcurrentDictionary<string, int> entries = [];
    private readonly ConcurrentDictionary<HoldReason, int> reasons = [];
    private int commands;
    private int unfit;

    public int Commands => commands;

    /// <summary>Part of the commands that were refused, or recorded and do not count.</summary>
    public double Unfit => (double)unfit / commands;

    public int Of(string kind) => entries.GetValueOrDefault(kind);

    public int Of(HoldReason reason) => reasons.GetValueOrDefault(reason);

    /// <summary>Reasons of commands on a tool, and of somebody who has left: no command on a car is refused for them.</summary>
    private static readonly HoldReason[] Elsewhere =
    [
        HoldReason.NoPersonHere, HoldReason.LeadKeepsTools, HoldReason.NeedsReadings, HoldReason.UsedTheTool, HoldReason.NothingToClear,
        HoldReason.ToolNotEntered, HoldReason.ToolUnitFixed, HoldReason.CalibrationAhead, HoldReason.CalibrationOlder,
        HoldReason.CalibrationTooOld, HoldReason.CalibrationTooLong, HoldReason.NothingToWithdraw, HoldReason.ToolRetired, HoldReason.NotRetired,
        HoldReason.NameTaken, HoldReason.SerialTaken, HoldReason.ProcedureRetired,
    ];

    /// <summary>
    /// Holds on steps, results and lots: no history makes one. The product goes along every transition of their own specification, and parts
    /// from it where one of their rules is left out: see <c>Specification/Product/HeldWorkConformanceTests</c>.
    /// </summary>
    internal static readonly HoldReason[] OfHeldWork =
    [
        HoldReason.StepHeld, HoldReason.ResultHeld, HoldReason.LotHeld, HoldReason.LotNotReworked, HoldReason.UnknownResult, HoldReason.UnknownHold,
        HoldReason.LotMissing,
    ];

    /// <summary>Reasons about the joints a car has: they have their own specification too, see <c>CountedWheel</c> and <c>JointListTests</c>.</summary>
    internal static readonly HoldReason[] OfJointLists =
    [
        HoldReason.DoesNotFit, HoldReason.NotForThisCar, HoldReason.FewerInAJob, HoldReason.NoMoreThanNow, HoldReason.CountOutside,
        HoldReason.NothingAskedOfJoints, HoldReason.UnknownCarKind,
    ];

    /// <summary>Reasons about a newer revision of a procedure: see <c>RevisedWheel</c>.</summary>
    internal static readonly HoldReason[] OfRevisions = [HoldReason.OlderRevision, HoldReason.OtherProcedure, HoldReason.SameRevision, HoldReason.WorkIsGone];

    /// <summary>Reasons about handing over work, which no rule of the gate asks for: see <c>HandoverTests</c>.</summary>
    internal static readonly HoldReason[] OfHandover = [HoldReason.NothingHalfDone, HoldReason.WentOn];

    /// <summary>Reasons about what is entered from paper, which no history does: see <c>PaperScenarios</c> and <c>PaperCard</c>.</summary>
    internal static readonly HoldReason[] OfPaper = [HoldReason.DeclaredFromPaper, HoldReason.RecordedAlready, HoldReason.PaperTimeAhead, HoldReason.PaperTimeBefore];

    /// <summary>Reasons about how a car was found when it came in, which no history is asked: see <c>AsFoundScenarios</c> and <c>FoundCar</c>.</summary>
    internal static readonly HoldReason[] OfAsFound =
    [
        HoldReason.AsFoundMissing, HoldReason.AsFoundEmpty, HoldReason.SeenAndUnknown, HoldReason.NotOnSheet, HoldReason.FuelOutside, HoldReason.UnknownSystem,
    ];

    // No rule asks whether an owner was told, or for a photograph. What takes a tool away for good, and what withdraws its calibration: see ToolWithdrawnTests.
    private static readonly string[] KindsElsewhere = ["work-held", "work-decided", "owner-told", "calibration-withdrawn", "tool-retired", "tool-brought-back", "joint-list-changed", "fewer-joints-asked", "joint-list-kept", "revision-adopted", "left-half-done", "taken-over", "photo-taken", "declared-from-paper", "as-found-recorded"];

    /// <summary>Entry kinds and reasons that no history reached.</summary>
    public IReadOnlyList<string> Never =>
    [
        .. EntryCodec.Kinds.Except(KindsElsewhere).Where(kind => Of(kind) == 0),
        .. Enum.GetValues<HoldReason>().Except(Elsewhere).Except(OfHeldWork).Except(OfJointLists).Except(OfRevisions).Except(OfHandover).Except(OfPaper).Except(OfAsFound).Where(reason => Of(reason) == 0).Select(reason => reason.ToString()),
    ];

    public void Count(Verdict verdict)
    {
        Interlocked.Increment(ref commands);
        if (verdict is Verdict.Refused refused)
        {
            Interlocked.Increment(ref unfit);
            Add(refused.Reasons.SelectMany(WithBehind));
            return;
        }

        var found = ((Verdict.Accepted)verdict).Entries;
        var problems = found.SelectMany(entry => entry switch
        {
            FittedNew fact => fact.Problems ?? [],
            ResultRecorded fact => fact.Problems ?? [],
            HandTightened fact => fact.Problems,
            TorqueRecorded fact => fact.Problems,
            Settled fact => fact.Problems,
            Witnessed { Accepted: false } => [HoldReason.WitnessRejected],
            _ => [],
        }).ToList();
        if (problems.Count > 0)
        {
            Interlocked.Increment(ref unfit);
        }

        Add(problems);
        foreach (var entry in found)
        {
            Count(entry);
        }
    }

    public void Count(Entry entry) => entries.AddOrUpdate(EntryCodec.Encode(entry).Kind, 1, (_, count) => count + 1);

    public override string ToString() => string.Join(
        Environment.NewLine,
        EntryCodec.Kinds.Select(kind => $"{Of(kind),8} {kind}")
            .Concat(Enum.GetValues<HoldReason>().Select(reason => $"{Of(reason),8} {reason}"))
            .Append($"{Commands} commands, {Unfit:P0} of them refused or not counting"));

    private static IEnumerable<HoldReason> WithBehind(HoldPoint point) =>
        point.Because is { } behind ? WithBehind(behind).Prepend(point.Reason) : [point.Reason];

    private void Add(IEnumerable<HoldReason> found)
    {
        foreach (var reason in found.Distinct())
        {
            reasons.AddOrUpdate(reason, 1, (_, count) => count + 1);
        }
    }
}
