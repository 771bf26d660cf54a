using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Step;

namespace ShopJobs.Web.Components.Devices;

/// <summary>The step's page as devices know it: which reading tool is picked there, and what a scanned label picks.</summary>
public sealed partial class DeviceLine(PickedTools picked, WhoIsHere here, IJSRuntime script) : IAsyncDisposable
{
    private static readonly TabletAnswer Locked = new(TabletOutcome.Refused, ["The tablet is locked. Whoever works there signs in; then send it again."]);
    private static readonly TabletAnswer NotYet = new(TabletOutcome.Waiting, ["The tablet has not answered yet. Send the reading again under the same id."]);
    private static readonly TabletAnswer Gone = new(TabletOutcome.Away, []);

    // One that is drawn again listens before the one before it has left.
    private readonly string token = Guid.NewGuid().ToString("N");
    private DotNetObjectReference<DeviceLine>? self;
    private IDisposable? standing;
    private (ToolId Tool, DeviceId Tablet)? at;

    [Parameter, EditorRequired]
    public StepScene Scene { get; set; } = default!;

    /// <summary>Every tool beside the next pull.</summary>
    [Parameter]
    public IReadOnlyList<ToolOffer> Offers { get; set; } = [];

    /// <summary>The keypad that stands on the screen; null where none does.</summary>
    [Parameter]
    public KeypadCell? Pad { get; set; }

    /// <summary>A label picked a tool.</summary>
    [Parameter]
    public EventCallback<ToolId> OnTool { get; set; }

    /// <summary>Picks the tool of a label that was scanned; says why not where it is not picked.</summary>
    [JSInvokable]
    public async Task<LabelAnswer> TakeLabelAsync(string text)
    {
        var answer = LabelAnswer.Of(text, Offers);
        if (answer.Tool is { } tool)
        {
            await InvokeAsync(() => OnTool.InvokeAsync(tool));
        }

        return answer;
    }

    public async ValueTask DisposeAsync()
    {
        standing?.Dispose();
        if (self is not null)
        {
            try
            {
                await script.InvokeVoidAsync("shopDevice.leave", token);
            }
            catch (JSDisconnectedException)
            {
                // The page is gone, and its script with it.
            }

            self.Dispose();
        }
    }

    // Not while the page is only drawn for its first sight: that one has no script to answer.
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        (ToolId Tool, DeviceId Tablet)? now = Pad is { IsSetting: false } pad ? (pad.Tool.Id, Scene.Here.Tablet) : null;
        if (now != at)
        {
            standing?.Dispose();
            standing = now is var (tool, tablet) ? picked.Put(new PickedTool(tool, tablet, OfferAsync)) : null;
            at = now;
        }

        if (firstRender)
        {
            self = DotNetObjectReference.Create(this);
            await script.InvokeVoidAsync("shopDevice.listen", self, token);
        }
    }

    private async Task<TabletAnswer> OfferAsync(OfferedReading reading, CancellationToken cancellation)
    {
        // The page asks who looks at it, and not who sent the reading: nothing of that request comes with it.
        Task<TabletAnswer> asked;
        using (ExecutionContext.SuppressFlow())
        {
            asked = Task.Run(() => AskHereAsync(reading, cancellation), CancellationToken.None);
        }

        return await asked;
    }

    private async Task<TabletAnswer> AskHereAsync(OfferedReading reading, CancellationToken cancellation)
    {
        var answer = Gone;
        await InvokeAsync(async () => answer = await AskAsync(reading, cancellation));
        return answer;
    }

    private async Task<TabletAnswer> AskAsync(OfferedReading reading, CancellationToken cancellation)
    {
        if (Pad is not { IsSetting: false } pad)
        {
            return Gone;
        }

        try
        {
            if (await here.LookingAsync(cancellation) is not { } present || present.Session != Scene.Here.Session)
            {
                return Locked;
            }

            var said = await script.InvokeAsync<Said>("shopDevice.offer", cancellation, new
            {
                id = reading.Id.Value,
                value = reading.Value.Value.ToString(CultureInfo.InvariantCulture),
                degrees = reading.Degrees?.ToString(CultureInfo.InvariantCulture),
                tool = pad.Tool.Id.Value,
            });
            return new TabletAnswer(Enum.Parse<TabletOutcome>(said.Outcome, ignoreCase: true), said.Words);
        }
        catch (JSDisconnectedException)
        {
            return Gone;
        }
        catch (OperationCanceledException)
        {
            return NotYet;
        }
    }

    private sealed record Said(string Outcome, IReadOnlyList<string> Words);
}
