using Microsoft.Data.Sqlite;

namespace ShopJobs.Web.Data.Logbook;

/// <summary>
/// Whether the database still has what makes the logbook append-only and durable. With any problem the program serves
/// readers only: nothing is appended until the database is put right and the program started again.
/// </summary>
/// <param name="Problems">Each missing or altered guard, in words; empty when all is well.</param>
public sealed record LogbookHealth(IReadOnlyList<string> Problems)
{
    private const long Full = 2;

    /// <summary>True when entries may be appended.</summary>
    public bool MayWrite => Problems.Count == 0;

    /// <summary>Checks tables, unique keys, triggers, journal mode and synchronous mode as this connection has them.</summary>
    public static LogbookHealth Check(SqliteConnection connection)
    {
        var journal = (string)Ask(connection, "PRAGMA journal_mode");
        var synchronous = (long)Ask(connection, "PRAGMA synchronous");
        return new LogbookHealth(
        [
            .. LogbookSchema.Differences(connection).Select(difference => difference.ToString()),
            .. journal == "wal" ? Array.Empty<string>() : [$"journal mode is {journal}, not wal"],
            .. synchronous >= Full ? Array.Empty<string>() : ["synchronous mode is below full"],
        ]);
    }

    private static object Ask(SqliteConnection connection, string pragma)
    {
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // Only the two constants above reach it.
        command.CommandText = pragma;
#pragma warning restore CA2100
        return command.ExecuteScalar() ?? throw new InvalidOperationException($"{pragma} gave no answer.");
    }
}
