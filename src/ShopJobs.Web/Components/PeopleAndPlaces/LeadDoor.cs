using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.PeopleAndPlaces;

/// <summary>One change by a lead, in one transaction; refused when it would leave the shop without anybody who may lead.</summary>
public sealed class LeadDoor(IDbContextFactory<ShopDbContext> database, WhoIsHere here, ShopClock clock)
{
    internal const string NobodyLikeThat = "That person is not in the book. Load the page again.";
    private const string NotYours = "People, places and tablets are the lead's to change. Sign in as the lead.";
    private const string LastLead = "Then nobody could lead the shop. Give somebody else the lead's right first.";
    private const string ChangedMeanwhile = "Somebody changed this meanwhile. Load the page again and make your change once more.";

    /// <summary>Runs a change and saves it; null, or why not.</summary>
    public async Task<string?> ChangeAsync(Func<ShopDbContext, PersonId, Task<string?>> change, CancellationToken cancellation)
    {
        if (await here.ActingAsync(cancellation) is not { } present)
        {
            return NotYours;
        }

        await using var shop = await database.CreateDbContextAsync(cancellation);
        await using var locked = await shop.Database.BeginTransactionAsync(cancellation);
        if (!(await shop.RightsOfAsync(present.Person, clock.Today, cancellation)).Contains(Right.Lead))
        {
            return NotYours;
        }

        if (await change(shop, present.Person) is { } refusal)
        {
            return refusal;
        }

        try
        {
            await shop.SaveChangesAsync(cancellation);
        }
        catch (DbUpdateConcurrencyException)
        {
            return ChangedMeanwhile;
        }

        if (!await HasLeadForEverAsync(shop, cancellation))
        {
            return LastLead;
        }

        await locked.CommitAsync(cancellation);
        return null;
    }

    private async Task<bool> HasLeadForEverAsync(ShopDbContext shop, CancellationToken cancellation)
    {
        var today = clock.Today;
        return await shop.People.AnyAsync(
            person => person.Active && person.Rights.Any(right => right.Right == Right.Lead && right.To == null && right.From <= today),
            cancellation);
    }
}
