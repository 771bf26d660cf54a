using System.Globalization;
using Microsoft.AspNetCore.Http.HttpResults;
using ShopJobs.Web.Running;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>The customer's link. Looking changes nothing; a link that does not open looks the same whatever the reason.</summary>
internal static class CustomerEndpoint
{
    internal static void MapCustomerPages(this IEndpointRouteBuilder app) =>
        app.MapMethods("/s/{token}", [HttpMethods.Get, HttpMethods.Head], OpenAsync).AllowAnonymous().RequireRateLimiting(Limits.CustomerPage);

    private static async Task<RazorComponentResult<CustomerPage>> OpenAsync(
        string token, string? version, LinkDoor door, SummaryShelf shelf, CancellationToken cancellation)
    {
        if (await door.OpenAsync(token, cancellation) is not { } car)
        {
            return new RazorComponentResult<CustomerPage> { StatusCode = StatusCodes.Status404NotFound };
        }

        var versions = shelf.Of(car);
        return new RazorComponentResult<CustomerPage>(new Dictionary<string, object?>
        {
            [nameof(CustomerPage.Versions)] = versions,
            [nameof(CustomerPage.Shown)] = Wanted(versions, version),
            [nameof(CustomerPage.Link)] = $"/s/{token}",
        });
    }

    /// <summary>The version asked for, else the newest.</summary>
    private static IssuedVersion? Wanted(IReadOnlyList<IssuedVersion> versions, string? number) =>
        versions.FirstOrDefault(version => version.Version.ToString(CultureInfo.InvariantCulture) == number)
        ?? (versions.Count > 0 ? versions[0] : null);
}
