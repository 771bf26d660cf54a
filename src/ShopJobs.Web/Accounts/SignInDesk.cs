using Microsoft.AspNetCore.Authentication;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.People;

namespace ShopJobs.Web.Accounts;

/// <summary>Signs a person in at an enrolled tablet.</summary>
public sealed class SignInDesk(PinCheck pins, SessionBook sessions)
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
}
