using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Diagnostics.HealthChecks;
using ShopJobs.Web.Data;

namespace ShopJobs.Web.Running;

/// <summary>Healthy while the shop's database can be read and written. However often it is asked, it writes once in a while.</summary>
internal sealed class DatabaseHealth(IDbContextFactory<ShopDbContext> database, SavingTrouble trouble, TimeProvider time) : IHealthCheck
{
    private const int PatienceSeconds = 1;
    private static readonly TimeSpan Every = TimeSpan.FromSeconds(10);
    private DateTimeOffset written;

    public async Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellationToken);
        if (!await shop.Database.CanConnectAsync(cancellationToken))
        {
            return HealthCheckResult.Unhealthy("The shop's database does not answer.");
        }

        var now = time.GetUtcNow();
        if (trouble.Words is null && now - written < Every)
        {
            return HealthCheckResult.Healthy();
        }

        try
        {
            // The program leaves this number at 0; setting it writes a page of the file and changes nothing.
            shop.Database.SetCommandTimeout(PatienceSeconds);
            await shop.Database.ExecuteSqlAsync($"PRAGMA user_version = 0", cancellationToken);
            written = now;
            trouble.Ended();
            return HealthCheckResult.Healthy();
        }
        catch (Exception failure) when (trouble.Takes(failure))
        {
            return HealthCheckResult.Unhealthy(trouble.Words, failure);
        }
    }
}
