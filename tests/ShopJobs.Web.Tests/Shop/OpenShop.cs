using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.Extensions.Time.Testing;
using ShopJobs.Web.Data;

namespace ShopJobs.Web.Tests.Shop;

/// <summary>The whole program on a folder of its own, with a clock the test moves.</summary>
public sealed class OpenShop : WebApplicationFactory<Program>
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("shop-");

    /// <summary>Extra settings, before the first request.</summary>
    public Dictionary<string, string> Settings { get; } = [];

    /// <summary>Where it runs: for a shop, or for those who work on the program.</summary>
    public string Environment { get; init; } = "Production";

    /// <summary>Gives the database file the shop starts with; a new shop without it.</summary>
    public Func<Stream>? OlderFile { get; init; }

    /// <summary>Changes what the program is put together from.</summary>
    public Action<IServiceCollection>? Changed { get; set; }

    public FakeTimeProvider Time { get; } = new(new DateTimeOffset(2026, 3, 2, 8, 0, 0, TimeSpan.Zero));

    public Browser NewBrowser() => new(this);

    /// <summary>The demo shop, opened by the browser that is now its first tablet.</summary>
    public async Task<Browser> OpenDemoAsync()
    {
        var browser = NewBrowser();
        await browser.SubmitAsync("/start", "demo");
        return browser;
    }

    /// <summary>Reads or changes rows behind the program's back.</summary>
    public async Task<T> RowsAsync<T>(Func<ShopDbContext, Task<T>> ask)
    {
        await using var shop = await Services.GetRequiredService<IDbContextFactory<ShopDbContext>>().CreateDbContextAsync();
        return await ask(shop);
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        PutOlderFile();
        builder.UseEnvironment(Environment);
        builder.UseSetting(DataFolder.Setting, folder.FullName);
        builder.UseSetting("Serilog:MinimumLevel:Default", "Error");
        foreach (var (key, value) in Settings)
        {
            builder.UseSetting(key, value);
        }

        builder.ConfigureTestServices(services => services
            .Replace(ServiceDescriptor.Singleton<TimeProvider>(Time))
            .Configure<PasswordHasherOptions>(options => options.IterationCount = 1_000));
        builder.ConfigureTestServices(services => Changed?.Invoke(services));
    }

    private void PutOlderFile()
    {
        if (OlderFile is not null)
        {
            using var older = OlderFile();
            using var file = File.Create(Path.Combine(folder.FullName, "shop.db"));
            older.CopyTo(file);
        }
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
}
