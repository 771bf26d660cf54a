using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Shop;

namespace ShopJobs.Web.Names;

/// <summary>Names that are in the book. Asked in the transaction that writes the new one, so that two at once don't both pass.</summary>
internal static class NamesTaken
{
    /// <summary>The name of a person, here now or earlier, that this one passes for; what somebody was called before too.</summary>
    public static async Task<string?> PersonLikeAsync(this ShopDbContext shop, string name, PersonId except, CancellationToken cancellation) =>
        NameLook.FirstAlike(name, await shop.People.Where(row => row.Id != except).Select(row => row.Name)
            .Concat(shop.NamesBefore.Where(row => row.PersonId != except).Select(row => row.Name)).ToListAsync(cancellation));

    /// <summary>The tablet in use whose name this one passes for. One that is out of use for good gives its name to the next.</summary>
    public static async Task<string?> TabletLikeAsync(this ShopDbContext shop, string name, CancellationToken cancellation) =>
        NameLook.FirstAlike(name, await shop.Tablets.Where(row => row.RevokedAt == null).Select(row => row.Name).ToListAsync(cancellation));

    /// <summary>The car, here or not coming back, whose name this one passes for.</summary>
    public static async Task<string?> CarLikeAsync(this ShopDbContext shop, string name, CarId except, CancellationToken cancellation) =>
        NameLook.FirstAlike(name, await shop.Cars.Where(row => row.Id != except).Select(row => row.Name).ToListAsync(cancellation));

    /// <summary>The place, in use or not, whose name this one passes for.</summary>
    public static async Task<PlaceRow?> PlaceLikeAsync(this ShopDbContext shop, string name, string except, CancellationToken cancellation)
    {
        var others = await shop.Places.AsNoTracking().Where(row => row.Key != except).ToListAsync(cancellation);
        return NameLook.FirstAlike(name, others.Select(row => row.Name)) is { } alike ? others.First(row => row.Name == alike) : null;
    }

    /// <summary>The customer whose name this one passes for. Where the data was erased no name is left to pass for.</summary>
    public static async Task<string?> CustomerLikeAsync(this ShopDbContext shop, string name, CustomerId except, CancellationToken cancellation) =>
        NameLook.FirstAlike(name, await shop.Customers.Where(row => row.Id != except && row.ErasedAt == null).Select(row => row.Name).ToListAsync(cancellation));
}
