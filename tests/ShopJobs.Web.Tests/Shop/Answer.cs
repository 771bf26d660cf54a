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

    /// <summary>What an alert on the page says; empty without one.</summary>
    public string Alert => Page.QuerySelector("[role=alert]")?.TextContent.Trim() ?? "";

    public string Heading => Page.QuerySelector("h1")?.TextContent.Trim() ?? "";

    /// <summary>Where it sends the browser, as a path of this program.</summary>
    public string? Path => Location is null ? null : new Uri(new Uri("http://localhost"), Location).PathAndQuery;

    /// <summary>The host it sends the browser to.</summary>
    public string? Host => Location is null ? null : new Uri(new Uri("http://localhost"), Location).Host;
}
