using System.Text.Json.Serialization;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Photos;

/// <summary>What became of a photograph, for the page's script and for the page itself.</summary>
/// <param name="Saved">It is in the logbook.</param>
/// <param name="Number">Its entry; 0 where it was not saved.</param>
/// <param name="Words">Why it was not saved, and what to do next.</param>
/// <param name="TryAgain">The same picture may be sent again.</param>
public sealed record PhotoAnswer(bool Saved, long Number, IReadOnlyList<string> Words, bool TryAgain)
{
    /// <summary>It was saved before; nothing was recorded now.</summary>
    public bool Repeated { get; private init; }

    /// <summary>The status of the answer.</summary>
    [JsonIgnore]
    public int Status { get; private init; } = StatusCodes.Status200OK;

    /// <summary>Why it was not saved; null where it was.</summary>
    [JsonIgnore]
    public PhotoRefusal? Refusal { get; private init; }

    internal static PhotoAnswer No(PhotoRefusal refusal) => new(false, 0, [refusal.Words()], refusal.MayTryAgain()) { Status = refusal.Status(), Refusal = refusal };

    internal static PhotoAnswer Of(DeskAnswer answer) => answer switch
    {
        { Recorded: true } => new(true, answer.Entries.Max(entry => entry.Number), [], false) { Repeated = answer.Repeated },
        { NotSaved: { } why } => new(false, 0, [why], true) { Status = PhotoRefusal.NotRecorded.Status(), Refusal = PhotoRefusal.NotRecorded },
        _ => new(false, 0, [.. answer.Reasons.Select(reason => $"{reason.Words}. Next: {reason.Next}.")], false)
        {
            Status = StatusCodes.Status422UnprocessableEntity,
            Refusal = PhotoRefusal.NotRecorded,
        },
    };
}
