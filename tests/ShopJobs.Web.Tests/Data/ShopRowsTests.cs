using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Data.Procedures;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Data;

public sealed class ShopRowsTests : IAsyncLifetime
{
    private ShopOnDisk shop = default!;

    public async Task InitializeAsync() => shop = await ShopOnDisk.OpenAsync();

    public Task DisposeAsync()
    {
        shop.Dispose();
        return Task.CompletedTask;
    }

    [Fact]
    public async Task Migrations_hold_the_whole_model()
    {
        Assert.False(await shop.RowsAsync(rows => Task.FromResult(rows.Database.HasPendingModelChanges())));
    }

    [Theory]
    [InlineData("PRAGMA foreign_keys", 1)]
    [InlineData("PRAGMA synchronous", 2)]
    [InlineData("PRAGMA recursive_triggers", 1)]
    public async Task Every_connection_is_strict(string pragma, long expected)
    {
        Assert.Equal(expected, await AskAsync<long>(pragma));
    }

    [Fact]
    public async Task Database_writes_ahead()
    {
        Assert.Equal("wal", await AskAsync<string>("PRAGMA journal_mode"));
    }

    [Fact]
    public async Task Rights_and_places_are_stored_as_words()
    {
        Assert.Equal("Record", await AskAsync<string>("SELECT \"Right\" FROM PersonRights WHERE \"Right\" LIKE 'R%' ORDER BY \"Right\" LIMIT 1"));
        Assert.Equal("LiftA", await AskAsync<string>("SELECT Place FROM Cars WHERE Name = 'Blue'"));
    }

    [Fact]
    public async Task Car_of_nobody_is_refused_by_the_database()
    {
        await Assert.ThrowsAsync<DbUpdateException>(() => shop.RowsAsync(rows =>
        {
            rows.Cars.Add(new Car { Id = new CarId(Guid.NewGuid()), Name = "Silver", Model = "Lorrick 9" });
            return rows.SaveChangesAsync();
        }));
    }

    [Fact]
    public async Task Only_one_joint_register_is_current()
    {
        await Assert.ThrowsAsync<DbUpdateException>(() => shop.RowsAsync(rows =>
        {
            rows.JointRegisters.AddRange(Register("a"), Register("b"));
            return rows.SaveChangesAsync();
        }));
    }

    private static JointRegisterRevision Register(string digest) => new() { Digest = digest, Yaml = [], Current = true };

    private Task<T> AskAsync<T>(string sql) => shop.RowsAsync(async rows =>
    {
        await rows.Database.OpenConnectionAsync();
        await using var command = rows.Database.GetDbConnection().CreateCommand();
#pragma warning disable CA2100 // Only this file's own text reaches it.
        command.CommandText = sql;
#pragma warning restore CA2100
        return (T)(await command.ExecuteScalarAsync())!;
    });
}
