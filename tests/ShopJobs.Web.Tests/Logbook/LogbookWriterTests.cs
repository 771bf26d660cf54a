using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Tests.Logbook;

public sealed class LogbookWriterTests : IDisposable
{
    private readonly LogbookOnDisk disk = new();

    public void Dispose() => disk.Dispose();

    [Fact]
    public async Task An_accepted_command_is_saved_with_who_when_and_its_answer()
    {
        var program = disk.Open();
        disk.Time.Advance(TimeSpan.FromTicks(17));
        var result = await program.NoteAsync("first");

        var saved = Assert.IsType<RunResult.Saved>(result);
        Assert.Equal("noted first", NoteBook.Text(saved.Answer));
        var entry = Assert.Single(program.Snapshots.Read(reader => reader.Entries(LogbookOnDisk.Car, 0, 10)));
        Assert.Equal((1, NoteBook.Kind, 1), (entry.Number, entry.Kind, entry.Version));
        Assert.Equal(LogbookOnDisk.Morning.UtcDateTime.AddTicks(10), entry.At);
        Assert.Equal(saved.Entries, [new AppendedEntry(LogbookOnDisk.Car, 1, EntryHash.BeforeFirst.Next(EnvelopeCodec.Encode(entry)))]);
        Assert.Equal(["first"], program.Notes());
    }

    [Fact]
    public async Task The_same_command_again_gets_its_first_answer_and_records_nothing()
    {
        var id = new CommandId(Guid.NewGuid());
        await disk.Open().NoteAsync("first", id, request: "same");
        var again = await disk.Open().NoteAsync("second", id, request: "same");

        Assert.Equal("noted first", NoteBook.Text(Assert.IsType<RunResult.Repeated>(again).Answer));
        Assert.Equal(["first"], disk.Open().Notes());
    }

    [Fact]
    public async Task A_command_id_used_for_something_else_is_told_apart()
    {
        var program = disk.Open();
        var id = new CommandId(Guid.NewGuid());
        await program.NoteAsync("first", id, request: "one thing");

        Assert.IsType<RunResult.CommandIdTaken>(await program.NoteAsync("second", id, request: "another"));
        Assert.Equal(["first"], program.Notes());
    }

    [Fact]
    public async Task A_refused_command_records_nothing_and_may_be_decided_otherwise_later()
    {
        var program = disk.Open();
        var id = new CommandId(Guid.NewGuid());
        var refused = await program.RunAsync(_ => new Decision.Refuse(NoteBook.Answer("no")), id, "note");

        Assert.Equal("no", NoteBook.Text(Assert.IsType<RunResult.Refused>(refused).Answer));
        Assert.IsType<RunResult.Saved>(await program.NoteAsync("first", id, request: "note"));
        Assert.Equal(["first"], program.Notes());
    }

    [Fact]
    public async Task Entries_of_several_logbooks_stand_or_fall_together()
    {
        Decision Both(LogbookReader reader)
        {
            reader.Head(LogbookOnDisk.Car);
            reader.Head(LogbookOnDisk.OtherCar);
            return new Decision.Accept(
                [NoteBook.Note(LogbookOnDisk.Car, "a"), NoteBook.Note(LogbookOnDisk.OtherCar, "b"), NoteBook.Note(LogbookOnDisk.Car, "c")], [], NoteBook.Answer(""));
        }

        var failing = disk.Open(beforeCommit: () => throw new InvalidOperationException("power cut"));
        await Assert.ThrowsAsync<InvalidOperationException>(() => failing.RunAsync(Both));
        var program = disk.Open();
        Assert.Empty(program.Notes());
        Assert.Empty(program.Notes(LogbookOnDisk.OtherCar));

        Assert.IsType<RunResult.Saved>(await program.RunAsync(Both));
        Assert.Equal(["a", "c"], program.Notes());
        Assert.Equal(["b"], program.Notes(LogbookOnDisk.OtherCar));
    }

    [Fact]
    public async Task A_decision_can_not_write_to_a_logbook_it_did_not_read() =>
        await Assert.ThrowsAsync<InvalidOperationException>(() => disk.Open().RunAsync(_ =>
            new Decision.Accept([NoteBook.Note(LogbookOnDisk.Car, "blind")], [], NoteBook.Answer(""))));

    [Fact]
    public async Task What_a_decision_throws_is_thrown_on_and_the_next_command_is_saved()
    {
        var program = disk.Open();
        await Assert.ThrowsAsync<NotSupportedException>(() => program.RunAsync(_ => throw new NotSupportedException()));
        Assert.IsType<RunResult.Saved>(await program.NoteAsync("first"));
    }

    [Fact]
    public async Task A_decision_can_not_change_anything_while_it_reads()
    {
        var program = disk.Open();
        var result = await program.RunAsync(reader => reader.Row("sly", connection =>
        {
            using var write = connection.CreateCommand();
            write.CommandText = "INSERT INTO command_outcomes VALUES ('x', x'00', x'00', 1)";
            write.ExecuteNonQuery();
            return (Decision)new Decision.Refuse(NoteBook.Answer(""));
        }));

        Assert.Equal(NotSavedCause.Storage, Assert.IsType<RunResult.NotSaved>(result).Cause);
        Assert.Equal(0, disk.Ask<long>("SELECT count(*) FROM command_outcomes"));
    }

    /// <summary>The same with the lock in hand: from its second command on a program decides on the connection that writes.</summary>
    [Fact]
    public async Task A_decision_that_changes_something_with_the_lock_in_hand_is_given_up_with_all_it_changed()
    {
        var program = disk.Open();
        await program.NoteAsync("first");

        await Assert.ThrowsAsync<InvalidOperationException>(() => program.RunAsync(reader => reader.Row("sly", connection =>
        {
            using var write = connection.CreateCommand();
            write.CommandText = "INSERT INTO command_outcomes VALUES ('x', x'00', x'00', 1)";
            write.ExecuteNonQuery();
            reader.Head(LogbookOnDisk.Car);
            return (Decision)new Decision.Accept([NoteBook.Note(LogbookOnDisk.Car, "sly")], [], NoteBook.Answer(""));
        })));

        Assert.Equal(0, disk.Ask<long>("SELECT count(*) FROM command_outcomes WHERE command = 'x'"));
        Assert.IsType<RunResult.Saved>(await program.NoteAsync("after"));
        Assert.Equal(["first", "after"], program.Notes());
    }

    [Fact]
    public async Task What_a_decision_throws_with_the_lock_in_hand_is_thrown_on_and_the_lock_is_given_back()
    {
        var program = disk.Open();
        await program.NoteAsync("first");
        await Assert.ThrowsAsync<NotSupportedException>(() => program.RunAsync(_ => throw new NotSupportedException()));

        Assert.IsType<RunResult.Saved>(await program.NoteAsync("second"));
        Assert.IsType<RunResult.Saved>(await disk.Open().NoteAsync("elsewhere"));
    }

    [Fact]
    public async Task A_refusal_with_the_lock_in_hand_leaves_nothing_and_gives_the_lock_back()
    {
        var program = disk.Open();
        await program.NoteAsync("first");
        Assert.IsType<RunResult.Refused>(await program.RunAsync(_ => new Decision.Refuse(NoteBook.Answer(""))));

        Assert.IsType<RunResult.Saved>(await disk.Open().NoteAsync("elsewhere"));
        Assert.Equal(2, disk.Ask<long>("SELECT count(*) FROM entries"));
    }

    [Fact]
    public async Task Ordinary_rows_are_written_with_the_entries_or_not_at_all()
    {
        disk.Sql("CREATE TABLE bays (name TEXT)");
        Decision WithRow(LogbookReader reader)
        {
            reader.Head(LogbookOnDisk.Car);
            return new Decision.Accept([NoteBook.Note(LogbookOnDisk.Car, "moved")], [], NoteBook.Answer(""))
            {
                Rows = transaction =>
                {
                    using var insert = transaction.Connection!.CreateCommand();
                    insert.CommandText = "INSERT INTO bays VALUES ('Ninth Bay')";
                    insert.ExecuteNonQuery();
                },
            };
        }

        var failing = disk.Open(beforeCommit: () => throw new InvalidOperationException("power cut"));
        await Assert.ThrowsAsync<InvalidOperationException>(() => failing.RunAsync(WithRow));
        Assert.Equal(0, disk.Ask<long>("SELECT count(*) FROM bays"));
        await disk.Open().RunAsync(WithRow);
        Assert.Equal(1, disk.Ask<long>("SELECT count(*) FROM bays"));
    }
}
