using System.Text;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.LogbookPages;

/// <summary>Voids entries from the logbook page.</summary>
public sealed class CorrectionDesk(Desk.CarDesk desk, WhoIsHere here)
{
    /// <summary>Voids an entry: it only takes assurance away, so nobody signs.</summary>
    /// <param name="wasPulled">For a pull: whether the fastener was pulled all the same.</param>
    public async Task<DeskAnswer> VoidAsync(CarId car, CommandId command, long target, bool? wasPulled, string reason)
    {
        if (await here.ActingAsync() is not { } present)
        {
            return DeskAnswer.Failed(ShopChange.Locked);
        }

        var content = NewContent.Of(Encoding.UTF8.GetBytes(reason));
        return await desk.RunAsync(car, command, present, new VoidEntry(target, wasPulled, content.Digest), [content]);
    }
}
