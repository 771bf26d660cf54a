using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Tests.Logbook;

public sealed class SavingFailureTests : IDisposable
{
    private static readonly string Long = new('x', 40_000);

    private readonly LogbookOnDisk disk = new();

    public void Dispose() => disk.Dispose();

    [Fact]
    public async Task A_kill_between_append_and_commit_leaves_nothing_and_the_retry_is_saved()
    {
        await disk.Open().NoteAsync("before");
        LogbookOnDisk? left = null;
        var id = new CommandId(Guid.NewGuid());
        await disk.Open(beforeCommit: () => left = disk.AsLeftByAKill()).NoteAsync("torn", id);

        using (left)
        {
            Assert.Equal(["before"], left!.Open().Notes());
            Assert.Equal(1, left.Ask<long>("SELECT count(*) FROM command_outcomes"));
            Assert.Equal("ok", left.Ask<string>("PRAGMA integrity_check"));
            Assert.IsType<RunResult.Saved>(await left.Open().NoteAsync("torn", id));
            Assert.Equal(["before", "torn"], left.Open().Notes());
        }
    }

    [Fact]
    public async Task A_kill_after_the_answer_loses_nothing()
    {
        var program = disk.Open();
        await program.NoteAsync("first");
        await program.NoteAsync("second");
        using var left = disk.AsLeftByAKill();
        Assert.Equal(["first", "second"], left.Open().Notes());
    }

    [Fact]
    public async Task A_full_disk_is_told_and_nothing_is_half_written()
    {
        await disk.Open().NoteAsync("before");
        var pages = disk.Ask<long>("PRAGMA page_count");
        var program = disk.Open(writerOpened: connection =>
        {
            using var limit = connection.CreateCommand();
            limit.CommandText = $"PRAGMA max_page_count = {pages + 2}";
            limit.ExecuteNonQuery();
        });
        var id = new CommandId(Guid.NewGuid());
        var result = await program.NoteAsync(Long, id);

        var notSaved = Assert.IsType<RunResult.NotSaved>(result);
        Assert.Equal(NotSavedCause.DiskFull, notSaved.Cause);
        Assert.Equal("The disk is full. Make room on the server, then send it again.", notSaved.Why);
        Assert.Equal(["before"], disk.Open().Notes());
        Assert.Equal(1, disk.Ask<long>("SELECT count(*) FROM command_outcomes"));

        Assert.IsType<RunResult.Saved>(await disk.Open().NoteAsync(Long, id));
        Assert.Equal(["before", Long], disk.Open().Notes());
    }

    [Fact]
    public async Task A_database_held_by_another_writer_is_told_after_a_while()
    {
        var program = disk.Open(patienceSeconds: 1);
        await program.NoteAsync("before");
        NotSavedCause? cause = null;
        await disk.Open(beforeCommit: () => cause = Assert.IsType<RunResult.NotSaved>(program.NoteAsync("blocked").GetAwaiter().GetResult()).Cause)
            .NoteAsync("slow");

        Assert.Equal(NotSavedCause.Busy, cause);
        Assert.Equal(["before", "slow"], disk.Open().Notes());
        Assert.IsType<RunResult.Saved>(await program.NoteAsync("now"));
    }

    /// <summary>A client that sends again while somebody else holds the lock must not be told that what it recorded was not saved.</summary>
    [Fact]
    public async Task What_was_recorded_before_or_is_refused_is_told_although_another_writer_holds_the_lock()
    {
        var program = disk.Open(patienceSeconds: 1);
        var id = new CommandId(Guid.NewGuid());
        await program.NoteAsync("before", id);
        var told = new List<RunResult>();
        await disk.Open(beforeCommit: () => told.AddRange(
        [
            program.NoteAsync("before", id).GetAwaiter().GetResult(),
            program.RunAsync(_ => new Decision.Refuse(NoteBook.Answer(""))).GetAwaiter().GetResult(),
        ])).NoteAsync("slow");

        Assert.IsType<RunResult.Repeated>(told[0]);
        Assert.IsType<RunResult.Refused>(told[1]);
        Assert.Equal(["before", "slow"], disk.Open().Notes());
    }

    [Fact]
    public async Task A_file_that_is_no_database_is_told()
    {
        File.WriteAllText(disk.File, string.Concat(Enumerable.Repeat("not a database. ", 1000)));
        var result = await disk.Open().NoteAsync("first");
        Assert.Equal(NotSavedCause.Storage, Assert.IsType<RunResult.NotSaved>(result).Cause);
    }
}
