using System.Text.Json.Serialization;

namespace ShopJobs.Domain.Logbook;

/// <summary>Report that a photograph of the car was taken.</summary>
/// <param name="Photo">The picture.</param>
/// <param name="View">From where it shows the car; null for a photograph of anything else.</param>
public sealed record TakePhoto(ContentDigest Photo, CarView? View) : Report
{
    /// <summary>What it shows, in words; null where nothing was written.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ContentDigest? Caption { get; init; }
}
