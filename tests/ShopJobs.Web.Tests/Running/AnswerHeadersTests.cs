using System.Net;
using ShopJobs.Web.Running;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Running;

public sealed class AnswerHeadersTests : IDisposable
{
    private readonly OpenShop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task Page_runs_only_our_scripts_and_is_never_stored()
    {
        var page = await shop.NewBrowser().GetAsync("/start");
        var policy = page.Headers.GetValues("Content-Security-Policy").Single();

        Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe-eval", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("script-src 'self' 'unsafe-inline'", policy, StringComparison.Ordinal);
        var nonce = policy.Split("'nonce-")[1].Split('\'')[0];
        Assert.All(
            page.Page.Scripts.Where(script => script.Source is null),
            script => Assert.Equal(nonce, script.GetAttribute("nonce")));
        Assert.True(page.Headers.CacheControl!.NoStore);
        Assert.Equal("no-referrer", page.Headers.GetValues("Referrer-Policy").Single());
    }

    [Fact]
    public async Task Nonce_is_new_each_time()
    {
        var browser = shop.NewBrowser();

        Assert.NotEqual(await PolicyAsync(browser), await PolicyAsync(browser));
    }

    [Fact]
    public async Task Health_check_needs_no_door()
    {
        Assert.Equal(HttpStatusCode.OK, (await shop.NewBrowser().GetAsync("/healthz")).Status);
    }

    [Theory]
    [InlineData("/s/abcDEF_123", "/s/(token)")]
    [InlineData("/S/abcDEF_123", "/s/(token)")]
    [InlineData("/sign-in", "/sign-in")]
    public void Customers_token_never_reaches_a_log(string path, string logged)
    {
        Assert.Equal(logged, RequestLog.Redact(path));
    }

    private static async Task<string> PolicyAsync(Browser browser) =>
        (await browser.GetAsync("/start")).Headers.GetValues("Content-Security-Policy").Single();
}
