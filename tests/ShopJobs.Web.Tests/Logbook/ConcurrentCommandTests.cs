using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Tests.Logbook;

/// <summary>Two programs on one file, each stopped between its decision and its append.</summary>
public sealed class ConcurrentCommandTests : IDisposable
{
    private readonly LogbookOnDisk disk = new();
    private readonly TaskCompletionSource[] gates = [new(), new()];

    public void Dispose() => disk.Dispose();

    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 0)]
    public async Task Of_two_that_only_one_may_get_the_later_is_decided_again(int first, int second)
    {
        Task<RunResult>[] runs = [Paused(0).RunAsync(OnlyOnce), Paused(1).RunAsync(OnlyOnce)];
        gates[first].SetResult();
        Assert.IsType<RunResult.Saved>(await runs[first]);
        gates[second].SetResult();
        Assert.IsType<RunResult.Refused>(await runs[second]);
        Assert.Equal(["claimed"], disk.Open().Notes());
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 0)]
    public async Task One_command_sent_twice_at_once_is_recorded_once(int first, int second)
    {
        var id = new CommandId(Guid.NewGuid());
        Task<RunResult>[] runs = [Paused(0).NoteAsync("pull", id), Paused(1).NoteAsync("pull", id)];
        gates[first].SetResult();
        var saved = Assert.IsType<RunResult.Saved>(await runs[first]);
        gates[second].SetResult();
        var repeated = Assert.IsType<RunResult.Repeated>(await runs[second]);
        Assert.Equal(saved.Answer.ToBytes().ToArray(), repeated.Answer.ToArray());
        Assert.Equal(["pull"], disk.Open().Notes());
    }

    [Fact]
    public async Task Another_cars_entry_does_not_make_a_decision_be_taken_again()
    {
        var taken = 0;
        var run = Paused(0).RunAsync(reader =>
        {
            taken++;
            return OnlyOnce(reader);
        });
        await disk.Open().NoteAsync("elsewhere", logbook: LogbookOnDisk.OtherCar);
        gates[0].SetResult();

        Assert.IsType<RunResult.Saved>(await run);
        Assert.Equal(1, taken);
    }

    [Theory]
    [InlineData("UPDATE rights SET witness = 0", "refused")]
    [InlineData("UPDATE rights SET witness = 1", "saved")]
    public async Task A_right_taken_away_meanwhile_is_seen(string meanwhile, string outcome)
    {
        disk.Sql("CREATE TABLE rights (witness INTEGER); INSERT INTO rights VALUES (1)");
        var run = Paused(0).RunAsync(reader =>
        {
            var right = reader.Row("rights", connection =>
            {
                using var ask = connection.CreateCommand();
                ask.CommandText = "SELECT witness FROM rights";
                return (long)ask.ExecuteScalar()!;
            });
            reader.Head(LogbookOnDisk.Car);
            return right == 1
                ? new Decision.Accept([NoteBook.Note(LogbookOnDisk.Car, "witnessed")], [], NoteBook.Answer(""))
                : new Decision.Refuse(NoteBook.Answer(""));
        });
        disk.Sql(meanwhile);
        gates[0].SetResult();

        Assert.Equal(outcome, await run is RunResult.Saved ? "saved" : "refused");
    }

    [Fact]
    public async Task A_decision_taken_again_carries_the_later_instant()
    {
        var run = Paused(0).NoteAsync("late");
        await disk.Open().NoteAsync("early");
        disk.Time.Advance(TimeSpan.FromMinutes(1));
        gates[0].SetResult();
        await run;

        var entries = disk.Open().Snapshots.Read(reader => reader.Entries(LogbookOnDisk.Car, 0, 10));
        Assert.Equal(TimeSpan.FromMinutes(1), entries[1].At - entries[0].At);
    }

    [Fact]
    public async Task A_reader_sees_one_moment_while_others_write()
    {
        var program = disk.Open();
        await program.NoteAsync("before");
        var other = disk.Open();
        var seen = program.Snapshots.Read(reader =>
        {
            var first = reader.Fold(LogbookOnDisk.Car, NoteBook.Notes).Count;
            other.NoteAsync("during").GetAwaiter().GetResult();
            other.NoteAsync("elsewhere", logbook: LogbookOnDisk.OtherCar).GetAwaiter().GetResult();
            return (first, reader.Fold(LogbookOnDisk.OtherCar, NoteBook.Notes).Count);
        });

        Assert.Equal((1, 0), seen);
        Assert.Equal(["before", "during"], program.Notes());
    }

    [Fact]
    public async Task Many_at_once_leave_numbers_without_gaps()
    {
        LogbookProgram[] programs = [disk.Open(), disk.Open()];
        var results = await Task.WhenAll(Enumerable.Range(0, 40).Select(i => Task.Run(() => programs[i % 2].NoteAsync($"{i}"))));

        Assert.All(results, result => Assert.IsType<RunResult.Saved>(result));
        Assert.Equal(40, disk.Open().Notes().Distinct().Count());
        Assert.Equal(40, disk.Ask<long>("SELECT number FROM heads"));
    }

    private static Decision OnlyOnce(LogbookReader reader) => reader.Fold(LogbookOnDisk.Car, NoteBook.Notes).IsEmpty
        ? new Decision.Accept([NoteBook.Note(LogbookOnDisk.Car, "claimed")], [], NoteBook.Answer(""))
        : new Decision.Refuse(NoteBook.Answer("somebody was first"));

    private LogbookProgram Paused(int gate) => disk.Open(pause: () => gates[gate].Task);
}
