using System.Security.Claims;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Running;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Tests.Shop;

/// <summary>The demo shop's rows and services without the web; <see cref="SignInAsync"/> says who is at the tablet.</summary>
public sealed class ShopOnDisk : IDisposable
{
    public static readonly DateOnly Today = new(2026, 3, 2);

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("shop-");
    private readonly ServiceProvider services;

    private ShopOnDisk()
    {
        var collection = new ServiceCollection();
        var configuration = new ConfigurationBuilder().Build();
        collection.AddSingleton<IConfiguration>(configuration);
        collection.AddLogging();
        collection.AddShopData(new DataFolder(folder.FullName, folder.FullName));
        collection.AddSingleton<TimeProvider>(Time);
        collection.AddSingleton<Listening>().AddSingleton<ShopSettings>().AddSingleton<ShopClock>();
        collection.AddDesks(new DataFolder(folder.FullName, folder.FullName)).AddAccounts(configuration).AddFeatures();
        collection.AddSingleton<AuthenticationStateProvider>(Circuit);
        services = collection.BuildServiceProvider();
    }

    public FakeTimeProvider Time { get; } = new(new DateTimeOffset(2026, 3, 2, 8, 0, 0, TimeSpan.Zero));

    public FakeCircuit Circuit { get; } = new();

    public DeviceId Tablet { get; private set; }

    public IServiceProvider Services => services;

    public static async Task<ShopOnDisk> OpenAsync()
    {
        var shop = new ShopOnDisk();
        await shop.services.MigrateShopAsync();
        await shop.RowsAsync(async rows =>
        {
            var at = shop.Time.GetUtcNow().UtcDateTime;
            var lead = shop.Get<DemoShop>().Furnish(rows, Today, at);
            await rows.SaveChangesAsync();
            var tablet = new Tablet { Id = new DeviceId(Guid.NewGuid()), Name = "Lift A", TokenHash = [1], EnrolledBy = lead, EnrolledAt = at };
            shop.Tablet = tablet.Id;
            rows.Tablets.Add(tablet);
            return await rows.SaveChangesAsync();
        });
        return shop;
    }

    public T Get<T>()
        where T : notnull => services.GetRequiredService<T>();

    public async Task<T> RowsAsync<T>(Func<ShopDbContext, Task<T>> ask)
    {
        await using var shop = await Get<IDbContextFactory<ShopDbContext>>().CreateDbContextAsync();
        return await ask(shop);
    }

    public Task<PersonId> IdOfAsync(string name) =>
        RowsAsync(rows => rows.People.Where(person => person.Name == name).Select(person => person.Id).SingleAsync());

    /// <summary>This person sits at the tablet from now on.</summary>
    public async Task<PersonId> SignInAsync(DemoPeople.DemoPerson person)
    {
        var id = await IdOfAsync(person.Name);
        var session = await Get<SessionDesk>().OpenAsync(id, Tablet);
        Circuit.User = PersonClaims.Of(session, person.Name);
        return id;
    }

    public void Dispose()
    {
        services.Dispose();
        SqliteConnection.ClearAllPools();
        folder.Delete(recursive: true);
    }

    public sealed class FakeCircuit : AuthenticationStateProvider
    {
        public ClaimsPrincipal User { get; set; } = new(new ClaimsIdentity());

        public override Task<AuthenticationState> GetAuthenticationStateAsync() => Task.FromResult(new AuthenticationState(User));
    }
}
