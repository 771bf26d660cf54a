using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Authorization;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Web.Data;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Accounts;

/// <summary>On every request: the session row decides, and whoever may not pass is sent to the right door.</summary>
internal sealed class PersonCookieEvents(
    SessionDesk sessions, TabletDesk tablets, IDbContextFactory<ShopDbContext> database) : CookieAuthenticationEvents
{
    internal const string SignedOut = "Nobody is signed in at this tablet. Sign in; what was typed is kept here.";
    private static readonly string[] NotPages = ["/_blazor", "/here", "/api", "/sign-out"];

    public override async Task ValidatePrincipal(CookieValidatePrincipalContext context)
    {
        var http = context.HttpContext;
        if (http.GetEndpoint()?.Metadata.GetMetadata<IAllowAnonymous>() is not null)
        {
            return;
        }

        var touch = !http.Request.Path.StartsWithSegments("/_blazor")
            && !(http.Request.Path.StartsWithSegments("/here") && HttpMethods.IsGet(http.Request.Method));
        var tablet = await tablets.FindAsync(http);
        var present = tablet is null ? null : await sessions.CheckAsync(context.Principal!, touch, http.RequestAborted);
        if (present is null || present.Tablet != tablet!.Id)
        {
            // The cookie stays: a locked session can be woken, and an ended one is worth nothing.
            context.RejectPrincipal();
        }
    }

    public override async Task RedirectToLogin(RedirectContext<CookieAuthenticationOptions> context)
    {
        var http = context.HttpContext;
        if (!HttpMethods.IsGet(http.Request.Method) || NotPages.Any(path => http.Request.Path.StartsWithSegments(path)))
        {
            http.Response.StatusCode = StatusCodes.Status401Unauthorized;
            await http.Response.WriteAsJsonAsync(new { words = (string[])[SignedOut] }, http.RequestAborted);
            return;
        }

        var back = Uri.EscapeDataString(http.Request.Path + http.Request.QueryString);
        await using var shop = await database.CreateDbContextAsync(http.RequestAborted);
        http.Response.Redirect(
            await shop.NeedsOpeningAsync(http.RequestAborted) ? "/start"
            : await tablets.FindAsync(http) is null ? $"/enrol?returnUrl={back}"
            : $"/sign-in?returnUrl={back}");
    }

    public override Task RedirectToAccessDenied(RedirectContext<CookieAuthenticationOptions> context)
    {
        if (HttpMethods.IsGet(context.Request.Method))
        {
            context.Response.Redirect("/not-allowed");
        }
        else
        {
            context.Response.StatusCode = StatusCodes.Status403Forbidden;
        }

        return Task.CompletedTask;
    }
}
