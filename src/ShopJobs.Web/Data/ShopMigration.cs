using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Data;

/// <summary>
/// Brings the shop's database up to date when something is pending, and touches nothing otherwise. One process at a time does
/// it: it holds a file beside the database open for itself, which the system lets go of when the process ends, however it ends.
/// </summary>
/// <remarks>
/// A row in the database that says "somebody is at it" outlives whoever wrote it. Under the file's lock such a row can only be
/// left over from a process that was killed, and is deleted.
/// </remarks>
internal sealed class ShopMigration(ShopDbContext shop, DataFolder folder, ILogger log)
{
    private static readonly TimeSpan LookAgain = TimeSpan.FromMilliseconds(200);

    // What the system answers where another process holds the file: EAGAIN on Linux, EWOULDBLOCK on macOS, ERROR_SHARING_VIOLATION.
    private static readonly int[] HeldByAnother = [11, 35, unchecked((int)0x80070020)];

    /// <summary>Applies what is pending.</summary>
    internal async Task RunAsync(CancellationToken cancellation)
    {
        Recover();
        if (!await IsPendingAsync(cancellation))
        {
            return;
        }

        await using var held = await HoldAsync(cancellation);
        if (await IsPendingAsync(cancellation))
        {
            await ClearLeftOverLockAsync(cancellation);
            await shop.Database.MigrateAsync(cancellation);
        }
    }

    // What a killed process left half written is rolled back by the first connection that reads and may write. Looking for what is
    // pending opens the file for reading alone, and could not.
    private void Recover()
    {
        if (!File.Exists(folder.Database))
        {
            return;
        }

        try
        {
            using var connection = new SqliteConnection(SqliteHabits.ConnectionString(folder.Database));
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = "PRAGMA schema_version";
            command.ExecuteScalar();
        }
        catch (SqliteException e) when (StorageFailure.Of(e) is not null)
        {
            log.LogWarning(e, "The database in {Folder} can't be written now; it is only read.", folder.Root);
        }
    }

    private async Task<bool> IsPendingAsync(CancellationToken cancellation) => (await shop.Database.GetPendingMigrationsAsync(cancellation)).Any();

    private async Task<FileStream> HoldAsync(CancellationToken cancellation)
    {
        for (var told = false; ; told = true)
        {
            try
            {
                return new FileStream(folder.MigrationLock, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            }
            catch (IOException held) when (HeldByAnother.Contains(held.HResult))
            {
                if (!told)
                {
                    log.LogWarning(
                        "Another ShopJobs is bringing the database in {Folder} up to date. Waiting until it is done; if none runs, end whatever holds {File}.",
                        folder.Root, folder.MigrationLock);
                }

                await Task.Delay(LookAgain, cancellation);
            }
        }
    }

    private async Task ClearLeftOverLockAsync(CancellationToken cancellation)
    {
        if (!File.Exists(folder.Database))
        {
            return;
        }

        var tables = await shop.Database
            .SqlQuery<int>($"SELECT count(*) AS Value FROM sqlite_master WHERE type = 'table' AND name = '__EFMigrationsLock'")
            .SingleAsync(cancellation);
        if (tables > 0 && await shop.Database.ExecuteSqlAsync($"DELETE FROM __EFMigrationsLock", cancellation) > 0)
        {
            log.LogWarning(
                "An earlier start was ended while it brought the database up to date, and left its mark behind. The mark was taken away; the work is done now.");
        }
    }
}
