using System.Collections.Concurrent;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Live;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Tests.Logbook;

namespace ShopJobs.Web.Tests.Live;

/// <summary>A screen reads again when a logbook it follows has grown, once however much grew meanwhile, and not after it was left.</summary>
public sealed class LiveScreenTests : BunitContext
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);
    private readonly Source source = new();
    private readonly ListedLog log = new();
    private readonly BlockingCollection<LogbookNotice> heard = [];
    private long number;

    public LiveScreenTests()
    {
        Services.AddSingleton<LogbookNotices>().AddSingleton(source).AddSingleton<ILogger<LiveScreen>>(log);
        SetRendererInfo(new RendererInfo("Server", true));
    }

    private LogbookNotices Notices => Services.GetRequiredService<LogbookNotices>();

    [Fact]
    public void A_notice_that_matters_is_read_and_drawn()
    {
        var screen = Render<CarBoard>();
        ListenAfterIt();
        Assert.Equal("readings: 0", screen.Markup);

        Publish(LogbookOnDisk.Car);
        screen.WaitForAssertion(() => Assert.Equal("readings: 1", screen.Markup), Patience);

        Publish(LogbookOnDisk.Car);
        screen.WaitForAssertion(() => Assert.Equal("readings: 2", screen.Markup), Patience);
    }

    [Fact]
    public async Task A_notice_of_another_logbook_is_not_read()
    {
        var screen = Render<CarBoard>();
        ListenAfterIt();

        Publish(LogbookOnDisk.OtherCar);
        await screen.Instance.DoAsync(() => { });
        Assert.Equal(0, source.Begun);

        Publish(LogbookOnDisk.Car);
        screen.WaitForAssertion(() => Assert.Equal("readings: 1", screen.Markup), Patience);
    }

    [Fact]
    public void A_screen_that_says_nothing_of_it_follows_every_logbook()
    {
        var screen = Render<Board>();
        ListenAfterIt();

        Publish(LogbookOnDisk.OtherCar);

        screen.WaitForAssertion(() => Assert.Equal("readings: 1", screen.Markup), Patience);
    }

    [Fact]
    public async Task What_comes_while_it_reads_is_read_by_one_more_reading()
    {
        var screen = Render<CarBoard>();
        ListenAfterIt();
        var slow = source.Wait();
        Publish(LogbookOnDisk.Car);
        Assert.Equal(1, source.Begun);

        Publish(LogbookOnDisk.Car);
        Publish(LogbookOnDisk.Car);
        Publish(LogbookOnDisk.Car);
        await screen.Instance.DoAsync(() => { });
        Assert.Equal(1, source.Begun);

        await screen.Instance.DoAsync(slow.SetResult);
        screen.WaitForAssertion(() => Assert.Equal("readings: 2", screen.Markup), Patience);
        await screen.Instance.DoAsync(() => { });
        Assert.Equal((2, 2), (source.Begun, source.Done));

        Publish(LogbookOnDisk.Car);
        screen.WaitForAssertion(() => Assert.Equal("readings: 3", screen.Markup), Patience);
    }

    [Fact]
    public async Task Once_left_it_hears_nothing()
    {
        Render<CarBoard>();
        ListenAfterIt();
        Publish(LogbookOnDisk.Car);
        Assert.Equal(1, source.Begun);

        await DisposeComponentsAsync();
        Publish(LogbookOnDisk.Car);

        Assert.Equal(1, source.Begun);
    }

    [Fact]
    public async Task Left_while_it_reads_it_does_not_look_again()
    {
        var board = Render<CarBoard>().Instance;
        ListenAfterIt();
        var slow = source.Wait();
        Publish(LogbookOnDisk.Car);
        Publish(LogbookOnDisk.Car);

        await DisposeComponentsAsync();
        await board.DoAsync(slow.SetResult);
        await board.DoAsync(() => { });

        Assert.Equal((1, 1), (source.Begun, source.Done));
    }

    [Fact]
    public void What_the_server_draws_before_the_page_has_its_line_does_not_listen()
    {
        SetRendererInfo(new RendererInfo("Static", false));
        Render<CarBoard>();
        ListenAfterIt();

        Publish(LogbookOnDisk.Car);

        Assert.Equal(0, source.Begun);
    }

    [Fact]
    public void A_reading_that_fails_is_shown_by_the_page_around_it()
    {
        var page = Render<Frame>(frame => frame.AddChildContent<CarBoard>());
        ListenAfterIt();
        Assert.Equal("readings: 0", page.Markup);
        source.Fail(new IOException("the disk is full"));

        Publish(LogbookOnDisk.Car);

        page.WaitForAssertion(() => Assert.Equal("the disk is full", page.Markup), Patience);
        Assert.Empty(log.Failures);
    }

    [Fact]
    public void What_is_drawn_stays_where_the_database_can_not_be_read_and_is_read_at_the_next_notice()
    {
        var page = Render<Frame>(frame => frame.AddChildContent<CarBoard>());
        ListenAfterIt();
        source.Fail(new SqliteException("busy", 5));

        Publish(LogbookOnDisk.Car);
        page.WaitForAssertion(() => Assert.Single(log.Failures), Patience);
        Assert.Equal("readings: 0", page.Markup);

        Publish(LogbookOnDisk.Car);
        page.WaitForAssertion(() => Assert.Equal("readings: 1", page.Markup), Patience);
    }

    [Fact]
    public async Task A_reading_that_fails_after_its_screen_was_left_is_logged()
    {
        var board = Render<CarBoard>().Instance;
        ListenAfterIt();
        var slow = source.Wait();
        Publish(LogbookOnDisk.Car);

        await DisposeComponentsAsync();
        await board.DoAsync(() => slow.SetException(new IOException("the disk is full")));
        await board.DoAsync(() => { });

        Assert.Equal("the disk is full", Assert.Single(log.Failures).Message);
    }

    // Told after the screen, which has heard of a notice when it is told here.
    private void ListenAfterIt() => Notices.Subscribe(heard.Add);

    private void Publish(LogbookId logbook)
    {
        var notice = new LogbookNotice(logbook, ++number);
        Notices.Publish([new AppendedEntry(notice.Logbook, notice.Number, default)]);
        Assert.True(heard.TryTake(out var told, Patience), "No notice came.");
        Assert.Equal(notice, told);
    }

    /// <summary>What a screen reads.</summary>
    private sealed class Source
    {
        private Task next = Task.CompletedTask;

        public int Begun { get; private set; }

        public int Done { get; private set; }

        /// <summary>The next reading takes until the result is set.</summary>
        public TaskCompletionSource Wait()
        {
            var slow = new TaskCompletionSource();
            next = slow.Task;
            return slow;
        }

        /// <summary>The next reading fails.</summary>
        public void Fail(Exception why) => next = Task.FromException(why);

        public async Task ReadAsync()
        {
            Begun++;
            var reading = next;
            next = Task.CompletedTask;
            await reading;
            Done++;
        }
    }

    private class Board : LiveScreen
    {
        [Inject]
        private Source Source { get; set; } = default!;

        /// <summary>Does it on the screen's own thread, after what waits there.</summary>
        public Task DoAsync(Action act) => InvokeAsync(act);

        protected override Task ReadAsync() => Source.ReadAsync();

        protected override void BuildRenderTree(RenderTreeBuilder builder) => builder.AddContent(0, $"readings: {Source.Done}");
    }

    private sealed class CarBoard : Board
    {
        protected override bool Matters(LogbookNotice notice) => notice.Logbook == LogbookOnDisk.Car;
    }

    private sealed class Frame : ErrorBoundaryBase
    {
        protected override Task OnErrorAsync(Exception exception) => Task.CompletedTask;

        protected override void BuildRenderTree(RenderTreeBuilder builder)
        {
            if (CurrentException is { } failure)
            {
                builder.AddContent(0, failure.Message);
            }
            else
            {
                builder.AddContent(1, ChildContent);
            }
        }
    }

    private sealed class ListedLog : ILogger<LiveScreen>
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
