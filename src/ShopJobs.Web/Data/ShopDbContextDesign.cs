using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace ShopJobs.Web.Data;

/// <summary>For the migrations tool only: the model without the running program.</summary>
internal sealed class ShopDbContextDesign : IDesignTimeDbContextFactory<ShopDbContext>
{
    public ShopDbContext CreateDbContext(string[] args)
    {
        var options = new DbContextOptionsBuilder<ShopDbContext>();
        ShopData.Configure(options, Path.Combine(Path.GetTempPath(), "shop-design.db"));
        return new ShopDbContext(options.Options);
    }
}
