using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Diagnostics.HealthChecks;
using ShopJobs.Web.Data;

namespace ShopJobs.Web.Running;

/// <summary>Healthy while the shop's database answers.</summary>
internal sealed class DatabaseHealth(IDbContextFactory<ShopDbContext> database) : IHealthCheck
{
    public async Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellationToken);
        return await shop.Database.CanConnectAsync(cancellationToken)
            ? HealthCheckResult.Healthy()
            : HealthCheckResult.Unhealthy("The shop's database does not answer.");
    }
}
