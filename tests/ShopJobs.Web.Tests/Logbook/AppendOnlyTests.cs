using Microsoft.Data.Sqlite;

namespace ShopJobs.Web.Tests.Logbook;

public sealed class AppendOnlyTests : IDisposable
{
    private readonly LogbookOnDisk disk = new();

    public void Dispose() => disk.Dispose();

    [Theory]
    [InlineData("UPDATE entries SET envelope = x'00'")]
    [InlineData("UPDATE OR IGNORE entries SET number = 7")]
    [InlineData("UPDATE OR REPLACE entries SET number = 2 WHERE number = 1")]
    [InlineData("DELETE FROM entries WHERE number = 2")]
    [InlineData("DELETE FROM entries")]
    [InlineData("INSERT OR REPLACE INTO entries SELECT * FROM entries WHERE number = 2")]
    [InlineData("INSERT OR IGNORE INTO entries SELECT * FROM entries WHERE number = 2")]
    [InlineData("REPLACE INTO entries SELECT 9, owner_kind, owner, number, hash, x'00', at, person, session_person, device, command, kind, version, job, joint, place, position, tool FROM entries WHERE number = 2")]
    [InlineData("REPLACE INTO entries SELECT id, owner_kind, owner, 3, hash, x'00', at, person, session_person, device, command, kind, version, job, joint, place, position, tool FROM entries WHERE number = 2")]
    [InlineData("INSERT INTO entries SELECT 9, owner_kind, owner, 4, hash, envelope, at, person, session_person, device, command, kind, version, job, joint, place, position, tool FROM entries WHERE number = 2")]
    [InlineData("INSERT INTO entries SELECT * FROM entries WHERE number = 2 ON CONFLICT DO UPDATE SET kind = 'x'")]
    [InlineData("INSERT INTO entries SELECT -1, owner_kind, owner, 3, hash, envelope, at, person, session_person, device, command, kind, version, job, joint, place, position, tool FROM entries WHERE number = 2")]
    [InlineData("UPDATE heads SET number = 1, hash = (SELECT hash FROM entries WHERE number = 1)")]
    [InlineData("UPDATE heads SET number = 3")]
    [InlineData("UPDATE heads SET hash = zeroblob(32)")]
    [InlineData("UPDATE heads SET number = number")]
    [InlineData("DELETE FROM heads")]
    [InlineData("REPLACE INTO heads SELECT * FROM heads")]
    [InlineData("REPLACE INTO heads SELECT owner_kind, owner, 1, (SELECT hash FROM entries WHERE number = 1) FROM heads")]
    [InlineData("INSERT INTO heads VALUES ('car', 'X', 1, zeroblob(32))")]
    [InlineData("UPDATE content SET bytes = x'01'")]
    [InlineData("UPDATE content SET salt = NULL, bytes = NULL, erased_at = 1, digest = zeroblob(32)")]
    [InlineData("UPDATE content SET salt = NULL, erased_at = 1")]
    [InlineData("DELETE FROM content")]
    [InlineData("REPLACE INTO content SELECT digest, salt, x'01', NULL FROM content")]
    [InlineData("REPLACE INTO content (rowid, digest, salt, bytes) SELECT rowid, zeroblob(32), salt, bytes FROM content")]
    [InlineData("UPDATE command_outcomes SET answer = x'01'")]
    [InlineData("DELETE FROM command_outcomes")]
    [InlineData("REPLACE INTO command_outcomes SELECT command, request_digest, x'01', at FROM command_outcomes")]
    public async Task The_database_itself_refuses(string sql)
    {
        var program = disk.Open();
        await program.NoteAsync("first");
        await program.KeepAsync("R. Ortega");
        var before = Everything();

        var refusal = Assert.Throws<SqliteException>(() => disk.Sql(sql));
        Assert.Equal(SqliteConstraint, refusal.SqliteErrorCode);
        Assert.Equal(before, Everything());
    }

    // https://www.sqlite.org/rescode.html#constraint
    private const int SqliteConstraint = 19;

    private string Everything() => string.Join('\n', ((string[])["entries", "heads", "content", "command_outcomes"]).Select(Rows));

    private string Rows(string table)
    {
        using var connection = new SqliteConnection($"Data Source={disk.File};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = $"SELECT * FROM {table}";
        using var rows = command.ExecuteReader();
        var text = new List<string>();
        while (rows.Read())
        {
            text.Add(string.Join('|', Enumerable.Range(0, rows.FieldCount).Select(i => rows.GetValue(i) is byte[] bytes ? Convert.ToHexString(bytes) : $"{rows.GetValue(i)}")));
        }

        return string.Join('\n', text);
    }
}
