using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Threading.Channels;

namespace ShopJobs.Browser.Tests.Harness;

/// <summary>What happens to the next request that carries <see cref="TcpProxy.Marker"/>.</summary>
public enum Fate
{
    /// <summary>It passes.</summary>
    Pass,

    /// <summary>The line breaks when it is on its way: the server never sees it.</summary>
    LoseRequest,

    /// <summary>The server does it, and the line breaks when the answer is on its way.</summary>
    LoseAnswer,

    /// <summary>The server does it, and its answer waits until <see cref="TcpProxy.LetAnswersPass"/>.</summary>
    HoldAnswer,

    /// <summary>As <see cref="HoldAnswer"/>, for this and every report until <see cref="TcpProxy.LetAnswersPass"/>.</summary>
    HoldAllAnswers,
}

/// <summary>A line between tablet and server that a test can cut, silence and tamper with. Bytes pass unchanged.</summary>
public sealed class TcpProxy : IAsyncDisposable
{
    /// <summary>The start of the request whose fate is decided.</summary>
    public const string Marker = "POST /cells";

    private readonly TcpListener listener = new(IPAddress.Loopback, 0);
    private readonly CancellationTokenSource end = new();
    private readonly ConcurrentDictionary<Guid, (TcpClient Tablet, TcpClient Server)> pairs = [];
    private readonly Uri server;
    private readonly Task accepting;
    private volatile bool closed;
    private TaskCompletionSource sound = Done();
    private TaskCompletionSource answers = Done();
    private TaskCompletionSource answered = new(TaskCreationOptions.RunContinuationsAsynchronously);

    /// <summary>A line to a server.</summary>
    public TcpProxy(Uri server)
    {
        this.server = server;
        listener.Start();
        Address = new UriBuilder("http", "127.0.0.1", ((IPEndPoint)listener.LocalEndpoint).Port).Uri;
        accepting = AcceptAsync();
    }

    /// <summary>Where the tablet connects.</summary>
    public Uri Address { get; }

    /// <summary>How long everything takes each way.</summary>
    public TimeSpan OneWay { get; set; }

    /// <summary>The fate of the next report; <see cref="Fate.Pass"/> again once it was met, or once held answers may pass.</summary>
    public Fate Next { get; set; }

    /// <summary>Ends when the server has answered a report whose answer was lost or is held.</summary>
    public Task Answered => answered.Task;

    /// <summary>Breaks every connection, and refuses new ones.</summary>
    public void Cut()
    {
        closed = true;
        BreakAll();
    }

    /// <summary>Lets no byte pass either way, without a word to anybody.</summary>
    public void Silence() => sound = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);

    /// <summary>The line is back. What was silenced is gone for good.</summary>
    public void Restore()
    {
        closed = false;
        if (!sound.Task.IsCompleted)
        {
            BreakAll();
            sound.TrySetResult();
        }
    }

    /// <summary>Lets held answers go on.</summary>
    public void LetAnswersPass()
    {
        Next = Fate.Pass;
        answers.TrySetResult();
    }

    /// <summary>Sets the fate of the next report.</summary>
    public void Expect(Fate fate)
    {
        answered = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        answers = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        Next = fate;
    }

    public async ValueTask DisposeAsync()
    {
        await end.CancelAsync();
        listener.Stop();
        sound.TrySetResult();
        answers.TrySetResult();
        BreakAll();
        await accepting;
        end.Dispose();
    }

    private static TaskCompletionSource Done()
    {
        var done = new TaskCompletionSource();
        done.SetResult();
        return done;
    }

    private void BreakAll()
    {
        foreach (var id in pairs.Keys)
        {
            Break(id);
        }
    }

    private void Break(Guid id)
    {
        if (pairs.TryRemove(id, out var pair))
        {
            pair.Tablet.Client.LingerState = new LingerOption(true, 0);
            pair.Tablet.Dispose();
            pair.Server.Dispose();
        }
    }

    private async Task AcceptAsync()
    {
        while (!end.IsCancellationRequested)
        {
            TcpClient tablet;
            try
            {
                tablet = await listener.AcceptTcpClientAsync(end.Token);
            }
            catch (Exception stopped) when (stopped is OperationCanceledException or SocketException or ObjectDisposedException)
            {
                return;
            }

            _ = ServeAsync(tablet);
        }
    }

    private async Task ServeAsync(TcpClient tablet)
    {
        if (closed)
        {
            tablet.Client.LingerState = new LingerOption(true, 0);
            tablet.Dispose();
            return;
        }

        var id = Guid.NewGuid();
        var to = new TcpClient { NoDelay = true };
        tablet.NoDelay = true;
        pairs[id] = (tablet, to);
        try
        {
            await to.ConnectAsync(server.Host, server.Port, end.Token);
            var met = new Met();
            await Task.WhenAny(PumpAsync(id, tablet, to, met, fromTablet: true), PumpAsync(id, to, tablet, met, fromTablet: false));
        }
        catch (Exception broken) when (broken is IOException or SocketException or ObjectDisposedException or OperationCanceledException)
        {
            // One end is gone: the other learns it from the break below.
        }
        finally
        {
            Break(id);
        }
    }

    // What is read is on its way at once; how long that takes holds nothing back that comes after it.
    private async Task PumpAsync(Guid id, TcpClient from, TcpClient to, Met met, bool fromTablet)
    {
        var way = Channel.CreateUnbounded<(byte[] Bytes, long Arrives)>();
        var reading = ReadAsync(from, way.Writer);
        await foreach (var (bytes, arrives) in way.Reader.ReadAllAsync(end.Token))
        {
            await sound.Task.WaitAsync(end.Token);
            if (arrives - Environment.TickCount64 is > 0 and var left)
            {
                await Task.Delay(TimeSpan.FromMilliseconds(left), end.Token);
            }

            if (!await PassesAsync(id, bytes, met, fromTablet))
            {
                return;
            }

            await to.GetStream().WriteAsync(bytes, end.Token);
        }

        await reading;
    }

    private async Task ReadAsync(TcpClient from, ChannelWriter<(byte[] Bytes, long Arrives)> way)
    {
        try
        {
            var buffer = new byte[64 * 1024];
            int read;
            while ((read = await from.GetStream().ReadAsync(buffer, end.Token)) > 0)
            {
                way.TryWrite((buffer[..read], Environment.TickCount64 + (long)OneWay.TotalMilliseconds));
            }
        }
        finally
        {
            way.Complete();
        }
    }

    private async Task<bool> PassesAsync(Guid id, byte[] bytes, Met met, bool fromTablet)
    {
        if (fromTablet && Next != Fate.Pass && Encoding.Latin1.GetString(bytes).Contains(Marker, StringComparison.Ordinal))
        {
            met.Fate = Next;
            Next = met.Fate == Fate.HoldAllAnswers ? Next : Fate.Pass;
            if (met.Fate == Fate.LoseRequest)
            {
                Break(id);
                return false;
            }
        }

        if (!fromTablet && met.Fate is Fate.LoseAnswer or Fate.HoldAnswer or Fate.HoldAllAnswers)
        {
            answered.TrySetResult();
            if (met.Fate == Fate.LoseAnswer)
            {
                Break(id);
                return false;
            }

            await answers.Task.WaitAsync(end.Token);
            met.Fate = Fate.Pass;
        }

        return true;
    }

    private sealed class Met
    {
        public Fate Fate { get; set; }
    }
}
