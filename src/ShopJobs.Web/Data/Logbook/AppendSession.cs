using Microsoft.Data.Sqlite;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Logbook;

/// <summary>The writing connection with its commands prepared on it.</summary>
internal sealed class AppendSession : IDisposable
{
    private readonly SqliteConnection connection;
    private readonly SqliteCommand entry;
    private readonly SqliteCommand content;
    private readonly SqliteCommand erasure;
    private readonly SqliteCommand outcome;

    public AppendSession(SqliteConnection connection)
    {
        this.connection = connection;
        Health = LogbookHealth.Check(connection);
        Reading = new ReadSession(connection);
        entry = Prepare(
            """
            INSERT INTO entries (owner_kind, owner, number, hash, envelope, at, person, session_person, device, command, kind, version, job, joint, place, position, tool)
            VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13, $14, $15, $16, $17)
            """,
            17);
        content = Prepare("INSERT INTO content (digest, salt, bytes) VALUES ($1, $2, $3)", 3);
        erasure = Prepare("UPDATE content SET salt = NULL, bytes = NULL, erased_at = $2 WHERE digest = $1 AND erased_at IS NULL", 2);
        outcome = Prepare("INSERT INTO command_outcomes (command, request_digest, answer, at) VALUES ($1, $2, $3, $4)", 4);
    }

    public LogbookHealth Health { get; }

    /// <summary>Reads within the transaction begun last.</summary>
    public ReadSession Reading { get; }

    /// <summary>Takes the database's write lock, waiting for another writer for a few seconds.</summary>
    public SqliteTransaction Begin()
    {
        var transaction = connection.BeginTransaction(deferred: false);
        Reading.Join(transaction);
        entry.Transaction = content.Transaction = erasure.Transaction = outcome.Transaction = transaction;
        return transaction;
    }

    /// <summary>Reads within the transaction begun last. Throws when a row was changed by it: the transaction is then given up.</summary>
    /// <remarks>Making the connection refuse writes meanwhile would have every prepared statement prepared again, twice a command.</remarks>
    public T WithoutWriting<T>(Func<ReadSession, T> read)
    {
        var before = SQLitePCL.raw.sqlite3_total_changes(connection.Handle);
        var result = read(Reading);
        return SQLitePCL.raw.sqlite3_total_changes(connection.Handle) == before
            ? result
            : throw new InvalidOperationException("A decision changed a row while it read. It only reads; what it wants written it puts into its answer.");
    }

    /// <summary>Writes entries, each behind the one before it in its logbook.</summary>
    /// <param name="read">The heads that the decision read.</param>
    /// <param name="at">The instant of the entries, UTC.</param>
    public List<AppendedEntry> Append(IReadOnlyList<NewEntry> entries, CommandId command, Stamp stamp, IReadOnlyDictionary<LogbookId, Head> read, DateTime at)
    {
        var heads = new Dictionary<LogbookId, Head>(read);
        var appended = new List<AppendedEntry>(entries.Count);
        foreach (var entry in entries)
        {
            if (!heads.TryGetValue(entry.Logbook, out var head))
            {
                throw new InvalidOperationException($"A decision that doesn't read logbook {entry.Logbook} can't write to it.");
            }

            var envelope = new Envelope(
                entry.Logbook,
                head.Number + 1,
                at,
                stamp.Person,
                stamp.SessionPerson,
                stamp.Device,
                command,
                entry.Kind,
                entry.Version,
                entry.Payload);
            var bytes = EnvelopeCodec.Encode(envelope);
            var next = head.Next(bytes);
            Append(envelope, bytes, next.Hash, entry.Keys);
            heads[entry.Logbook] = next;
            appended.Add(new AppendedEntry(entry.Logbook, next.Number, next.Hash));
        }

        return appended;
    }

    public void Keep(NewContent kept) => Run(content, kept.Digest.ToArray(), kept.Salt, kept.Bytes);

    /// <summary>Erasing what is erased already, or was never there, changes nothing.</summary>
    public void Erase(ContentDigest digest, DateTime at) => Run(erasure, digest.ToArray(), MicrosecondClock.ToStored(at));

    public void Keep(CommandId command, byte[] request, byte[] answer, DateTime at) =>
        Run(outcome, command.Value, request, answer, MicrosecondClock.ToStored(at));

    /// <summary>Moves everything out of the write-ahead log and empties it; false when that can't be done yet.</summary>
    public bool EmptyWriteAheadLog()
    {
        try
        {
            using var command = connection.CreateCommand();
            command.CommandText = "PRAGMA wal_checkpoint(TRUNCATE)";
            using var row = command.ExecuteReader();
            return row.Read() && row.GetInt64(0) == 0;
        }
        catch (SqliteException)
        {
            // What was committed before stays committed; emptying is tried again after the next command.
            return false;
        }
    }

    public void Dispose()
    {
        entry.Dispose();
        content.Dispose();
        erasure.Dispose();
        outcome.Dispose();
        Reading.Dispose();
    }

    public void Append(Envelope envelope, byte[] bytes, EntryHash hash, EntryKeys keys) => Run(
        entry,
        envelope.Logbook.KindName,
        envelope.Logbook.Owner,
        envelope.Number,
        hash.ToArray(),
        bytes,
        MicrosecondClock.ToStored(envelope.At),
        envelope.Person.Value,
        envelope.SessionPerson?.Value,
        envelope.Device.Value,
        envelope.Command.Value,
        envelope.Kind,
        envelope.Version,
        keys.Job?.Value,
        keys.Joint,
        keys.Place,
        keys.Position,
        keys.Tool?.Value);

    private SqliteCommand Prepare(string sql, int parameters)
    {
        var command = connection.CreateCommand();
#pragma warning disable CA2100 // Only the constants above reach it.
        command.CommandText = sql;
#pragma warning restore CA2100
        for (var i = 1; i <= parameters; i++)
        {
            command.Parameters.Add(new SqliteParameter { ParameterName = $"${i}" });
        }

        return command;
    }

    private static void Run(SqliteCommand command, params ReadOnlySpan<object?> values)
    {
        for (var i = 0; i < values.Length; i++)
        {
            command.Parameters[i].Value = values[i] ?? DBNull.Value;
        }

        command.ExecuteNonQuery();
    }
}
