using MudBlazor;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Look.Signing;

/// <summary>Asks the lead for a signature on the time and sets it again.</summary>
public sealed class ClockSigning(IDialogService dialogs, ClockDesk desk)
{
    /// <summary>What became of it; null when nobody signed.</summary>
    public async Task<DeskAnswer?> SignAsync(ToSign<SetClock> asked)
    {
        ArgumentNullException.ThrowIfNull(asked);
        return await dialogs.SignAsync(asked.Request) is { } proof
            ? await desk.SignAsync(proof, asked.Request.Command, asked.Request.Shown, asked.Command)
            : null;
    }
}
