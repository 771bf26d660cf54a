using System.Globalization;
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
    private const string CurrencyKey = "currency";
    private const string HandTightKey = "hand-tight-hours";

    /// <summary>A week: longer is never asked to wait before it is marked.</summary>
    public const int MostHandTightHours = 168;

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
            Currency = rows.GetValueOrDefault(CurrencyKey, Current.Currency),
            HandTightHours = int.TryParse(rows.GetValueOrDefault(HandTightKey), NumberStyles.None, CultureInfo.InvariantCulture, out var hours) ? hours : Current.HandTightHours,
        };
    }

    /// <summary>Keeps how customers reach the shop for the next work summary.</summary>
    public async Task RememberContactAsync(string contact, CancellationToken cancellation = default)
    {
        if (contact != Current.Contact)
        {
            await KeepAsync(ContactKey, contact, cancellation);
            Current = Current with { Contact = contact };
        }
    }

    /// <summary>Keeps the currency of prices for the next one that is entered.</summary>
    public async Task RememberCurrencyAsync(string currency, CancellationToken cancellation = default)
    {
        if (currency != Current.Currency)
        {
            await KeepAsync(CurrencyKey, currency, cancellation);
            Current = Current with { Currency = currency };
        }
    }

    /// <summary>Keeps after how many hours hand-tight is marked, from 1 to <see cref="MostHandTightHours"/>.</summary>
    public async Task RememberHandTightAsync(int hours, CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(hours, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(hours, MostHandTightHours);
        await KeepAsync(HandTightKey, hours.ToString(CultureInfo.InvariantCulture), cancellation);
        Current = Current with { HandTightHours = hours };
    }

    private async Task KeepAsync(string key, string value, CancellationToken cancellation)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        if (await shop.Settings.FindAsync([key], cancellation) is { } row)
        {
            row.Value = value;
        }
        else
        {
            shop.Settings.Add(new ShopSetting { Key = key, Value = value });
        }

        await shop.SaveChangesAsync(cancellation);
    }

    /// <summary>Writes the first settings into a context the caller saves; call <see cref="LoadAsync"/> after that.</summary>
    public static void Write(ShopDbContext shop, ShopFacts facts) => shop.Settings.AddRange(
        new ShopSetting { Key = NameKey, Value = facts.Name },
        new ShopSetting { Key = ZoneKey, Value = facts.Zone.Id },
        new ShopSetting { Key = DemoKey, Value = facts.Demo ? "yes" : "no" });
}
