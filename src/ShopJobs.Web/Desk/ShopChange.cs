using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Desk;

/// <summary>
/// The one way to change the shop's ordinary rows: whoever is signed in, the rights read again inside the transaction that writes, and
/// nothing written over a change that was not seen. Null where it is done, else why not and what to do.
/// </summary>
public sealed class ShopChange(IDbContextFactory<ShopDbContext> database, WhoIsHere here, ShopClock clock)
{
    /// <summary>Nobody is signed in on this tablet any more.</summary>
    public const string Locked = "This tablet is locked. Sign in again, then do it once more.";

    /// <summary>The row is not the one that was shown.</summary>
    public const string Meanwhile = "Somebody changed this meanwhile. Load the page again and make your change once more.";

    /// <summary>A change that needs a right.</summary>
    /// <param name="right">The right that is needed.</param>
    /// <param name="notYours">What is said to somebody without it.</param>
    /// <param name="change">Makes the change, or says why not.</param>
    /// <param name="cancellation">Stops it before it is written.</param>
    /// <param name="last">Looks at the shop as it would be, and may still refuse; null asks nothing.</param>
    public Task<string?> RunAsync(
        Right right, string notYours, Func<ShopDbContext, PersonId, Task<string?>> change, CancellationToken cancellation, Func<ShopDbContext, Task<string?>>? last = null) =>
        RunAsync((_, rights) => rights.Contains(right) ? null : notYours, change, cancellation, last);

    /// <summary>A change that whoever is here may make or not, by what they are and may do.</summary>
    public async Task<string?> RunAsync(
        Func<PersonId, IReadOnlySet<Right>, string?> refuse, Func<ShopDbContext, PersonId, Task<string?>> change, CancellationToken cancellation, Func<ShopDbContext, Task<string?>>? last = null)
    {
        ArgumentNullException.ThrowIfNull(refuse);
        ArgumentNullException.ThrowIfNull(change);
        if (await here.ActingAsync(cancellation) is not { } present)
        {
            return Locked;
        }

        await using var shop = await database.CreateDbContextAsync(cancellation);
        await using var writing = await shop.Database.BeginTransactionAsync(cancellation);
        if (refuse(present.Person, await shop.RightsOfAsync(present.Person, clock.Today, cancellation)) is { } notYours)
        {
            return notYours;
        }

        if (await change(shop, present.Person) is { } refusal)
        {
            return refusal;
        }

        try
        {
            await shop.SaveChangesAsync(cancellation);
        }
        catch (DbUpdateConcurrencyException)
        {
            return Meanwhile;
        }

        if (last is not null && await last(shop) is { } after)
        {
            return after;
        }

        await writing.CommitAsync(cancellation);
        return null;
    }
}
