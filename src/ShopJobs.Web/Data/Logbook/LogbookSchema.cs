using Microsoft.Data.Sqlite;

namespace ShopJobs.Web.Data.Logbook;

/// <summary>The hand-written SQL that makes the logbook tables, and a reading of what a database really has.</summary>
internal static class LogbookSchema
{
    /// <summary>The statements of one script of <c>Schema/</c>.</summary>
    public static string Script(string name)
    {
        var resource = $"{typeof(LogbookSchema).Namespace}.Schema.{name}.sql";
        using var stream = typeof(LogbookSchema).Assembly.GetManifestResourceStream(resource)
            ?? throw new InvalidOperationException($"The program holds no schema script {resource}.");
        using var text = new StreamReader(stream);
        return text.ReadToEnd();
    }

    /// <summary>Each table, unique key or trigger this database lacks or has otherwise, in words; empty when all is well.</summary>
    public static IReadOnlyList<string> Differences(SqliteConnection connection)
    {
        var expected = Expected();
        var found = Found(connection);
        var missing = expected.Keys.Except(found.Keys).Select(name => $"{name} is missing");
        var altered = expected.Where(e => found.TryGetValue(e.Key, out var sql) && sql != e.Value).Select(e => $"{e.Key} is not as this program made it");
        var foreign = found.Keys.Except(expected.Keys).Where(IsNoIndex).Select(name => $"{name} was put there by something else");
        return [.. missing.Concat(altered).Concat(foreign).Order(StringComparer.Ordinal)];
    }

    private static bool IsNoIndex(string name) => !name.StartsWith("index ", StringComparison.Ordinal);

    /// <summary>Every table, index and trigger a sound database has on these tables, by name, with its SQL.</summary>
    private static Dictionary<string, string> Expected()
    {
        using var blank = new SqliteConnection("Data Source=:memory:;Pooling=False");
        blank.Open();
        using var create = blank.CreateCommand();
#pragma warning disable CA2100 // The text is this program's own script.
        create.CommandText = Script(LogbookMigration.ScriptName);
#pragma warning restore CA2100
        create.ExecuteNonQuery();
        return Found(blank);
    }

    /// <summary>Every table, index and trigger this database has on these tables, by name, with its SQL.</summary>
    private static Dictionary<string, string> Found(SqliteConnection connection)
    {
        using var read = connection.CreateCommand();
        read.CommandText = """
            SELECT type || ' ' || name, sql FROM sqlite_master
            WHERE sql IS NOT NULL AND tbl_name COLLATE NOCASE IN ('entries', 'heads', 'content', 'command_outcomes')
            """;
        using var rows = read.ExecuteReader();
        var found = new Dictionary<string, string>();
        while (rows.Read())
        {
            found.Add(rows.GetString(0), rows.GetString(1));
        }

        return found;
    }
}
