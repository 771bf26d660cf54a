using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Identity;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Logbook;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Browser.Tests.Harness;

/// <summary>A data folder with the demo shop, its documents and tools, and one enrolled tablet, ready for the program to open.</summary>
public sealed class DemoFolder : IAsyncDisposable
{
    /// <summary>The tablet's token: the value of its cookie.</summary>
    public const string TabletToken = "a-tablet-of-the-tests";

    private readonly ServiceProvider services;

    private DemoFolder()
    {
        var collection = new ServiceCollection();
        var data = new DataFolder(Folder.FullName, Folder.FullName);
        collection.AddLogging();
        collection.AddSingleton(TimeProvider.System);
        collection.AddShopData(data);
        collection.AddDesks(data);
        collection.AddSingleton<ShopSettings>().AddSingleton<ShopClock>().AddSingleton<DemoShop>();
        collection.AddSingleton<IPasswordHasher<Person>, PasswordHasher<Person>>();
        services = collection.BuildServiceProvider();
        Work = new WorkSeed(services, Tablet);
    }

    /// <summary>The folder itself.</summary>
    public DirectoryInfo Folder { get; } = Directory.CreateTempSubdirectory("shop-");

    /// <summary>The enrolled tablet.</summary>
    public DeviceId Tablet { get; } = new(Guid.NewGuid());

    /// <summary>Puts jobs on cars and work into their logbooks.</summary>
    public WorkSeed Work { get; }

    /// <summary>Makes the folder.</summary>
    public static async Task<DemoFolder> MakeAsync()
    {
        var made = new DemoFolder();
        await made.services.MigrateShopAsync();
        await using (var shop = await made.services.GetRequiredService<IDbContextFactory<ShopDbContext>>().CreateDbContextAsync())
        {
            var zone = TimeZoneInfo.FindSystemTimeZoneById(DemoShop.Zone);
            ShopSettings.Write(shop, new ShopFacts(DemoShop.Name, zone, Demo: true));
            var at = DateTime.UtcNow;
            var lead = made.services.GetRequiredService<DemoShop>().Furnish(shop, DateOnly.FromDateTime(at), at);
            await shop.SaveChangesAsync();
            shop.Tablets.Add(new Tablet
            {
                Id = made.Tablet,
                Name = "Lift A",
                TokenHash = SHA256.HashData(Encoding.ASCII.GetBytes(TabletToken)),
                EnrolledBy = lead,
                EnrolledAt = at,
            });
            await shop.SaveChangesAsync();
        }

        await made.services.GetRequiredService<ShopSettings>().LoadAsync();
        await made.Work.FurnishAsync();
        return made;
    }

    /// <summary>The car as its logbook says now, read from the file beside the running program.</summary>
    public CarReading Read(CarId car) => services.GetRequiredService<CarDesk>().Read(car, null);

    public async ValueTask DisposeAsync()
    {
        await services.DisposeAsync();
        SqliteConnection.ClearAllPools();
        Folder.Delete(recursive: true);
    }
}
