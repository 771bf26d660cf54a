using System.Net;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Accounts;

public sealed class SignInTests : IDisposable
{
    private const string Wrong = "000000";
    private readonly OpenShop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task New_shop_sends_every_staff_page_to_the_first_start()
    {
        Assert.Equal("/start", (await shop.NewBrowser().GetAsync("/cars")).Path);
    }

    [Fact]
    public async Task Unknown_browser_is_sent_to_enrol_and_back_later()
    {
        await shop.OpenDemoAsync();

        Assert.Equal("/enrol?returnUrl=%2Fcars", (await shop.NewBrowser().GetAsync("/cars")).Path);
        Assert.Equal("/enrol?returnUrl=%2Fcars", (await shop.NewBrowser().GetAsync("/sign-in?returnUrl=/cars")).Path);
    }

    [Fact]
    public async Task Tablet_without_a_person_is_sent_to_sign_in_and_back_to_the_page_asked_for()
    {
        var tablet = await shop.OpenDemoAsync();

        var asked = await tablet.GetAsync("/cars?x=1");
        Assert.Equal("/sign-in?returnUrl=%2Fcars%3Fx%3D1", asked.Path);
        Assert.Equal("/cars?x=1", (await tablet.SignInAsync(DemoPeople.Lead.Name, DemoPeople.Lead.Pin, "/cars?x=1")).Path);
        Assert.Equal("Cars", (await tablet.GetAsync("/cars?x=1")).Heading);
    }

    [Fact]
    public async Task Cookies_cannot_be_read_by_script_or_sent_from_other_sites()
    {
        var opened = shop.NewBrowser();
        var start = await opened.SubmitAsync("/start", "demo");
        var signIn = await opened.SignInAsync(DemoPeople.Lead.Name, DemoPeople.Lead.Pin);

        var tablet = Assert.Single(start.SetCookies, cookie => cookie.StartsWith("shop.tablet=", StringComparison.Ordinal));
        var person = Assert.Single(signIn.SetCookies, cookie => cookie.StartsWith("shop.person=", StringComparison.Ordinal));
        Assert.All([tablet, person], cookie =>
        {
            Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
            Assert.Contains("samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
        });
        Assert.Equal(43, tablet.Split(';')[0].Split('=')[1].Length); // 256 bits in base64url
        Assert.DoesNotContain("expires", person, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Wrong_pin_says_what_to_do_and_the_wait_grows()
    {
        var tablet = await shop.OpenDemoAsync();

        Assert.Contains("Check the name", (await tablet.SignInAsync("Edda", Wrong)).Alert, StringComparison.Ordinal);
        await tablet.SignInAsync("Edda", Wrong);
        Assert.Contains("Wait 5 seconds", (await tablet.SignInAsync("Edda", Wrong)).Alert, StringComparison.Ordinal);
        Assert.Contains("Wait 5 seconds", (await tablet.SignInAsync("Edda", DemoPeople.Lead.Pin)).Alert, StringComparison.Ordinal);
        shop.Time.Advance(TimeSpan.FromSeconds(5));
        Assert.Contains("Wait 10 seconds", (await tablet.SignInAsync("Edda", Wrong)).Alert, StringComparison.Ordinal);
        shop.Time.Advance(TimeSpan.FromSeconds(10));
        Assert.Equal("/", (await tablet.SignInAsync("Edda", DemoPeople.Lead.Pin)).Path);
    }

    [Fact]
    public async Task Right_pin_takes_the_count_back()
    {
        var tablet = await shop.OpenDemoAsync();
        await tablet.SignInAsync("Edda", Wrong);
        await tablet.SignInAsync("Edda", Wrong);
        await tablet.SignInAsync("Edda", DemoPeople.Lead.Pin);

        await tablet.SignInAsync("Edda", Wrong);
        Assert.Equal(1, await shop.RowsAsync(rows => rows.People.Where(person => person.Name == "Edda").Select(person => person.PinFailures).SingleAsync()));
    }

    [Fact]
    public async Task Pin_closes_for_good_after_twenty_wrong_tries()
    {
        var tablet = await shop.OpenDemoAsync();
        for (var i = 0; i < PinDelay.Closed; i++)
        {
            await tablet.SignInAsync("Jorn", Wrong);
            shop.Time.Advance(TimeSpan.FromHours(1));
        }

        Assert.Contains("is closed", (await tablet.SignInAsync("Jorn", DemoPeople.Chassis.Pin)).Alert, StringComparison.Ordinal);
        Assert.True(await shop.RowsAsync(rows => rows.DoorNotes.AnyAsync(note => note.Event == DoorEvent.PinBlocked)));
    }

    [Fact]
    public async Task Wrong_pins_over_many_names_slow_the_tablet_down()
    {
        var tablet = await shop.OpenDemoAsync();
        foreach (var name in (string[])["Jorn", "Mika", "Sefa", "Jorn", "Mika", "Sefa", "Edda", "Edda"])
        {
            await tablet.SignInAsync(name, Wrong);
        }

        shop.Time.Advance(TimeSpan.FromSeconds(5));
        await tablet.SignInAsync("Jorn", Wrong);
        await tablet.SignInAsync("Mika", Wrong);

        Assert.Contains("Too many wrong PINs", (await tablet.SignInAsync("Edda", DemoPeople.Lead.Pin)).Alert, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Tries_sent_at_the_same_instant_do_not_slip_past_the_wait()
    {
        var tablet = await shop.OpenDemoAsync();

        await Task.WhenAll(Enumerable.Range(0, 12).Select(_ => tablet.WithSameCookies().SignInAsync("Edda", Wrong)));

        Assert.Equal(3, await shop.RowsAsync(rows => rows.DoorNotes.CountAsync(note => note.Event == DoorEvent.WrongPin)));
    }

    [Fact]
    public async Task Wrong_pins_elsewhere_never_stop_work_already_signed_in()
    {
        var tablet = await shop.OpenDemoAsync();
        await tablet.SignInAsync("Edda", DemoPeople.Lead.Pin);
        var other = shop.NewBrowser();
        await other.SubmitAsync("/enrol", "enrol", ("Form.TabletName", "Lift A"), ("Form.LeadName", "Edda"), ("Form.Pin", DemoPeople.Lead.Pin));
        for (var i = 0; i < 6; i++)
        {
            await other.SignInAsync("Edda", Wrong);
        }

        Assert.Equal(HttpStatusCode.OK, (await tablet.GetAsync("/cars")).Status);
    }

    [Theory]
    [InlineData("//evil.example/x")]
    [InlineData("https://evil.example/x")]
    [InlineData("/\\evil.example")]
    [InlineData("\\\\evil.example")]
    [InlineData("javascript:alert(1)")]
    [InlineData("/\t/evil.example")]
    public async Task Nobody_is_sent_to_another_site(string returnUrl)
    {
        var tablet = await shop.OpenDemoAsync();

        var answer = await tablet.SignInAsync("Edda", DemoPeople.Lead.Pin, returnUrl);

        Assert.Equal(HttpStatusCode.Found, answer.Status);
        Assert.Equal("localhost", answer.Host);
        Assert.Equal("/", answer.Path);
    }

    [Fact]
    public async Task Form_without_its_token_is_refused()
    {
        var tablet = await shop.OpenDemoAsync();

        var answer = await tablet.PostAsync("/sign-in", ("_handler", "sign-in"), ("Form.Name", "Edda"), ("Form.Pin", DemoPeople.Lead.Pin));

        Assert.Equal(HttpStatusCode.BadRequest, answer.Status);
        Assert.Equal("This page was out of date", answer.Heading);
        Assert.DoesNotContain("shop.person", tablet.Cookies.Keys);
    }

    [Fact]
    public async Task Idle_tablet_locks()
    {
        var tablet = await shop.OpenDemoAsync();
        await tablet.SignInAsync("Edda", DemoPeople.Lead.Pin);

        shop.Time.Advance(TimeSpan.FromMinutes(14));
        Assert.Equal(HttpStatusCode.OK, (await tablet.GetAsync("/cars")).Status);
        shop.Time.Advance(TimeSpan.FromMinutes(16));
        Assert.Equal("/sign-in?returnUrl=%2Fcars", (await tablet.GetAsync("/cars")).Path);
    }

    [Fact]
    public async Task Touch_keeps_a_session_awake_and_looking_does_not()
    {
        var tablet = await shop.OpenDemoAsync();
        await tablet.SignInAsync("Edda", DemoPeople.Lead.Pin);

        shop.Time.Advance(TimeSpan.FromMinutes(10));
        Assert.Equal(HttpStatusCode.NoContent, (await tablet.PostAsync("/here")).Status);
        shop.Time.Advance(TimeSpan.FromMinutes(10));
        Assert.Equal(HttpStatusCode.NoContent, (await tablet.GetAsync("/here")).Status);
        shop.Time.Advance(TimeSpan.FromMinutes(10));
        Assert.Equal(HttpStatusCode.Unauthorized, (await tablet.GetAsync("/here")).Status);
    }

    [Fact]
    public async Task Next_person_signs_the_one_before_out()
    {
        var tablet = await shop.OpenDemoAsync();
        await tablet.SignInAsync("Edda", DemoPeople.Lead.Pin);
        var before = tablet.WithSameCookies();
        await tablet.SignInAsync("Jorn", DemoPeople.Chassis.Pin);

        Assert.Equal(HttpStatusCode.Unauthorized, (await before.GetAsync("/here")).Status);
        Assert.Equal(HttpStatusCode.NoContent, (await tablet.GetAsync("/here")).Status);
    }

    [Fact]
    public async Task Person_cookie_is_worth_nothing_on_another_tablet()
    {
        var tablet = await shop.OpenDemoAsync();
        await tablet.SignInAsync("Edda", DemoPeople.Lead.Pin);
        var other = shop.NewBrowser();
        await other.SubmitAsync("/enrol", "enrol", ("Form.TabletName", "Lift A"), ("Form.LeadName", "Edda"), ("Form.Pin", DemoPeople.Lead.Pin));
        other.Cookies["shop.person"] = tablet.Cookies["shop.person"];

        Assert.Equal(HttpStatusCode.Unauthorized, (await other.GetAsync("/here")).Status);
    }

    [Fact]
    public async Task Technician_does_not_get_the_leads_pages()
    {
        var tablet = await shop.OpenDemoAsync();
        await tablet.SignInAsync("Jorn", DemoPeople.Chassis.Pin);

        Assert.Equal("/not-allowed", (await tablet.GetAsync("/people")).Path!.Split('?')[0]);
        Assert.DoesNotContain("People and places", (await tablet.GetAsync("/")).Page.QuerySelector("nav")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Signing_out_ends_the_session_row_and_not_only_the_cookie()
    {
        var tablet = await shop.OpenDemoAsync();
        await tablet.SignInAsync("Edda", DemoPeople.Lead.Pin);
        var copy = tablet.WithSameCookies();
        var token = (await tablet.GetAsync("/")).Page.QuerySelector("form[action='/sign-out'] input[name=__RequestVerificationToken]")!.GetAttribute("value")!;

        var answer = await tablet.PostAsync("/sign-out", ("__RequestVerificationToken", token), ("returnUrl", "/cars"));

        Assert.Equal("/sign-in?returnUrl=%2Fcars", answer.Path);
        Assert.Equal(HttpStatusCode.Unauthorized, (await copy.GetAsync("/here")).Status);
    }
}
