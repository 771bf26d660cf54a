using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Mvc;

namespace ShopJobs.Web.Accounts;

/// <summary>The door's few addresses that are not pages.</summary>
internal static class AccountEndpoints
{
    internal static void MapAccounts(this IEndpointRouteBuilder app)
    {
        app.MapPost("/sign-out", async (HttpContext http, SessionBook sessions, [FromForm] string? returnUrl) =>
        {
            await sessions.EndAsync(http.User, http.RequestAborted);
            await http.SignOutAsync(PersonClaims.Scheme);
            return Results.LocalRedirect($"/sign-in?returnUrl={Uri.EscapeDataString(LocalUrl.OrFloor(returnUrl))}");
        });

        // The page says that somebody touches it; without that the tablet locks. Asking (GET) keeps nothing awake.
        app.MapMethods("/here", ["GET", "POST"], () => Results.NoContent());
    }
}
