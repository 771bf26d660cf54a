using System.Net;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Tests.Demo;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Parts;

/// <summary>Who gets which page of the comparison from the running program.</summary>
public sealed class PartPagesAtTheDoorTests(OpenPartsDemo demo) : IClassFixture<OpenPartsDemo>
{
    [Theory]
    [InlineData("/new")]
    [InlineData("/stacks/new")]
    public async Task The_forms_are_the_leads(string form)
    {
        var page = await demo.OptionsPageAsync();

        await demo.Tablet.SignInAsync(DemoPeople.Chassis.Name, DemoPeople.Chassis.Pin);
        var technician = await demo.Tablet.GetAsync(page + form);
        await demo.Tablet.SignInAsync(DemoPeople.Lead.Name, DemoPeople.Lead.Pin);
        var lead = await demo.Tablet.GetAsync(page + form);

        Assert.DoesNotContain("Cancel", technician.Text, StringComparison.Ordinal);
        Assert.Contains("right you do not have", technician.Status == HttpStatusCode.OK ? technician.Text : (await demo.Tablet.GetAsync(technician.Path!)).Text, StringComparison.Ordinal);
        Assert.Contains("Cancel", lead.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_comparison_is_everybodys_who_is_signed_in()
    {
        var page = await demo.OptionsPageAsync();
        var stranger = await demo.Shop.NewBrowser().GetAsync(page);
        await demo.Tablet.SignInAsync(DemoPeople.Chassis.Name, DemoPeople.Chassis.Pin);

        var technician = await demo.Tablet.GetAsync(page);

        Assert.NotEqual(HttpStatusCode.OK, stranger.Status);
        Assert.Equal("Options: Wheel stud", technician.Heading);
        Assert.DoesNotContain("Add an option", technician.Text, StringComparison.Ordinal);
    }
}

/// <summary>The demo shop with the tablet that opened it.</summary>
public sealed class OpenPartsDemo : IAsyncLifetime, IDisposable
{
    public OpenShop Shop { get; } = new();

    public Browser Tablet { get; private set; } = default!;

    /// <summary>Address of the stud kits of Blue.</summary>
    public Task<string> OptionsPageAsync() => Shop.RowsAsync(async rows =>
    {
        var choice = await rows.PartChoices.SingleAsync();
        var car = await rows.Jobs.Where(job => job.Id == choice.JobId).Select(job => job.CarId).SingleAsync();
        return $"/cars/{car.Value}/jobs/{choice.JobId.Value}/options/{choice.GroupId}";
    });

    public async Task InitializeAsync() => Tablet = await Shop.OpenDemoAsync();

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose() => Shop.Dispose();
}
