namespace ShopJobs.Web.Components.PartsCatalogue;

/// <summary>Where whoever is signed in takes the catalogue as a file.</summary>
internal static class PartsCsvEndpoint
{
    internal const string Path = "/parts/parts.csv";

    internal static void MapPartsCatalogue(this IEndpointRouteBuilder app) => app.MapGet(Path, GiveAsync).RequireAuthorization();

    private static async Task<IResult> GiveAsync(PartCatalogueShelf shelf, CancellationToken cancellation) =>
        Results.File(PartsCsv.Write(await shelf.AllAsync(cancellation)), "text/csv; charset=utf-8", "parts.csv");
}
