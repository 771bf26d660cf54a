using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Cars;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Components.Visits;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Names;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.Cars;

/// <summary>Customers and cars: the lead's ordinary rows. Each command returns null, or why not and what to do.</summary>
public sealed class CustomerDesk(IDbContextFactory<ShopDbContext> database, CarDesk cars, ShopChange changes, ShopClock clock)
{
    private const string NotYours = "Customers and cars are the lead's to change. Sign in as the lead.";

    public async Task<IReadOnlyList<Car>> CarsAsync(CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await shop.Cars.AsNoTracking().Include(car => car.Customer).OrderBy(car => car.Name).ToListAsync(cancellation);
    }

    public async Task<IReadOnlyList<Customer>> CustomersAsync(CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await shop.Customers.AsNoTracking().OrderBy(customer => customer.Name).ToListAsync(cancellation);
    }

    /// <summary>How many customer's links of a car open now. They end when the car gets another owner.</summary>
    public async Task<int> OpenLinksAsync(CarId car, CancellationToken cancellation = default)
    {
        var now = clock.Now;
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await shop.CustomerLinks.CountAsync(link => link.CarId == car && link.RevokedAt == null && link.ExpiresAt > now, cancellation);
    }

    public async Task<string?> SaveAsync(CustomerForm form, CancellationToken cancellation = default)
    {
        if (Broken(new CustomerFormValidator().Validate(form)) is { } broken)
        {
            return broken;
        }

        return await ChangeAsync(async (shop, by) =>
        {
            var name = Typed.Clean(form.Name);
            var customer = await shop.Customers.FindAsync([form.Id], cancellation);
            if (customer?.Name != name && await shop.CustomerLikeAsync(name, form.Id, cancellation) is { } other)
            {
                return $"{NameRules.Taken(name, other, "another customer")} Add a first name or a town, so that nobody gets the other's papers.";
            }

            if (customer is null)
            {
                customer = new Customer { Id = form.Id, Name = "" };
                shop.Customers.Add(customer);
            }
            else
            {
                shop.Entry(customer).Property(row => row.Revision).OriginalValue = form.Revision;
            }

            customer.Name = name;
            customer.Contact = Typed.Clean(form.Contact);
            customer.Touch(by, clock.Now);
            return null;
        }, cancellation);
    }

    public async Task<string?> SaveAsync(CarForm form, CancellationToken cancellation = default)
    {
        if (Broken(new CarFormValidator().Validate(form)) is { } broken)
        {
            return broken;
        }

        return await ChangeAsync(async (shop, by) =>
        {
            var name = Typed.Clean(form.Name);
            var owner = new CustomerId(Guid.Parse(form.Customer));
            var car = await shop.Cars.FindAsync([form.Id], cancellation);
            if (car?.Name != name && await shop.CarLikeAsync(name, form.Id, cancellation) is { } other)
            {
                return $"{NameRules.Taken(name, other, "another car")} Give this one a different name, so that nobody takes one for the other.";
            }

            if (await shop.Customers.AsNoTracking().SingleOrDefaultAsync(customer => customer.Id == owner, cancellation) is not { } to)
            {
                return "That customer is not in the book. Pick one from the list.";
            }

            if (to.RetiredAt is not null && car?.CustomerId != owner)
            {
                return $"{to.Name} is put away as not coming back. Bring the customer back first.";
            }

            if (car is null)
            {
                car = new Car { Id = form.Id, Name = "", Model = "", CountsAsHere = false };
                shop.Cars.Add(car);
            }
            else
            {
                shop.Entry(car).Property(row => row.Revision).OriginalValue = form.Revision;
                if (car.CustomerId != owner)
                {
                    shop.OwnersBefore.Add(new OwnerBefore { Id = Guid.NewGuid(), CarId = car.Id, CustomerId = car.CustomerId, Until = clock.Now });
                    await EndLinksAsync(shop, car.Id, cancellation);
                }
            }

            Copy(form, car, name, owner);
            car.Touch(by, clock.Now);
            return null;
        }, cancellation);
    }

    /// <summary>Puts a car away as not coming back, or takes it out again; null, or why not. Nothing of it is deleted.</summary>
    public Task<string?> RetireAsync(CarId id, bool retired, CancellationToken cancellation = default) => ChangeAsync(async (shop, by) =>
    {
        if (await shop.Cars.FindAsync([id], cancellation) is not { } car)
        {
            return "That car is not in the book. Load the page again.";
        }

        // With the write lock in hand: nobody brings it in meanwhile.
        if (retired && Whereabouts.Of(car, cars.Read(id, null), clock).IsHere)
        {
            return $"{car.Name} is here. Send it away first: a car in the shop is never hidden.";
        }

        car.RetiredAt = retired ? clock.Now : null;
        car.Touch(by, clock.Now);
        return null;
    }, cancellation);

    /// <summary>Puts a customer away as not coming back, or takes it out again; null, or why not.</summary>
    public Task<string?> RetireAsync(CustomerId id, bool retired, CancellationToken cancellation = default) => ChangeAsync(async (shop, by) =>
    {
        if (await shop.Customers.FindAsync([id], cancellation) is not { } customer)
        {
            return "That customer is not in the book. Load the page again.";
        }

        if (retired && await shop.Cars.Where(car => car.CustomerId == id && car.RetiredAt == null).Select(car => car.Name).ToListAsync(cancellation) is { Count: > 0 } theirs)
        {
            return $"{string.Join(", ", theirs.Order(StringComparer.OrdinalIgnoreCase))} may still come. Put the cars away first, or give them their new owner.";
        }

        customer.RetiredAt = retired ? clock.Now : null;
        customer.Touch(by, clock.Now);
        return null;
    }, cancellation);

    private Task<string?> ChangeAsync(Func<ShopDbContext, PersonId, Task<string?>> change, CancellationToken cancellation) =>
        changes.RunAsync(Right.Lead, NotYours, change, cancellation);

    /// <summary>Ends the links that were made for the owner before, those that ran out too: a clock set back must not open them again.</summary>
    private async Task EndLinksAsync(ShopDbContext shop, CarId car, CancellationToken cancellation)
    {
        var now = clock.Now;
        await shop.CustomerLinks.Where(link => link.CarId == car && link.RevokedAt == null)
            .ExecuteUpdateAsync(rows => rows.SetProperty(link => link.RevokedAt, now).SetProperty(link => link.ChangedHands, true), cancellation);
    }

    private static void Copy(CarForm form, Car car, string name, CustomerId owner)
    {
        car.CustomerId = owner;
        car.Name = name;
        car.Model = Typed.Clean(form.Model);
        car.Mark = Typed.Clean(form.Mark);
        car.Chassis = ChassisNumber.Read(form.Chassis)?.Text ?? "";
        car.Colour = Typed.Clean(form.Colour);
        car.Note = Typed.Clean(form.Note);
        car.Distance = form.Distance;
    }

    private static string? Broken(FluentValidation.Results.ValidationResult result) =>
        result.IsValid ? null : string.Join(" ", result.Errors.Select(error => error.ErrorMessage));
}
