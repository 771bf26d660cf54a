using Bunit;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Data;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Tests.CarPage;

/// <summary>For components that only draw: a shop clock in UTC at the test car's day, and nothing else.</summary>
public abstract class ScreenBench : BunitContext
{
    protected ScreenBench()
    {
        Services.AddSingleton<TimeProvider>(new FakeTimeProvider(CarAtWork.Start.AddHours(12)));
        Services.AddSingleton<IDbContextFactory<ShopDbContext>, NoDatabase>();
        Services.AddSingleton<ShopSettings>().AddSingleton<ShopClock>();
    }

    private sealed class NoDatabase : IDbContextFactory<ShopDbContext>
    {
        public ShopDbContext CreateDbContext() => throw new InvalidOperationException("A component that only draws has no business here.");
    }
}
