using System.Text.Json;
using System.Text.Json.Serialization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Desk;

/// <summary>An entry that was recorded, and why it does not count if it does not.</summary>
public sealed record EntryAnswer(long Number, string Kind, IReadOnlyList<HoldReason> Problems);

/// <summary>One reason why something was refused.</summary>
public sealed record ReasonAnswer(HoldReason Reason, string Words, string Next);

/// <summary>What became of a command. The stored answer of a recorded command is the same on every retry.</summary>
/// <param name="Entries">What was recorded; empty when refused or not saved.</param>
/// <param name="Reasons">Why it was refused; empty when recorded.</param>
public sealed record DeskAnswer(IReadOnlyList<EntryAnswer> Entries, IReadOnlyList<ReasonAnswer> Reasons) : ICommandAnswer
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web) { Converters = { new JsonStringEnumConverter() } };

    /// <summary>This is the answer of an earlier send of the same command; nothing was recorded now.</summary>
    [JsonIgnore]
    public bool Repeated { get; init; }

    /// <summary>
    /// Why it was not recorded, for a reason outside the command, in sentences for under "Not saved"; it may be sent again under its id.
    /// </summary>
    [JsonIgnore]
    public string? NotSaved { get; init; }

    /// <summary>True when it stands in the logbook.</summary>
    [JsonIgnore]
    public bool Recorded => NotSaved is null && Reasons.Count == 0;

    /// <summary>True when it stands in the logbook and there is nothing against it.</summary>
    [JsonIgnore]
    public bool Counts => Recorded && Entries.All(entry => entry.Problems.Count == 0);

    /// <summary>Refused, with the reasons of the domain in words: these are kept with the answer.</summary>
    public static DeskAnswer Refused(IEnumerable<HoldPoint> reasons, HoldNames names) =>
        new([], [.. from point in reasons let said = HoldWords.Say(point, names) select new ReasonAnswer(point.Reason, said.Words, said.Next)]);

    /// <summary>Not saved: why, in sentences.</summary>
    public static DeskAnswer Failed(string why) => new([], []) { NotSaved = why };

    /// <inheritdoc/>
    public ReadOnlyMemory<byte> ToBytes() => JsonSerializer.SerializeToUtf8Bytes(this, Json);

    /// <summary>Reads an answer as it was kept.</summary>
    internal static DeskAnswer Of(ReadOnlyMemory<byte> bytes) =>
        JsonSerializer.Deserialize<DeskAnswer>(bytes.Span, Json) ?? throw new FormatException("A stored answer is empty.");
}
