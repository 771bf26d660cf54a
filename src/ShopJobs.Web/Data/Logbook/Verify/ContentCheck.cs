using ShopJobs.Domain.Logbook;
using SQLitePCL;

namespace ShopJobs.Web.Data.Logbook.Verify;

/// <summary>Compares content with the digest it is kept under.</summary>
internal static class ContentCheck
{
    /// <summary>How many rows there are to compare, and how many were erased.</summary>
    public static (long Contents, long Erased) Run(VerifyConnection connection, List<LogbookProblem> problems)
    {
        var (contents, erased) = (0L, 0L);
        foreach (var row in connection.Rows("SELECT digest, salt, bytes, erased_at FROM content"))
        {
            if (raw.sqlite3_column_type(row, 3) != raw.SQLITE_NULL)
            {
                erased++;
                continue;
            }

            contents++;
            var digest = raw.sqlite3_column_blob(row, 0);
            if (!ContentDigest.Of(raw.sqlite3_column_blob(row, 1), raw.sqlite3_column_blob(row, 2)).ToArray().AsSpan().SequenceEqual(digest))
            {
                problems.Add(new LogbookProblem(null, null, LogbookFault.ContentAltered, $"content {Convert.ToHexStringLower(digest)} does not match its digest"));
            }
        }

        return (contents, erased);
    }
}
