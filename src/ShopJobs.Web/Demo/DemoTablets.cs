using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Demo;

/// <summary>Takes the demo shop's tablet in hand.</summary>
public sealed class DemoTablets(IDbContextFactory<ShopDbContext> database, SessionBook sessions, PinCheck pins, CarDesk cars, ShopClock clock)
{
    internal DemoTablet Take(IReadOnlyDictionary<string, PersonId> people) => new(database, sessions, pins, cars, clock, people);
}
