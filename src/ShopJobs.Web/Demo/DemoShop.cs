using Microsoft.AspNetCore.Identity;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Data.People;

namespace ShopJobs.Web.Demo;

/// <summary>Furnishes the demo shop. Everything in it is invented.</summary>
public sealed class DemoShop(IPasswordHasher<Person> hasher)
{
    public const string Name = "Ninth Bay";

    public const string Zone = "Europe/Berlin";

    /// <summary>Adds the rows to a context the caller saves in one transaction; returns the lead.</summary>
    public PersonId Furnish(ShopDbContext shop, DateOnly today, DateTime at)
    {
        var lead = AddPeople(shop, today, at);
        AddCars(shop, lead, at);
        return lead;
    }

    private PersonId AddPeople(ShopDbContext shop, DateOnly today, DateTime at)
    {
        var people = DemoPeople.All.ToDictionary(demo => demo, demo => NewPerson(demo, today, at));
        shop.People.AddRange(people.Values);
        return people[DemoPeople.Lead].Id;
    }

    private Person NewPerson(DemoPeople.DemoPerson demo, DateOnly today, DateTime at)
    {
        var person = new Person
        {
            Id = new PersonId(Guid.NewGuid()),
            Name = demo.Name,
            Initials = demo.Initials,
            PinHash = "",
            Demo = true,
        };
        person.PinHash = hasher.HashPassword(person, demo.Pin);
        person.Touch(by: null, at);
        person.Rights.AddRange(demo.Rights.Select(right => new PersonRight
        {
            Id = Guid.NewGuid(),
            PersonId = person.Id,
            Right = right,
            From = today.AddDays(-30),
        }));
        return person;
    }

    private static void AddCars(ShopDbContext shop, PersonId by, DateTime at)
    {
        foreach (var owned in DemoCars.All.GroupBy(car => (car.Owner, car.Contact)))
        {
            var customer = new Customer
            {
                Id = new CustomerId(Guid.NewGuid()),
                Name = owned.Key.Owner,
                Contact = owned.Key.Contact,
            };
            customer.Touch(by, at);
            shop.Customers.Add(customer);
            foreach (var demo in owned)
            {
                shop.Cars.Add(NewCar(demo, customer.Id, by, at));
            }
        }
    }

    private static Car NewCar(DemoCars.DemoCar demo, CustomerId owner, PersonId by, DateTime at)
    {
        var car = new Car
        {
            Id = new CarId(Guid.NewGuid()),
            CustomerId = owner,
            Name = demo.Name,
            Model = demo.Model,
            Mark = demo.Mark,
            Chassis = demo.Chassis,
            Colour = demo.Colour,
            Note = demo.Note,
            Place = demo.Place,
        };
        car.Touch(by, at);
        return car;
    }
}
