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
        Assert.Contains("Open the demo shop", await client.GetStringAsync("/start"), StringComparison.Ordinal);
    }

    private IReadOnlyList<FileInfo> Files(string pattern) => folder.GetFiles(pattern);

    private static long Length(FileInfo file)
    {
        file.Refresh();
        return file.Exists ? file.Length : 0;
    }
}
