using Microsoft.Data.Sqlite;

namespace ShopJobs.Benchmarks;

/// <summary>
/// The floor of recording a pull: a prepared insert, by hand, of the same two rows (entry and outcome) and the same head, with the same
/// durability, on a connection of its own and without any trigger.
/// </summary>
internal sealed class RawRows : IDisposable
{
    private readonly SqliteConnection raw;
    private readonly SqliteCommand[] inserts;
    private readonly byte[] envelope;
    private readonly byte[] outcome;
    private long number;

    public RawRows(BenchShop shop)
    {
        var (car, job) = shop.CarWithNutsOn();
        shop.DoCounting(car, shop.Pull(job, 0));
        using (var rows = new SqliteConnection($"Data Source={shop.Folder.Database};Mode=ReadOnly"))
        {
            rows.Open();
            envelope = Blob(rows, "SELECT envelope FROM entries WHERE kind = 'torque-recorded'");
            outcome = Blob(rows, "SELECT answer FROM command_outcomes ORDER BY at DESC LIMIT 1");
        }

        raw = new SqliteConnection($"Data Source={Path.Combine(shop.Folder.Root, "floor.db")};Pooling=False");
        raw.Open();
        using var schema = raw.CreateCommand();
        schema.CommandText = """
            PRAGMA journal_mode = WAL;
            PRAGMA synchronous = FULL;
            CREATE TABLE entries (
                id INTEGER PRIMARY KEY, owner_kind TEXT NOT NULL, owner TEXT NOT NULL, number INTEGER NOT NULL, hash BLOB NOT NULL,
                envelope BLOB NOT NULL, at INTEGER NOT NULL, person TEXT NOT NULL, session_person TEXT, device TEXT NOT NULL,
                command TEXT NOT NULL, kind TEXT NOT NULL, version INTEGER NOT NULL, job TEXT, joint TEXT, place TEXT,
                position INTEGER, tool TEXT, UNIQUE (owner_kind, owner, number));
            CREATE INDEX entries_of_job ON entries (job) WHERE job IS NOT NULL;
            CREATE INDEX entries_of_tool ON entries (tool) WHERE tool IS NOT NULL;
            CREATE TABLE heads (owner TEXT PRIMARY KEY, number INTEGER NOT NULL, hash BLOB NOT NULL) WITHOUT ROWID;
            INSERT INTO heads VALUES ('car', 0, zeroblob(32));
            CREATE TABLE command_outcomes (
                command TEXT PRIMARY KEY NOT NULL, request_digest BLOB NOT NULL, answer BLOB NOT NULL, at INTEGER NOT NULL) WITHOUT ROWID;
            """;
        schema.ExecuteNonQuery();
        inserts =
        [
            Prepare(
                """
                INSERT INTO entries (owner_kind, owner, number, hash, envelope, at, person, session_person, device, command, kind, version, job, joint, place, position, tool)
                VALUES ('car', 'B9A2F2A6-0000-4000-8000-000000000001', $1, randomblob(32), $2, 1, 'B9A2F2A6-0000-4000-8000-000000000002',
                    'B9A2F2A6-0000-4000-8000-000000000002', 'B9A2F2A6-0000-4000-8000-000000000003', $3, 'torque-recorded', 1,
                    'B9A2F2A6-0000-4000-8000-000000000004', 'wheel.nut', 'front-left', 1, 'B9A2F2A6-0000-4000-8000-000000000005')
                """,
                3),
            Prepare("UPDATE heads SET number = $1, hash = randomblob(32) WHERE owner = 'car'", 1),
            Prepare("INSERT INTO command_outcomes VALUES ($1, randomblob(32), $2, 1)", 2),
        ];
    }

    /// <summary>One pull's rows, on the disk.</summary>
    public void Insert()
    {
        using var transaction = raw.BeginTransaction(deferred: false);
        var command = Guid.NewGuid();
        number++;
        Run(transaction, 0, number, envelope, command);
        Run(transaction, 1, number);
        Run(transaction, 2, command, outcome);
        transaction.Commit();
    }

    public void Dispose() => raw.Dispose();

    private SqliteCommand Prepare(string sql, int parameters)
    {
        var command = raw.CreateCommand();
#pragma warning disable CA2100 // Only the constants above reach it.
        command.CommandText = sql;
#pragma warning restore CA2100
        for (var i = 1; i <= parameters; i++)
        {
            command.Parameters.Add(new SqliteParameter { ParameterName = $"${i}" });
        }

        return command;
    }

    private void Run(SqliteTransaction transaction, int which, params ReadOnlySpan<object> values)
    {
        var command = inserts[which];
        command.Transaction = transaction;
        for (var i = 0; i < values.Length; i++)
        {
            command.Parameters[i].Value = values[i];
        }

        command.ExecuteNonQuery();
    }

    private static byte[] Blob(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // Only the constants above reach it.
        command.CommandText = sql;
#pragma warning restore CA2100
        return (byte[])command.ExecuteScalar()!;
    }
}
