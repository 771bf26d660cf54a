using ShopJobs.Domain.Logbook;
using SQLitePCL;

namespace ShopJobs.Web.Data.Logbook.Verify;

/// <summary>The heads as the database has them.</summary>
internal static class StoredHeads
{
    public static Dictionary<LogbookId, Head> Read(VerifyConnection connection, List<LogbookProblem> problems)
    {
        var heads = new Dictionary<LogbookId, Head>();
        foreach (var row in connection.Rows("SELECT owner_kind || ':' || lower(owner), number, hash FROM heads"))
        {
            var name = raw.sqlite3_column_text(row, 0).utf8_to_string();
            if (!LogbookId.TryParse(name, out var logbook) || !heads.TryAdd(logbook, HeadAt(row, 1)))
            {
                problems.Add(new LogbookProblem(null, null, LogbookFault.NoLogbook, $"a head names no logbook, or one twice: {name}"));
            }
        }

        return heads;
    }

    /// <summary>A number in this column and a hash in the next.</summary>
    public static Head HeadAt(sqlite3_stmt row, int column)
    {
        var hash = raw.sqlite3_column_blob(row, column + 1);
        return new Head(raw.sqlite3_column_int64(row, column), hash.Length == EntryHash.Size ? new EntryHash(hash) : default);
    }
}
