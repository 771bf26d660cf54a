using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Mvc;
using ShopJobs.Web.Data;
using ShopJobs.Web.Running;

namespace ShopJobs.Web.Accounts;

/// <summary>The door's few addresses that are not pages.</summary>
internal static class AccountEndpoints
{
    internal static void MapAccounts(this IEndpointRouteBuilder routes)
    {
        var app = routes.MapGroup("").WithMetadata(new SkipStatusCodePagesAttribute());
        app.MapPost("/sign-out", async (HttpContext http, SessionDesk sessions, SavingTrouble trouble, [FromForm] string? returnUrl) =>
        {
            try
            {
                await sessions.EndAsync(http.User, http.RequestAborted);
            }
            catch (Exception failure) when (trouble.Takes(failure))
            {
                // The session can't be ended in the database now; this browser gives up its cookie all the same.
            }

            await http.SignOutAsync(PersonClaims.Scheme);
            return Results.LocalRedirect($"/sign-in?returnUrl={Uri.EscapeDataString(LocalUrl.OrFloor(returnUrl))}");
        });

        // A locked page asks here before it gives up what was typed. The form is the sign-in form.
        app.MapPost("/unlock", async (
            HttpContext http,
            TabletDesk tablets,
            SignInDesk desk,
            [FromForm(Name = "Form.Name")] string? name,
            [FromForm(Name = "Form.Pin")] string? pin) =>
        {
            UnlockAnswer answer = await tablets.FindAsync(http) is { } tablet
                ? await desk.UnlockAsync(http, tablet, name, pin)
                : new UnlockAnswer.SignIn();
            return answer switch
            {
                UnlockAnswer.GoOn => Results.NoContent(),
                UnlockAnswer.No no => Results.Text(no.Words, statusCode: StatusCodes.Status403Forbidden),
                _ => Results.Conflict(),
            };
        }).AllowAnonymous().RequireRateLimiting(Limits.Door);

        // The page says that somebody touches it; without that the tablet locks. Asking (GET) keeps nothing awake.
        app.MapMethods("/here", ["GET", "POST"], () => Results.NoContent());
    }
}
