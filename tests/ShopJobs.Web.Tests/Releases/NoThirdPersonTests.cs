using Bunit;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Releases;
using ShopJobs.Web.Data;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Tests.Signing;

namespace ShopJobs.Web.Tests.Releases;

public sealed class NoThirdPersonTests : DialogBench
{
    [Fact]
    public async Task The_release_page_of_a_shop_without_a_third_person_says_so()
    {
        await SitDownAsync(DemoPeople.Lead);
        var page = Draw<ReleasePage>(parameters => parameters.Add(release => release.Id, Car.Value), "#km-Road");
        Assert.Empty(page.FindAll(".no-third"));
        await OnlyTheLeadAsync();

        page = Draw<ReleasePage>(parameters => parameters.Add(release => release.Id, Car.Value), "#km-Road");

        Assert.Equal(ThirdPerson.OneAlone, page.Find(".no-third strong").TextContent);
    }

    private async Task OnlyTheLeadAsync()
    {
        await using var shop = await Services.GetRequiredService<IDbContextFactory<ShopDbContext>>().CreateDbContextAsync();
        await shop.People.Where(person => person.Name != DemoPeople.Lead.Name).ExecuteUpdateAsync(row => row.SetProperty(person => person.Active, false));
    }
}
