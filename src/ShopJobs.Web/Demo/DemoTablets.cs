using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Demo;

/// <summary>Takes the demo shop's tablet in hand.</summary>
public sealed class DemoTablets(IDbContextFactory<ShopDbContext> database, SessionDesk sessions, PinCheck pins, CarDesk cars, ShopClock clock)
{
    /// <param name="people">Ids by name.</param>
    /// <param name="script">Two scripts give different commands; one script run again gives the same ones.</param>
    internal DemoTablet Take(IReadOnlyDictionary<string, PersonId> people, string script = "furnish") =>
        new(database, sessions, pins, cars, clock, people, script);
}
