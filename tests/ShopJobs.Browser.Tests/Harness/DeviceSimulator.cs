using System.Net;
using System.Net.Http.Headers;
using System.Net.Http.Json;
using System.Text.Json.Nodes;
using Microsoft.Playwright;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Browser.Tests.Harness;

/// <summary>The devices of a shop: a wrench and a scanner that type on a tablet, and a tool that sends its readings with its own key.</summary>
internal sealed class DeviceSimulator(IPage page, Uri address) : IDisposable
{
    private readonly HttpClient line = new() { BaseAddress = address };

    // Tones are counted by the pitches that are sounded, in their order.
    private const string Listening = """
        window.tones = [];
        window.AudioContext = class {
          currentTime = 0; state = 'running'; destination = {};
          createGain() { return { gain: { setValueAtTime() {}, exponentialRampToValueAtTime() {} }, connect: other => other }; }
          createOscillator() { return { frequency: {}, connect: other => other, start() { window.tones.push(this.frequency.value); }, stop() {} }; }
        };
        """;

    /// <summary>From here on the pages of a tablet keep what they sound.</summary>
    public static Task ListenAsync(IBrowserContext tablet) => tablet.AddInitScriptAsync(Listening);

    /// <summary>Pitches sounded since this was asked last.</summary>
    public Task<int[]> TonesAsync() => page.EvaluateAsync<int[]>("() => window.tones.splice(0)");

    /// <summary>A wrench types what it read, and Enter.</summary>
    public async Task TypeAsync(string reading)
    {
        await page.Keyboard.TypeAsync(reading);
        await page.Keyboard.PressAsync("Enter");
    }

    /// <summary>A scanner reads the label of a tool, and types it and Enter.</summary>
    public Task ScanAsync(ToolId tool) => TypeAsync(ToolLabel.CodeOf(tool));

    /// <summary>A tool sends a reading; the answer's status, outcome and words.</summary>
    public async Task<(HttpStatusCode Status, string Outcome, string Words)> SendAsync(string key, Guid command, string value, DateTimeOffset at, string unit = "N·m")
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/devices/readings");
        request.Headers.Authorization = new AuthenticationHeaderValue("Bearer", key);
        request.Content = JsonContent.Create(new { command, value, unit, at });
        using var answer = await line.SendAsync(request);
        var body = (await answer.Content.ReadFromJsonAsync<JsonObject>())!;
        return (answer.StatusCode, body["outcome"]!.GetValue<string>(), string.Join(" ", body["words"]!.AsArray().Select(one => one!.GetValue<string>())));
    }

    public void Dispose() => line.Dispose();
}
