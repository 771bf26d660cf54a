using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.Extensions.Time.Testing;
using ShopJobs.Domain.Logbook;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook.Verify;
using ShopJobs.Web.Desk;

namespace ShopJobs.Browser.Tests.Harness;

/// <summary>The whole program on a real port and a folder of its own, with a clock the test moves: locker cures in no time.</summary>
public sealed class ClockedShop(string environment) : WebApplicationFactory<Program>
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("shop-");

    /// <summary>Today at 08:00 UTC, so that certificates and browser cookies are of the same year.</summary>
    public FakeTimeProvider Time { get; } = new(new DateTimeOffset(DateTime.UtcNow.Date.AddHours(8), TimeSpan.Zero));

    /// <summary>The clock of the machine, as the program reads it.</summary>
    public ClockSetByHand Clock => field ??= new(Time);

    /// <summary>Where it listens.</summary>
    public Uri Address { get; private set; } = new("http://127.0.0.1:0");

    /// <summary>Opens the shop on a free port.</summary>
    /// <param name="environment">"Development" has the contributors' catalogue.</param>
    public static ClockedShop Open(string environment = "Production")
    {
        var shop = new ClockedShop(environment);
        shop.UseKestrel(0);
        shop.StartServer();
        shop.Address = new UriBuilder(shop.ClientOptions.BaseAddress) { Host = "127.0.0.1" }.Uri;
        return shop;
    }

    /// <summary>The car with this name.</summary>
    public async Task<CarId> CarAsync(string name)
    {
        await using var rows = await RowsAsync();
        return (await rows.Cars.SingleAsync(car => car.Name == name)).Id;
    }

    /// <summary>The car's newest job whose procedure has this title.</summary>
    public async Task<JobId> JobAsync(CarId car, string title)
    {
        await using var rows = await RowsAsync();
        return (await rows.Jobs.Where(job => job.CarId == car && job.Title.Contains(title)).OrderByDescending(job => job.StartedAt).FirstAsync()).Id;
    }

    /// <summary>The car as its logbook says now.</summary>
    public CarReading Read(CarId car) => Services.GetRequiredService<CarDesk>().Read(car, null);

    /// <summary>A person's name as it is now.</summary>
    public string NameOf(PersonId person)
    {
        using var rows = Services.GetRequiredService<IDbContextFactory<ShopDbContext>>().CreateDbContext();
        return rows.People.Single(one => one.Id == person).Name;
    }

    /// <summary>Every fault that verifying all logbooks finds.</summary>
    public IReadOnlyList<string> VerifyAll() =>
        [.. new LogbookVerifier(Path.Combine(folder.FullName, "shop.db"), EntryCodec.KeysOf).Verify().Problems.Select(problem => problem.ToString())];

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseEnvironment(environment);
        builder.UseSetting(DataFolder.Setting, folder.FullName);
        builder.UseSetting("Serilog:MinimumLevel:Default", "Error");
        builder.ConfigureTestServices(services => services
            .Replace(ServiceDescriptor.Singleton<TimeProvider>(Clock))
            .Configure<PasswordHasherOptions>(options => options.IterationCount = 1_000));
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && folder.Exists)
        {
            SqliteConnection.ClearAllPools();
            folder.Delete(recursive: true);
            folder.Refresh();
        }
    }

    private Task<ShopDbContext> RowsAsync() => Services.GetRequiredService<IDbContextFactory<ShopDbContext>>().CreateDbContextAsync();
}
