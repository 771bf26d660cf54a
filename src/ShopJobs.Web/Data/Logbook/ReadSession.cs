using Microsoft.Data.Sqlite;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Logbook;

/// <summary>One connection with the logbook's reading commands prepared on it.</summary>
internal sealed class ReadSession : IDisposable
{
    private readonly SqliteCommand head;
    private readonly SqliteCommand entries;
    private readonly SqliteCommand content;
    private readonly SqliteCommand outcome;
    private readonly Dictionary<string, SqliteCommand> asked = [];
    private SqliteTransaction? joined;

    public ReadSession(SqliteConnection connection)
    {
        Connection = connection;
        head = connection.CreateCommand();
        head.CommandText = "SELECT number, hash FROM heads WHERE owner_kind = $kind AND owner = $owner";
        entries = connection.CreateCommand();
        entries.CommandText = """
            SELECT number, hash, envelope FROM entries
            WHERE owner_kind = $kind AND owner = $owner AND number > $after ORDER BY number LIMIT $most
            """;
        content = connection.CreateCommand();
        content.CommandText = "SELECT salt, bytes, erased_at FROM content WHERE digest = $digest";
        outcome = connection.CreateCommand();
        outcome.CommandText = "SELECT request_digest, answer FROM command_outcomes WHERE command = $command";
        Declare(head, "$kind", "$owner");
        Declare(entries, "$kind", "$owner", "$after", "$most");
        Declare(content, "$digest");
        Declare(outcome, "$command");
    }

    public SqliteConnection Connection { get; }

    /// <summary>Makes the commands part of a transaction of this connection.</summary>
    public void Join(SqliteTransaction transaction) =>
        head.Transaction = entries.Transaction = content.Transaction = outcome.Transaction = joined = transaction;

    /// <summary>
    /// The first value that a statement of the program's own text gives, with $1, $2 and so on for the values; prepared once on this connection.
    /// </summary>
    public object? Ask(string sql, IReadOnlyList<object> values)
    {
        if (!asked.TryGetValue(sql, out var command))
        {
            command = Connection.CreateCommand();
#pragma warning disable CA2100 // Constant texts of the program: LogbookReader.Row asks for that.
            command.CommandText = sql;
#pragma warning restore CA2100
            for (var i = 1; i <= values.Count; i++)
            {
                command.Parameters.Add(new SqliteParameter { ParameterName = $"${i}" });
            }

            asked.Add(sql, command);
        }

        command.Transaction = joined;
        for (var i = 0; i < values.Count; i++)
        {
            command.Parameters[i].Value = values[i];
        }

        return command.ExecuteScalar();
    }

    /// <summary>Instant of the newest entry in any logbook; null while there is none.</summary>
    public DateTime? NewestInstant() =>
        Ask("SELECT at FROM entries ORDER BY id DESC LIMIT 1", []) is long at ? MicrosecondClock.FromStored(at) : null;

    public Head HeadOf(LogbookId logbook)
    {
        Name(head, logbook);
        using var row = head.ExecuteReader();
        return row.Read() ? new Head(row.GetInt64(0), Hash(row, 1)) : default;
    }

    /// <summary>Number, chain value and envelope bytes of the entries after a number, oldest first.</summary>
    public IEnumerable<(Head Head, byte[] Envelope)> EntriesAfter(LogbookId logbook, long number, long atMost = long.MaxValue)
    {
        Name(entries, logbook);
        entries.Parameters[2].Value = number;
        entries.Parameters[3].Value = atMost;
        using var rows = entries.ExecuteReader();
        while (rows.Read())
        {
            yield return (new Head(rows.GetInt64(0), Hash(rows, 1)), rows.GetFieldValue<byte[]>(2));
        }
    }

    public StoredContent ContentOf(ContentDigest digest)
    {
        content.Parameters[0].Value = digest.ToArray();
        using var row = content.ExecuteReader();
        if (!row.Read())
        {
            return new StoredContent.Missing();
        }

        if (!row.IsDBNull(2))
        {
            return new StoredContent.Erased(MicrosecondClock.FromStored(row.GetInt64(2)));
        }

        var bytes = row.GetFieldValue<byte[]>(1);
        return ContentDigest.Of(row.GetFieldValue<byte[]>(0), bytes) == digest
            ? new StoredContent.Present(bytes)
            : new StoredContent.Altered();
    }

    /// <summary>What a command asked and was answered; null for one that was never accepted.</summary>
    public (byte[] Request, byte[] Answer)? OutcomeOf(CommandId command)
    {
        outcome.Parameters[0].Value = command.Value;
        using var row = outcome.ExecuteReader();
        return row.Read() ? (row.GetFieldValue<byte[]>(0), row.GetFieldValue<byte[]>(1)) : null;
    }

    public void Dispose()
    {
        head.Dispose();
        entries.Dispose();
        content.Dispose();
        outcome.Dispose();
        foreach (var command in asked.Values)
        {
            command.Dispose();
        }

        Connection.Dispose();
    }

    private static void Declare(SqliteCommand command, params ReadOnlySpan<string> names)
    {
        foreach (var name in names)
        {
            command.Parameters.Add(new SqliteParameter { ParameterName = name });
        }
    }

    private static void Name(SqliteCommand command, LogbookId logbook)
    {
        command.Parameters[0].Value = logbook.KindName;
        command.Parameters[1].Value = logbook.Owner;
    }

    private static EntryHash Hash(SqliteDataReader row, int column) => new(row.GetFieldValue<byte[]>(column));
}
