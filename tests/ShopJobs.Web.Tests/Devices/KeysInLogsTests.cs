using System.Collections.Concurrent;
using Microsoft.Extensions.DependencyInjection;
using Serilog;
using Serilog.Core;
using Serilog.Events;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Components.Devices;

namespace ShopJobs.Web.Tests.Devices;

/// <summary>A tool's key stands in no line of the log and in no row of the database.</summary>
public sealed class KeysInLogsTests : IDisposable
{
    private readonly DeviceBench bench = new();

    public void Dispose() => bench.Dispose();

    [Fact]
    public async Task The_key_of_a_reading_stands_in_no_line_of_the_log()
    {
        var heard = new Heard();
        bench.Shop.Changed = services => services.AddSerilog(log => log.MinimumLevel.Verbose().WriteTo.Sink(heard));
        await bench.OpenAsync();
        using var page = bench.Stand(WorkSeed.WA);

        await bench.SendAsync(bench.Reading());
        await bench.SendAsync(bench.Reading(), "a-key-of-nobody");

        Assert.Contains(heard.Lines, line => line.Contains(DeviceEndpoint.Path, StringComparison.Ordinal));
        Assert.DoesNotContain(heard.Lines, line => line.Contains(bench.KeyOf(WorkSeed.WA), StringComparison.Ordinal) || line.Contains("a-key-of-nobody", StringComparison.Ordinal));
    }

    private sealed class Heard : ILogEventSink
    {
        private readonly ConcurrentQueue<string> lines = [];

        public IEnumerable<string> Lines => lines;

        public void Emit(LogEvent logEvent) => lines.Enqueue(
            logEvent.RenderMessage(System.Globalization.CultureInfo.InvariantCulture) + string.Join(' ', logEvent.Properties.Select(one => one.Value.ToString())));
    }
}
