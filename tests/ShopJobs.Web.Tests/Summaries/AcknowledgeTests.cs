using System.Net;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Web.Components.Summaries;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Data.Summaries;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Summaries;

/// <summary>The customer says on the page of the link that it was read, without an account and without script.</summary>
public sealed class AcknowledgeTests : IAsyncLifetime, IDisposable
{
    private const string Nasty = "<script>alert('x')</script>\n\"'& ”ö";

    private readonly OpenShop shop = new();
    private Browser customer = default!;
    private SummaryBench bench = default!;
    private string link = "";

    public async Task InitializeAsync()
    {
        await shop.NewBrowser().SubmitAsync(
            "/start", "empty", ("Form.ShopName", "Ninth Bay"), ("Form.LeadName", "Edda"), ("Form.Zone", "Europe/Berlin"));
        bench = await SummaryBench.SetUpAsync(shop.Services);
        await bench.IssueAsync();
        customer = shop.NewBrowser();
        var token = CustomerToken.New();
        link = $"/s/{token}";
        await shop.RowsAsync(async rows =>
        {
            rows.CustomerLinks.Add(new CustomerLink
            {
                Id = Guid.NewGuid(),
                TokenHash = CustomerToken.HashOf(token)!,
                CarId = bench.Car,
                CreatedAt = shop.Time.GetUtcNow().UtcDateTime,
                CreatedBy = bench.Lead.Person,
                ExpiresAt = shop.Time.GetUtcNow().UtcDateTime.AddDays(30),
            });
            return await rows.SaveChangesAsync();
        });
    }

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task Is_kept_with_the_words_the_version_and_the_time_and_said_on_the_page_after()
    {
        var sent = await SendAsync(1, Nasty);

        Assert.Equal((HttpStatusCode.SeeOther, $"{link}?version=1#read"), (sent.Status, sent.Location));
        Assert.Empty(sent.SetCookies);
        var row = Assert.Single(await RowsAsync());
        Assert.Equal((bench.Car, 1, shop.Time.GetUtcNow().UtcDateTime, Nasty), (row.CarId, row.Version, row.At, row.Words));
        var page = (await customer.GetAsync($"{link}?version=1")).Page;
        Assert.Contains("Confirmed on 2 Mar 2026, 09:00: version 1 was read.", page.QuerySelector("#read")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(Nasty, page.QuerySelector("#read blockquote")!.TextContent);
        Assert.Empty(page.QuerySelectorAll("form, #read script"));
    }

    [Fact]
    public async Task Words_are_not_asked()
    {
        await SendAsync(1, "");

        Assert.Equal("", Assert.Single(await RowsAsync()).Words);
        Assert.Empty((await customer.GetAsync(link)).Page.QuerySelectorAll("#read blockquote"));
    }

    [Fact]
    public async Task The_same_form_sent_twice_at_once_or_later_is_kept_once()
    {
        var answers = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => shop.NewBrowser().PostAsync(link, ("version", "1"), ("words", "Thanks."))));
        shop.Time.Advance(TimeSpan.FromHours(1));
        var later = await SendAsync(1, "Thanks.");

        Assert.All(answers.Append(later), answer => Assert.Equal(HttpStatusCode.SeeOther, answer.Status));
        Assert.Equal(shop.Time.GetUtcNow().UtcDateTime.AddHours(-1), Assert.Single(await RowsAsync()).At);
    }

    [Fact]
    public async Task Other_words_the_second_time_are_said_not_to_be_added_and_stay_on_the_screen()
    {
        await SendAsync(1, "Thanks.");

        var second = await SendAsync(1, "It rattles.");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, second.Status);
        Assert.Contains("What you wrote now was not added.", second.Alert, StringComparison.Ordinal);
        Assert.Equal(["Thanks.", "It rattles."], second.Page.QuerySelectorAll("#read blockquote").Select(quote => quote.TextContent));
        Assert.Equal("Thanks.", Assert.Single(await RowsAsync()).Words);
    }

    [Theory]
    [InlineData(SummaryAcknowledgement.WordsLength, 0)]
    [InlineData(SummaryAcknowledgement.WordsLength + 1, 1)]
    [InlineData(200_000, 1)]
    public async Task Too_many_letters_are_said_beside_the_field_and_nothing_typed_is_lost(int letters, int alerts)
    {
        var words = new string('x', letters);

        var answer = await SendAsync(1, words);

        Assert.Equal(1 - alerts, (await RowsAsync()).Count);
        if (alerts > 0)
        {
            Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
            Assert.Contains("and 1,000 fit. Nothing was sent.", answer.Alert, StringComparison.Ordinal);
            var field = answer.Page.QuerySelector("textarea")!;
            Assert.Equal(words, field.TextContent);
            Assert.Contains("words-wrong", field.GetAttribute("aria-describedby")!, StringComparison.Ordinal);
            Assert.Equal("true", field.GetAttribute("aria-invalid"));
        }
    }

    [Fact]
    public async Task Far_too_much_is_turned_away_in_words()
    {
        var answer = await SendAsync(1, new string('x', CustomerWords.MostBytes));

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.Status);
        Assert.Contains("far too long", answer.Alert, StringComparison.Ordinal);
        Assert.Empty(await RowsAsync());
    }

    [Theory]
    [InlineData("0")]
    [InlineData("2")]
    [InlineData("-1")]
    [InlineData("one")]
    [InlineData("99999999999999999999")]
    public async Task A_version_that_was_not_issued_is_not_confirmed(string version)
    {
        var answer = await customer.PostAsync(link, ("version", version), ("words", "Fine."));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains("not here to be read", answer.Alert, StringComparison.Ordinal);
        Assert.Equal("Fine.", answer.Page.QuerySelector("textarea")!.TextContent);
        Assert.Empty(await RowsAsync());
    }

    [Fact]
    public async Task A_newer_version_is_confirmed_anew_and_the_older_one_keeps_its_own()
    {
        await SendAsync(1, "First.");
        await bench.OpenNutsAsync();
        await bench.IssueAsync();
        var before = (await customer.GetAsync(link)).Page;
        Assert.NotNull(before.QuerySelector("#read form"));

        await SendAsync(2, "Second.");

        Assert.Equal("Second.", (await customer.GetAsync(link)).Page.QuerySelector("#read blockquote")!.TextContent);
        Assert.Equal("First.", (await customer.GetAsync($"{link}?version=1")).Page.QuerySelector("#read blockquote")!.TextContent);
    }

    [Fact]
    public async Task An_older_version_that_was_not_confirmed_asks_for_nothing()
    {
        await bench.OpenNutsAsync();
        await bench.IssueAsync();

        Assert.Null((await customer.GetAsync($"{link}?version=1")).Page.QuerySelector("#read"));
    }

    [Fact]
    public async Task A_link_that_does_not_open_takes_nothing_and_looks_as_when_it_is_read()
    {
        await shop.RowsAsync(rows => rows.CustomerLinks.ExecuteUpdateAsync(row => row.SetProperty(one => one.RevokedAt, shop.Time.GetUtcNow().UtcDateTime)));

        var ended = await SendAsync(1, "Thanks.");

        Assert.Equal((HttpStatusCode.NotFound, "This link no longer works"), (ended.Status, ended.Heading));
        Assert.Equal(HttpStatusCode.NotFound, (await customer.PostAsync($"/s/{CustomerToken.New()}", ("version", "1"))).Status);
        Assert.Empty(await RowsAsync());
    }

    [Fact]
    public async Task Sending_is_slowed_down_like_looking()
    {
        var answers = new List<HttpStatusCode>();
        for (var time = 0; time < 31; time++)
        {
            answers.Add((await SendAsync(1, "Thanks.")).Status);
        }

        Assert.Equal(HttpStatusCode.TooManyRequests, answers[30]);
        Assert.Single(await RowsAsync());
    }

    [Fact]
    public async Task The_next_owner_of_the_car_does_not_read_the_words_of_the_owner_before()
    {
        await SendAsync(1, "My daughter fetches it.");
        var buyer = new CustomerId(Guid.NewGuid());
        await shop.RowsAsync(async rows =>
        {
            rows.Customers.Add(new Customer { Id = buyer, Name = "The next owner" });
            (await rows.Cars.SingleAsync(car => car.Id == bench.Car)).CustomerId = buyer;
            return await rows.SaveChangesAsync();
        });

        var page = await customer.GetAsync(link);

        Assert.DoesNotContain("daughter", page.Text, StringComparison.Ordinal);
        await SendAsync(1, "");
        Assert.Equal(2, (await RowsAsync()).Count);
    }

    [Fact]
    public async Task What_changed_since_the_version_before_is_said_on_the_page()
    {
        Assert.Null((await customer.GetAsync(link)).Page.QuerySelector(".sheet-changes"));
        await bench.OpenNutsAsync();
        await bench.IssueAsync();

        var changes = (await customer.GetAsync(link)).Page.QuerySelector(".sheet-changes")!;

        Assert.Equal("What changed since version 1", changes.QuerySelector("h2")!.TextContent);
        Assert.Contains("New", changes.QuerySelectorAll("h3").Select(heading => heading.TextContent));
        Assert.Contains(changes.QuerySelectorAll("li"), line => line.TextContent.StartsWith("Not finished: wheel nut, front-left: 5 of 5 open", StringComparison.Ordinal));
        Assert.Null((await customer.GetAsync($"{link}?version=1")).Page.QuerySelector(".sheet-changes"));
    }

    private Task<Answer> SendAsync(int version, string words) => customer.PostAsync(link, ("version", $"{version}"), ("words", words));

    private Task<List<SummaryAcknowledgement>> RowsAsync() => shop.RowsAsync(rows => rows.Acknowledgements.AsNoTracking().ToListAsync());
}
