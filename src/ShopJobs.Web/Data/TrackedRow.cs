using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data;

/// <summary>An ordinary row people edit: it says who changed it last and when, and refuses a save over a change not seen.</summary>
public abstract class TrackedRow
{
    /// <summary>Instant of the last change, UTC.</summary>
    public DateTime ChangedAt { get; private set; }

    /// <summary>Who changed it last; null when the first start made it.</summary>
    public PersonId? ChangedBy { get; private set; }

    /// <summary>New at each change; the concurrency token.</summary>
    public Guid Revision { get; private set; }

    /// <summary>Marks the row as changed by a person at an instant (UTC).</summary>
    public void Touch(PersonId? by, DateTime at)
    {
        ChangedBy = by;
        ChangedAt = at;
        Revision = Guid.NewGuid();
    }
}
