using System.Net;

namespace ShopJobs.Web.Running;

/// <summary>
/// What a person sees whose form is refused for its token: the page stood open while somebody else signed in, or it is
/// very old. Nothing was taken.
/// </summary>
internal static class OutOfDateForm
{
    internal static void UseOutOfDateForm(this WebApplication app) => app.Use(async (http, next) =>
    {
        await next(http);
        var response = http.Response;
        if (response.StatusCode == StatusCodes.Status400BadRequest
            && HttpMethods.IsPost(http.Request.Method)
            && IsForm(http.Request.ContentType)
            && !response.HasStarted)
        {
            response.ContentType = "text/html; charset=utf-8";
            await response.WriteAsync($"""
                <!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
                <title>Page out of date</title></head><body>
                <h1>This page was out of date</h1>
                <p>Nothing was taken. Somebody else may have signed in here since it was opened.</p>
                <p><a href="{WebUtility.HtmlEncode(http.Request.Path)}">Load the page again</a></p>
                </body></html>
                """);
        }
    });

    // By the header alone: the form itself must not be read once its token was refused.
    private static bool IsForm(string? contentType) =>
        contentType?.StartsWith("application/x-www-form-urlencoded", StringComparison.OrdinalIgnoreCase) == true
        || contentType?.StartsWith("multipart/form-data", StringComparison.OrdinalIgnoreCase) == true;
}
