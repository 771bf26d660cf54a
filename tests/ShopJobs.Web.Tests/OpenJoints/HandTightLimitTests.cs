using Bunit;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Web.Components.OpenJoints;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Shop;
using ShopJobs.Web.Tests.Signing;

namespace ShopJobs.Web.Tests.OpenJoints;

/// <summary>The lead says after how many hours hand-tight is marked.</summary>
public sealed class HandTightLimitTests : DialogBench
{
    private ShopSettings Settings => Services.GetRequiredService<ShopSettings>();

    [Theory]
    [InlineData("")]
    [InlineData("0")]
    [InlineData("-3")]
    [InlineData("8 h")]
    [InlineData("1000")]
    [InlineData("<b>8</b>")]
    public async Task What_is_no_number_of_hours_is_told_at_the_field_and_nothing_is_kept(string typed)
    {
        await SitDownAsync(DemoPeople.Lead);
        var form = Draw<HandTightLimit>(_ => { }, "#hand-tight-hours");

        await form.Find("#hand-tight-hours").ChangeAsync(new() { Value = typed });
        await form.Find("form").SubmitAsync(new());

        Says(form, "Type a whole number of hours from 1 to 168");
        Assert.Equal(8, Settings.Current.HandTightHours);
    }

    [Fact]
    public async Task It_is_kept_over_the_next_start()
    {
        await SitDownAsync(DemoPeople.Lead);
        var form = Draw<HandTightLimit>(_ => { }, "#hand-tight-hours");
        await form.Find("#hand-tight-hours").ChangeAsync(new() { Value = "12" });
        await form.Find("form").SubmitAsync(new());
        Says(form, "marked after 12 h");

        await Settings.LoadAsync();

        Assert.Equal(12, Settings.Current.HandTightHours);
    }

    [Fact]
    public async Task A_technician_is_not_offered_it()
    {
        await SitDownAsync(DemoPeople.Chassis);

        Assert.Empty(Draw<HandTightLimit>(_ => { }, "p").FindAll("form"));
    }
}
