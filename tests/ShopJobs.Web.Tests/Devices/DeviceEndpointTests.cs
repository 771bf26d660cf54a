using System.Net;
using System.Text.Json.Nodes;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Components.Devices;

namespace ShopJobs.Web.Tests.Devices;

/// <summary>What a tool sends is offered to the one tablet that has it picked, or refused in words; nothing is recorded by the door itself.</summary>
public sealed class DeviceEndpointTests : IAsyncLifetime, IDisposable
{
    private readonly DeviceBench bench = new();

    public Task InitializeAsync() => bench.OpenAsync();

    Task IAsyncLifetime.DisposeAsync() => Task.CompletedTask;

    public void Dispose() => bench.Dispose();

    [Fact]
    public async Task A_reading_is_recorded_by_the_tablet_that_has_the_tool_picked()
    {
        using var page = bench.Stand(WorkSeed.WA);

        var (status, body) = await bench.SendAsync(bench.Reading("50,2"));

        Assert.Equal((HttpStatusCode.OK, "recorded", true), (status, Outcome(body), body["counts"]!.GetValue<bool>()));
        Assert.Equal(50.2m, Assert.Single(bench.Pulls).Value!.Value.Value);
    }

    [Fact]
    public async Task A_reading_may_be_a_number_of_the_JSON()
    {
        using var page = bench.Stand(WorkSeed.WA);
        var reading = bench.Reading();
        reading["value"] = 49.8m;

        Assert.Equal("recorded", Outcome((await bench.SendAsync(reading)).Body));
        Assert.Equal(49.8m, Assert.Single(bench.Pulls).Value!.Value.Value);
    }

    [Fact]
    public async Task What_holds_its_fastener_is_told_with_what_is_to_be_done()
    {
        using var page = bench.Stand(WorkSeed.WA, nut: 5);

        var (status, body) = await bench.SendAsync(bench.Reading());

        Assert.Equal((HttpStatusCode.OK, "held", false), (status, Outcome(body), body["counts"]!.GetValue<bool>()));
        Assert.Contains("out of order", Words(body), StringComparison.Ordinal);
        Assert.Contains("Next: ", Words(body), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sent_again_under_its_id_it_is_a_duplicate_and_is_recorded_once()
    {
        using var page = bench.Stand(WorkSeed.WA);
        var reading = bench.Reading();
        await bench.SendAsync(reading);

        var (status, body) = await bench.SendAsync(reading);

        Assert.Equal((HttpStatusCode.OK, "duplicate", true), (status, Outcome(body), body["counts"]!.GetValue<bool>()));
        Assert.Single(bench.Pulls);
        Assert.Single(bench.Offered);
    }

    [Fact]
    public async Task Another_reading_under_an_id_that_was_used_is_refused()
    {
        using var page = bench.Stand(WorkSeed.WA);
        var reading = bench.Reading();
        await bench.SendAsync(reading);
        reading["value"] = "50.3";

        var (status, body) = await bench.SendAsync(reading);

        Assert.Equal((HttpStatusCode.UnprocessableEntity, "refused"), (status, Outcome(body)));
        Assert.Contains("used for another reading", Words(body), StringComparison.Ordinal);
        Assert.Single(bench.Pulls);
    }

    [Fact]
    public async Task An_id_that_recorded_another_tools_reading_is_refused()
    {
        using var page = bench.Stand(WorkSeed.W7);
        using var other = bench.Stand(WorkSeed.WA);
        var reading = bench.Reading();
        await bench.SendAsync(reading);

        Assert.Equal("refused", Outcome((await bench.SendAsync(reading, bench.KeyOf(WorkSeed.W7))).Body));
        Assert.Single(bench.Pulls);
    }

    [Fact]
    public async Task Where_no_tablet_has_the_tool_picked_nothing_is_recorded()
    {
        using var page = bench.Stand(WorkSeed.W7);

        var (status, body) = await bench.SendAsync(bench.Reading());

        Assert.Equal((HttpStatusCode.UnprocessableEntity, "refused"), (status, Outcome(body)));
        Assert.Contains("No tablet is at a pull with WA picked", Words(body), StringComparison.Ordinal);
        Assert.Empty(bench.Offered);
    }

    [Fact]
    public async Task Where_two_tablets_have_the_tool_picked_neither_is_offered_it()
    {
        using var page = bench.Stand(WorkSeed.WA);
        using var other = bench.Stand(WorkSeed.WA, nut: 3, new DeviceId(new Guid(2, 0, 0, new byte[8])));

        var (_, body) = await bench.SendAsync(bench.Reading());

        Assert.Equal("refused", Outcome(body));
        Assert.Contains("2 tablets have WA picked", Words(body), StringComparison.Ordinal);
        Assert.Empty(bench.Offered);
        Assert.Empty(bench.Pulls);
    }

    [Fact]
    public async Task A_page_that_is_left_has_the_tool_picked_no_more()
    {
        bench.Stand(WorkSeed.WA).Dispose();

        Assert.Equal("refused", Outcome((await bench.SendAsync(bench.Reading())).Body));
    }

    [Theory]
    [InlineData(TabletOutcome.Waiting, HttpStatusCode.Accepted, "waiting")]
    [InlineData(TabletOutcome.Refused, HttpStatusCode.UnprocessableEntity, "refused")]
    [InlineData(TabletOutcome.Settled, HttpStatusCode.Accepted, "waiting")]
    public async Task What_the_tablet_says_is_told_and_nothing_more_is_claimed(TabletOutcome said, HttpStatusCode status, string outcome)
    {
        using var page = bench.Stand(WorkSeed.WA, said, "It is asked at the tablet.");

        var (code, body) = await bench.SendAsync(bench.Reading());

        Assert.Equal((status, outcome), (code, Outcome(body)));
        Assert.Contains("It is asked at the tablet.", Words(body), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_page_in_front_takes_it_where_another_of_the_same_tablet_is_behind()
    {
        using var behind = bench.Stand(WorkSeed.WA, TabletOutcome.Away);
        using var front = bench.Stand(WorkSeed.WA);

        Assert.Equal("recorded", Outcome((await bench.SendAsync(bench.Reading())).Body));
        Assert.Single(bench.Pulls);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("a-key-of-nobody")]
    public async Task Without_a_tools_key_it_is_refused(string? key)
    {
        using var page = bench.Stand(WorkSeed.WA);

        var (status, body) = await bench.SendAsync(bench.Reading().ToJsonString(), key);

        Assert.Equal((HttpStatusCode.Unauthorized, "refused"), (status, Outcome(body)));
        Assert.Empty(bench.Offered);
    }

    [Fact]
    public async Task A_key_that_was_ended_opens_nothing()
    {
        using var page = bench.Stand(WorkSeed.WA);
        await bench.Shop.RowsAsync(rows => rows.ToolKeys.ExecuteUpdateAsync(set => set.SetProperty(row => row.EndedAt, DateTime.UnixEpoch)));

        Assert.Equal(HttpStatusCode.Unauthorized, (await bench.SendAsync(bench.Reading())).Status);
    }

    [Fact]
    public async Task A_tools_key_sends_for_no_other_tool()
    {
        using var page = bench.Stand(WorkSeed.WA);

        var (_, body) = await bench.SendAsync(bench.Reading(), bench.KeyOf(WorkSeed.W7));

        Assert.Contains("W7 is a click wrench", Words(body), StringComparison.Ordinal);
        Assert.Empty(bench.Offered);
    }

    [Theory]
    [InlineData("unit", "lbf·ft", "reads in N·m")]
    [InlineData("unit", "furlong", "reads in N·m")]
    [InlineData("unit", null, "reads in N·m")]
    [InlineData("value", "-50", "has a sign")]
    [InlineData("value", "5e1", "exponent")]
    [InlineData("value", "fifty", "does not start with a number")]
    [InlineData("value", "", "Nothing entered")]
    [InlineData("value", null, "Nothing entered")]
    [InlineData("value", "0", "no reading of WA")]
    [InlineData("value", "400.1", "no reading of WA")]
    [InlineData("value", "99999999999", "more than 9 digits")]
    [InlineData("angle", "-3", "angle is one number")]
    [InlineData("angle", "99999", "angle is one number")]
    [InlineData("command", null, "no command id")]
    [InlineData("command", "00000000-0000-0000-0000-000000000000", "no command id")]
    [InlineData("at", null, "not of now")]
    [InlineData("at", "2026-03-02T07:57:00Z", "not of now")]
    [InlineData("at", "2026-03-02T08:03:00Z", "not of now")]
    public async Task What_cannot_be_its_reading_of_now_is_refused_in_words(string member, string? value, string words)
    {
        using var page = bench.Stand(WorkSeed.WA);
        var reading = bench.Reading();
        reading[member] = value;

        var (status, body) = await bench.SendAsync(reading);

        Assert.Equal((HttpStatusCode.UnprocessableEntity, "refused"), (status, Outcome(body)));
        Assert.Contains(words, Words(body), StringComparison.OrdinalIgnoreCase);
        Assert.Empty(bench.Offered);
    }

    [Theory]
    [InlineData("[]")]
    [InlineData("{")]
    [InlineData("null")]
    [InlineData("""{"command":7}""")]
    [InlineData("""{"tool":"W7"}""")]
    public async Task What_is_no_reading_is_refused(string body)
    {
        Assert.Equal(HttpStatusCode.BadRequest, (await bench.SendAsync(body, bench.KeyOf(WorkSeed.WA))).Status);
    }

    [Fact]
    public async Task What_is_too_long_or_no_JSON_is_refused()
    {
        var reading = bench.Reading(new string('5', 4000));

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, (await bench.SendAsync(reading)).Status);
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, (await bench.SendAsync("value=50", bench.KeyOf(WorkSeed.WA), "application/x-www-form-urlencoded")).Status);
    }

    [Fact]
    public async Task Whoever_tries_keys_is_soon_told_to_wait()
    {
        var answers = new List<HttpStatusCode>();
        for (var i = 0; i < 121; i++)
        {
            answers.Add((await bench.SendAsync(bench.Reading(), "a-key-of-nobody")).Status);
        }

        Assert.Equal(HttpStatusCode.TooManyRequests, answers[^1]);
        Assert.All(answers.SkipLast(1), status => Assert.Equal(HttpStatusCode.Unauthorized, status));
    }

    private static string Outcome(JsonObject body) => body["outcome"]!.GetValue<string>();

    private static string Words(JsonObject body) => string.Join(" ", body["words"]!.AsArray().Select(one => one!.GetValue<string>()));
}
