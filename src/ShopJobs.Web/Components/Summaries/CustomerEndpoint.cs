using System.Globalization;
using Microsoft.AspNetCore.Http.HttpResults;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Running;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>
/// The customer's link. Looking changes nothing; a link that does not open looks the same whatever the reason. The one thing the
/// customer may send is that a version was read: whoever knows the secret of the link may, so no token of a form is needed.
/// </summary>
internal static class CustomerEndpoint
{
    internal static void MapCustomerPages(this IEndpointRouteBuilder app)
    {
        app.MapMethods("/s/{token}", [HttpMethods.Get, HttpMethods.Head], OpenAsync).AllowAnonymous().RequireRateLimiting(Limits.CustomerPage);
        app.MapMethods("/s/{token}/calendar.ics", [HttpMethods.Get, HttpMethods.Head], CalendarAsync).AllowAnonymous().RequireRateLimiting(Limits.CustomerPage);
        app.MapPost("/s/{token}", ReadAsync).AllowAnonymous().DisableAntiforgery().RequireRateLimiting(Limits.CustomerPage);
    }

    private static async Task<RazorComponentResult<CustomerPage>> OpenAsync(
        string token, string? version, LinkShelf door, CustomerVersions issued, AcknowledgementDesk desk, CancellationToken cancellation) =>
        await door.OpenAsync(token, cancellation) is { } car
            ? await PageAsync(car, token, version, issued, desk, null, cancellation)
            : NoLink();

    /// <summary>The days to come back by; where the version has none any more, the page says why.</summary>
    private static async Task<IResult> CalendarAsync(string token, string? version, LinkShelf door, CustomerVersions issued, CancellationToken cancellation)
    {
        if (await door.OpenAsync(token, cancellation) is not { } car)
        {
            return NoLink();
        }

        return Wanted(await issued.OfAsync(car, cancellation), version) is { } shown && ComeBackCalendar.Of(car, shown) is { } file
            ? TypedResults.Text(file, ComeBackCalendar.MediaType)
            : new SeeOther($"/s/{token}");
    }

    private static async Task<IResult> ReadAsync(
        string token, HttpContext http, LinkShelf door, CustomerVersions issued, AcknowledgementDesk desk, SavingTrouble trouble, CancellationToken cancellation)
    {
        if (await door.OpenAsync(token, cancellation) is not { } car)
        {
            return NoLink();
        }

        var sent = await CustomerWords.ReadAsync(http.Request, cancellation);
        if (sent.Refusal is null)
        {
            try
            {
                sent = sent with { Refusal = await desk.TakeAsync(car, sent.Version, sent.Words, CancellationToken.None) };
            }
            catch (Exception e) when (trouble.Takes(e))
            {
                sent = sent with { Refusal = "It could not be saved just now. Your words are still below. Try again in a few minutes, or call us.", Status = StatusCodes.Status503ServiceUnavailable };
            }
        }

        return sent.Refusal is null
            ? new SeeOther($"/s/{token}?version={sent.Version.ToString(CultureInfo.InvariantCulture)}#read")
            : await PageAsync(car, token, sent.Version.ToString(CultureInfo.InvariantCulture), issued, desk, sent, cancellation);
    }

    private static async Task<RazorComponentResult<CustomerPage>> PageAsync(
        CarId car, string token, string? version, CustomerVersions issued, AcknowledgementDesk desk, CustomerWords? refused, CancellationToken cancellation)
    {
        var versions = await issued.OfAsync(car, cancellation);
        var shown = Wanted(versions, version);
        return new RazorComponentResult<CustomerPage>(new Dictionary<string, object?>
        {
            [nameof(CustomerPage.Versions)] = versions,
            [nameof(CustomerPage.Shown)] = shown,
            [nameof(CustomerPage.Link)] = $"/s/{token}",
            [nameof(CustomerPage.Read)] = shown is null ? null : await desk.FindAsync(car, shown.Version, cancellation),
            [nameof(CustomerPage.Refused)] = refused,
        })
        { StatusCode = refused?.Status };
    }

    private static RazorComponentResult<CustomerPage> NoLink() => new() { StatusCode = StatusCodes.Status404NotFound };

    /// <summary>The version asked for, else the newest.</summary>
    private static IssuedVersion? Wanted(IReadOnlyList<IssuedVersion> versions, string? number) =>
        versions.FirstOrDefault(version => version.Version.ToString(CultureInfo.InvariantCulture) == number)
        ?? (versions.Count > 0 ? versions[0] : null);

    /// <summary>To be looked at with GET, so that loading again sends nothing.</summary>
    private sealed record SeeOther(string Path) : IResult
    {
        public Task ExecuteAsync(HttpContext httpContext)
        {
            httpContext.Response.StatusCode = StatusCodes.Status303SeeOther;
            httpContext.Response.Headers.Location = Path;
            return Task.CompletedTask;
        }
    }
}
