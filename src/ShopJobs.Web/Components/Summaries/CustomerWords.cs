using System.Globalization;
using Microsoft.AspNetCore.Http.Features;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>What the form of the customer's page sent.</summary>
/// <param name="Version">The version that was read; 0 where none was named.</param>
/// <param name="Words">What was typed, as it came.</param>
public sealed record CustomerWords(int Version, string Words)
{
    /// <summary>Most bytes that are read: far more than fit, so that too long a text comes back with its reason.</summary>
    public const int MostBytes = 256 * 1024;

    /// <summary>Name of the hidden field.</summary>
    public const string VersionField = "version";

    /// <summary>Name of the field with the words.</summary>
    public const string WordsField = "words";

    /// <summary>Why it was not taken, in words for the customer; null where it was.</summary>
    public string? Refusal { get; init; }

    /// <summary>The status of the answer where it was not taken.</summary>
    public int Status { get; init; } = StatusCodes.Status422UnprocessableEntity;

    /// <summary>Reads the form, up to a size.</summary>
    internal static async Task<CustomerWords> ReadAsync(HttpRequest request, CancellationToken cancellation)
    {
        if (!request.HasFormContentType || request.ContentLength > MostBytes)
        {
            return request.HasFormContentType ? TooLong : new CustomerWords(0, "") { Refusal = "The form could not be read. Load the page again." };
        }

        if (request.HttpContext.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } limit)
        {
            limit.MaxRequestBodySize = MostBytes;
        }

        try
        {
            var form = await request.ReadFormAsync(cancellation);
            return new CustomerWords(
                int.TryParse(form[VersionField], NumberStyles.None, CultureInfo.InvariantCulture, out var version) ? version : 0, form[WordsField].ToString());
        }
        catch (BadHttpRequestException e) when (e.StatusCode == StatusCodes.Status413PayloadTooLarge)
        {
            return TooLong;
        }
    }

    private static CustomerWords TooLong => new(0, "")
    {
        Refusal = "That is far too long to be taken, and nothing was sent. Go back: what you typed is still there. Shorten it, or call us.",
        Status = StatusCodes.Status413PayloadTooLarge,
    };
}
