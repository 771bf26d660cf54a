using System.Text.Json.Serialization;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.Devices;

/// <summary>What became of a reading that a tool sent.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<ReadingOutcome>))]
public enum ReadingOutcome
{
    /// <summary>Nothing is recorded: the words say why.</summary>
    [JsonStringEnumMemberName("refused")]
    Refused,

    /// <summary>It is asked or on its way at the tablet. Sent again under its id, it is answered as it stands then.</summary>
    [JsonStringEnumMemberName("waiting")]
    Waiting,

    /// <summary>It stands in the logbook.</summary>
    [JsonStringEnumMemberName("recorded")]
    Recorded,

    /// <summary>It stands in the logbook and holds its fastener.</summary>
    [JsonStringEnumMemberName("held")]
    Held,

    /// <summary>It stood in the logbook before; nothing was recorded now.</summary>
    [JsonStringEnumMemberName("duplicate")]
    Duplicate,
}

/// <summary>The answer to a tool.</summary>
/// <param name="Counts">True where it stands in the logbook and nothing speaks against it.</param>
/// <param name="Words">What to tell a person: why it is refused, asked, or does not count.</param>
public sealed record DeviceAnswer(ReadingOutcome Outcome, bool Counts, IReadOnlyList<string> Words)
{
    /// <summary>Refused, for one reason in words.</summary>
    public static DeviceAnswer No(string words) => new(ReadingOutcome.Refused, false, [words]);

    /// <summary>As it stands in the logbook.</summary>
    /// <param name="before">It stood there before this was sent.</param>
    public static DeviceAnswer Of(TorqueRecorded pull, bool before)
    {
        ArgumentNullException.ThrowIfNull(pull);
        var outcome = PullOutcomes.Of(pull.Problems) == PullOutcome.Held ? ReadingOutcome.Held : ReadingOutcome.Recorded;
        return new DeviceAnswer(
            before ? ReadingOutcome.Duplicate : outcome,
            pull.Problems.Count == 0,
            [.. pull.Problems.Select(problem => $"Recorded, does not count: {HoldWords.Of(problem)}. Next: {HoldWords.Next(problem)}.")]);
    }
}
