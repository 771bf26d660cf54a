using Microsoft.EntityFrameworkCore;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Shop;

namespace ShopJobs.Web.Shop;

/// <summary>Whether the shop was opened yet. A demo shop counts as opened when its filling has come to its end.</summary>
internal static class ShopOpening
{
    private const string UnfinishedKey = "demo-unfinished";

    /// <summary>True while the first page is the one that opens the shop.</summary>
    internal static async Task<bool> NeedsOpeningAsync(this ShopDbContext shop, CancellationToken cancellation = default) =>
        !await shop.People.AnyAsync(cancellation) || await shop.IsHalfFurnishedAsync(cancellation);

    /// <summary>True when the demo shop's filling was begun and has not ended.</summary>
    internal static Task<bool> IsHalfFurnishedAsync(this ShopDbContext shop, CancellationToken cancellation = default) =>
        shop.Settings.AnyAsync(row => row.Key == UnfinishedKey, cancellation);

    /// <summary>Says that filling begins, in a context the caller saves with the first rows.</summary>
    internal static void BeginFurnishing(this ShopDbContext shop) => shop.Settings.Add(new ShopSetting { Key = UnfinishedKey, Value = "yes" });

    /// <summary>Says that filling has ended.</summary>
    internal static Task EndFurnishingAsync(this ShopDbContext shop) =>
        shop.Settings.Where(row => row.Key == UnfinishedKey).ExecuteDeleteAsync();
}
