using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Components.Visits;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Shop;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Names;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.PeopleAndPlaces;

/// <summary>The lead looks after the places of the shop. Commands return null, or why not and what to do.</summary>
public sealed class PlaceDesk(IDbContextFactory<ShopDbContext> database, LeadChange door, CarDesk cars, ShopClock clock)
{
    private const string NoneLikeThat = "That place is not in the book. Load the page again.";

    /// <summary>Every place in the shop's order, those out of use last.</summary>
    public async Task<IReadOnlyList<PlaceRow>> AllAsync(CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await shop.Places.AsNoTracking().OrderBy(place => place.RetiredAt != null).ThenBy(place => place.Rank).ToListAsync(cancellation);
    }

    /// <summary>Adds a place, or gives one another name, kind or place in the order. Entries hold its key and stay as they are.</summary>
    public async Task<PlaceRefusal?> SaveAsync(PlaceForm form, CancellationToken cancellation = default)
    {
        if (new PlaceFormValidator().Validate(form) is { IsValid: false, Errors: [var first, ..] })
        {
            return new PlaceRefusal(first.PropertyName, first.ErrorMessage);
        }

        var field = "";
        var refusal = await door.ChangeAsync(
            async (shop, by) =>
            {
                var said = await ChangeAsync(shop, form, by, cancellation);
                field = said?.Field ?? "";
                return said?.Words;
            },
            cancellation);
        return refusal is null ? null : new PlaceRefusal(field, refusal);
    }

    /// <summary>Takes a place out of use, or brings it back; null, or why not. Old entries keep finding its name.</summary>
    public Task<string?> RetireAsync(string key, bool retired, CancellationToken cancellation = default) => door.ChangeAsync(
        async (shop, by) =>
        {
            if (await shop.Places.FindAsync([key], cancellation) is not { } place)
            {
                return NoneLikeThat;
            }

            if (retired && await StandingAsync(shop, key, cancellation) is { } standing)
            {
                return $"{standing} there. Move it or send it away first: no car is left at a place that is out of use.";
            }

            if (retired && !await shop.Places.AnyAsync(other => other.Key != key && other.RetiredAt == null, cancellation))
            {
                return "It is the only place in use: no car could come in. Add another place first.";
            }

            place.RetiredAt = retired ? clock.Now : null;
            place.Touch(by, clock.Now);
            return null;
        },
        cancellation);

    private async Task<PlaceRefusal?> ChangeAsync(ShopDbContext shop, PlaceForm form, PersonId by, CancellationToken cancellation)
    {
        var name = Typed.Clean(form.Name);
        var kind = Enum.Parse<PlaceKind>(form.Kind);
        var place = await shop.Places.FindAsync([form.Key], cancellation);
        if (place?.Name != name && await shop.PlaceLikeAsync(name, form.Key, cancellation) is { } other)
        {
            return new(nameof(PlaceForm.Name), $"{NameRules.Taken(name, other.Name, "another place")} {(other.RetiredAt is null ? "Give this one a different name, so that no car is put on the wrong one." : "That one is out of use: bring it back, or give this one a different name.")}");
        }

        if (place is not null && place.Kind != kind && await StandingAsync(shop, form.Key, cancellation) is { } standing)
        {
            return new(nameof(PlaceForm.Kind), $"{standing} there. Move it or send it away first, then say what the place is.");
        }

        if (place is null)
        {
            place = new PlaceRow { Key = form.Key, Name = "" };
            shop.Places.Add(place);
        }
        else
        {
            shop.Entry(place).Property(row => row.Revision).OriginalValue = form.Revision;
        }

        (place.Name, place.Kind) = (name, kind);
        place.Touch(by, clock.Now);
        await PutAsync(shop, place, form.After, cancellation);
        return null;
    }

    // Counts the places again, this one after the other; first where the other is gone.
    private static async Task PutAsync(ShopDbContext shop, PlaceRow place, string after, CancellationToken cancellation)
    {
        var order = await shop.Places.Where(row => row.Key != place.Key).OrderBy(row => row.Rank).ToListAsync(cancellation);
        order.Insert(order.FindIndex(row => row.Key == after) + 1, place);
        foreach (var (row, index) in order.Select((row, index) => (row, index)))
        {
            row.Rank = index + 1;
        }
    }

    // With the write lock in hand: nobody puts a car there meanwhile. "Blue is", "Blue, Grey are"; null where none does.
    private async Task<string?> StandingAsync(ShopDbContext shop, string key, CancellationToken cancellation)
    {
        var rows = await shop.Cars.AsNoTracking().Where(car => car.Place == key && car.RetiredAt == null).OrderBy(car => car.Name).ToListAsync(cancellation);
        var names = rows.Where(car => Whereabouts.Of(car, cars.Read(car.Id, null), clock).IsHere).Select(car => car.Name).ToList();
        return names.Count == 0 ? null : $"{string.Join(", ", names)} {(names.Count == 1 ? "is" : "are")}";
    }
}
