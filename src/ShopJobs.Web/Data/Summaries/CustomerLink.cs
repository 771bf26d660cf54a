using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Summaries;

/// <summary>A link handed to a customer. The token is in the link only; here is its hash.</summary>
public sealed class CustomerLink
{
    public Guid Id { get; init; }

    /// <summary>SHA-256 of the token.</summary>
    public required byte[] TokenHash { get; init; }

    public CarId CarId { get; init; }

    /// <summary>The version of the work summary it shows; null for the newest.</summary>
    public int? SummaryVersion { get; init; }

    public DateTime CreatedAt { get; init; }

    public PersonId CreatedBy { get; init; }

    public DateTime ExpiresAt { get; init; }

    public DateTime? RevokedAt { get; set; }

    /// <summary>True when it ended because the car changed hands, and nobody took it back.</summary>
    public bool ChangedHands { get; set; }
}
