using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.People;

namespace ShopJobs.Web.Accounts;

/// <summary>Who may do what on a day.</summary>
public static class RightsBook
{
    /// <summary>
    /// The rights of a person on a day of the shop; none for a person who has left. Takes a context so that a
    /// command can ask again inside its own transaction.
    /// </summary>
    public static async Task<IReadOnlySet<Right>> RightsOfAsync(
        this ShopDbContext shop, PersonId person, DateOnly day, CancellationToken cancellation = default)
    {
        var rights = await shop.Rights.AsNoTracking()
            .Where(right => right.PersonId == person && shop.People.Any(row => row.Id == person && row.Active))
            .ToListAsync(cancellation);
        return rights.Where(right => right.HoldsOn(day)).Select(right => right.Right).ToHashSet();
    }
}
