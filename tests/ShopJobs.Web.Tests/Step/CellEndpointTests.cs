using System.Net;
using System.Net.Http.Headers;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Logbook;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Data;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Step;

public sealed class CellEndpointTests : IDisposable
{
    private const string Here = "http://localhost";

    private readonly OpenShop shop = new();
    private Browser? tablet;
    private CarId car;
    private JobId job;

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task Report_sent_again_gets_the_first_answer_and_is_recorded_once()
    {
        var browser = await SignedInAsync(DemoPeople.Chassis);
        var report = await OpenedAsync();

        var first = await SendAsync(browser, report);
        var again = await SendAsync(browser, report);

        Assert.Equal(HttpStatusCode.OK, first.Status);
        Assert.True(first.Body["saved"]!.GetValue<bool>());
        Assert.Equal(HttpStatusCode.OK, again.Status);
        Assert.True(again.Body["repeated"]!.GetValue<bool>());
        Assert.Equal(first.Body["number"]!.GetValue<long>(), again.Body["number"]!.GetValue<long>());
        Assert.Equal(first.Body["number"]!.GetValue<long>(), StateOf().Number);
    }

    [Fact]
    public async Task Pull_that_does_not_count_is_recorded_and_says_why_and_what_next()
    {
        var browser = await SignedInAsync(DemoPeople.Chassis);

        var answer = await SendAsync(browser, await PullAsync("50"));

        Assert.Equal(HttpStatusCode.OK, answer.Status);
        Assert.True(answer.Body["saved"]!.GetValue<bool>());
        Assert.False(answer.Body["counts"]!.GetValue<bool>());
        Assert.Contains("not run down by hand", answer.Body["words"]!.ToJsonString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("1.100,5")]
    [InlineData("50 lbf·ft")]
    [InlineData("5e1")]
    [InlineData("fifty")]
    [InlineData("-50")]
    public async Task Value_that_is_not_one_clear_number_is_not_recorded(string typed)
    {
        var browser = await SignedInAsync(DemoPeople.Chassis);
        var before = StateOf().Number;

        var answer = await SendAsync(browser, await PullAsync(typed));

        Assert.Equal(HttpStatusCode.BadRequest, answer.Status);
        Assert.NotEmpty(answer.Body["words"]!.AsArray());
        Assert.Equal(before, StateOf().Number);
    }

    [Fact]
    public async Task Comma_is_a_decimal_mark_and_never_groups()
    {
        var browser = await SignedInAsync(DemoPeople.Chassis);

        await SendAsync(browser, await PullAsync("1,10"));

        var pull = StateOf().Positions.Values.SelectMany(book => book.Pulls).Single();
        Assert.Equal(1.10m, pull.Fact.Value!.Value.Value);
    }

    [Fact]
    public async Task Unknown_car_is_refused_in_words()
    {
        var browser = await SignedInAsync(DemoPeople.Chassis);
        var report = await PullAsync("50");
        report["car"] = Guid.NewGuid();

        var answer = await SendAsync(browser, report);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.False(answer.Body["saved"]!.GetValue<bool>());
        Assert.NotEmpty(answer.Body["words"]!.AsArray());
    }

    [Fact]
    public async Task Without_a_session_the_tablet_is_told_to_sign_in()
    {
        var browser = await SignedInAsync(DemoPeople.Chassis);
        var report = await OpenedAsync();
        browser.Cookies.Remove("shop.person");

        var answer = await SendAsync(browser, report);

        Assert.Equal(HttpStatusCode.Unauthorized, answer.Status);
        Assert.Contains("Sign in", answer.Body["words"]!.ToJsonString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Report_of_another_person_is_left_to_that_person()
    {
        await SignedInAsync(DemoPeople.Chassis);
        var report = await OpenedAsync();
        var other = await SignedInAsync(DemoPeople.Newcomer);
        var before = StateOf().Number;

        var answer = await SendAsync(other, report);

        Assert.Equal(HttpStatusCode.Conflict, answer.Status);
        Assert.Equal(before, StateOf().Number);
    }

    [Fact]
    public async Task What_somebody_did_who_has_left_is_saved_by_the_lead_as_reported_by_him_and_does_not_count()
    {
        await SignedInAsync(DemoPeople.Chassis);
        var report = await PullAsync("50");
        await shop.RowsAsync(rows => rows.People.Where(row => row.Name == DemoPeople.Chassis.Name).ExecuteUpdateAsync(set => set.SetProperty(row => row.Active, false)));

        var technician = await SendAsync(await SignedInAsync(DemoPeople.Newcomer), report);
        Assert.Equal(HttpStatusCode.Conflict, technician.Status);
        Assert.Contains("The lead signs in here", technician.Body["words"]!.ToJsonString(), StringComparison.Ordinal);
        Assert.Null(technician.Body["mayReport"]);

        var lead = await SignedInAsync(DemoPeople.Lead);
        var asked = await SendAsync(lead, report);
        Assert.Equal(HttpStatusCode.Conflict, asked.Status);
        Assert.True(asked.Body["mayReport"]!.GetValue<bool>());

        report["forLeaver"] = true;
        var saved = await SendAsync(lead, report);
        Assert.Equal(HttpStatusCode.OK, saved.Status);
        Assert.False(saved.Body["counts"]!.GetValue<bool>());
        var pull = StateOf().Positions.Values.SelectMany(book => book.Pulls).Single();
        Assert.Contains(HoldReason.ReportedByAnother, pull.Problems);
        Assert.Equal(report["person"]!.GetValue<Guid>(), Assert.Single(pull.Fact.Helpers).Value);
        Assert.NotEqual(report["person"]!.GetValue<Guid>(), pull.Person.Value);
    }

    [Fact]
    public async Task Nobody_is_reported_for_while_he_works_here()
    {
        await SignedInAsync(DemoPeople.Chassis);
        var report = await PullAsync("50");
        report["forLeaver"] = true;

        var answer = await SendAsync(await SignedInAsync(DemoPeople.Lead), report);

        Assert.Equal(HttpStatusCode.Conflict, answer.Status);
        Assert.Empty(StateOf().Positions);
    }

    [Fact]
    public async Task Report_that_was_recorded_is_confirmed_to_whoever_is_at_the_tablet_then()
    {
        var doer = await SignedInAsync(DemoPeople.Chassis);
        var report = await OpenedAsync();
        await SendAsync(doer, report);
        var other = await SignedInAsync(DemoPeople.Newcomer);

        var answer = await SendAsync(other, report);

        Assert.Equal(HttpStatusCode.OK, answer.Status);
        Assert.True(answer.Body["repeated"]!.GetValue<bool>());
    }

    [Theory]
    [InlineData("http://elsewhere.example", null)]
    [InlineData("null", "cross-site")]
    [InlineData(null, "cross-site")]
    [InlineData(null, null)]
    public async Task Report_from_another_site_is_refused(string? origin, string? fetchSite)
    {
        var browser = await SignedInAsync(DemoPeople.Chassis);
        var before = StateOf().Number;

        var answer = await SendAsync(browser, await OpenedAsync(), origin, fetchSite);

        Assert.Equal(HttpStatusCode.Forbidden, answer.Status);
        Assert.Equal(before, StateOf().Number);
    }

    [Fact]
    public async Task Hand_tight_of_an_earlier_cycle_is_recorded_and_does_not_count()
    {
        var browser = await SignedInAsync(DemoPeople.Chassis);
        await SendAsync(browser, await OpenedAsync());
        var late = await ReportAsync("HandTight");
        late["group"] = "wheel-nuts";
        late["positions"]![0]!["cycle"] = 0;

        var answer = await SendAsync(browser, late);

        Assert.Equal(HttpStatusCode.OK, answer.Status);
        Assert.False(answer.Body["counts"]!.GetValue<bool>());
        Assert.Equal(Fitting.Open, StateOf().Of(new("wheel.nut", "front-left", 1)).Fitting);
    }

    [Fact]
    public async Task Hand_tight_of_the_cycle_that_was_on_the_screen_counts()
    {
        var browser = await SignedInAsync(DemoPeople.Chassis);
        await SendAsync(browser, await OpenedAsync());
        var report = await ReportAsync("HandTight");
        report["group"] = "wheel-nuts";
        report["positions"]![0]!["cycle"] = 1;

        Assert.True((await SendAsync(browser, report)).Body["counts"]!.GetValue<bool>());
    }

    [Fact]
    public async Task What_was_pulled_before_its_person_signed_in_anew_is_recorded_and_held()
    {
        var browser = await SignedInAsync(DemoPeople.Chassis);
        var report = await PullAsync("50");
        report["session"] = (await SessionAsync()).ToString();
        browser = await SignedInAsync(DemoPeople.Chassis);

        var answer = await SendAsync(browser, report);

        Assert.Equal(HttpStatusCode.OK, answer.Status);
        Assert.Contains("before its person last signed in", answer.Body["words"]!.ToJsonString(), StringComparison.Ordinal);
        Assert.Contains(HoldReason.EarlierSession, StateOf().Positions.Values.SelectMany(book => book.Pulls).Single().Problems);
    }

    [Fact]
    public async Task What_was_pulled_in_this_session_is_of_it()
    {
        var browser = await SignedInAsync(DemoPeople.Chassis);
        var report = await PullAsync("50");
        report["session"] = (await SessionAsync()).ToString();

        await SendAsync(browser, report);

        Assert.DoesNotContain(HoldReason.EarlierSession, StateOf().Positions.Values.SelectMany(book => book.Pulls).Single().Problems);
    }

    [Fact]
    public async Task How_the_car_stood_before_its_person_signed_in_anew_is_not_taken()
    {
        var browser = await SignedInAsync(DemoPeople.Chassis);
        var report = await ReportAsync("Condition");
        report["conditions"] = JsonNode.Parse("""[{"aspect":"stand","value":"wheel-up"}]""");
        report["places"] = JsonNode.Parse("""["front-left"]""");
        report["session"] = (await SessionAsync()).ToString();
        browser = await SignedInAsync(DemoPeople.Chassis);

        var answer = await SendAsync(browser, report);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains("say how it is now", answer.Body["words"]!.ToJsonString(), StringComparison.Ordinal);
        Assert.Empty(StateOf().Conditions);
    }

    [Fact]
    public async Task Huge_body_is_refused()
    {
        var browser = await SignedInAsync(DemoPeople.Chassis);
        var report = await OpenedAsync();
        report["lot"] = new string('x', 20_000);

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, (await SendAsync(browser, report)).Status);
    }

    [Theory]
    [InlineData("[]")]
    [InlineData("{")]
    [InlineData("null")]
    [InlineData("""{"what":"Opened"}""")]
    [InlineData("""{"what":"Nothing","person":"00000000-0000-0000-0000-000000000001","car":"00000000-0000-0000-0000-000000000001"}""")]
    public async Task Body_that_is_no_report_is_refused_in_words(string body)
    {
        var browser = await SignedInAsync(DemoPeople.Chassis);

        var answer = await SendAsync(browser, body, Here, null, "application/json");

        Assert.Equal(HttpStatusCode.BadRequest, answer.Status);
        Assert.NotEmpty(answer.Body["words"]!.AsArray());
    }

    [Fact]
    public async Task Form_post_is_refused()
    {
        var browser = await SignedInAsync(DemoPeople.Chassis);

        var answer = await SendAsync(browser, "what=Opened", Here, null, "application/x-www-form-urlencoded");

        Assert.Equal(HttpStatusCode.UnsupportedMediaType, answer.Status);
    }

    /// <summary>The session that this tablet is in.</summary>
    private Task<Guid> SessionAsync()
    {
        var token = SHA256.HashData(Encoding.ASCII.GetBytes(WorkSeed.TabletToken));
        return shop.RowsAsync(async rows => (await (
            from session in rows.Sessions
            join one in rows.Tablets on session.TabletId equals one.Id
            where one.TokenHash == token && session.EndedAt == null
            select session).SingleAsync()).Id.Value);
    }

    private CarState StateOf() => shop.Services.GetRequiredService<CarDesk>().Read(car, null).State;

    private async Task<Browser> SignedInAsync(DemoPeople.DemoPerson person)
    {
        if (job == default)
        {
            tablet = shop.NewBrowser();
            tablet.Cookies["shop.tablet"] = WorkSeed.TabletToken;
            await shop.Services.MigrateShopAsync();
            var seed = new WorkSeed(shop.Services);
            await seed.FurnishAsync();
            (car, job) = await seed.StartAsync("Blue", "P5", DemoPeople.Chassis.Name, "front-left");
        }

        await tablet!.SignInAsync(person.Name, person.Pin);
        return tablet;
    }

    private async Task<JsonObject> OpenedAsync() => await ReportAsync("Opened");

    private async Task<JsonObject> PullAsync(string typed)
    {
        var report = await ReportAsync("Pull");
        report["group"] = "wheel-nuts";
        report["cycle"] = 0;
        report["stage"] = 1;
        report["visit"] = 0;
        report["kind"] = "Reading";
        report["unit"] = "NewtonMetre";
        report["tool"] = WorkSeed.WA.Value;
        report["value"] = typed;
        return report;
    }

    private async Task<JsonObject> ReportAsync(string what) => new()
    {
        ["id"] = Guid.NewGuid(),
        ["what"] = what,
        ["person"] = await shop.RowsAsync(rows => rows.People.Where(row => row.Name == DemoPeople.Chassis.Name).Select(row => row.Id.Value).SingleAsync()),
        ["car"] = car.Value,
        ["job"] = job.Value,
        ["positions"] = new JsonArray(new JsonObject { ["key"] = "wheel.nut", ["place"] = "front-left", ["number"] = 1 }),
    };

    private Task<(HttpStatusCode Status, JsonObject Body)> SendAsync(Browser browser, JsonObject report, string? origin = Here, string? fetchSite = null) =>
        SendAsync(browser, report.ToJsonString(), origin, fetchSite, "application/json");

    private async Task<(HttpStatusCode Status, JsonObject Body)> SendAsync(
        Browser browser, string body, string? origin, string? fetchSite, string contentType)
    {
        using var client = shop.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false, HandleCookies = false });
        using var request = new HttpRequestMessage(HttpMethod.Post, "/cells") { Content = new StringContent(body, Encoding.UTF8) };
        request.Content.Headers.ContentType = new MediaTypeHeaderValue(contentType);
        request.Headers.Add("Cookie", string.Join("; ", browser.Cookies.Select(cookie => $"{cookie.Key}={cookie.Value}")));
        if (origin is not null)
        {
            request.Headers.Add("Origin", origin);
        }

        if (fetchSite is not null)
        {
            request.Headers.Add("Sec-Fetch-Site", fetchSite);
        }

        using var answer = await client.SendAsync(request);
        var text = await answer.Content.ReadAsStringAsync();
        return (answer.StatusCode, JsonNode.Parse(text.Length == 0 ? "{}" : text)?.AsObject() ?? throw new JsonException(text));
    }
}
