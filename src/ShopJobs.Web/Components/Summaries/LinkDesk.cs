using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Summaries;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>What came of making a link: the secret, which is shown once, or why not.</summary>
public sealed record LinkMade(string? Token, string? Refusal);

/// <summary>Makes, lists and takes back customers' links.</summary>
public sealed class LinkDesk(IDbContextFactory<ShopDbContext> database, WhoIsHere here, ShopClock clock)
{
    public const int LongestDays = 3650;
    public const int UsualDays = 365;

    private const string NotYours = "Customers' links are for people who release cars. Sign in as one of them.";

    /// <summary>Links of a car, newest first, those that no longer open included.</summary>
    public async Task<IReadOnlyList<CustomerLink>> OfAsync(CarId car, CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await shop.CustomerLinks.AsNoTracking().Where(link => link.CarId == car).OrderByDescending(link => link.CreatedAt).ToListAsync(cancellation);
    }

    /// <summary>Makes a link that shows the newest version of a car's summary for so many days.</summary>
    public async Task<LinkMade> MakeAsync(CarId car, int days, CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(days, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(days, LongestDays);
        if (await here.ActingAsync(cancellation) is not { } present || !present.May(Right.Release))
        {
            return new LinkMade(null, NotYours);
        }

        var token = CustomerToken.New();
        await using var shop = await database.CreateDbContextAsync(cancellation);
        if (!await shop.Cars.AnyAsync(row => row.Id == car, cancellation))
        {
            return new LinkMade(null, "This car is not in the book any more.");
        }

        shop.CustomerLinks.Add(new CustomerLink
        {
            Id = Guid.NewGuid(),
            TokenHash = CustomerToken.HashOf(token) ?? throw new InvalidOperationException("A new token reads as none."),
            CarId = car,
            CreatedAt = clock.Now,
            CreatedBy = present.Person,
            ExpiresAt = clock.Now.AddDays(days),
        });
        await shop.SaveChangesAsync(cancellation);
        return new LinkMade(token, null);
    }

    /// <summary>Takes a link back at once; null, or why not. Taking back twice changes nothing.</summary>
    public async Task<string?> RevokeAsync(Guid id, CancellationToken cancellation = default)
    {
        if (await here.ActingAsync(cancellation) is not { } present || !present.May(Right.Release))
        {
            return NotYours;
        }

        await using var shop = await database.CreateDbContextAsync(cancellation);
        var now = clock.Now;
        await shop.CustomerLinks.Where(link => link.Id == id && link.RevokedAt == null)
            .ExecuteUpdateAsync(row => row.SetProperty(link => link.RevokedAt, now), cancellation);
        return null;
    }
}
