namespace ShopJobs.Web.Components.Procedures;

/// <summary>Turns away an upload that is too large, or of unknown size, before its body is read.</summary>
internal static class UploadLimit
{
    /// <summary>Where documents are handed in.</summary>
    internal const string Path = "/procedures/upload";

    /// <summary>Most bytes of one upload, all files together.</summary>
    internal const long MostBytes = 4_000_000;

    internal static void UseUploadLimit(this WebApplication app) => app.UseUploadLimit(Path, MostBytes);

    /// <summary>The page at a path takes so many bytes; a larger upload leads back to it, with <c>tooLarge</c>.</summary>
    internal static void UseUploadLimit(this WebApplication app, string path, long mostBytes) => app.Use((http, next) =>
    {
        if (!HttpMethods.IsPost(http.Request.Method) || !http.Request.Path.Equals(path, StringComparison.OrdinalIgnoreCase)
            || http.Request.ContentLength <= mostBytes)
        {
            return next(http);
        }

        http.Response.Headers.Connection = "close";
        http.Response.Redirect($"{path}?tooLarge=true");
        return Task.CompletedTask;
    });
}
