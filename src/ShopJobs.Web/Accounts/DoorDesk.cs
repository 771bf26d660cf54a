using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.People;

namespace ShopJobs.Web.Accounts;

/// <summary>Writes what the lead should hear about.</summary>
internal static class DoorDesk
{
    /// <summary>Adds a note to a context the caller saves, so that it is stored together with what it tells.</summary>
    internal static void Note(
        this ShopDbContext shop, DoorEvent what, DateTime at, PersonId? about, DeviceId? tablet = null, PersonId? by = null) =>
        shop.DoorNotes.Add(new DoorNote { Event = what, At = at, PersonId = about, TabletId = tablet, ByPersonId = by });
}
