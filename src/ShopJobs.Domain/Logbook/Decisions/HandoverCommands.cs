using System.Text.Json.Serialization;

namespace ShopJobs.Domain.Logbook;

/// <summary>Report that a joint is left half done.</summary>
/// <param name="Last">The newest entry of its work, as it was shown.</param>
public sealed record LeaveHalfDone(JobId Job, string Group, string Place, long Last) : Report
{
    /// <summary>What is half done, in words; null where the record says it all.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ContentDigest? Words { get; init; }
}

/// <summary>Report that the last item of a joint that was left half done is as it was recorded: the work goes on.</summary>
/// <param name="Last">The entry of that item, as it was shown.</param>
public sealed record TakeOver(JobId Job, string Group, string Place, long Last) : Report;
