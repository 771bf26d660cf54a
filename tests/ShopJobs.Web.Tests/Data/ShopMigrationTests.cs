using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using ShopJobs.Web.Data;

namespace ShopJobs.Web.Tests.Data;

public sealed class ShopMigrationTests : IDisposable
{
    private readonly DirectoryInfo directory = Directory.CreateTempSubdirectory("shop-");
    private readonly Heard heard = new();
    private readonly ServiceProvider services;

    public ShopMigrationTests() => services = new ServiceCollection()
        .AddLogging(log => log.AddProvider(heard).AddFilter(level => level >= LogLevel.Warning))
        .AddShopData(new DataFolder(directory.FullName, directory.FullName))
        .BuildServiceProvider();

    public void Dispose()
    {
        services.Dispose();
        SqliteConnection.ClearAllPools();
        directory.Delete(recursive: true);
    }

    [Theory]
    [InlineData("FirstRows")]
    [InlineData("PartOptions")]
    [InlineData("LinksEndWithOwner")]
    [InlineData("FloorSpace")]
    public async Task A_mark_left_by_a_killed_start_is_taken_away_and_said(string reached)
    {
        await using (var older = await NewContextAsync())
        {
            await older.GetService<IMigrator>().MigrateAsync(reached);
            await LeaveMarkAsync(older);
        }

        await services.MigrateShopAsync();

        await using var shop = await NewContextAsync();
        Assert.Empty(await shop.Database.GetPendingMigrationsAsync());
        Assert.Contains("left its mark behind", Assert.Single(heard.Lines), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_mark_beside_an_up_to_date_database_holds_nobody_up()
    {
        await services.MigrateShopAsync();
        await using var shop = await NewContextAsync();
        await LeaveMarkAsync(shop);

        await services.MigrateShopAsync();

        Assert.Empty(heard.Lines);
    }

    [Fact]
    public async Task While_another_process_is_at_it_the_start_waits_and_says_so()
    {
        var folder = services.GetRequiredService<DataFolder>();
        Task waiting;
        await using (new FileStream(folder.MigrationLock, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None))
        {
            waiting = services.MigrateShopAsync();
            Assert.Contains("Waiting until it is done", await heard.First.WaitAsync(TimeSpan.FromMinutes(1)), StringComparison.Ordinal);
            Assert.False(waiting.IsCompleted);
            Assert.False(File.Exists(folder.Database));
        }

        await waiting;
        await using var shop = await NewContextAsync();
        Assert.Empty(await shop.Database.GetPendingMigrationsAsync());
        Assert.Single(heard.Lines);
    }

    [Fact]
    public async Task Several_starts_at_once_bring_it_up_to_date_once()
    {
        await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() => services.MigrateShopAsync())));

        await using var shop = await NewContextAsync();
        Assert.Empty(await shop.Database.GetPendingMigrationsAsync());
        Assert.Equal(shop.Database.GetMigrations(), await shop.Database.GetAppliedMigrationsAsync());
    }

    private static async Task LeaveMarkAsync(ShopDbContext shop) => Assert.Equal(
        1, await shop.Database.ExecuteSqlAsync($"INSERT INTO __EFMigrationsLock (Id, Timestamp) VALUES (1, '2026-01-01 00:00:00')"));

    private Task<ShopDbContext> NewContextAsync() => services.GetRequiredService<IDbContextFactory<ShopDbContext>>().CreateDbContextAsync();

    private sealed class Heard : ILoggerProvider, ILogger
    {
        private readonly TaskCompletionSource<string> first = new(TaskCreationOptions.RunContinuationsAsynchronously);
        private readonly List<string> lines = [];

        public Task<string> First => first.Task;

        public IReadOnlyList<string> Lines
        {
            get
            {
                lock (lines)
                {
                    return [.. lines];
                }
            }
        }

        public ILogger CreateLogger(string categoryName) => this;

        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull => null;

        public bool IsEnabled(LogLevel logLevel) => logLevel >= LogLevel.Warning;

        public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter)
        {
            lock (lines)
            {
                lines.Add(formatter(state, exception));
            }

            first.TrySetResult(formatter(state, exception));
        }

        public void Dispose()
        {
        }
    }
}
