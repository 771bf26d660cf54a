using System.Globalization;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Mvc;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Layout;

namespace ShopJobs.Web.Components.Photos;

/// <summary>
/// Where photographs of a car are sent, and where their pictures are read: by tablets at which somebody is signed in, and nobody else.
/// The token of the form is checked here, after the size: the form is read no further than a photograph may be long.
/// </summary>
internal static class PhotoEndpoint
{
    private const string Kept = "private, max-age=3600";

    internal static void MapPhotos(this IEndpointRouteBuilder routes)
    {
        var app = routes.MapGroup("").WithMetadata(new SkipStatusCodePagesAttribute());

        // The page has the same address, and would take posts too.
        app.MapPost("/cars/{id:guid}/photos", TakeAsync).DisableAntiforgery().WithOrder(-1);
        app.MapGet("/photos/{digest}", (string digest, HttpContext http, PhotoShelf shelf) =>
            Give(http, ContentDigest.TryParse(digest, out var named) ? shelf.Find(named) : null));
        app.MapGet("/photos/{digest}/small", async (string digest, HttpContext http, PhotoShelf shelf, CancellationToken cancellation) =>
            Give(http, ContentDigest.TryParse(digest, out var named) ? await shelf.FindSmallAsync(named, cancellation) : null));
    }

    private static IResult Give(HttpContext http, byte[]? picture)
    {
        if (picture is null)
        {
            return Results.NotFound();
        }

        http.Response.Headers.CacheControl = Kept;
        http.Response.Headers.Remove("Pragma");
        return Results.Bytes(picture, "image/jpeg");
    }

    private static async Task<IResult> TakeAsync(
        Guid id, HttpContext http, SessionDesk sessions, IAntiforgery antiforgery, PictureQueue queue, PhotoDesk desk, CancellationToken cancellation)
    {
        var car = new CarId(id);
        if (await sessions.CheckAsync(http.User, touch: true, cancellation) is not { } here)
        {
            return Results.Json(new { words = (string[])[PersonCookieEvents.SignedOut] }, statusCode: StatusCodes.Status401Unauthorized);
        }

        var answer = await AnswerAsync(car, here, http, antiforgery, queue, desk, cancellation);
        return http.Request.Headers.Accept.ToString().Contains("application/json", StringComparison.OrdinalIgnoreCase)
            ? Results.Json(answer, statusCode: answer.Status)
            : Results.LocalRedirect(answer.Refusal is { } refusal
                ? $"{Links.Photos(car)}?said={refusal}"
                : string.Create(CultureInfo.InvariantCulture, $"{Links.Photos(car)}?taken={answer.Number}"));
    }

    private static async Task<PhotoAnswer> AnswerAsync(
        CarId car, Present here, HttpContext http, IAntiforgery antiforgery, PictureQueue queue, PhotoDesk desk, CancellationToken cancellation)
    {
        if (http.Request.ContentLength > SentPhoto.MostBytes)
        {
            http.Response.Headers.Connection = "close";
            return PhotoAnswer.No(PhotoRefusal.TooLarge);
        }

        using var place = queue.TakePlace();
        if (place is null)
        {
            return PhotoAnswer.No(PhotoRefusal.Busy);
        }

        var sent = await SentPhoto.ReadAsync(http.Request, cancellation);
        return sent.Refusal is { } refusal ? PhotoAnswer.No(refusal)
            : !await antiforgery.IsRequestValidAsync(http) ? PhotoAnswer.No(PhotoRefusal.OutOfDate)
            : await desk.TakeAsync(car, here, sent, cancellation);
    }
}
