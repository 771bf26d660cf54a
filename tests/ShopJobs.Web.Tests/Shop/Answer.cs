using System.Net;
using System.Net.Http.Headers;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;

namespace ShopJobs.Web.Tests.Shop;

/// <summary>What the program answered.</summary>
public sealed record Answer(
    HttpStatusCode Status, string? Location, string Text, IReadOnlyList<string> SetCookies, HttpResponseHeaders Headers)
{
    public IHtmlDocument Page => new HtmlParser().ParseDocument(Text);

    /// <summary>What the alerts on the page say; empty where none does.</summary>
    public string Alert => string.Join(" ", Page.QuerySelectorAll("[role=alert]").Select(alert => alert.TextContent.Trim()).Where(said => said.Length > 0));

    public string Heading => Page.QuerySelector("h1")?.TextContent.Trim() ?? "";

    /// <summary>Where it sends the browser, as a path of this program.</summary>
    public string? Path => Location is null ? null : new Uri(new Uri("http://localhost"), Location).PathAndQuery;

    /// <summary>The host it sends the browser to.</summary>
    public string? Host => Location is null ? null : new Uri(new Uri("http://localhost"), Location).Host;
}
