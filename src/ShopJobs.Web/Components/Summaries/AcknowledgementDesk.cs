using System.Globalization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Summaries;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>Takes and lists what customers say of the versions they read.</summary>
public sealed class AcknowledgementDesk(IDbContextFactory<ShopDbContext> database, CustomerVersions versions, ShopClock clock)
{
    private const int ConstraintBroken = 19;

    /// <summary>Everything customers said of a car's versions, newest first.</summary>
    public async Task<IReadOnlyList<SummaryAcknowledgement>> OfAsync(CarId car, CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await shop.Acknowledgements.AsNoTracking().Where(read => read.CarId == car).OrderByDescending(read => read.At).ToListAsync(cancellation);
    }

    /// <summary>What the owner of today said of a version; null while nothing. An earlier owner's words are not theirs to read.</summary>
    public async Task<SummaryAcknowledgement?> FindAsync(CarId car, int version, CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await FindAsync(shop, car, version, cancellation);
    }

    /// <summary>Keeps that a version was read. The first time counts; a second changes nothing, and says so where it has other words.</summary>
    /// <returns>Null, or why not in words for the customer.</returns>
    public async Task<string?> TakeAsync(CarId car, int version, string? typed, CancellationToken cancellation = default)
    {
        var words = Typed.Clean(typed);
        if (words.Length > SummaryAcknowledgement.WordsLength)
        {
            return string.Create(
                CultureInfo.InvariantCulture,
                $"Your words have {words.Length:N0} letters, and {SummaryAcknowledgement.WordsLength:N0} fit. Nothing was sent. Shorten them, or call us.");
        }

        if ((await versions.OfAsync(car, cancellation)).All(issued => issued.Version != version || issued.Page is null))
        {
            return "That version is not here to be read. Load the page again.";
        }

        await using var shop = await database.CreateDbContextAsync(cancellation);
        if (await FindAsync(shop, car, version, cancellation) is not { } earlier)
        {
            var owner = await shop.Cars.Where(row => row.Id == car).Select(row => row.CustomerId).SingleAsync(cancellation);
            shop.Acknowledgements.Add(new SummaryAcknowledgement
            {
                Id = Guid.NewGuid(),
                CarId = car,
                CustomerId = owner,
                Version = version,
                At = clock.Now,
                Words = words,
            });
            try
            {
                await shop.SaveChangesAsync(cancellation);
                return null;
            }
            catch (DbUpdateException e) when (e.InnerException is SqliteException { SqliteErrorCode: ConstraintBroken })
            {
                // The same form came twice at once: the other one was first.
                shop.ChangeTracker.Clear();
                earlier = await FindAsync(shop, car, version, cancellation)
                    ?? throw new InvalidOperationException($"Version {version} of car {car.Value} was acknowledged and is not.", e);
            }
        }

        return words.Length == 0 || words == earlier.Words
            ? null
            : "You have confirmed this version already. What you wrote now was not added. Call us, or write it when the next version comes.";
    }

    private static Task<SummaryAcknowledgement?> FindAsync(ShopDbContext shop, CarId car, int version, CancellationToken cancellation) =>
        shop.Acknowledgements.AsNoTracking().FirstOrDefaultAsync(
            read => read.CarId == car && read.Version == version && shop.Cars.Any(row => row.Id == car && row.CustomerId == read.CustomerId), cancellation);
}
