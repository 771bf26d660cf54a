using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Accounts;

/// <summary>Whoever is signed in takes a PIN that nobody else has seen.</summary>
public sealed class OwnPinDesk(
    WhoIsHere here, PinCheck pins, IDbContextFactory<ShopDbContext> database, IPasswordHasher<Person> hasher, ShopClock clock)
{
    /// <summary>What came of it: the new PIN, to be shown once, or why not.</summary>
    public sealed record Taken(string? Pin, string? Refusal);

    /// <summary>True while somebody else made the PIN of whoever is signed in.</summary>
    public async Task<bool> IsNeededAsync(CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await here.LookingAsync(cancellation) is { } present && await shop.IsPinOfAnotherAsync(present.Person, cancellation);
    }

    /// <summary>Gives a new random PIN for the right old one.</summary>
    public async Task<Taken> TakeAsync(string? pin, CancellationToken cancellation = default)
    {
        if (await here.ActingAsync(cancellation) is not { } present)
        {
            return new Taken(null, "This tablet is locked. Sign in again.");
        }

        if (await pins.InSessionAsync(present, present.Person, pin, cancellation) is PinAnswer.No no)
        {
            return new Taken(null, no.Words);
        }

        await using var shop = await database.CreateDbContextAsync(cancellation);
        await using var locked = await shop.Database.BeginTransactionAsync(cancellation);
        var person = await shop.People.SingleAsync(row => row.Id == present.Person, cancellation);
        var taken = NewPin.Give(shop, hasher, person, present.Person, clock.Now, DoorEvent.PinChanged);
        await shop.SaveChangesAsync(cancellation);
        await locked.CommitAsync(cancellation);
        return new Taken(taken, null);
    }
}
