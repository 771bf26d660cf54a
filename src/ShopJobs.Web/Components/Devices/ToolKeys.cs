using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Tools;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.Devices;

/// <summary>A key as it was made, to be shown once; or why none was made.</summary>
public sealed record MadeKey(string? Key, string? Problem);

/// <summary>Makes and ends the keys by which tools send their readings. The lead's to do.</summary>
public sealed class ToolKeys(IDbContextFactory<ShopDbContext> database, WhoIsHere here, ShopClock clock)
{
    private const string NotYours = "A tool's key is the lead's to make and to end. Sign in as the lead.";

    /// <summary>The key that a tool has now; null where it has none.</summary>
    public async Task<ToolKeyRow?> CurrentAsync(ToolId tool, CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await shop.ToolKeys.AsNoTracking().SingleOrDefaultAsync(row => row.ToolId == tool.Value && row.EndedAt == null, cancellation);
    }

    /// <summary>Makes a new key; the one before it ends.</summary>
    public async Task<MadeKey> MakeAsync(ToolId tool, CancellationToken cancellation = default)
    {
        if (await here.ActingAsync(cancellation) is not { } present || !present.May(Right.Lead))
        {
            return new MadeKey(null, NotYours);
        }

        var key = ToolKeyDesk.NewKey();
        await using var shop = await database.CreateDbContextAsync(cancellation);
        await using var locked = await shop.Database.BeginTransactionAsync(cancellation);
        await EndAsync(shop, tool, present.Person, cancellation);
        shop.ToolKeys.Add(new ToolKeyRow
        {
            Id = Guid.NewGuid(),
            ToolId = tool.Value,
            KeyHash = ToolKeyDesk.HashOf(key),
            MadeAt = clock.Now,
            MadeBy = present.Person,
        });
        await shop.SaveChangesAsync(cancellation);
        await locked.CommitAsync(cancellation);
        return new MadeKey(key, null);
    }

    /// <summary>Ends the key of a tool; null, or why not.</summary>
    public async Task<string?> EndAsync(ToolId tool, CancellationToken cancellation = default)
    {
        if (await here.ActingAsync(cancellation) is not { } present || !present.May(Right.Lead))
        {
            return NotYours;
        }

        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await EndAsync(shop, tool, present.Person, cancellation) == 0 ? "This tool has no key now." : null;
    }

    private Task<int> EndAsync(ShopDbContext shop, ToolId tool, PersonId by, CancellationToken cancellation)
    {
        var now = clock.Now;
        return shop.ToolKeys.Where(row => row.ToolId == tool.Value && row.EndedAt == null)
            .ExecuteUpdateAsync(set => set.SetProperty(row => row.EndedAt, now).SetProperty(row => row.EndedBy, by), cancellation);
    }
}
