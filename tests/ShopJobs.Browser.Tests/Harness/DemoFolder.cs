using Microsoft.AspNetCore.Identity;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Components.Devices;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Data.Tools;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Browser.Tests.Harness;

/// <summary>A data folder as <see cref="WorkSeed"/> fills it, ready for the program to open.</summary>
public sealed class DemoFolder : IAsyncDisposable
{
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
        Work = new WorkSeed(services);
    }

    /// <summary>The folder itself.</summary>
    public DirectoryInfo Folder { get; } = Directory.CreateTempSubdirectory("shop-");

    /// <summary>Puts jobs on cars and work into their logbooks.</summary>
    public WorkSeed Work { get; }

    /// <summary>Makes the folder.</summary>
    public static async Task<DemoFolder> MakeAsync()
    {
        var made = new DemoFolder();
        await made.services.MigrateShopAsync();
        await made.Work.FurnishAsync();
        return made;
    }

    /// <summary>The car as its logbook says now, read from the file beside the running program.</summary>
    public CarReading Read(CarId car) => services.GetRequiredService<CarDesk>().Read(car, null);

    /// <summary>A new key for a tool, made beside the running program.</summary>
    public async Task<string> NewKeyAsync(ToolId tool)
    {
        var key = ToolKeyDesk.NewKey();
        await using var shop = await services.GetRequiredService<IDbContextFactory<ShopDbContext>>().CreateDbContextAsync();
        await shop.ToolKeys.Where(row => row.ToolId == tool.Value).ExecuteDeleteAsync();
        shop.ToolKeys.Add(new ToolKeyRow { Id = Guid.NewGuid(), ToolId = tool.Value, KeyHash = ToolKeyDesk.HashOf(key), MadeAt = DateTime.UtcNow });
        await shop.SaveChangesAsync();
        return key;
    }

    public async ValueTask DisposeAsync()
    {
        await services.DisposeAsync();
        SqliteConnection.ClearAllPools();
        Folder.Delete(recursive: true);
    }
}
