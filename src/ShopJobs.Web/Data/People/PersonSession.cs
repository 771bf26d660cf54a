using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.People;

/// <summary>A person signed in at a tablet. The cookie only names this row; the row decides.</summary>
public sealed class PersonSession
{
    public SessionId Id { get; init; }

    public PersonId PersonId { get; init; }

    public DeviceId TabletId { get; init; }

    public DateTime StartedAt { get; init; }

    public DateTime LastSeenAt { get; set; }

    public DateTime? EndedAt { get; set; }

    /// <summary>Wrong PINs in a row while signing inside this session.</summary>
    public int PinFailures { get; set; }

    public DateTime? NextPinAt { get; set; }
}
