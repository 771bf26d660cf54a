using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Running;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.FirstStart;

/// <summary>Opens the shop for the first time, once: while there is nobody in the database.</summary>
public sealed class FirstStartDesk(
    IDbContextFactory<ShopDbContext> database,
    TabletDesk tablets,
    ShopSettings settings,
    TimeProvider time,
    IPasswordHasher<Person> hasher,
    DemoShop demo,
    DemoWork work,
    Listening listening)
{
    public async Task<bool> IsNeededAsync(CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return !await shop.People.AnyAsync(cancellation);
    }

    /// <summary>Why the demo shop may not be opened here, or null.</summary>
    public string? DemoRefusal => listening.LoopbackOnly ? null : listening.Refusal(demo: true);

    /// <summary>Opens the demo shop; null, or why not.</summary>
    public async Task<string?> OpenDemoAsync(HttpContext http)
    {
        if (DemoRefusal is { } refusal)
        {
            return refusal;
        }

        var facts = new ShopFacts(DemoShop.Name, TimeZoneInfo.FindSystemTimeZoneById(DemoShop.Zone), Demo: true);
        var notOpened = await OpenAsync(http, facts, "First tablet", (shop, today, at) => demo.Furnish(shop, today, at));
        if (notOpened is null)
        {
            await work.RunAsync();
        }

        return notOpened;
    }

    /// <summary>Opens an empty shop with its first lead; null, or why not.</summary>
    /// <param name="http">The browser that becomes the first tablet.</param>
    /// <param name="form">Checked by <see cref="NewShopValidator"/> before.</param>
    /// <param name="pin">The lead's PIN, shown once by the caller.</param>
    public Task<string?> OpenEmptyAsync(HttpContext http, NewShop form, string pin)
    {
        var facts = new ShopFacts(form.ShopName.Trim(), TimeZoneInfo.FindSystemTimeZoneById(form.Zone), Demo: false);
        return OpenAsync(http, facts, "First tablet", (shop, today, at) =>
        {
            var lead = new Person
            {
                Id = new PersonId(Guid.NewGuid()),
                Name = form.LeadName.Trim(),
                Initials = Initials.Of(form.LeadName),
                PinHash = "",
            };
            lead.PinHash = hasher.HashPassword(lead, pin);
            lead.Touch(by: null, at);
            lead.Rights.AddRange(Enum.GetValues<Right>().Select(right =>
                new PersonRight { Id = Guid.NewGuid(), PersonId = lead.Id, Right = right, From = today }));
            shop.People.Add(lead);
            return lead.Id;
        });
    }

    private async Task<string?> OpenAsync(
        HttpContext http, ShopFacts facts, string tabletName, Func<ShopDbContext, DateOnly, DateTime, PersonId> furnish)
    {
        await using var shop = await database.CreateDbContextAsync(http.RequestAborted);
        await using var locked = await shop.Database.BeginTransactionAsync(http.RequestAborted);
        if (await shop.People.AnyAsync(http.RequestAborted))
        {
            return "This shop is open already. Go to the sign-in page.";
        }

        var at = time.GetUtcNow().UtcDateTime;
        var today = DateOnly.FromDateTime(TimeZoneInfo.ConvertTimeFromUtc(at, facts.Zone));
        ShopSettings.Write(shop, facts);
        var lead = furnish(shop, today, at);
        await shop.SaveChangesAsync(http.RequestAborted);
        tablets.Enrol(shop, http, tabletName, lead);
        await shop.SaveChangesAsync(http.RequestAborted);
        await locked.CommitAsync(http.RequestAborted);
        await settings.LoadAsync(http.RequestAborted);
        return null;
    }
}
