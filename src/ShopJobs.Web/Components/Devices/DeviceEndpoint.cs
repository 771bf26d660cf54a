using Microsoft.AspNetCore.Http.Features;
using ShopJobs.Web.Running;

namespace ShopJobs.Web.Components.Devices;

/// <summary>
/// Where a tool sends its readings: with its own key in the Authorization header, as JSON of a few hundred bytes. The key opens nothing
/// else. The same id gets an answer to the same reading however often it is sent.
/// </summary>
internal static class DeviceEndpoint
{
    internal const string Path = "/devices/readings";
    private const string Scheme = "Bearer ";
    private const int LargestBody = 2 * 1024;

    internal static void MapDevices(this IEndpointRouteBuilder app) =>
        app.MapPost(Path, AnswerAsync).AllowAnonymous().DisableAntiforgery().RequireRateLimiting(Limits.Device);

    private static async Task<IResult> AnswerAsync(HttpContext http, ToolKeyDesk keys, ReadingDesk desk, CancellationToken cancellation)
    {
        var header = http.Request.Headers.Authorization.ToString();
        var key = header.StartsWith(Scheme, StringComparison.OrdinalIgnoreCase) ? header[Scheme.Length..].Trim() : null;
        if (await keys.FindAsync(key, cancellation) is not { } tool)
        {
            return No(StatusCodes.Status401Unauthorized, "This key is no tool's. The lead makes one on the tool's page.");
        }

        if (!http.Request.HasJsonContentType())
        {
            return No(StatusCodes.Status415UnsupportedMediaType, "A reading is JSON.");
        }

        if (http.Request.ContentLength is not (null or <= LargestBody))
        {
            return No(StatusCodes.Status413PayloadTooLarge, "That is too long for a reading.");
        }

        if (http.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } limit)
        {
            limit.MaxRequestBodySize = LargestBody;
        }

        return await DeviceReading.ReadAsync(http.Request.Body, cancellation) is { } reading
            ? Said(await desk.OfferAsync(tool, reading, cancellation))
            : No(StatusCodes.Status400BadRequest, "This is no reading: docs/devices.md says how one is sent.");
    }

    private static IResult Said(DeviceAnswer answer) => Results.Json(answer, statusCode: answer.Outcome switch
    {
        ReadingOutcome.Refused => StatusCodes.Status422UnprocessableEntity,
        ReadingOutcome.Waiting => StatusCodes.Status202Accepted,
        _ => StatusCodes.Status200OK,
    });

    private static IResult No(int status, string words) => Results.Json(DeviceAnswer.No(words), statusCode: status);
}
