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

/// <summary>
/// Opens the shop for the first time, once: while there is nobody in the database. A demo shop whose filling was broken off
/// is filled from where it had come.
/// </summary>
public sealed class FirstStartDesk(
    IDbContextFactory<ShopDbContext> database,
    TabletDesk tablets,
    ShopSettings settings,
    TimeProvider time,
    IPasswordHasher<Person> hasher,
    DemoShop demo,
    DemoWork work,
    Listening listening) : IDisposable
{
    private const string FirstTablet = "First tablet";
    private readonly SemaphoreSlim oneAtATime = new(1);

    public async Task<bool> IsNeededAsync(CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await shop.NeedsOpeningAsync(cancellation);
    }

    /// <summary>True when the demo shop was begun and not finished: then nothing else can be opened here.</summary>
    public async Task<bool> IsHalfFurnishedAsync(CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await shop.IsHalfFurnishedAsync(cancellation);
    }

    public void Dispose() => oneAtATime.Dispose();

    /// <summary>Why the demo shop may not be opened here, or null.</summary>
    public string? DemoRefusal => listening.LoopbackOnly ? null : listening.Refusal(demo: true);

    /// <summary>Opens the demo shop; null, or why not.</summary>
    public async Task<string?> OpenDemoAsync(HttpContext http)
    {
        if (DemoRefusal is { } refusal)
        {
            return refusal;
        }

        await oneAtATime.WaitAsync(http.RequestAborted);
        try
        {
            return await FurnishAsync(http);
        }
        finally
        {
            oneAtATime.Release();
        }
    }

    private async Task<string?> FurnishAsync(HttpContext http)
    {
        var facts = new ShopFacts(DemoShop.Name, TimeZoneInfo.FindSystemTimeZoneById(DemoShop.Zone), Demo: true);
        if (await IsHalfFurnishedAsync(http.RequestAborted))
        {
            await TakeOverAsync(http);
        }
        else if (await OpenAsync(http, facts, FirstTablet, (shop, today, at) => Begin(shop, today, at)) is { } notOpened)
        {
            return notOpened;
        }

        await work.RunAsync();
        await using var furnished = await database.CreateDbContextAsync();
        await furnished.EndFurnishingAsync();
        return null;
    }

    private PersonId Begin(ShopDbContext shop, DateOnly today, DateTime at)
    {
        shop.BeginFurnishing();
        return demo.Furnish(shop, today, at);
    }

    // Whoever began it never got an answer: their tablets and sessions end, and this browser becomes the first tablet.
    private async Task TakeOverAsync(HttpContext http)
    {
        await using var shop = await database.CreateDbContextAsync(http.RequestAborted);
        await using var locked = await shop.Database.BeginTransactionAsync(http.RequestAborted);
        var at = time.GetUtcNow().UtcDateTime;
        var lead = await shop.People.Where(person => person.Name == DemoPeople.Lead.Name).Select(person => person.Id).SingleAsync(http.RequestAborted);
        await shop.Sessions.Where(row => row.EndedAt == null).ExecuteUpdateAsync(rows => rows.SetProperty(row => row.EndedAt, at), http.RequestAborted);
        await shop.Tablets.Where(row => row.RevokedAt == null).ExecuteUpdateAsync(
            rows => rows.SetProperty(row => row.RevokedAt, at).SetProperty(row => row.RevokedBy, lead), http.RequestAborted);
        tablets.Enrol(shop, http, FirstTablet, lead);
        await shop.SaveChangesAsync(http.RequestAborted);
        await locked.CommitAsync(http.RequestAborted);
        await settings.LoadAsync(http.RequestAborted);
    }

    /// <summary>Opens an empty shop with its first lead; null, or why not.</summary>
    /// <param name="http">The browser that becomes the first tablet.</param>
    /// <param name="form">Checked by <see cref="NewShopValidator"/> before.</param>
    /// <param name="pin">The lead's PIN, shown once by the caller.</param>
    public Task<string?> OpenEmptyAsync(HttpContext http, NewShop form, string pin)
    {
        var facts = new ShopFacts(form.ShopName.Trim(), TimeZoneInfo.FindSystemTimeZoneById(form.Zone), Demo: false);
        return OpenAsync(http, facts, FirstTablet, (shop, today, at) =>
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
            lead.Rights.AddRange(RightSets.OfTheLead.Select(right =>
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
            return "This shop is set up already. Go to the sign-in page.";
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
