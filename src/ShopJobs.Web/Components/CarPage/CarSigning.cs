using MudBlazor;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Look.Signing;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>Asks for a signature and runs the command it is for.</summary>
public sealed class CarSigning(IDialogService dialogs, CarDesk desk)
{
    /// <summary>What became of it; null when nobody signed.</summary>
    /// <param name="command">Makes the command from the digest of what was shown.</param>
    public async Task<DeskAnswer?> SignAsync(
        CarId car, SignRequest request, Func<string, Command> command, params IReadOnlyList<NewContent> contents)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(command);
        if (await dialogs.SignAsync(request) is not { } proof)
        {
            return null;
        }

        var shown = Convert.ToHexStringLower(request.Digest);
        return await desk.SignAsync(car, proof, shown, command(shown), contents);
    }
}
