using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.Procedures;

/// <summary>Takes a procedure off the list of those that go on cars, and back. Running jobs keep it.</summary>
public sealed class ProcedureRetirement(IDbContextFactory<ShopDbContext> database, WhoIsHere here, ShopClock clock)
{
    /// <summary>Retires the current revision, or brings it back; null, or why not.</summary>
    public async Task<string?> SetAsync(string digest, bool retired, CancellationToken cancellation = default)
    {
        if (await here.ActingAsync(cancellation) is not { } present)
        {
            return "This tablet is locked. Sign in again, then do it once more.";
        }

        await using var shop = await database.CreateDbContextAsync(cancellation);
        await using var locked = await shop.Database.BeginTransactionAsync(cancellation);
        if (!(await shop.RightsOfAsync(present.Person, clock.Today, cancellation)).Contains(Right.Author))
        {
            return "Retiring a procedure needs the author's right. Ask the lead for it under People and places.";
        }

        var row = await shop.Procedures.FindAsync([digest], cancellation);
        if (row is null || await shop.Procedures.AnyAsync(other => other.Code == row.Code && other.CurrentSince > row.CurrentSince, cancellation))
        {
            return "A newer revision is current. Load the list of procedures again.";
        }

        row.RetiredAt = retired ? clock.Now : null;
        row.RetiredBy = retired ? present.Person : null;
        await shop.SaveChangesAsync(cancellation);
        await locked.CommitAsync(cancellation);
        return null;
    }
}
