using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.People;

/// <summary>Something that happened at the door, kept for the lead: a wrong PIN, a new tablet, a reset.</summary>
public sealed class DoorNote
{
    public long Id { get; init; }

    public DateTime At { get; init; }

    public DoorEvent Event { get; init; }

    /// <summary>Whom it is about.</summary>
    public PersonId? PersonId { get; init; }

    public DeviceId? TabletId { get; init; }

    /// <summary>Who did it, where that is somebody else.</summary>
    public PersonId? ByPersonId { get; init; }
}
