using Microsoft.AspNetCore.Authentication;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.People;

namespace ShopJobs.Web.Accounts;

/// <summary>Signs a person in at an enrolled tablet, and lets the same person go on after it locked.</summary>
public sealed class SignInDesk(PinCheck pins, SessionDesk sessions)
{
    /// <summary>Sets the person's cookie when the PIN is right.</summary>
    public async Task<PinAnswer> SignInAsync(HttpContext http, Tablet tablet, PersonId person, string? pin)
    {
        var answer = await pins.AtTheDoorAsync(person, pin, tablet.Id, http.RequestAborted);
        if (answer is PinAnswer.Right)
        {
            var session = await sessions.OpenAsync(person, tablet.Id, http.RequestAborted);
            await http.SignInAsync(PersonClaims.Scheme, PersonClaims.Of(session, person.Value.ToString()));
        }

        return answer;
    }

    /// <summary>Name and PIN of whoever is signed in here wake the same session.</summary>
    public async Task<UnlockAnswer> UnlockAsync(HttpContext http, Tablet tablet, string? name, string? pin)
    {
        if (await sessions.AsleepAsync(http.User, tablet.Id, http.RequestAborted) is not { } person
            || !string.Equals(person.Name, name?.Trim(), StringComparison.OrdinalIgnoreCase))
        {
            return new UnlockAnswer.SignIn();
        }

        if (await pins.AtTheDoorAsync(person.Id, pin, tablet.Id, http.RequestAborted) is PinAnswer.No no)
        {
            return new UnlockAnswer.No(no.Words);
        }

        await sessions.WakeAsync(http.User, http.RequestAborted);
        return new UnlockAnswer.GoOn();
    }
}
