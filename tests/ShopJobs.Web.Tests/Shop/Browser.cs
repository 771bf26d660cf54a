using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Microsoft.AspNetCore.Mvc.Testing;

namespace ShopJobs.Web.Tests.Shop;

/// <summary>
/// A browser without script: keeps cookies by name whatever their age, follows nothing, and sends a form as the page
/// holds it.
/// </summary>
public sealed class Browser(OpenShop shop)
{
    private readonly HttpClient client = shop.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false, HandleCookies = false });

    public Dictionary<string, string> Cookies { get; } = [];

    public Task<Answer> GetAsync(string path) => SendAsync(new HttpRequestMessage(HttpMethod.Get, path));

    public Task<Answer> PostAsync(string path, params (string Name, string Value)[] fields) =>
        SendAsync(new HttpRequestMessage(HttpMethod.Post, path)
        {
            Content = new FormUrlEncodedContent(fields.Select(field => KeyValuePair.Create(field.Name, field.Value))),
        });

    /// <summary>Opens a page and sends one of its forms with these fields filled in.</summary>
    public async Task<Answer> SubmitAsync(string page, string form, params (string Name, string Value)[] fields)
    {
        var opened = await GetAsync(page);
        if (opened.Status != HttpStatusCode.OK)
        {
            throw new InvalidOperationException($"{page} answered {opened.Status} to {opened.Location}, so it has no form {form}.");
        }

        var found = opened.Page.Forms.SingleOrDefault(candidate => Hidden(candidate, "_handler") == form)
            ?? throw new InvalidOperationException($"{page} has no form {form}:\n{opened.Text}");
        var hidden = found.QuerySelectorAll("input[type=hidden]").OfType<IHtmlInputElement>().Select(input => (input.Name!, input.Value))
            .Where(given => fields.All(field => field.Name != given.Item1));
        return await PostAsync(page, [.. hidden, .. fields]);
    }

    public Task<Answer> SignInAsync(string name, string pin, string returnUrl = "/") =>
        SubmitAsync($"/sign-in?returnUrl={Uri.EscapeDataString(returnUrl)}", "sign-in", ("Form.Name", name), ("Form.Pin", pin));

    /// <summary>Another browser with the same cookies: the same tablet in another window, or a thief.</summary>
    public Browser WithSameCookies()
    {
        var other = shop.NewBrowser();
        foreach (var (name, value) in Cookies)
        {
            other.Cookies[name] = value;
        }

        return other;
    }

    private static string? Hidden(IHtmlFormElement form, string name) =>
        form.QuerySelector($"input[name={name}]")?.GetAttribute("value");

    private async Task<Answer> SendAsync(HttpRequestMessage request)
    {
        using var sent = request;
        if (Cookies.Count > 0)
        {
            sent.Headers.Add("Cookie", string.Join("; ", Cookies.Select(cookie => $"{cookie.Key}={cookie.Value}")));
        }

        using var response = await client.SendAsync(sent);
        IEnumerable<string> set = response.Headers.TryGetValues("Set-Cookie", out var values) ? values : [];
        foreach (var cookie in set)
        {
            var pair = cookie.Split(';')[0].Split('=', 2);
            Cookies[pair[0]] = pair[1];
        }

        var text = await response.Content.ReadAsStringAsync();
        return new Answer(response.StatusCode, response.Headers.Location?.ToString(), text, [.. set], response.Headers);
    }
}
