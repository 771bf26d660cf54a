using Microsoft.EntityFrameworkCore;

namespace ShopJobs.Web.Data;

/// <summary>Registers the shop's database and brings it up to date.</summary>
public static class ShopData
{
    /// <summary>The same database for the web program and for the admin verbs.</summary>
    public static IServiceCollection AddShopData(this IServiceCollection services, DataFolder folder)
    {
        services.AddSingleton(folder).AddSingleton<SavingTrouble>().AddLogging();
        services.AddDbContextFactory<ShopDbContext>(options => Configure(options, folder.Database));
        return services;
    }

    /// <summary>Applies the migrations that are pending and makes sure of write-ahead logging.</summary>
    public static async Task MigrateShopAsync(this IServiceProvider services, CancellationToken cancellation = default)
    {
        await using var shop = await services.GetRequiredService<IDbContextFactory<ShopDbContext>>().CreateDbContextAsync(cancellation);
        await new ShopMigration(shop, services.GetRequiredService<DataFolder>(), services.GetRequiredService<ILogger<ShopMigration>>()).RunAsync(cancellation);
        await shop.Database.ExecuteSqlRawAsync("PRAGMA journal_mode=WAL;", cancellation);
    }

    internal static void Configure(DbContextOptionsBuilder options, string file) =>
        options.UseSqlite(SqliteHabits.ConnectionString(file)).AddInterceptors(new SqliteHabits());
}
