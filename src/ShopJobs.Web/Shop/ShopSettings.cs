using Microsoft.EntityFrameworkCore;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Shop;

namespace ShopJobs.Web.Shop;

/// <summary>What the whole shop agrees on. Read once at the start, then kept in step with the rows.</summary>
public sealed class ShopSettings(IDbContextFactory<ShopDbContext> database)
{
    private const string NameKey = "shop-name";
    private const string ZoneKey = "zone";
    private const string DemoKey = "demo";
    private const string ContactKey = "contact";

    /// <summary>Until the first start has named it, the shop is called ShopJobs and keeps UTC.</summary>
    public ShopFacts Current { get; private set; } = new("ShopJobs", TimeZoneInfo.Utc, Demo: false);

    public async Task LoadAsync(CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        var rows = await shop.Settings.AsNoTracking().ToDictionaryAsync(row => row.Key, row => row.Value, cancellation);
        Current = new ShopFacts(
            rows.GetValueOrDefault(NameKey, Current.Name),
            rows.TryGetValue(ZoneKey, out var zone) ? TimeZoneInfo.FindSystemTimeZoneById(zone) : Current.Zone,
            rows.GetValueOrDefault(DemoKey) == "yes")
        {
            Contact = rows.GetValueOrDefault(ContactKey, ""),
        };
    }

    /// <summary>Keeps how customers reach the shop for the next work summary.</summary>
    public async Task RememberContactAsync(string contact, CancellationToken cancellation = default)
    {
        if (contact == Current.Contact)
        {
            return;
        }

        await using var shop = await database.CreateDbContextAsync(cancellation);
        if (await shop.Settings.FindAsync([ContactKey], cancellation) is { } row)
        {
            row.Value = contact;
        }
        else
        {
            shop.Settings.Add(new ShopSetting { Key = ContactKey, Value = contact });
        }

        await shop.SaveChangesAsync(cancellation);
        Current = Current with { Contact = contact };
    }

    /// <summary>Writes the first settings into a context the caller saves; call <see cref="LoadAsync"/> after that.</summary>
    public static void Write(ShopDbContext shop, ShopFacts facts) => shop.Settings.AddRange(
        new ShopSetting { Key = NameKey, Value = facts.Name },
        new ShopSetting { Key = ZoneKey, Value = facts.Zone.Id },
        new ShopSetting { Key = DemoKey, Value = facts.Demo ? "yes" : "no" });
}
