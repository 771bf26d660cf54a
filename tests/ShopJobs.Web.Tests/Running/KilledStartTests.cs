using Microsoft.Data.Sqlite;
using ShopJobs.Tests.Shared;

namespace ShopJobs.Web.Tests.Running;

/// <summary>The program itself, killed while it starts.</summary>
public sealed class KilledStartTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("shop-");

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        folder.Delete(recursive: true);
    }

    /// <param name="bytes">How much of the new database is on the disk when the program is killed.</param>
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(20_000)]
    [InlineData(100_000)]
    [InlineData(250_000)]
    public async Task The_next_start_opens_the_shop(long bytes)
    {
        await ShopServer.KillAtAsync(folder, () => Files("shop.db.up-to-date").Count > 0 && Files("shop.db*").Sum(Length) >= bytes);

        await using var shop = await ShopServer.StartAsync(folder);

        using var client = new HttpClient { BaseAddress = shop.Address };
        Assert.Equal("Healthy", await client.GetStringAsync("/healthz"));
        Assert.Contains("Start the demo shop", await client.GetStringAsync("/start"), StringComparison.Ordinal);
    }

    /// <summary>The journal of an unfinished transaction lies beside the database: only a connection that may write can roll it back.</summary>
    [Fact]
    public async Task A_start_after_a_kill_in_the_middle_of_a_transaction_rolls_it_back_and_opens_the_shop()
    {
        var elsewhere = Directory.CreateTempSubdirectory("killed-");
        var database = Path.Combine(elsewhere.FullName, "shop.db");
        await using (var writing = new SqliteConnection($"Data Source={database};Pooling=False"))
        {
            writing.Open();
            Run(writing, "PRAGMA journal_mode=DELETE; PRAGMA cache_size=1; CREATE TABLE half (text TEXT)");
            Run(writing, "BEGIN; INSERT INTO half SELECT hex(randomblob(400)) FROM (WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 2000) SELECT i FROM n)");
            foreach (var name in new[] { "shop.db", "shop.db-journal" })
            {
                File.Copy(Path.Combine(elsewhere.FullName, name), Path.Combine(folder.FullName, name));
            }

            Run(writing, "ROLLBACK");
        }

        elsewhere.Delete(recursive: true);

        await using var shop = await ShopServer.StartAsync(folder);

        using var client = new HttpClient { BaseAddress = shop.Address };
        Assert.Equal("Healthy", await client.GetStringAsync("/healthz"));
    }

    private static void Run(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // Only this test's own text reaches it.
        command.CommandText = sql;
#pragma warning restore CA2100
        command.ExecuteNonQuery();
    }

    private IReadOnlyList<FileInfo> Files(string pattern) => folder.GetFiles(pattern);

    private static long Length(FileInfo file)
    {
        file.Refresh();
        return file.Exists ? file.Length : 0;
    }
}
