using Microsoft.EntityFrameworkCore;
using ShopJobs.Web.Data;

namespace ShopJobs.Web.Accounts;

/// <summary>Whether the shop has somebody who could confirm a tie between two others.</summary>
public sealed class ThirdPerson(IDbContextFactory<ShopDbContext> database)
{
    /// <summary>What is said where one person works alone.</summary>
    public const string OneAlone = "One person works in this shop: nobody is there to look a second time.";

    /// <summary>What is said where two are tied to each other.</summary>
    public const string TwoTied = "Two people work in this shop, and one of them was added, given a right or a PIN by the other: no third can confirm him, so nobody is a second person here.";

    /// <summary>The line for a release; null where a third works here, or the two are not tied to each other.</summary>
    public async Task<string?> MissingAsync(CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        var people = await shop.People.AsNoTracking().Where(person => person.Active).Select(person => person.Id).ToListAsync(cancellation);
        if (people.Count is 0 or > 2)
        {
            return null;
        }

        if (people.Count == 1)
        {
            return OneAlone;
        }

        var tied = (await shop.TiesOfAsync(people[0], cancellation)).Any(tie => tie.By == people[1])
            || (await shop.TiesOfAsync(people[1], cancellation)).Any(tie => tie.By == people[0]);
        return tied ? TwoTied : null;
    }
}
