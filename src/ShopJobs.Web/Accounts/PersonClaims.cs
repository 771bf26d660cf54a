using System.Security.Claims;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Accounts;

/// <summary>The person's cookie names a session row, and carries nothing that is believed without it.</summary>
internal static class PersonClaims
{
    internal const string Scheme = "person";
    private const string Session = "session";

    internal static ClaimsPrincipal Of(SessionId session, string name) => new(new ClaimsIdentity(
        [new Claim(Session, session.Value.ToString()), new Claim(ClaimTypes.Name, name)], Scheme));

    internal static SessionId? SessionOf(ClaimsPrincipal user) =>
        Guid.TryParse(user.FindFirst(Session)?.Value, out var id) ? new SessionId(id) : null;
}
