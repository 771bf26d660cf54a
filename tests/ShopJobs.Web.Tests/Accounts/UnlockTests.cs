using System.Net;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Accounts;

public sealed class UnlockTests : IDisposable
{
    private readonly OpenShop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task Same_person_goes_on_in_the_same_session()
    {
        var (tablet, token) = await LockedAsync();
        Assert.Equal(HttpStatusCode.Unauthorized, (await tablet.GetAsync("/here")).Status);

        Assert.Equal(HttpStatusCode.NoContent, (await UnlockAsync(tablet, token, "Edda", DemoPeople.Lead.Pin)).Status);
        Assert.Equal(HttpStatusCode.NoContent, (await tablet.GetAsync("/here")).Status);
    }

    [Fact]
    public async Task Wrong_pin_keeps_it_locked_and_says_what_to_do()
    {
        var (tablet, token) = await LockedAsync();

        var answer = await UnlockAsync(tablet, token, "Edda", "111111");

        Assert.Equal(HttpStatusCode.Forbidden, answer.Status);
        Assert.Contains("not the PIN of Edda", answer.Text, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Unauthorized, (await tablet.GetAsync("/here")).Status);
    }

    [Fact]
    public async Task Another_person_needs_the_whole_sign_in()
    {
        var (tablet, token) = await LockedAsync();

        Assert.Equal(HttpStatusCode.Conflict, (await UnlockAsync(tablet, token, "Jorn", DemoPeople.Chassis.Pin)).Status);
        Assert.Equal(HttpStatusCode.Unauthorized, (await tablet.GetAsync("/here")).Status);
    }

    [Fact]
    public async Task Session_that_is_over_is_not_woken()
    {
        var (tablet, token) = await LockedAsync();
        var at = shop.Time.GetUtcNow().UtcDateTime;
        await shop.RowsAsync(rows => rows.Sessions.ExecuteUpdateAsync(set => set.SetProperty(row => row.EndedAt, at)));

        Assert.Equal(HttpStatusCode.Conflict, (await UnlockAsync(tablet, token, "Edda", DemoPeople.Lead.Pin)).Status);
        Assert.Equal(HttpStatusCode.Unauthorized, (await tablet.GetAsync("/here")).Status);
    }

    [Fact]
    public async Task Page_older_than_the_longest_session_is_out_of_date()
    {
        var (tablet, token) = await LockedAsync();
        shop.Time.Advance(TimeSpan.FromHours(12));

        var answer = await UnlockAsync(tablet, token, "Edda", DemoPeople.Lead.Pin);

        Assert.Equal(HttpStatusCode.BadRequest, answer.Status);
        Assert.Equal("This page was out of date", answer.Heading);
    }

    [Fact]
    public async Task Curtain_is_on_every_staff_page()
    {
        var (tablet, _) = await LockedAsync();
        await tablet.SignInAsync("Edda", DemoPeople.Lead.Pin);

        Assert.NotNull((await tablet.GetAsync("/")).Page.QuerySelector("dialog#lock form[action='/sign-in']"));
    }

    private static Task<Answer> UnlockAsync(Browser tablet, string token, string name, string pin) =>
        tablet.PostAsync("/unlock", ("__RequestVerificationToken", token), ("Form.Name", name), ("Form.Pin", pin));

    private async Task<(Browser Tablet, string Token)> LockedAsync()
    {
        var tablet = await shop.OpenDemoAsync();
        await tablet.SignInAsync("Edda", DemoPeople.Lead.Pin);
        var page = await tablet.GetAsync("/");
        shop.Time.Advance(TimeSpan.FromMinutes(20));
        return (tablet, page.Page.QuerySelector("#lock input[name=__RequestVerificationToken]")!.GetAttribute("value")!);
    }
}
