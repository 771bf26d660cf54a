namespace ShopJobs.Web.Components.Procedures;

/// <summary>Turns away an upload of documents that is too large, or of unknown size, before its body is read.</summary>
internal static class UploadLimit
{
    /// <summary>Where documents are handed in.</summary>
    internal const string Path = "/procedures/upload";

    /// <summary>Most bytes of one upload, all files together.</summary>
    internal const long MostBytes = 4_000_000;

    internal static void UseUploadLimit(this WebApplication app) => app.Use((http, next) =>
    {
        if (!HttpMethods.IsPost(http.Request.Method) || !http.Request.Path.Equals(Path, StringComparison.OrdinalIgnoreCase)
            || http.Request.ContentLength is <= MostBytes)
        {
            return next(http);
        }

        http.Response.Headers.Connection = "close";
        http.Response.Redirect($"{Path}?tooLarge=true");
        return Task.CompletedTask;
    });
}
