using System.Net;
using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Summaries;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Cars;
using ShopJobs.Web.Components.Summaries;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Data.Summaries;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Summaries;

public sealed partial class CustomerPageTests : IAsyncLifetime, IDisposable
{
    private readonly OpenShop shop = new();
    private Browser customer = default!;
    private SummaryBench bench = default!;

    public async Task InitializeAsync()
    {
        await shop.NewBrowser().SubmitAsync(
            "/start", "empty", ("Form.ShopName", "Ninth Bay"), ("Form.LeadName", "Edda"), ("Form.Zone", "Europe/Berlin"));
        bench = await SummaryBench.SetUpAsync(shop.Services, "<script>alert('x')</script><img src=x onerror=alert(1)> \"'&");
        customer = shop.NewBrowser();
    }

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task Newest_version_is_read_without_a_door_or_a_circuit_and_its_one_script_only_prints()
    {
        await bench.IssueAsync();

        var link = await NewLinkAsync();
        var answer = await customer.GetAsync(link);

        Assert.Equal(HttpStatusCode.OK, answer.Status);
        Assert.Equal("Work summary: Blue", answer.Heading);
        Assert.Empty(answer.Page.QuerySelectorAll("script[src*='_framework']"));
        Assert.DoesNotContain("<!--Blazor:", answer.Text, StringComparison.Ordinal);
        Assert.Equal(["/Look/print.js"], answer.Page.QuerySelectorAll("script").Select(script => script.GetAttribute("src")));
        Assert.Empty(answer.Page.QuerySelectorAll("a[href='/'], a[href='/sign-in']"));
        Assert.Equal(($"{link}#read", "post"), Assert.Single(answer.Page.QuerySelectorAll("form")) is var form ? (form.GetAttribute("action")!, form.GetAttribute("method")!) : default);
        Assert.Contains("Version 1", answer.Page.QuerySelector(".sheet-version")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_the_customer_wrote_is_shown_and_does_nothing()
    {
        await bench.IssueAsync();

        var page = (await customer.GetAsync(await NewLinkAsync())).Page;

        Assert.Equal("<script>alert('x')</script><img src=x onerror=alert(1)> \"'&", page.QuerySelector("blockquote")!.TextContent);
        Assert.Empty(page.QuerySelectorAll("blockquote *, [onerror]"));
    }

    [Fact]
    public async Task Is_never_stored_never_found_and_tells_nobody_where_it_was()
    {
        await bench.IssueAsync();
        var link = await NewLinkAsync();

        foreach (var answer in new[] { await customer.GetAsync(link), await customer.GetAsync("/s/AAAAAAAAAAAAAAAAAAAAAA") })
        {
            Assert.True(answer.Headers.CacheControl!.NoStore);
            Assert.Equal("no-referrer", answer.Headers.GetValues("Referrer-Policy").Single());
            Assert.Contains("noindex", answer.Headers.GetValues("X-Robots-Tag").Single(), StringComparison.Ordinal);
            Assert.NotNull(answer.Page.QuerySelector("meta[name=robots][content*=noindex]"));
            Assert.Empty(answer.SetCookies);
        }
    }

    [Fact]
    public async Task Unknown_expired_and_taken_back_look_the_same()
    {
        await bench.IssueAsync();
        var expired = await NewLinkAsync();
        var revoked = await NewLinkAsync(live: 400);
        shop.Time.Advance(TimeSpan.FromDays(365));
        var open = await NewLinkAsync();
        await shop.RowsAsync(async rows => await rows.CustomerLinks.Where(link => link.ExpiresAt > shop.Time.GetUtcNow().UtcDateTime.AddDays(1) && link.ExpiresAt < shop.Time.GetUtcNow().UtcDateTime.AddDays(100))
            .ExecuteUpdateAsync(row => row.SetProperty(link => link.RevokedAt, shop.Time.GetUtcNow().UtcDateTime)));

        var answers = new List<Answer>();
        foreach (var path in new[] { "/s/AAAAAAAAAAAAAAAAAAAAAA", "/s/x", expired, revoked })
        {
            answers.Add(await customer.GetAsync(path));
        }

        Assert.Equal(HttpStatusCode.OK, (await customer.GetAsync(open)).Status);
        Assert.All(answers, answer => Assert.Equal(HttpStatusCode.NotFound, answer.Status));
        Assert.Equal("This link no longer works", answers[0].Heading);
        Assert.Single(answers.Select(answer => Nonce().Replace(answer.Text, "")).Distinct());
        Assert.Single(answers.Select(HeadersOf).Distinct());
    }

    [Fact]
    public async Task The_links_of_the_owner_before_end_when_the_car_changes_hands()
    {
        await bench.IssueAsync();
        var before = await NewLinkAsync();
        Assert.Equal(HttpStatusCode.OK, (await customer.GetAsync(before)).Status);

        await SellAsync();

        var ended = await customer.GetAsync(before);
        var unknown = await customer.GetAsync("/s/AAAAAAAAAAAAAAAAAAAAAA");
        Assert.Equal(HttpStatusCode.NotFound, ended.Status);
        Assert.Equal(Nonce().Replace(unknown.Text, ""), Nonce().Replace(ended.Text, ""));
        Assert.Equal(HeadersOf(unknown), HeadersOf(ended));
        Assert.Equal(HttpStatusCode.OK, (await customer.GetAsync(await NewLinkAsync())).Status);
    }

    [Fact]
    public async Task The_next_owner_reads_only_what_was_issued_to_him_and_nothing_of_how_it_differs_from_before()
    {
        await bench.IssueAsync();
        shop.Time.Advance(TimeSpan.FromHours(1));
        await SellAsync();
        shop.Time.Advance(TimeSpan.FromHours(1));
        var link = await NewLinkAsync();
        Assert.Equal("No work summary yet", (await customer.GetAsync(link)).Heading);
        Assert.Equal("No work summary yet", (await customer.GetAsync(link + "?version=1")).Heading);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await customer.PostAsync(link, ("version", "1"), ("words", ""))).Status);

        await bench.OpenNutsAsync();
        await bench.IssueAsync();

        var page = (await customer.GetAsync(link)).Page;
        Assert.Contains("Version 2", page.QuerySelector(".sheet-version")!.TextContent, StringComparison.Ordinal);
        Assert.Null(page.QuerySelector(".sheet-changes"));
        Assert.Null(page.QuerySelector(".sheet-versions"));
    }

    [Fact]
    public async Task Guessing_is_slowed_down()
    {
        var answers = new List<HttpStatusCode>();
        for (var guess = 0; guess < 31; guess++)
        {
            answers.Add((await customer.GetAsync($"/s/{CustomerToken.New()}")).Status);
        }

        Assert.All(answers[..30], status => Assert.Equal(HttpStatusCode.NotFound, status));
        Assert.Equal(HttpStatusCode.TooManyRequests, answers[30]);
    }

    [Fact]
    public async Task The_calendar_leads_back_to_the_page_where_there_is_no_day_and_nowhere_without_a_link()
    {
        await bench.IssueAsync();
        var link = await NewLinkAsync();

        var none = await customer.GetAsync($"{link}/calendar.ics?version=1");
        var unknown = await customer.GetAsync("/s/AAAAAAAAAAAAAAAAAAAAAA/calendar.ics");

        Assert.Equal((HttpStatusCode.SeeOther, link), (none.Status, none.Location));
        Assert.Equal((HttpStatusCode.NotFound, "This link no longer works"), (unknown.Status, unknown.Heading));
        Assert.All([none, unknown], answer => Assert.Contains("noindex", answer.Headers.GetValues("X-Robots-Tag").Single(), StringComparison.Ordinal));
    }

    [Fact]
    public async Task Looking_changes_nothing()
    {
        await bench.IssueAsync();
        var link = await NewLinkAsync();
        var before = await LinkRowsAsync();

        await customer.GetAsync(link);
        await customer.GetAsync(link + "?version=1");

        Assert.Equal(before, await LinkRowsAsync());
    }

    [Fact]
    public async Task An_opening_puts_a_banner_on_top_and_leaves_what_was_issued()
    {
        var issued = await bench.IssueAsync();
        var link = await NewLinkAsync();
        var before = (await customer.GetAsync(link)).Page;
        Assert.Null(before.QuerySelector(".sheet-banner"));
        shop.Time.Advance(TimeSpan.FromHours(1));

        await bench.OpenNutsAsync();

        var after = (await customer.GetAsync(link)).Page;
        var banner = after.QuerySelector(".sheet-banner")!;
        Assert.Equal("Out of date. Do not rely on this page: 01632 960100", banner.QuerySelector("strong")!.TextContent.Trim());
        Assert.Contains("Since 2 Mar 2026, 10:00: a joint was opened again: wheel nut, front-left.", banner.TextContent, StringComparison.Ordinal);
        Assert.Equal("tel:01632960100", banner.QuerySelector("a")!.GetAttribute("href"));
        Assert.StartsWith("Out of date: ", after.Title, StringComparison.Ordinal);
        Assert.Equal(banner, after.QuerySelector("main")!.FirstElementChild);
        Assert.Equal(before.QuerySelector(".sheet")!.OuterHtml, after.QuerySelector(".sheet")!.OuterHtml);
        Assert.Equal(issued, Bytes(version: 1));
    }

    [Fact]
    public async Task A_new_version_shows_the_opened_joint_on_top_and_the_old_one_stays_readable()
    {
        var first = await bench.IssueAsync();
        var link = await NewLinkAsync();
        await bench.OpenNutsAsync();
        await bench.IssueAsync();

        var newest = (await customer.GetAsync(link)).Page;
        Assert.Contains("Version 2", newest.QuerySelector(".sheet-version")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Replaces version 1", newest.QuerySelector(".sheet-version")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("Not finished", newest.QuerySelector(".sheet-part h2")!.TextContent);
        Assert.StartsWith("wheel nut, front-left: 5 of 5 open", newest.QuerySelector(".sheet-states li")!.TextContent.Trim(), StringComparison.Ordinal);

        var old = (await customer.GetAsync(link + "?version=1")).Page;
        Assert.Equal("Version 2 of 2 Mar 2026 replaces this page.", old.QuerySelector(".sheet-banner strong")!.TextContent);
        Assert.Equal(link, old.QuerySelector(".sheet-banner a")!.GetAttribute("href"));
        Assert.Contains("Version 1", old.QuerySelector(".sheet-version")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(first, Bytes(version: 1));
    }

    [Fact]
    public async Task Content_changed_outside_the_program_is_not_shown()
    {
        await bench.IssueAsync();
        var link = await NewLinkAsync();
        Assert.Throws<Microsoft.Data.Sqlite.SqliteException>(() => shop.RowsAsync(
            rows => rows.Database.ExecuteSqlRawAsync("UPDATE content SET bytes = x'7b7d'")).GetAwaiter().GetResult());
        await shop.RowsAsync(rows => rows.Database.ExecuteSqlRawAsync("DROP TRIGGER content_is_only_erased; UPDATE content SET bytes = x'7b7d'"));

        var answer = await customer.GetAsync(link);

        Assert.Contains("changed outside the program", answer.Alert, StringComparison.Ordinal);
        Assert.Null(answer.Page.QuerySelector(".sheet"));
    }

    [Fact]
    public async Task Before_anything_is_issued_the_link_says_so()
    {
        var answer = await customer.GetAsync(await NewLinkAsync());

        Assert.Equal((HttpStatusCode.OK, "No work summary yet"), (answer.Status, answer.Heading));
    }

    private async Task<string> NewLinkAsync(int live = 365)
    {
        var token = CustomerToken.New();
        await shop.RowsAsync(async rows =>
        {
            rows.CustomerLinks.Add(new CustomerLink
            {
                Id = Guid.NewGuid(),
                TokenHash = CustomerToken.HashOf(token)!,
                CarId = bench.Car,
                CreatedAt = shop.Time.GetUtcNow().UtcDateTime,
                CreatedBy = bench.Lead.Person,
                ExpiresAt = shop.Time.GetUtcNow().UtcDateTime.AddDays(live),
            });
            return await rows.SaveChangesAsync();
        });
        return $"/s/{token}";
    }

    /// <summary>The lead gives the car another owner on its form.</summary>
    private async Task SellAsync()
    {
        await using var scope = shop.Services.CreateAsyncScope();
        var circuit = new ShopOnDisk.FakeCircuit
        {
            User = PersonClaims.Of(await scope.ServiceProvider.GetRequiredService<SessionDesk>().OpenAsync(bench.Lead.Person, bench.Lead.Tablet), bench.Lead.Name),
        };
        var desk = ActivatorUtilities.CreateInstance<CustomerDesk>(
            scope.ServiceProvider,
            ActivatorUtilities.CreateInstance<ShopChange>(scope.ServiceProvider, ActivatorUtilities.CreateInstance<WhoIsHere>(scope.ServiceProvider, circuit)));
        var buyer = new CustomerForm { Name = "The next owner" };
        Assert.Null(await desk.SaveAsync(buyer));
        var form = CarForm.Of((await desk.CarsAsync()).Single(car => car.Id == bench.Car));
        form.Customer = buyer.Id.Value.ToString();
        Assert.Null(await desk.SaveAsync(form));
    }

    private Task<string> LinkRowsAsync() => shop.RowsAsync(async rows => string.Join(
        "; ", await rows.CustomerLinks.Select(link => $"{link.Id} {link.ExpiresAt:O} {link.RevokedAt:O}").ToListAsync()));

    private byte[] Bytes(int version) => Assert.IsType<StoredContent.Present>(
        shop.Services.GetRequiredService<SummaryShelf>().Of(bench.Car).Single(issued => issued.Version == version).Content).Bytes.ToArray();

    private static string HeadersOf(Answer answer) => Nonce().Replace(string.Join(
        "\n", answer.Headers.Where(header => header.Key != "Date").Select(header => $"{header.Key}: {string.Join(",", header.Value)}")), "");

    [GeneratedRegex("""nonce[-=]"?[A-Za-z0-9+/=]+""")]
    private static partial Regex Nonce();
}
