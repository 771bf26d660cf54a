using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.PeopleAndPlaces;

/// <summary>One change by a lead; refused when it would leave the shop without anybody who may lead.</summary>
public sealed class LeadChange(ShopChange changes, ShopClock clock)
{
    internal const string NobodyLikeThat = "That person is not in the book. Load the page again.";
    private const string NotYours = "People, places and tablets are the lead's to change. Sign in as the lead.";
    private const string LastLead = "Then nobody could lead the shop. Give somebody else the lead's right first.";

    /// <summary>Runs a change and saves it; null, or why not.</summary>
    public Task<string?> ChangeAsync(Func<ShopDbContext, PersonId, Task<string?>> change, CancellationToken cancellation) =>
        changes.RunAsync(Right.Lead, NotYours, change, cancellation, async shop => await HasLeadForEverAsync(shop, cancellation) ? null : LastLead);

    private async Task<bool> HasLeadForEverAsync(ShopDbContext shop, CancellationToken cancellation)
    {
        var today = clock.Today;
        return await shop.People.AnyAsync(
            person => person.Active && person.Rights.Any(right => right.Right == Right.Lead && right.To == null && right.From <= today),
            cancellation);
    }
}
