using Bunit;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Intake;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Tests.Intake;

/// <summary>The as-found sheet of one system: what it takes, what it says where it takes nothing, and what it shows afterwards.</summary>
public sealed class AsFoundCardTests : BunitContext
{
    private static readonly ResultKind Sheet = new("brakes", "brakes")
    {
        Measures = [new Measure("pad-front-left", "Thinner pad, front-left", "mm", null, null)],
        Notes = [new ResultNote("leaks", "Leaks", ["none", "seen"], false)],
    };

    private readonly List<(RecordAsFound Command, IReadOnlyList<NewContent> Contents)> sent = [];

    [Fact]
    public async Task Nothing_filled_in_is_said_and_not_sent()
    {
        var card = Draw(new AsFoundLook("brakes", Sheet, null, null));

        await card.Find("form").SubmitAsync(new());

        Assert.Contains("Nothing is filled in.", card.Find("[role=alert].form-wrong:not([id])").TextContent, StringComparison.Ordinal);
        Assert.Empty(sent);
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("1e30")]
    [InlineData("6 mm")]
    [InlineData("6,1,2")]
    [InlineData("999999999999999999")]
    public async Task What_is_no_number_is_said_at_its_field_and_stays(string typed)
    {
        var card = Draw(new AsFoundLook("brakes", Sheet, null, null));

        await card.Find("#found-brakes-pad-front-left").ChangeAsync(new() { Value = typed });
        await card.Find("form").SubmitAsync(new());

        Assert.Contains("is not a number", card.Find("#found-brakes-pad-front-left-wrong").TextContent, StringComparison.Ordinal);
        Assert.Equal(typed, card.Find("#found-brakes-pad-front-left").GetAttribute("value"));
        Assert.Empty(sent);
    }

    [Fact]
    public async Task What_was_seen_is_sent_and_what_was_not_stays_out()
    {
        var card = Draw(new AsFoundLook("brakes", Sheet, null, null));

        await card.Find("#found-brakes-pad-front-left").ChangeAsync(new() { Value = "-0,5" });
        await card.Find("#found-brakes-words").ChangeAsync(new() { Value = "A disc screw is gone" });
        await card.Find("form").SubmitAsync(new());

        var (command, contents) = Assert.Single(sent);
        Assert.Equal([new MeasuredValue("pad-front-left", -0.5m, "mm")], command.Values);
        Assert.Null(command.Notes);
        Assert.Equal((Assert.Single(contents).Digest, null), (command.Words, command.Told));
    }

    [Fact]
    public async Task Unknown_is_taken_with_how_the_customer_was_told_and_nothing_else()
    {
        var card = Draw(new AsFoundLook("brakes", Sheet, null, null));
        await card.Find("#found-brakes-pad-front-left").ChangeAsync(new() { Value = "6" });
        await card.FindAll(".choice")[1].ClickAsync(new());
        await card.Find("form").SubmitAsync(new());
        Assert.Contains("Write how the customer was told.", card.Markup, StringComparison.Ordinal);
        Assert.Empty(sent);

        await card.Find("#found-brakes-told").ChangeAsync(new() { Value = "By telephone" });
        await card.Find("form").SubmitAsync(new());

        var (command, contents) = Assert.Single(sent);
        Assert.Equal((0, Assert.Single(contents).Digest, null), (command.Values.Count, command.Told, command.Words));
    }

    [Fact]
    public void What_was_found_is_shown_in_the_words_of_the_sheet_with_who_wrote_it()
    {
        var fact = new AsFoundRecorded("brakes", [new MeasuredValue("pad-front-left", 6.50m, "mm")]) { Notes = [new WrittenNote("leaks", "seen")] };
        var look = new AsFoundLook("brakes", Sheet, new AsFoundBook(4, DateTime.UnixEpoch, new PersonId(Guid.NewGuid()), fact), null);

        var card = Draw(look, by: "1 Dec 2026, 09:00, Jorn", words: "<b>wet</b>");

        Assert.Equal(["Thinner pad, front-left: 6.5 mm", "Leaks: seen", "“<b>wet</b>”"], card.FindAll(".figures li").Select(line => line.TextContent.Trim()));
        Assert.Equal("1 Dec 2026, 09:00, Jorn", card.Find("p.quiet").TextContent);
        Assert.Equal("written down", card.Find(".result-standing").TextContent);
    }

    [Fact]
    public void What_was_opened_unseen_says_so()
    {
        var card = Draw(new AsFoundLook("brakes", Sheet, null, 12));

        Assert.Equal("opened before anything was written down", card.Find(".result-standing").TextContent);
        Assert.Empty(card.FindAll("p.quiet"));
    }

    [Fact]
    public void Whoever_may_not_record_reads_only() => Assert.Empty(Draw(new AsFoundLook("brakes", Sheet, null, null), mayRecord: false).FindAll("form"));

    private IRenderedComponent<AsFoundCard> Draw(AsFoundLook look, string? by = null, string? words = null, bool mayRecord = true) => Render<AsFoundCard>(parameters => parameters
        .Add(card => card.Look, look)
        .Add(card => card.By, by)
        .Add(card => card.Words, words)
        .Add(card => card.MayRecord, mayRecord)
        .Add(card => card.OnRecord, read =>
        {
            sent.Add(read);
            return Task.FromResult(true);
        }));
}
