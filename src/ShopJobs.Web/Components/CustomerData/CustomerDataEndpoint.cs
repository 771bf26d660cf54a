using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;

namespace ShopJobs.Web.Components.CustomerData;

/// <summary>Where the lead takes the file with a customer's data.</summary>
internal static class CustomerDataEndpoint
{
    internal static string Path(Guid customer) => $"/customers/{customer}/file";

    internal static void MapCustomerData(this IEndpointRouteBuilder app) =>
        app.MapGet("/customers/{id:guid}/file", GiveAsync).RequireAuthorization(nameof(Right.Lead));

    private static async Task<IResult> GiveAsync(Guid id, CustomerFiles files, CancellationToken cancellation) =>
        await files.WriteAsync(new CustomerId(id), cancellation) is { } bytes
            ? Results.File(bytes, "application/json", $"customer-{id.ToString("N", CultureInfo.InvariantCulture)[..8]}.json")
            : Results.NotFound();
}
