using System.Net;
using Microsoft.AspNetCore.Components;
using ShopJobs.Web.Components.Catalogue;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Catalogue;

/// <summary>The contributors' catalogue names every page, each of its links leads to a page, and nobody else ever sees it.</summary>
public sealed class CatalogueTests
{
    private const string Address = "/catalogue";

    private static readonly IEnumerable<string> Routes = typeof(CataloguePage).Assembly.GetTypes()
        .SelectMany(page => page.GetCustomAttributes(typeof(RouteAttribute), inherit: false).Cast<RouteAttribute>())
        .Select(route => route.Template).Where(route => route != Address);

    [Fact]
    public async Task In_a_shop_there_is_no_such_page()
    {
        using var shop = new OpenShop();
        var lead = await LeadAsync(shop);

        Assert.Equal(HttpStatusCode.NotFound, (await lead.GetAsync(Address)).Status);
    }

    [Fact]
    public async Task It_names_every_page_and_each_of_its_links_leads_to_one()
    {
        using var shop = new OpenShop { Environment = "Development" };
        var lead = await LeadAsync(shop);
        var catalogue = await lead.GetAsync(Address);
        Assert.Equal(HttpStatusCode.OK, catalogue.Status);
        var links = catalogue.Page.QuerySelectorAll("a[data-catalogue]").ToList();
        var named = catalogue.Page.QuerySelectorAll(".catalogue-pages code").Select(code => code.TextContent).ToHashSet(StringComparer.Ordinal);

        Assert.Equal(Routes.Order(StringComparer.Ordinal), named.Order(StringComparer.Ordinal));
        foreach (var link in links)
        {
            var address = link.GetAttribute("href")!;
            var answer = await lead.GetAsync(address);
            Assert.True(
                answer.Status is HttpStatusCode.OK or HttpStatusCode.Redirect || link.GetAttribute("data-catalogue") is "/not-found" or "/error",
                $"{address} ({link.TextContent}) answers {answer.Status}.");
        }
    }

    private static async Task<Browser> LeadAsync(OpenShop shop)
    {
        var tablet = await shop.OpenDemoAsync();
        await tablet.SignInAsync(DemoPeople.Lead.Name, DemoPeople.Lead.Pin);
        return tablet;
    }
}
