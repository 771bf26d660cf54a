using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>Turns entries into the kind, version and JSON of an envelope, and back. Versions are only added.</summary>
public static class EntryCodec
{
    private static readonly Dictionary<Type, (string Kind, JsonTypeInfo Type)> ByType = [];
    private static readonly Dictionary<string, JsonTypeInfo> ByKind = [];

    static EntryCodec()
    {
        var json = EntryJson.Context;
        Add("job-started", json.JobStarted);
        Add("condition-declared", json.CarConditionDeclared);
        Add("step-confirmed", json.StepConfirmed);
        Add("result-recorded", json.ResultRecorded);
        Add("opened", json.Opened);
        Add("fitted-new", json.FittedNew);
        Add("hand-tight", json.HandTightened);
        Add("torque-recorded", json.TorqueRecorded);
        Add("settled", json.Settled);
        Add("witnessed", json.Witnessed);
        Add("held", json.PositionHeld);
        Add("decided", json.Decided);
        Add("corrected", json.Corrected);
        Add("correction-confirmed", json.CorrectionConfirmed);
        Add("released", json.Released);
        Add("summary-issued", json.SummaryIssued);
        Add("tool-entered", json.ToolEntered);
        Add("calibrated", json.Calibrated);
        Add("quarantined", json.Quarantined);
        Add("doubted", json.Doubted);
        Add("cleared", json.Cleared);
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
        if (version != 1 || !ByKind.TryGetValue(kind, out var type))
        {
            throw new UnknownEntryException(kind, version);
        }

        try
        {
            return (Entry?)JsonSerializer.Deserialize(payload, type) ?? throw new FormatException($"An entry of kind “{kind}” is empty.");
        }
        catch (JsonException e)
        {
            throw new FormatException($"An entry of kind “{kind}” can't be read: {e.Message}", e);
        }
    }

    /// <summary>As <see cref="EntryKeysOf"/>.</summary>
    public static EntryKeys KeysOf(string kind, int version, ReadOnlyMemory<byte> payload) => KeysOf(Decode(kind, version, payload.Span));

    /// <summary>The keys that are copied beside the entry.</summary>
    public static EntryKeys KeysOf(Entry entry)
    {
        JointPosition? position = entry switch
        {
            Opened fact => fact.Positions[0],
            FittedNew fact => fact.Positions[0],
            HandTightened fact => fact.Positions[0],
            TorqueRecorded fact => fact.Position,
            Settled fact => fact.Positions[0],
            Witnessed fact => fact.Joint.At(1),
            PositionHeld fact => fact.Positions[0],
            Decided fact => fact.Position,
            _ => null,
        };
        JobId? job = entry switch
        {
            JobStarted fact => fact.Job,
            StepConfirmed fact => fact.Job,
            ResultRecorded fact => fact.Job,
            Opened fact => fact.Job,
            FittedNew fact => fact.Job,
            HandTightened fact => fact.Job,
            TorqueRecorded fact => fact.Job,
            Settled fact => fact.Job,
            Witnessed fact => fact.Job,
            _ => null,
        };
        ToolId? tool = entry switch
        {
            TorqueRecorded fact => fact.Tool,
            Settled fact => fact.Tool,
            ToolEntered fact => fact.Tool,
            _ => null,
        };
        return new EntryKeys(job, position?.Key, position?.Place, position?.Number, tool);
    }

    private static void Add<T>(string kind, JsonTypeInfo<T> type)
        where T : Entry
    {
        ByType.Add(typeof(T), (kind, type));
        ByKind.Add(kind, type);
    }
}
