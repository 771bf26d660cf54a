using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace ShopJobs.Domain.Logbook;

/// <summary>Turns entries into the kind, version and JSON of an envelope, and back. Versions are only added.</summary>
public static class EntryCodec
{
    private static readonly Dictionary<Type, (string Kind, JsonTypeInfo Type)> ByType = [];
    private static readonly Dictionary<string, KnownKind> ByKind = [];

    static EntryCodec()
    {
        var json = EntryJson.Context;
        Add("job-started", json.JobStarted, JobIn.Job);
        Add("job-ended", json.JobEnded, JobIn.Job);
        Add("job-on-hold", json.JobPutOnHold, JobIn.Job);
        Add("job-resumed", json.JobResumed, JobIn.Job);
        Add("job-cancelled", json.JobCancelled, JobIn.Job);
        Add("job-taken-back", json.JobTakenBack, JobIn.Job, PositionIn.LeftOpenIfAny);
        Add("revision-adopted", json.RevisionAdopted, JobIn.Job);
        Add("condition-declared", json.CarConditionDeclared);
        Add("step-finished", json.StepFinished, JobIn.Job);
        Add("step-confirmed", json.StepConfirmed, JobIn.Job);
        Add("result-recorded", json.ResultRecorded, JobIn.JobIfAny, tool: ToolIn.ToolIfAny);
        Add("opened", json.Opened, JobIn.JobIfAny, PositionIn.Positions);
        Add("fitted-new", json.FittedNew, JobIn.Job, PositionIn.Positions);
        Add("thread-treated", json.ThreadTreated, JobIn.JobIfAny, PositionIn.Positions);
        Add("hand-tight", json.HandTightened, JobIn.Job, PositionIn.Positions);
        Add("declared-from-paper", json.DeclaredFromPaper, JobIn.Job, PositionIn.Positions);
        Add("torque-recorded", json.TorqueRecorded, JobIn.Job, PositionIn.Position, tool: ToolIn.Tool, PullReader.Read);
        Add("settled", json.Settled, JobIn.Job, PositionIn.Positions, tool: ToolIn.Tool);
        Add("witnessed", json.Witnessed, JobIn.Job, PositionIn.Joint);
        Add("countersigned", json.Countersigned);
        Add("held", json.PositionHeld, position: PositionIn.Positions);
        Add("decided", json.Decided, position: PositionIn.Position);
        Add("work-held", json.WorkHeld, JobIn.JobIfAny);
        Add("work-decided", json.WorkDecided);
        Add("corrected", json.Corrected);
        Add("correction-confirmed", json.CorrectionConfirmed);
        Add("released", json.Released);
        Add("release-upheld", json.ReleaseUpheld);
        Add("release-withdrawn", json.ReleaseWithdrawn);
        Add("road-test-ended", json.RoadTestEnded);
        Add("summary-issued", json.SummaryIssued);
        Add("tool-entered", json.ToolEntered, tool: ToolIn.Tool);
        Add("arrived", json.Arrived);
        Add("as-found-recorded", json.AsFoundRecorded);
        Add("left", json.Left);
        Add("moved", json.CarMoved);
        Add("looked-over", json.LookedOver);
        Add("re-torque-extended", json.ReTorqueExtended, position: PositionIn.Positions);
        Add("photo-taken", json.PhotoTaken);
        Add("left-half-done", json.LeftHalfDone, JobIn.Job, PositionIn.Joint);
        Add("taken-over", json.WorkTakenOver, JobIn.Job, PositionIn.Joint);
        Add("joint-list-changed", json.JointListChanged);
        Add("fewer-joints-asked", json.FewerJointsAsked);
        Add("joint-list-kept", json.JointListKept);
        Add("calibrated", json.Calibrated);
        Add("quarantined", json.Quarantined);
        Add("doubted", json.Doubted);
        Add("owner-told", json.OwnerTold);
        Add("cleared", json.Cleared);
        Add("calibration-withdrawn", json.CalibrationWithdrawn);
        Add("tool-retired", json.ToolRetired);
        Add("tool-brought-back", json.ToolBroughtBack);
        Add("instrument-entered", json.InstrumentEntered, tool: ToolIn.Tool);
        Add("instrument-checked", json.InstrumentChecked);
        Add("clock-stepped", json.ClockStepped);
        Add("clock-set", json.ClockSet);
    }

    /// <summary>Every kind this program writes.</summary>
    public static IReadOnlyCollection<string> Kinds => ByKind.Keys;

    /// <summary>Kind, version and payload of an entry.</summary>
    public static (string Kind, int Version, byte[] Payload) Encode(Entry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        var (kind, type) = ByType[entry.GetType()];
        return (kind, 1, JsonSerializer.SerializeToUtf8Bytes(entry, type));
    }

    /// <summary>The entry. Throws <see cref="UnknownEntryException"/> for a kind or version it does not know.</summary>
    public static Entry Decode(string kind, int version, ReadOnlySpan<byte> payload)
    {
        var known = Known(kind, version);
        if (known.AsWritten?.Invoke(payload) is { } entry)
        {
            return entry;
        }

        try
        {
            return (Entry?)JsonSerializer.Deserialize(payload, known.Type) ?? throw new FormatException($"An entry of kind “{kind}” is empty.");
        }
        catch (JsonException e)
        {
            throw new FormatException($"An entry of kind “{kind}” can't be read: {e.Message}", e);
        }
    }

    /// <summary>As <see cref="EntryKeysOf"/>. The entry is not built: what is no key is not looked at.</summary>
    public static EntryKeys KeysOf(string kind, int version, ReadOnlyMemory<byte> payload) => Known(kind, version).Keys.Read(payload.Span);

    private static KnownKind Known(string kind, int version) =>
        version == 1 && ByKind.TryGetValue(kind, out var known) ? known : throw new UnknownEntryException(kind, version);

    private static void Add<T>(
        string kind,
        JsonTypeInfo<T> type,
        JobIn job = JobIn.Nowhere,
        PositionIn position = PositionIn.Nowhere,
        ToolIn tool = ToolIn.Nowhere,
        Func<ReadOnlySpan<byte>, Entry?>? asWritten = null)
        where T : Entry
    {
        ByType.Add(typeof(T), (kind, type));
        ByKind.Add(kind, new KnownKind(type, new EntryKeyReader(kind, type, job, position, tool), asWritten));
    }

    /// <param name="AsWritten">A faster reading of payloads in the very form they are written in; gives null for any other.</param>
    private sealed record KnownKind(JsonTypeInfo Type, EntryKeyReader Keys, Func<ReadOnlySpan<byte>, Entry?>? AsWritten);
}
