using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Accounts;

/// <summary>Names for ids, and who may be asked to do something today.</summary>
public sealed class PeopleShelf(IDbContextFactory<ShopDbContext> database, ShopClock clock)
{
    /// <summary>Everybody who ever worked here, by id; a leaver keeps the name under old records.</summary>
    public async Task<IReadOnlyDictionary<PersonId, string>> NamesAsync(CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await shop.People.AsNoTracking().ToDictionaryAsync(person => person.Id, person => person.Name, cancellation);
    }

    /// <summary>True for somebody who worked here and does not any more.</summary>
    public async Task<bool> HasLeftAsync(PersonId person, CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await shop.People.AsNoTracking().AnyAsync(one => one.Id == person && !one.Active, cancellation);
    }

    /// <summary>People who work here and hold a right today, by name; everybody when no right is asked for.</summary>
    public async Task<IReadOnlyList<Named>> WithRightAsync(Right? right, Right? or = null, CancellationToken cancellation = default)
    {
        var today = clock.Today;
        await using var shop = await database.CreateDbContextAsync(cancellation);
        var people = await shop.People.AsNoTracking().Include(person => person.Rights)
            .Where(person => person.Active).OrderBy(person => person.Name).ToListAsync(cancellation);
        return [.. people
            .Where(person => right is null || person.Rights.Exists(held => (held.Right == right || held.Right == or) && held.HoldsOn(today)))
            .Select(person => new Named(person.Id, person.Name, person.Initials))];
    }

    public sealed record Named(PersonId Id, string Name, string Initials);
}
