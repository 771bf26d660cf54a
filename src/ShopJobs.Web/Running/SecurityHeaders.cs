using System.Security.Cryptography;
using Microsoft.AspNetCore.StaticAssets;

namespace ShopJobs.Web.Running;

/// <summary>
/// The headers every answer carries. Inline style stays allowed: the component library's theme is an inline style
/// element without a nonce. Scripts come from here only.
/// </summary>
internal static class SecurityHeaders
{
    private const string NonceKey = "shop.nonce";

    /// <summary>The nonce for the one inline script of a page, its import map.</summary>
    internal static string Nonce(this HttpContext http) => (string?)http.Items[NonceKey] ?? "";

    internal static void UseSecurityHeaders(this WebApplication app) => app.Use((http, next) =>
    {
        var nonce = Convert.ToBase64String(RandomNumberGenerator.GetBytes(16));
        http.Items[NonceKey] = nonce;
        var headers = http.Response.Headers;
        headers.ContentSecurityPolicy = "default-src 'none'; "
            + $"script-src 'self' 'nonce-{nonce}'; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; "
            + "font-src 'self'; connect-src 'self'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'; manifest-src 'self'";
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Permissions-Policy"] = "geolocation=(), microphone=(), payment=(), usb=()";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        if (http.GetEndpoint()?.Metadata.GetMetadata<StaticAssetDescriptor>() is null)
        {
            headers.CacheControl = "no-cache, no-store";
            headers.Pragma = "no-cache";
        }

        if (http.Request.Path.StartsWithSegments("/s"))
        {
            headers["X-Robots-Tag"] = "noindex, nofollow";
        }

        return next(http);
    });
}
