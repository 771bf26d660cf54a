using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.People;

/// <summary>A browser the lead has enrolled. Its cookie holds a random token; only the hash is stored.</summary>
public sealed class Tablet
{
    public const int NameLength = 40;

    public DeviceId Id { get; init; }

    public required string Name { get; set; }

    /// <summary>SHA-256 of the token.</summary>
    public required byte[] TokenHash { get; init; }

    public PersonId EnrolledBy { get; init; }

    public DateTime EnrolledAt { get; init; }

    public DateTime? RevokedAt { get; set; }

    public PersonId? RevokedBy { get; set; }

    /// <summary>Wrong PINs lately, over all people.</summary>
    public int PinFailures { get; set; }

    public DateTime? LastPinFailureAt { get; set; }

    public DateTime? NextPinAt { get; set; }
}
