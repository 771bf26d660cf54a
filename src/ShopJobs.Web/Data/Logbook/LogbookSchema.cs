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

    /// <summary>Each table, unique key or trigger this database lacks or has otherwise; empty when all is well.</summary>
    public static IReadOnlyList<SchemaDifference> Differences(SqliteConnection connection)
    {
        var expected = Expected();
        var found = Found(connection);
        var missing = expected.Keys.Except(found.Keys).Select(part => new SchemaDifference(part.Type, part.Name, "is missing"));
        var altered = expected.Where(e => found.TryGetValue(e.Key, out var sql) && sql != e.Value)
            .Select(e => new SchemaDifference(e.Key.Type, e.Key.Name, "is not as this program made it"));
        var foreign = found.Keys.Except(expected.Keys).Where(part => part.Type != "index")
            .Select(part => new SchemaDifference(part.Type, part.Name, "was put there by something else"));
        return [.. missing.Concat(altered).Concat(foreign).OrderBy(difference => difference.ToString(), StringComparer.Ordinal)];
    }

    /// <summary>Every table, index and trigger a sound database has on these tables, by kind and name, with its SQL.</summary>
    private static Dictionary<(string Type, string Name), string> Expected()
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

    /// <summary>Every table, index and trigger this database has on these tables, by kind and name, with its SQL.</summary>
    private static Dictionary<(string Type, string Name), string> Found(SqliteConnection connection)
    {
        using var read = connection.CreateCommand();
        read.CommandText = """
            SELECT type, name, sql FROM sqlite_master
            WHERE sql IS NOT NULL AND tbl_name COLLATE NOCASE IN ('entries', 'heads', 'content', 'command_outcomes')
            """;
        using var rows = read.ExecuteReader();
        var found = new Dictionary<(string, string), string>();
        while (rows.Read())
        {
            found.Add((rows.GetString(0), rows.GetString(1)), rows.GetString(2));
        }

        return found;
    }
}
