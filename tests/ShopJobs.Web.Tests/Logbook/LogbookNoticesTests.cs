using System.Collections.Concurrent;
using Microsoft.Extensions.Logging;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Tests.Logbook;

/// <summary>Screens hear of what was recorded, and nobody who records waits for them.</summary>
public sealed class LogbookNoticesTests : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(1);
    private readonly LogbookOnDisk disk = new();

    public void Dispose() => disk.Dispose();

    [Fact]
    public async Task A_screen_that_does_not_come_back_holds_neither_the_answer_nor_the_next_one()
    {
        var program = disk.Open();
        using var gate = new ManualResetEventSlim();
        var heard = new BlockingCollection<LogbookNotice>();
        using var screen = program.Notices.Subscribe(notice =>
        {
            heard.Add(notice);
            gate.Wait();
        });

        Assert.IsType<RunResult.Saved>(await program.NoteAsync("first").WaitAsync(Patience));
        Assert.Equal(1, Next(heard).Number);
        Assert.IsType<RunResult.Saved>(await program.NoteAsync("second").WaitAsync(Patience));
        Assert.Empty(heard);

        gate.Set();
        Assert.Equal(2, Next(heard).Number);
    }

    [Fact]
    public async Task A_notice_comes_after_the_commit_and_none_of_what_was_refused()
    {
        var program = disk.Open();
        var heard = new BlockingCollection<(LogbookNotice Notice, int Notes)>();
        using var screen = program.Notices.Subscribe(notice => heard.Add((notice, disk.Open().Notes(notice.Logbook).Count)));

        Assert.IsType<RunResult.Refused>(await program.RunAsync(_ => new Decision.Refuse(NoteBook.Answer(""))));
        await program.NoteAsync("first");
        Assert.Equal((new LogbookNotice(LogbookOnDisk.Car, 1), 1), Next(heard));
    }

    [Fact]
    public async Task What_came_while_screens_were_reading_is_told_in_its_order_and_of_each_logbook_only_the_newest()
    {
        var program = disk.Open();
        using var gate = new ManualResetEventSlim();
        var heard = new BlockingCollection<LogbookNotice>();
        using var screen = program.Notices.Subscribe(notice =>
        {
            heard.Add(notice);
            gate.Wait();
        });
        await program.NoteAsync("first");
        Assert.Equal(new LogbookNotice(LogbookOnDisk.Car, 1), Next(heard));
        await program.NoteAsync("second");
        await program.NoteAsync("elsewhere", logbook: LogbookOnDisk.OtherCar);
        await program.NoteAsync("third");

        gate.Set();
        Assert.Equal([new(LogbookOnDisk.OtherCar, 1), new LogbookNotice(LogbookOnDisk.Car, 3)], [Next(heard), Next(heard)]);
    }

    [Fact]
    public async Task A_screen_that_fails_is_logged_and_the_others_hear_it_all_the_same()
    {
        var log = new ListedLog();
        var program = disk.Open(log: log);
        var heard = new BlockingCollection<LogbookNotice>();
        using var broken = program.Notices.Subscribe(_ => throw new InvalidOperationException("a screen that fails"));
        using var whole = program.Notices.Subscribe(heard.Add);

        await program.NoteAsync("first");
        Assert.Equal(1, Next(heard).Number);
        await program.NoteAsync("second");
        Assert.Equal(2, Next(heard).Number);
        Assert.Equal(2, log.Failures.Count(failure => failure.Message == "a screen that fails"));
    }

    [Fact]
    public async Task Who_has_left_hears_nothing_more()
    {
        var program = disk.Open();
        var left = new ConcurrentQueue<LogbookNotice>();
        var heard = new BlockingCollection<LogbookNotice>();
        program.Notices.Subscribe(left.Enqueue).Dispose();
        using var stays = program.Notices.Subscribe(heard.Add);

        await program.NoteAsync("first");
        Assert.Equal(1, Next(heard).Number);
        Assert.Empty(left);
    }

    [Fact]
    public async Task What_waits_is_told_before_the_program_ends()
    {
        var program = disk.Open();
        using var gate = new ManualResetEventSlim();
        var heard = new BlockingCollection<LogbookNotice>();
        using var screen = program.Notices.Subscribe(notice =>
        {
            heard.Add(notice);
            gate.Wait();
        });
        await program.NoteAsync("first");
        Assert.Equal(1, Next(heard).Number);
        await program.NoteAsync("elsewhere", logbook: LogbookOnDisk.OtherCar);
        await program.NoteAsync("second");

        var ending = Task.Run(program.Notices.Dispose);
        gate.Set();
        await ending.WaitAsync(Patience);
        Assert.Equal([new(LogbookOnDisk.OtherCar, 1), new LogbookNotice(LogbookOnDisk.Car, 2)], heard);
    }

    private static T Next<T>(BlockingCollection<T> heard) =>
        heard.TryTake(out var next, Patience) ? next : throw new TimeoutException("No notice came.");

    private sealed class ListedLog : ILogger<LogbookNotices>
    {
        public ConcurrentQueue<Exception> Failures { get; } = [];

        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull => null;

        public bool IsEnabled(LogLevel logLevel) => true;

        public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter)
        {
            if (exception is not null)
            {
                Failures.Enqueue(exception);
            }
        }
    }
}
