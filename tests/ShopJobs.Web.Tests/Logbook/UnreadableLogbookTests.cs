using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Tests.Logbook;

public sealed class UnreadableLogbookTests : IDisposable
{
    private readonly LogbookOnDisk disk = new();

    public void Dispose() => disk.Dispose();

    [Fact]
    public async Task An_unknown_version_makes_its_logbook_read_only_with_a_named_reason()
    {
        var program = disk.Open();
        await program.NoteAsync("first");
        await FromLaterProgramAsync(program);

        var notSaved = Assert.IsType<RunResult.NotSaved>(await program.NoteAsync("third"));
        Assert.Equal(NotSavedCause.LogbookReadOnly, notSaved.Cause);
        Assert.Equal(
            "Logbook car:c0000000-0000-4000-8000-00000000000c is read-only from entry 2 on. Entry kind \"note\" version 2 is not known to this program. It was written by a newer one: update the program.",
            notSaved.Why);
        Assert.Equal(2, disk.Ask<long>("SELECT number FROM heads"));
    }

    [Fact]
    public async Task It_can_still_be_looked_at_up_to_there()
    {
        var program = disk.Open();
        await program.NoteAsync("first");
        await FromLaterProgramAsync(program);
        await program.NoteAsync("elsewhere", logbook: LogbookOnDisk.OtherCar);

        foreach (var _ in (int[])[1, 2])
        {
            var seen = program.Snapshots.Read(reader => reader.FoldAsFarAsReadable(LogbookOnDisk.Car, NoteBook.Notes));
            Assert.Equal(["first"], seen.State);
            Assert.Equal(2, seen.Unreadable?.Number);
        }

        Assert.Equal(["elsewhere"], program.Notes(LogbookOnDisk.OtherCar));
    }

    [Fact]
    public async Task An_entry_changed_outside_the_program_stops_the_fold_there()
    {
        var program = disk.Open();
        await program.NoteAsync("first");
        await program.NoteAsync("second");
        await program.NoteAsync("third");
        disk.Sql("DROP TRIGGER entries_are_not_changed; UPDATE entries SET envelope = CAST(replace(CAST(envelope AS TEXT), 'second', 'sec0nd') AS BLOB) WHERE number = 2");

        var seen = disk.Open().Snapshots.Read(reader => reader.FoldAsFarAsReadable(LogbookOnDisk.Car, NoteBook.Notes));
        Assert.Equal(["first"], seen.State);
        Assert.Equal(2, seen.Unreadable?.Number);
        Assert.Throws<LogbookReadOnlyException>(() => disk.Open().Notes());
    }

    [Fact]
    public async Task Last_entries_taken_out_outside_the_program_are_noticed()
    {
        var program = disk.Open();
        await program.NoteAsync("first");
        await program.NoteAsync("second");
        disk.Sql("PRAGMA foreign_keys = OFF; DROP TRIGGER entries_are_not_deleted; DELETE FROM entries WHERE number = 2");
        Assert.Throws<LogbookReadOnlyException>(() => disk.Open().Notes());
    }

    [Fact]
    public async Task A_state_kept_from_another_history_is_not_used()
    {
        var program = disk.Open();
        await program.NoteAsync("first");
        Assert.Equal(["first"], program.Notes());
        using var copy = disk.AsLeftByAKill();
        await program.NoteAsync("second");
        Assert.Equal(["first", "second"], program.Notes());
        await copy.Open().NoteAsync("other second");
        await copy.Open().NoteAsync("other third");

        disk.Sql($"""
            ATTACH '{copy.File}' AS other;
            PRAGMA foreign_keys = OFF;
            DROP TRIGGER entries_are_not_deleted; DROP TRIGGER entries_follow_the_head;
            DROP TRIGGER heads_are_not_deleted; DROP TRIGGER entries_start_a_head; DROP TRIGGER entries_move_the_head;
            DROP TRIGGER heads_start_with_an_entry;
            DELETE FROM heads; DELETE FROM entries;
            INSERT INTO entries SELECT * FROM other.entries;
            INSERT INTO heads SELECT * FROM other.heads;
            """);
        Assert.Equal(["first", "other second", "other third"], program.Notes());
    }

    private static async Task FromLaterProgramAsync(LogbookProgram program)
    {
        var result = await program.RunAsync(reader =>
        {
            reader.Head(LogbookOnDisk.Car);
            return new Decision.Accept([NoteBook.FromLater(LogbookOnDisk.Car)], [], NoteBook.Answer(""));
        });
        Assert.IsType<RunResult.Saved>(result);
    }
}
