using System.Collections.Concurrent;
using System.Security.Claims;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Options;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Accounts;

/// <summary>Opens, checks and ends the sessions of people at tablets.</summary>
public sealed class SessionDesk(
    IDbContextFactory<ShopDbContext> database, ShopClock clock, IOptions<DoorRules> rules, SavingTrouble trouble)
{
    private const int TouchPatienceSeconds = 1;

    // Touches that could not be written: the person stays signed in and reads on.
    private readonly ConcurrentDictionary<SessionId, DateTime> unwritten = [];
    private static readonly TimeSpan TouchEvery = TimeSpan.FromSeconds(20);

    /// <summary>Signs a person in; whoever was signed in at this tablet is signed out.</summary>
    public async Task<SessionId> OpenAsync(PersonId person, DeviceId tablet, CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        await using var locked = await shop.Database.BeginTransactionAsync(cancellation);
        var now = clock.Now;
        await shop.Sessions
            .Where(row => row.TabletId == tablet && row.EndedAt == null)
            .ExecuteUpdateAsync(set => set.SetProperty(row => row.EndedAt, now), cancellation);
        var session = new PersonSession
        {
            Id = new SessionId(Guid.NewGuid()),
            PersonId = person,
            TabletId = tablet,
            StartedAt = now,
            LastSeenAt = now,
        };
        shop.Sessions.Add(session);
        shop.Note(DoorEvent.SignedIn, now, person, tablet);
        await shop.SaveChangesAsync(cancellation);
        await locked.CommitAsync(cancellation);
        return session.Id;
    }

    /// <summary>
    /// Who the cookie or circuit stands for, asked of the database: null when the session has ended or was idle too
    /// long, the tablet was revoked or the person has left.
    /// </summary>
    /// <param name="user">What the cookie or the circuit carries.</param>
    /// <param name="touch">True when a person did something just now.</param>
    /// <param name="cancellation">Stops the asking.</param>
    public async Task<Present?> CheckAsync(ClaimsPrincipal user, bool touch, CancellationToken cancellation = default)
    {
        if (PersonClaims.SessionOf(user) is not { } id)
        {
            return null;
        }

        await using var shop = await database.CreateDbContextAsync(cancellation);
        var found = await (
            from session in shop.Sessions.AsNoTracking()
            join person in shop.People.AsNoTracking() on session.PersonId equals person.Id
            join tablet in shop.Tablets.AsNoTracking() on session.TabletId equals tablet.Id
            where session.Id == id && session.EndedAt == null && person.Active && tablet.RevokedAt == null
            select new { Session = session, person.Name, person.Initials }).SingleOrDefaultAsync(cancellation);
        var now = clock.Now;
        var seen = found is null ? default : LastSeen(found.Session);
        if (found is null || now - seen > rules.Value.Idle || now - found.Session.StartedAt > rules.Value.Longest)
        {
            return null;
        }

        if (touch && now - seen > TouchEvery)
        {
            await TouchAsync(shop, id, now, cancellation);
        }

        var rights = await shop.RightsOfAsync(found.Session.PersonId, clock.Today, cancellation);
        return new Present(found.Session.PersonId, found.Name, found.Initials, found.Session.TabletId, id, rights);
    }

    private DateTime LastSeen(PersonSession session) =>
        unwritten.TryGetValue(session.Id, out var seen) && seen > session.LastSeenAt ? seen : session.LastSeenAt;

    /// <summary>Nobody is kept from reading because this can't be written: it is kept in memory then, and the pages say so.</summary>
    private async Task TouchAsync(ShopDbContext shop, SessionId id, DateTime now, CancellationToken cancellation)
    {
        try
        {
            shop.Database.SetCommandTimeout(TouchPatienceSeconds);
            await shop.Sessions.Where(row => row.Id == id)
                .ExecuteUpdateAsync(set => set.SetProperty(row => row.LastSeenAt, now), cancellation);
            unwritten.TryRemove(id, out _);
            trouble.Ended();
        }
        catch (Exception failure) when (trouble.Takes(failure))
        {
            unwritten[id] = now;
        }
    }

    /// <summary>Whose session this is, awake or locked for idleness; null when it has ended or is another tablet's.</summary>
    internal async Task<Person?> AsleepAsync(ClaimsPrincipal user, DeviceId tablet, CancellationToken cancellation)
    {
        var id = PersonClaims.SessionOf(user);
        var oldest = clock.Now - rules.Value.Longest;
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await (
            from session in shop.Sessions
            join person in shop.People on session.PersonId equals person.Id
            where session.Id == id && session.TabletId == tablet && session.EndedAt == null && session.StartedAt > oldest && person.Active
            select person).AsNoTracking().SingleOrDefaultAsync(cancellation);
    }

    /// <summary>The session that a person was in at an instant (UTC), locked or not; null where in none.</summary>
    public async Task<SessionId?> OfAsync(PersonId person, DateTime at, CancellationToken cancellation = default)
    {
        var oldest = at - rules.Value.Longest;
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await shop.Sessions.AsNoTracking()
            .Where(row => row.PersonId == person && row.StartedAt <= at && row.StartedAt > oldest && (row.EndedAt == null || row.EndedAt >= at))
            .OrderByDescending(row => row.StartedAt).Select(row => (SessionId?)row.Id).FirstOrDefaultAsync(cancellation);
    }

    internal async Task WakeAsync(ClaimsPrincipal user, CancellationToken cancellation)
    {
        var id = PersonClaims.SessionOf(user);
        var now = clock.Now;
        await using var shop = await database.CreateDbContextAsync(cancellation);
        await shop.Sessions.Where(row => row.Id == id && row.EndedAt == null)
            .ExecuteUpdateAsync(set => set.SetProperty(row => row.LastSeenAt, now), cancellation);
    }

    public async Task EndAsync(ClaimsPrincipal user, CancellationToken cancellation = default)
    {
        if (PersonClaims.SessionOf(user) is not { } id)
        {
            return;
        }

        await using var shop = await database.CreateDbContextAsync(cancellation);
        var now = clock.Now;
        var session = await shop.Sessions.SingleOrDefaultAsync(row => row.Id == id && row.EndedAt == null, cancellation);
        if (session is not null)
        {
            session.EndedAt = now;
            shop.Note(DoorEvent.SignedOut, now, session.PersonId, session.TabletId);
            await shop.SaveChangesAsync(cancellation);
        }
    }
}
