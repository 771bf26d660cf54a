using Microsoft.EntityFrameworkCore;

namespace ShopJobs.Web.Data;

/// <summary>The shop's ordinary rows. The entry table is not mapped here: see <c>Data/Logbook</c>.</summary>
public sealed class ShopDbContext(DbContextOptions<ShopDbContext> options) : DbContext(options)
{
    protected override void OnModelCreating(ModelBuilder modelBuilder) =>
        modelBuilder.ApplyConfigurationsFromAssembly(typeof(ShopDbContext).Assembly);
}
