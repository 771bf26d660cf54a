using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace ShopJobs.Web.Data;

/// <summary>
/// What every connection to the shop's file is told: acknowledged means on the disk, what was erased is gone from the file,
/// foreign keys hold, and a replacing insert fires the triggers that guard append-only tables.
/// </summary>
internal sealed class SqliteHabits : DbConnectionInterceptor
{
    private const string Pragmas = "PRAGMA synchronous=FULL; PRAGMA secure_delete=ON;";

    internal static string ConnectionString(string file) => new SqliteConnectionStringBuilder
    {
        DataSource = file,
        ForeignKeys = true,
        RecursiveTriggers = true,
        DefaultTimeout = 10,
    }.ToString();

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using var command = connection.CreateCommand();
        command.CommandText = Pragmas;
        command.ExecuteNonQuery();
    }

    public override async Task ConnectionOpenedAsync(
        DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        await using var command = connection.CreateCommand();
        command.CommandText = Pragmas;
        await command.ExecuteNonQueryAsync(cancellationToken);
    }
}
