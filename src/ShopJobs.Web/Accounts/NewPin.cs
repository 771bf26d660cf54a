using Microsoft.AspNetCore.Identity;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.People;

namespace ShopJobs.Web.Accounts;

/// <summary>Replaces a person's PIN.</summary>
internal static class NewPin
{
    /// <summary>Sets a random PIN on a row the caller saves, opens the count again, and returns the PIN to be shown once.</summary>
    internal static string Give(
        ShopDbContext shop, IPasswordHasher<Person> hasher, Person person, PersonId? by, DateTime at, DoorEvent what = DoorEvent.PinReset)
    {
        var pin = Pin.Random();
        person.PinHash = hasher.HashPassword(person, pin);
        person.PinFailures = 0;
        person.NextPinAt = null;
        person.Touch(by, at);
        shop.Note(what, at, person.Id, tablet: null, by);
        return pin;
    }
}
