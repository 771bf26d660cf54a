using System.Collections.Concurrent;
using System.Globalization;
using Microsoft.Data.Sqlite;

namespace ShopJobs.Web.Data.Logbook;

/// <summary>
/// The connections the logbook keeps open to its SQLite file: one that writes, with every commit on the disk before it is
/// acknowledged, and a few that can only read.
/// </summary>
public sealed class LogbookDatabase(string file) : IDisposable
{
    private readonly ConcurrentBag<ReadSession> resting = [];

    /// <summary>How long another writer is waited for.</summary>
    internal TimeSpan Patience { get; init; } = TimeSpan.FromSeconds(5);

    /// <summary>Runs on the writing connection once it is open.</summary>
    internal Action<SqliteConnection>? WriterOpened { get; init; }

    internal SqliteConnection OpenWriter()
    {
        var connection = Open();
        Set(connection, "PRAGMA synchronous = FULL; PRAGMA recursive_triggers = ON; PRAGMA secure_delete = ON;");
        WriterOpened?.Invoke(connection);
        return connection;
    }

    /// <summary>Reads within one snapshot: what others commit meanwhile is not seen.</summary>
    internal T Read<T>(Func<ReadSession, T> read)
    {
        if (!resting.TryTake(out var session))
        {
            var connection = Open();
            Set(connection, "PRAGMA query_only = ON; PRAGMA cache_size = -16000;");
            session = new ReadSession(connection);
        }

        try
        {
            using var snapshot = session.Connection.BeginTransaction(deferred: true);
            session.Join(snapshot);
            var result = read(session);
            snapshot.Commit();
            resting.Add(session);
            return result;
        }
        catch
        {
            session.Dispose();
            throw;
        }
    }

    public void Dispose()
    {
        while (resting.TryTake(out var session))
        {
            session.Dispose();
        }
    }

    private SqliteConnection Open()
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder
        {
            DataSource = file,
            Mode = SqliteOpenMode.ReadWrite,
            Pooling = false,
            ForeignKeys = true,
            DefaultTimeout = (int)Math.Ceiling(Patience.TotalSeconds),
        }.ToString());
        connection.Open();
        Set(connection, string.Create(CultureInfo.InvariantCulture, $"PRAGMA busy_timeout = {Patience.TotalMilliseconds:F0}"));
        return connection;
    }

    private static void Set(SqliteConnection connection, string pragmas)
    {
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // Only this file's own text reaches it.
        command.CommandText = pragmas;
#pragma warning restore CA2100
        command.ExecuteNonQuery();
    }
}
