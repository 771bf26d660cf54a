using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>
/// The versions of a car's summary that its owner of today may read: those issued since it changed hands last. What an owner before
/// asked for and was advised stands on the earlier ones.
/// </summary>
public sealed class CustomerVersions(SummaryShelf shelf, IDbContextFactory<ShopDbContext> database)
{
    /// <summary>Newest first. The oldest of them is compared with none.</summary>
    public async Task<IReadOnlyList<IssuedVersion>> OfAsync(CarId car, CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        var since = await shop.OwnersBefore.Where(owner => owner.CarId == car).MaxAsync(owner => (DateTime?)owner.Until, cancellation);
        var theirs = shelf.Of(car).Where(issued => !(issued.Book.At <= since)).ToList();
        return [.. theirs.Select((issued, at) => at == theirs.Count - 1 ? issued with { Since = null } : issued)];
    }
}
