using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.Procedures;

/// <summary>Takes a procedure off the list of those that go on cars, and back. Running jobs keep it.</summary>
public sealed class ProcedureRetirement(ShopChange changes, ShopClock clock)
{
    private const string NotYours = "Retiring a procedure needs the author's right. Ask the lead for it under People and places.";

    /// <summary>Retires the current revision, or brings it back; null, or why not.</summary>
    public Task<string?> SetAsync(string digest, bool retired, CancellationToken cancellation = default) =>
        changes.RunAsync(
            Right.Author,
            NotYours,
            async (shop, by) =>
            {
                var row = await shop.Procedures.FindAsync([digest], cancellation);
                if (row is null || await shop.Procedures.AnyAsync(other => other.Code == row.Code && other.CurrentSince > row.CurrentSince, cancellation))
                {
                    return "A newer revision is current. Load the list of procedures again.";
                }

                row.RetiredAt = retired ? clock.Now : null;
                row.RetiredBy = retired ? by : null;
                return null;
            },
            cancellation);
}
