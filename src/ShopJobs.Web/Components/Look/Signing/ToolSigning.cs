using MudBlazor;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Look.Signing;

/// <summary>Asks for a signature on a tool and runs the command it is for.</summary>
public sealed class ToolSigning(IDialogService dialogs, ToolDesk desk)
{
    /// <summary>What became of it; null when nobody signed.</summary>
    public async Task<DeskAnswer?> SignAsync(ToolId tool, ToSign<SignedToolCommand> asked)
    {
        ArgumentNullException.ThrowIfNull(asked);
        return await dialogs.SignAsync(asked.Request) is { } proof
            ? await desk.SignAsync(tool, proof, asked.Request.Command, asked.Request.Shown, asked.Command, asked.Contents)
            : null;
    }
}
