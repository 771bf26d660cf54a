using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;

namespace ShopJobs.Tests.Shared;

/// <summary>The program as people run it: a process of its own on a folder of its own. It can be killed and started again.</summary>
public sealed partial class ShopServer : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(3);

    private readonly List<string> said = [];
    private readonly DirectoryInfo folder;
    private readonly string[] settings;
    private Process? process;
    private TaskCompletionSource<Uri> open = new();

    private ShopServer(DirectoryInfo folder, string[] settings)
    {
        this.folder = folder;
        this.settings = settings;
    }

    /// <summary>Where it listens; the same after a restart.</summary>
    public Uri Address { get; private set; } = new("http://127.0.0.1:0");

    /// <summary>Everything it printed.</summary>
    public string Said
    {
        get
        {
            lock (said)
            {
                return string.Join('\n', said);
            }
        }
    }

    /// <summary>Starts the program on a folder and waits until it is open.</summary>
    public static async Task<ShopServer> StartAsync(DirectoryInfo folder, params string[] settings)
    {
        var server = new ShopServer(folder, settings);
        await server.StartAsync();
        return server;
    }

    /// <summary>Starts it, again on the same port after it was killed.</summary>
    public async Task StartAsync()
    {
        Launch();
        Address = await open.Task.WaitAsync(Patience);
    }

    /// <summary>Starts the program on a folder and kills it as soon as a point is seen, at the latest once it is open.</summary>
    public static async Task KillAtAsync(DirectoryInfo folder, Func<bool> point)
    {
        await using var server = new ShopServer(folder, []);
        server.Launch();
        using var patience = new CancellationTokenSource(Patience);
        while (!point() && !server.open.Task.IsCompleted)
        {
            await Task.Delay(1, patience.Token);
        }

        await server.KillAsync();
    }

    private void Launch()
    {
        open = new TaskCompletionSource<Uri>(TaskCreationOptions.RunContinuationsAsynchronously);
        process = new Process
        {
            EnableRaisingEvents = true,
            StartInfo = new ProcessStartInfo("dotnet")
            {
                WorkingDirectory = WebFolder.FullName,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            },
        };
        string[] arguments = [Program, "--urls", Address.ToString(), "--Data:Folder", folder.FullName, .. settings];
        Array.ForEach(arguments, process.StartInfo.ArgumentList.Add);
        process.StartInfo.Environment["ASPNETCORE_ENVIRONMENT"] = "Production";
        process.OutputDataReceived += (_, line) => Hear(line.Data);
        process.ErrorDataReceived += (_, line) => Hear(line.Data);
        process.Exited += (_, _) => open.TrySetException(new InvalidOperationException($"The program ended:\n{Said}"));
        process.Start();
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
    }

    /// <summary>Ends it at once, as a power cut would (SIGKILL), and waits until it is gone.</summary>
    public async Task KillAsync()
    {
        process!.Kill();
        await process.WaitForExitAsync();
        process.Dispose();
        process = null;
    }

    public async ValueTask DisposeAsync()
    {
        if (process is not null)
        {
            await KillAsync();
        }
    }

    private static DirectoryInfo Root => WorkSeed.Folder.Parent!;

    private static DirectoryInfo WebFolder => new(Path.Combine(Root.FullName, "src", "ShopJobs.Web"));

    private static string Program
    {
        get
        {
            // bin/<configuration>/<framework> of the tests, and the same of the program.
            var framework = new DirectoryInfo(AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar));
            return Path.Combine(WebFolder.FullName, "bin", framework.Parent!.Name, framework.Name, "ShopJobs.Web.dll");
        }
    }

    private void Hear(string? line)
    {
        if (line is null)
        {
            return;
        }

        lock (said)
        {
            said.Add(line);
        }

        if (OpenAt().Match(line) is { Success: true } found)
        {
            var port = int.Parse(found.Groups[1].Value, CultureInfo.InvariantCulture);
            open.TrySetResult(new UriBuilder("http", IPAddress.Loopback.ToString(), port).Uri);
        }
    }

    [GeneratedRegex(@" (?:is open|waits) at http://127\.0\.0\.1:(\d+)")]
    private static partial Regex OpenAt();
}
