using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Logging;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Tests.Logbook;

public sealed class LogbookHealthTests : IDisposable
{
    private readonly LogbookOnDisk disk = new();

    public void Dispose() => disk.Dispose();

    [Fact]
    public async Task A_migrated_database_may_be_written()
    {
        var health = await disk.Open().Writer.HealthAsync(CancellationToken.None);
        Assert.Empty(health.Problems);
        Assert.True(health.MayWrite);
    }

    [Theory]
    [InlineData("DROP TRIGGER entries_are_not_changed", "trigger entries_are_not_changed is missing")]
    [InlineData("DROP TRIGGER heads_move_by_one_entry", "trigger heads_move_by_one_entry is missing")]
    [InlineData("DROP TRIGGER outcomes_are_not_deleted", "trigger outcomes_are_not_deleted is missing")]
    [InlineData(
        "DROP TRIGGER entries_are_not_deleted; CREATE TRIGGER entries_are_not_deleted BEFORE DELETE ON entries BEGIN SELECT 1; END",
        "trigger entries_are_not_deleted is not as this program made it")]
    [InlineData(
        "CREATE TRIGGER extra AFTER INSERT ON entries BEGIN SELECT 1; END",
        "trigger extra was put there by something else")]
    [InlineData("DROP INDEX entries_of_tool", "index entries_of_tool is missing")]
    [InlineData(
        "PRAGMA foreign_keys = OFF; DROP TABLE command_outcomes; CREATE TABLE command_outcomes (command TEXT, request_digest BLOB, answer BLOB, at INTEGER)",
        "table command_outcomes is not as this program made it")]
    [InlineData("PRAGMA journal_mode = DELETE", "journal mode is delete, not wal")]
    public async Task Without_a_guard_the_program_only_reads_and_says_why(string damage, string problem)
    {
        await disk.Open().NoteAsync("before");
        disk.Close();
        disk.Sql(damage);
        var program = disk.Open();
        var result = await program.NoteAsync("after");

        var notSaved = Assert.IsType<RunResult.NotSaved>(result);
        Assert.Equal(NotSavedCause.DatabaseReadOnly, notSaved.Cause);
        Assert.Contains(problem, notSaved.Why, StringComparison.Ordinal);
        Assert.Contains(problem, (await program.Writer.HealthAsync(CancellationToken.None)).Problems);
        Assert.Equal(["before"], program.Notes());
    }

    [Fact]
    public async Task Commits_that_do_not_wait_for_the_disk_are_not_made()
    {
        var program = disk.Open(writerOpened: connection =>
        {
            using var loosen = connection.CreateCommand();
            loosen.CommandText = "PRAGMA synchronous = NORMAL";
            loosen.ExecuteNonQuery();
        });
        var health = await program.Writer.HealthAsync(CancellationToken.None);
        Assert.Equal(["synchronous mode is below full"], health.Problems);
    }

    [Fact]
    public async Task The_log_says_at_the_start_why_it_may_only_be_read()
    {
        disk.Sql("DROP TRIGGER entries_are_not_changed");
        var log = new ListedLog();
        await new LogbookStartCheck(disk.Open().Writer, log).StartAsync(CancellationToken.None);
        Assert.Equal(["Critical: The logbook may only be read: trigger entries_are_not_changed is missing"], log.Lines);
    }

    [Fact]
    public void A_database_never_migrated_lacks_everything()
    {
        using var blank = new SqliteConnection("Data Source=:memory:;Pooling=False");
        blank.Open();
        var problems = LogbookHealth.Check(blank).Problems;
        Assert.Contains("table entries is missing", problems);
        Assert.Contains("trigger entries_are_not_deleted is missing", problems);
    }

    private sealed class ListedLog : ILogger<LogbookStartCheck>
    {
        public List<string> Lines { get; } = [];

        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull => null;

        public bool IsEnabled(LogLevel logLevel) => true;

        public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter) =>
            Lines.Add($"{logLevel}: {formatter(state, exception)}");
    }
}
