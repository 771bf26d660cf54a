using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore.Diagnostics;
using ShopJobs.Web.Data;

namespace ShopJobs.Web.Tests.Running;

/// <summary>How a database that can't be written answers.</summary>
public enum Trouble
{
    /// <summary>The disk is full. SQLite's own answer needs a disk of its own, so its code is given for it.</summary>
    Full,

    /// <summary>Another connection holds the write lock: SQLite's own answer.</summary>
    Busy,

    /// <summary>The connection may only read: SQLite's own answer.</summary>
    ReadOnly,
}

/// <summary>Takes the shop's disk away and gives it back.</summary>
internal sealed class BrokenDisk(Func<DataFolder> folder) : DbCommandInterceptor, IDisposable
{
    private static readonly string[] Writes = ["INSERT", "UPDATE", "DELETE", "PRAGMA user_version ="];
    private Trouble? now;
    private SqliteConnection? holder;

    public void Break(Trouble trouble)
    {
        now = trouble;
        if (trouble == Trouble.Busy)
        {
            holder = new SqliteConnection($"Data Source={folder().Database};Pooling=False");
            holder.Open();
            Tell(holder, "BEGIN IMMEDIATE");
        }
    }

    public void Mend()
    {
        now = null;
        holder?.Dispose();
        holder = null;
    }

    public void Dispose() => Mend();

    public override ValueTask<InterceptionResult<int>> NonQueryExecutingAsync(
        DbCommand command, CommandEventData eventData, InterceptionResult<int> result, CancellationToken cancellationToken = default)
    {
        Meet(command);
        return new(result);
    }

    public override ValueTask<InterceptionResult<DbDataReader>> ReaderExecutingAsync(
        DbCommand command, CommandEventData eventData, InterceptionResult<DbDataReader> result, CancellationToken cancellationToken = default)
    {
        Meet(command);
        return new(result);
    }

    private void Meet(DbCommand command)
    {
        if (now == Trouble.Full && Writes.Any(write => command.CommandText.TrimStart().StartsWith(write, StringComparison.Ordinal)))
        {
            throw new SqliteException("SQLite Error 13: 'database or disk is full'.", 13);
        }

        Tell((SqliteConnection)command.Connection!, $"PRAGMA query_only = {(now == Trouble.ReadOnly ? 1 : 0)}");
    }

    private static void Tell(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // Only this file's own text reaches it.
        command.CommandText = sql;
#pragma warning restore CA2100
        command.ExecuteNonQuery();
    }
}
