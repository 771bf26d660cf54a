using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>Opens a customer's link. It only looks: opening changes nothing, and every link that does not open looks the same.</summary>
public sealed class LinkShelf(IDbContextFactory<ShopDbContext> database, ShopClock clock)
{
    /// <summary>The car a link is for; null when it is unknown, expired or taken back.</summary>
    public async Task<CarId?> OpenAsync(string? token, CancellationToken cancellation = default)
    {
        var hash = CustomerToken.HashOf(token) ?? [];
        await using var shop = await database.CreateDbContextAsync(cancellation);
        var link = await shop.CustomerLinks.AsNoTracking().FirstOrDefaultAsync(row => row.TokenHash == hash, cancellation);
        return link is { RevokedAt: null } && clock.Now < link.ExpiresAt ? link.CarId : null;
    }
}
