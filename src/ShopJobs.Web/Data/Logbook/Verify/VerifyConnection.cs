using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace ShopJobs.Web.Data.Logbook.Verify;

/// <summary>A connection that can't write, read without making objects of the columns: a book may have a million entries.</summary>
internal sealed class VerifyConnection : IDisposable
{
    public VerifyConnection(string file)
    {
        Connection = new SqliteConnection(new SqliteConnectionStringBuilder
        {
            DataSource = file,
            Mode = SqliteOpenMode.ReadOnly,
            Pooling = false,
        }.ToString());
        Connection.Open();
    }

    public SqliteConnection Connection { get; }

    /// <summary>Steps through the rows of a query with whole-number and text parameters.</summary>
    public IEnumerable<sqlite3_stmt> Rows(string sql, params object[] parameters)
    {
        Check(raw.sqlite3_prepare_v2(Connection.Handle, sql, out var statement));
        using (statement)
        {
            for (var i = 0; i < parameters.Length; i++)
            {
                Check(parameters[i] is long number
                    ? raw.sqlite3_bind_int64(statement, i + 1, number)
                    : raw.sqlite3_bind_text(statement, i + 1, (string)parameters[i]));
            }

            int step;
            while ((step = raw.sqlite3_step(statement)) == raw.SQLITE_ROW)
            {
                yield return statement;
            }

            if (step != raw.SQLITE_DONE)
            {
                Check(step);
            }
        }
    }

    public void Dispose() => Connection.Dispose();

    private void Check(int result) => SqliteException.ThrowExceptionForRC(result, Connection.Handle);
}
