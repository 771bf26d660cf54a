using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.People;

/// <summary>One person of the shop. Never deleted and never reused for somebody else: a leaver is made inactive.</summary>
public sealed class Person : TrackedRow
{
    public const int NameLength = 60;
    public const int InitialsLength = 4;

    public PersonId Id { get; init; }

    public required string Name { get; set; }

    public required string Initials { get; set; }

    public bool Active { get; set; } = true;

    /// <summary>The PIN, salted and hashed with its cost factor.</summary>
    public required string PinHash { get; set; }

    /// <summary>Wrong PINs in a row at the sign-in page and as a witness.</summary>
    public int PinFailures { get; set; }

    /// <summary>No PIN is looked at before this instant (UTC).</summary>
    public DateTime? NextPinAt { get; set; }

    /// <summary>Made by the demo shop; its PIN is public.</summary>
    public bool Demo { get; init; }

    public List<PersonRight> Rights { get; } = [];
}
