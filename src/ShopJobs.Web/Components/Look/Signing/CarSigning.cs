using MudBlazor;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Look.Signing;

/// <summary>Asks for a signature and runs the command it is for.</summary>
public sealed class CarSigning(IDialogService dialogs, CarDesk desk)
{
    /// <summary>What became of it; null when nobody signed.</summary>
    public async Task<DeskAnswer?> SignAsync(CarId car, ToSign<SignedCommand> asked)
    {
        ArgumentNullException.ThrowIfNull(asked);
        return await dialogs.SignAsync(asked.Request) is { } proof
            ? await desk.SignAsync(car, proof, asked.Request.Command, asked.Request.Shown, asked.Command, asked.Contents)
            : null;
    }
}
