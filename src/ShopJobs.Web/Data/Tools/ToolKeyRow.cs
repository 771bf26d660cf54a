using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Tools;

/// <summary>The key by which one tool sends its readings. Whoever made it saw it once; only its hash is stored.</summary>
public sealed class ToolKeyRow
{
    public Guid Id { get; init; }

    /// <summary>The tool whose readings it sends.</summary>
    public Guid ToolId { get; init; }

    /// <summary>SHA-256 of the key.</summary>
    public required byte[] KeyHash { get; init; }

    public DateTime MadeAt { get; init; }

    public PersonId MadeBy { get; init; }

    /// <summary>From then on it opens nothing; null while it does.</summary>
    public DateTime? EndedAt { get; set; }

    public PersonId? EndedBy { get; set; }
}
