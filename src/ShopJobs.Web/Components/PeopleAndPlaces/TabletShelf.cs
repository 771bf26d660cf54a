using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.PeopleAndPlaces;

/// <summary>The tablets and what happened at the door lately.</summary>
public sealed class TabletShelf(IDbContextFactory<ShopDbContext> database, LeadChange door, ShopClock clock)
{
    private const int LatelyNotes = 40;

    public async Task<IReadOnlyList<Tablet>> TabletsAsync(CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await shop.Tablets.AsNoTracking().OrderBy(tablet => tablet.RevokedAt != null).ThenBy(tablet => tablet.Name).ToListAsync(cancellation);
    }

    /// <summary>The newest notes first.</summary>
    public async Task<IReadOnlyList<DoorNote>> LatelyAsync(CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await shop.DoorNotes.AsNoTracking().OrderByDescending(note => note.Id).Take(LatelyNotes).ToListAsync(cancellation);
    }

    /// <summary>Takes a tablet out of use at once; whoever is signed in on it is signed out.</summary>
    public Task<string?> RevokeAsync(DeviceId id, CancellationToken cancellation = default) =>
        door.ChangeAsync(async (shop, by) =>
        {
            if (await shop.Tablets.FindAsync([id], cancellation) is not { RevokedAt: null } tablet)
            {
                return "That tablet is out of use already.";
            }

            var now = clock.Now;
            tablet.RevokedAt = now;
            tablet.RevokedBy = by;
            shop.Note(DoorEvent.TabletRevoked, now, about: null, id, by);
            await shop.Sessions.Where(session => session.TabletId == id && session.EndedAt == null)
                .ExecuteUpdateAsync(set => set.SetProperty(session => session.EndedAt, now), cancellation);
            return null;
        }, cancellation);
}
