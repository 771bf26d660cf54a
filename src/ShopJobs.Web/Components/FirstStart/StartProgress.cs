using Microsoft.EntityFrameworkCore;
using ShopJobs.Web.Data;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.FirstStart;

/// <summary>How far the filling of the demo shop has come, for the bar on the start page.</summary>
/// <param name="Done">Entries written so far.</param>
/// <param name="Of">Entries that it writes.</param>
public sealed record StartProgress(int Done, int Of)
{
    internal const string Path = "/start/progress";

    internal static void Map(IEndpointRouteBuilder app) => app.MapGet(Path, ReadAsync).AllowAnonymous();

    // Nobody is told how much a shop's books hold: only while the demo shop is being filled.
    private static async Task<IResult> ReadAsync(IDbContextFactory<ShopDbContext> database, CancellationToken cancellation)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await shop.IsHalfFurnishedAsync(cancellation)
            ? Results.Json(new StartProgress((await shop.Database.SqlQuery<int>($"SELECT count(*) AS Value FROM entries").ToListAsync(cancellation))[0], DemoWork.Entries))
            : Results.NotFound();
    }
}
