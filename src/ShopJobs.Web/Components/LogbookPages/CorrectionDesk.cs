using System.Text;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.LogbookPages;

/// <summary>Sends corrections from the logbook page, and their confirmations.</summary>
public sealed class CorrectionDesk(Desk.CarDesk desk, WhoIsHere here)
{
    /// <summary>Voids an entry, or restates the value of a pull.</summary>
    public async Task<DeskAnswer> CorrectAsync(CarId car, CommandId command, long target, EnteredTorque? restated, string reason)
    {
        if (await here.ActingAsync() is not { } present)
        {
            return DeskAnswer.Failed("Not saved: this tablet is locked. Sign in again; what you typed stays here.");
        }

        var content = NewContent.Of(Encoding.UTF8.GetBytes(reason));
        return await desk.RunAsync(car, command, present, new Correct(target, restated, content.Digest), [content]);
    }

    /// <summary>Confirms a correction by the signer.</summary>
    /// <param name="proof">The second person's signature.</param>
    /// <param name="shown">Digest of what was signed.</param>
    public Task<DeskAnswer> ConfirmAsync(CarId car, SignatureProof proof, byte[] shown, long correction, string reason)
    {
        var content = NewContent.Of(Encoding.UTF8.GetBytes(reason));
        return desk.SignAsync(car, proof, Convert.ToHexStringLower(shown), new ConfirmCorrection(correction, content.Digest), [content]);
    }
}
