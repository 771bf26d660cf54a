using System.Net;
using System.Net.Http.Headers;
using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Procedures;
using ShopJobs.Web.Components.Revisions;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Procedures;

public sealed class ProcedurePagesTests : IDisposable
{
    private const string Upload = "/procedures/upload";

    private static readonly DemoPeople.DemoPerson Author = DemoPeople.All.First(person => person.Rights.Contains(Right.Author));
    private static readonly DemoPeople.DemoPerson Other = DemoPeople.All.First(person => !person.Rights.Contains(Right.Author));

    private readonly OpenShop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task The_list_says_what_to_do_when_there_is_nothing()
    {
        var browser = await SignedInAsync(Author);

        var page = await browser.GetAsync("/procedures");

        Assert.Contains("No joint register yet", page.Text, StringComparison.Ordinal);
        Assert.NotNull(page.Page.QuerySelector("a[href='/procedures/upload']"));
    }

    [Fact]
    public async Task The_list_shows_code_revision_steps_cautions_and_that_it_is_invented()
    {
        var browser = await SignedInAsync(Other);
        await shop.Services.GetRequiredService<ProcedureImport>().ImportAsync(SeedDocuments.All, by: null);

        var page = (await browser.GetAsync("/procedures")).Page;

        var row = page.QuerySelectorAll("tbody tr").Single(row => row.TextContent.Contains("P3", StringComparison.Ordinal));
        Assert.Equal(["3", "10", "4", "demo"], row.QuerySelectorAll("td").Select(cell => cell.TextContent.Trim()));
        Assert.Null(page.QuerySelector("a[href='/procedures/upload']"));
    }

    [Fact]
    public async Task A_procedure_shows_numbers_sources_and_cautions()
    {
        var browser = await SignedInAsync(Other);
        await shop.Services.GetRequiredService<ProcedureImport>().ImportAsync(SeedDocuments.All, by: null);
        var digest = await shop.RowsAsync(rows => rows.Procedures.Where(row => row.Code == "P3").Select(row => row.Digest).SingleAsync());

        var page = (await browser.GetAsync($"/procedures/{digest}")).Page;

        Assert.Equal("P3 Wheel stud conversion, driven with two jammed nuts", page.QuerySelector("h1")!.TextContent.Trim());
        Assert.StartsWith("New wheel studs fitted. Each new stud was driven down", page.QuerySelector("section[aria-labelledby=customer-text] p")!.TextContent, StringComparison.Ordinal);
        Assert.Single(page.QuerySelectorAll(".demo-data"), frame => frame.TextContent.Contains("Demo data", StringComparison.Ordinal));
        Assert.NotNull(page.QuerySelector("svg[aria-label='Set 73 N·m, permitted 60 to 95 N·m, jammed at 90 N·m']"));
        var stud = page.QuerySelector("section[aria-labelledby='group-stud']")!.TextContent;
        Assert.Contains("Quillon Q4 leaflet, rev. 3, side 1: stated", stud, StringComparison.Ordinal);
        Assert.Contains("decided by lead", stud, StringComparison.Ordinal);
        Assert.Contains("the nuts may creep", stud, StringComparison.Ordinal);
        Assert.Contains("12.9-like, not certified", stud, StringComparison.Ordinal);
        Assert.Contains("Final stage within 30 minutes of hand-tight; a later pull is recorded, does not count and is held.", stud, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_step_has_one_caution_in_yellow_and_the_figures_are_a_table_beside_the_pattern()
    {
        var browser = await SignedInAsync(Other);
        await shop.Services.GetRequiredService<ProcedureImport>().ImportAsync(SeedDocuments.All, by: null);
        var digest = await shop.RowsAsync(rows => rows.Procedures.Where(row => row.Code == "P3").Select(row => row.Digest).SingleAsync());

        var page = (await browser.GetAsync($"/procedures/{digest}")).Page;

        Assert.All(page.QuerySelectorAll("section[aria-labelledby^=step-]"), step => Assert.InRange(step.QuerySelectorAll(".door-note").Length, 0, 1));
        var off = page.QuerySelector("section[aria-labelledby=step-wheel-off]")!;
        Assert.StartsWith("Caution: Chock the wheels", off.QuerySelector(".door-note")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(["Never let the caliper hang on its hose. If it has to come off, press OPEN on its carrier; the brake procedure closes it."],
            off.QuerySelectorAll(".caution-lines li").Select(line => line.TextContent.Trim()));
        var stud = page.QuerySelector("section[aria-labelledby=group-stud]")!;
        Assert.Equal(["Stage", "Target", "Permitted", "Car condition", "Tool", "Witness"], stud.QuerySelectorAll("thead th").Select(head => head.TextContent));
        Assert.Equal("73 N·m", stud.QuerySelector("[data-label=Target]")!.TextContent);
        Assert.Equal("click wrench, or one that reads", stud.QuerySelector("[data-label=Tool]")!.TextContent);
        Assert.Equal("second person", stud.QuerySelector("[data-label=Witness]")!.TextContent);
        var drawn = stud.QuerySelector(".pattern-small")!;
        Assert.Equal(["1", "2", "3", "4", "5"], drawn.QuerySelectorAll("text").Select(number => number.TextContent).Order());
        Assert.Equal(4, drawn.QuerySelectorAll("line").Length);
        Assert.Equal("Order 1 – 3 – 5 – 2 – 4. 1 is at the top, then clockwise", drawn.QuerySelector("figcaption")!.TextContent);
    }

    [Fact]
    public async Task A_pattern_is_said_to_be_numbered_as_the_register_says()
    {
        var browser = await SignedInAsync(Other);
        await shop.Services.GetRequiredService<ProcedureImport>().ImportAsync(SeedDocuments.All, by: null);
        var digest = await shop.RowsAsync(rows => rows.Procedures.Where(row => row.Code == "P7").Select(row => row.Digest).SingleAsync());

        var captions = (await browser.GetAsync($"/procedures/{digest}")).Page.QuerySelectorAll(".pattern-small figcaption").Select(caption => caption.TextContent);

        Assert.Contains(captions, caption => caption.EndsWith("Numbered clockwise as seen from the gearbox, 1 at the top", StringComparison.Ordinal));
    }

    /// <summary>A group and a step may have the same name, as the flange of P9 has: each is drawn once.</summary>
    [Fact]
    public async Task Every_procedure_of_the_shop_is_drawn_whole_on_a_live_page()
    {
        await shop.Services.GetRequiredService<ProcedureImport>().ImportAsync(SeedDocuments.All, by: null);
        var shelf = shop.Services.GetRequiredService<ProcedureShelf>();
        var digests = await shop.RowsAsync(rows => rows.Procedures.Select(row => row.Digest).ToListAsync());
        Assert.NotEmpty(digests);
        foreach (var digest in digests)
        {
            await using var screen = new BunitContext();
            screen.Services.AddSingleton(shelf);
            screen.ComponentFactories.AddStub<RemarkList>();
            screen.ComponentFactories.AddStub<RetirePanel>();

            var page = screen.Render<ProcedurePage>(parameters => parameters.Add(one => one.Digest, digest));

            var procedure = (await shelf.FindAsync(digest))!.Document.Value!;
            page.WaitForAssertion(() => Assert.Equal(
                procedure.Groups.Select(group => $"group-{group.Id}").Concat(procedure.Steps.Select(step => $"step-{step.Id}")),
                page.FindAll("section[aria-labelledby^=group-], section[aria-labelledby^=step-]").Select(panel => panel.GetAttribute("aria-labelledby"))));
        }
    }

    [Fact]
    public async Task Import_and_an_address_with_nothing_behind_it_keep_the_way_to_every_page()
    {
        var browser = await SignedInAsync(Author);
        foreach (var address in new[] { Upload, "/nothing-here" })
        {
            var page = (await browser.GetAsync(address)).Page;

            Assert.Subset(
                page.QuerySelectorAll("nav[aria-label=Main] a").Select(link => link.GetAttribute("href")!).ToHashSet(),
                new HashSet<string> { "/", "/my-work", "/open-joints", "/procedures", "/tools", "/bench" });
        }

        var stranger = (await shop.NewBrowser().GetAsync("/nothing-here")).Page;
        Assert.Empty(stranger.QuerySelectorAll("nav a"));
    }

    [Fact]
    public async Task An_unknown_procedure_says_where_to_look()
    {
        var browser = await SignedInAsync(Other);
        Assert.Contains("There is no such procedure here", (await browser.GetAsync($"/procedures/{new string('0', 64)}")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_author_imports_and_sees_what_became_of_each_file()
    {
        var browser = await SignedInAsync(Author);

        var answer = await SendAsync(browser, [Documents.Register, Documents.WheelFitUp]);

        Assert.Contains("revision 2 is in the shop and current", answer.Text, StringComparison.Ordinal);
        Assert.Equal(2, await RowsAsync());
    }

    [Fact]
    public async Task A_bad_file_shows_its_problems_with_lines_and_nothing_is_stored()
    {
        var browser = await SignedInAsync(Author);

        var answer = await SendAsync(browser, [Documents.Register, Documents.WheelFitUp.With("key: wheel.nut", "key: wheel.nutt")]);

        Assert.Equal("Nothing was imported", answer.Page.QuerySelector("#outcome")!.TextContent);
        var row = answer.Page.QuerySelectorAll("tbody tr").Single(row => row.TextContent.Contains("wheel.nutt", StringComparison.Ordinal));
        Assert.Matches(@"^\d+:10$", row.QuerySelector("th")!.TextContent.Trim());
        Assert.Equal(0, await RowsAsync());
    }

    [Fact]
    public async Task A_new_register_shows_what_it_changes_for_running_jobs_and_cars_before_it_is_taken()
    {
        var browser = await shop.OpenDemoAsync();
        await browser.SignInAsync(Author.Name, Author.Pin);
        var before = await InForceAsync();
        var changed = Documents.Register
            .With("    name: wheel stud\n", "    name: wheel stud of the hub\n")
            .With("  - key: wheel.stud\n", "  - key: wheel.lock\n    name: wheel lock\n    system: wheels\n    places: [front-left, rear-left]\n    positions: 1\n    filled-by: nut\n    least: {track: made-here}\n  - key: wheel.stud\n");

        var looked = await SendAsync(browser, [changed]);

        var shown = looked.Page.QuerySelector("section[aria-labelledby=effect]")!;
        Assert.Equal("Not taken in yet: look at what this changes", shown.QuerySelector("h2")!.TextContent);
        var lines = shown.QuerySelectorAll("li").Select(line => line.TextContent).ToList();
        Assert.Contains("Added: wheel lock (wheel.lock), 2 positions: front-left 1, rear-left 1. As found on every car at once, and made here before the track.", lines);
        Assert.Contains("Changed: wheel stud of the hub (wheel.stud): its name, what it rides on, what it undoes or what a release asks of it.", lines);
        Assert.Contains(lines, line => line.Contains("running, works on wheel stud of the hub", StringComparison.Ordinal));
        Assert.Equal(before, await InForceAsync());

        var taken = await SendAsync(browser, [], looked.Page);

        Assert.Equal("Imported", taken.Page.QuerySelector("#outcome")!.TextContent);
        Assert.NotEqual(before, await InForceAsync());
    }

    [Fact]
    public async Task A_look_that_no_longer_holds_is_shown_anew_and_nothing_is_taken()
    {
        var browser = await shop.OpenDemoAsync();
        await browser.SignInAsync(Author.Name, Author.Pin);
        var before = await InForceAsync();
        var looked = await SendAsync(browser, [Documents.Register.With("    name: wheel stud\n", "    name: wheel stud of the hub\n")]);
        var page = looked.Page;
        page.QuerySelector("input[name=seen]")!.SetAttribute("value", new string('0', 64));

        var again = await SendAsync(browser, [], page);

        Assert.NotNull(again.Page.QuerySelector("section[aria-labelledby=effect]"));
        Assert.Equal(before, await InForceAsync());
    }

    [Fact]
    public async Task A_register_that_takes_joints_away_is_taken_in_by_the_lead_with_the_PIN_of_a_second_person()
    {
        var browser = await shop.OpenDemoAsync();
        await browser.SignInAsync(DemoPeople.Lead.Name, DemoPeople.Lead.Pin);
        var before = await InForceAsync();
        var looked = await SendAsync(browser, [Documents.Register.With("positions: {wheel.stud: 4, wheel.nut: 4, wheel.stud-jam-pair: 4}", "lacks: [propshaft.flange]\n    positions: {wheel.stud: 4, wheel.nut: 4, wheel.stud-jam-pair: 4}")]);
        Assert.Contains("On four studs a wheel: Removed: propeller shaft flange bolt (propshaft.flange), 4 positions: driveline 1 2 3 4.", looked.Page.QuerySelectorAll("#effect ~ ul li").Select(line => line.TextContent));
        Assert.DoesNotContain(looked.Page.QuerySelectorAll(".person-tile"), tile => tile.TextContent.Contains(DemoPeople.Lead.Name, StringComparison.Ordinal));

        var nobody = await SendAsync(browser, [], looked.Page);
        Assert.Contains("Pick the second person", nobody.Page.QuerySelector("#second-wrong")!.TextContent, StringComparison.Ordinal);
        var wrong = await SendAsync(browser, [], nobody.Page, second: "111111");
        Assert.Contains("That is not the PIN of", wrong.Page.QuerySelector("#second-wrong")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(before, await InForceAsync());

        var taken = await SendAsync(browser, [], wrong.Page, second: DemoPeople.Chassis.Pin);

        Assert.Equal("Imported", taken.Page.QuerySelector("#outcome")!.TextContent);
        var chassis = await shop.RowsAsync(rows => rows.People.Where(person => person.Name == DemoPeople.Chassis.Name).Select(person => person.Id).SingleAsync());
        Assert.Equal(chassis, await shop.RowsAsync(rows => rows.JointRegisters.Where(row => row.Current).Select(row => row.LookedBy).SingleAsync()));
    }

    [Fact]
    public async Task An_author_who_is_no_lead_takes_no_joint_away()
    {
        var browser = await shop.OpenDemoAsync();
        await browser.SignInAsync(DemoPeople.Engines.Name, DemoPeople.Engines.Pin);
        var before = await InForceAsync();
        var looked = await SendAsync(browser, [Documents.Register.With("positions: {wheel.stud: 4, wheel.nut: 4, wheel.stud-jam-pair: 4}", "lacks: [propshaft.flange]")]);

        var refused = await SendAsync(browser, [], looked.Page, second: DemoPeople.Chassis.Pin);

        Assert.Contains("Only somebody with the lead's right takes it in", refused.Page.QuerySelector("#second-wrong")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(before, await InForceAsync());
    }

    [Fact]
    public async Task A_register_that_changes_only_its_title_is_taken_at_once()
    {
        var browser = await shop.OpenDemoAsync();
        await browser.SignInAsync(Author.Name, Author.Pin);

        var answer = await SendAsync(browser, [Documents.Register.With("title: Ninth Bay joint register", "title: Ninth Bay register")]);

        Assert.Equal("Imported", answer.Page.QuerySelector("#outcome")!.TextContent);
    }

    [Fact]
    public async Task Script_in_a_document_is_shown_as_text()
    {
        var browser = await SignedInAsync(Author);
        const string script = "<script>alert(1)</script>";
        var wheel = Documents.WheelFitUp.With("title: Wheel fit-up, cone nuts on studs", $"title: \"{script}<img src=x onerror=alert(1)>\"");

        var refused = await SendAsync(browser, [wheel with { Name = script + ".yaml" }, wheel.With("key: wheel.nut", $"\"{script}\": x")]);
        await SendAsync(browser, [Documents.Register, wheel]);
        var digest = await shop.RowsAsync(rows => rows.Procedures.Select(row => row.Digest).SingleAsync());
        var read = await browser.GetAsync($"/procedures/{digest}");

        foreach (var page in (Answer[])[refused, read, await browser.GetAsync("/procedures")])
        {
            Assert.DoesNotContain(page.Page.Scripts, found => found.TextContent.Contains("alert", StringComparison.Ordinal));
            Assert.Null(page.Page.QuerySelector("img[onerror]"));
        }

        Assert.Contains(script, read.Heading, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_the_authors_right_nothing_is_imported()
    {
        var browser = await SignedInAsync(Author);
        var form = (await browser.GetAsync(Upload)).Page;
        await browser.SignInAsync(Other.Name, Other.Pin);

        var answer = await SendAsync(browser, [Documents.Register], form);

        Assert.NotEqual(HttpStatusCode.OK, answer.Status);
        Assert.Equal(0, await RowsAsync());
    }

    [Fact]
    public async Task Without_the_forms_token_nothing_is_imported()
    {
        var browser = await SignedInAsync(Author);

        var answer = await SendAsync(browser, [Documents.Register], token: "made up");

        Assert.Equal(HttpStatusCode.BadRequest, answer.Status);
        Assert.Equal(0, await RowsAsync());
    }

    [Fact]
    public async Task An_upload_that_is_too_large_is_turned_away_before_it_is_read()
    {
        var browser = await SignedInAsync(Author);

        var answer = await SendAsync(browser, [new DocumentFile("large.yaml", new byte[4_000_001])]);

        Assert.Equal(HttpStatusCode.Redirect, answer.Status);
        Assert.Contains("larger than 4 MB", (await browser.GetAsync(answer.Path!)).Alert, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_over_one_megabyte_is_refused_by_name()
    {
        var browser = await SignedInAsync(Author);

        var answer = await SendAsync(browser, [Documents.Register with { Bytes = [.. Documents.Register.Bytes, .. new byte[1_100_000]] }]);

        Assert.Contains("The document is larger than 1000000 bytes", answer.Text, StringComparison.Ordinal);
        Assert.Equal(0, await RowsAsync());
    }

    [Theory]
    [InlineData("kinds: ")]
    [InlineData("steps: ")]
    public async Task A_document_that_lies_too_deep_is_refused_on_the_page(string start)
    {
        var browser = await SignedInAsync(Author);

        var answer = await SendAsync(browser, [Documents.Register, new DocumentFile("deep.yaml", System.Text.Encoding.UTF8.GetBytes(start + new string('[', 200_000)))]);

        Assert.Contains("Lists and keys lie more than 16 deep in each other", answer.Text, StringComparison.Ordinal);
        Assert.Equal(0, await RowsAsync());
    }

    private async Task<Browser> SignedInAsync(DemoPeople.DemoPerson person)
    {
        var browser = await shop.OpenDemoAsync();
        await shop.RowsAsync(async rows => await rows.PartChoices.ExecuteDeleteAsync() + await rows.PartOptions.ExecuteDeleteAsync()
            + await rows.Assignments.ExecuteDeleteAsync() + await rows.Jobs.ExecuteDeleteAsync()
            + await rows.Procedures.ExecuteDeleteAsync() + await rows.JointRegisters.ExecuteDeleteAsync());
        await browser.SignInAsync(person.Name, person.Pin);
        return browser;
    }

    private async Task<Answer> SendAsync(
        Browser browser, IReadOnlyList<DocumentFile> files, IDocument? form = null, string? token = null, string? second = null)
    {
        form ??= (await browser.GetAsync(Upload)).Page;
        using var content = new MultipartFormDataContent();
        foreach (var hidden in form.QuerySelectorAll($"form[action='{Upload}'] input[type=hidden], form:has(#documents) input[type=hidden], form:has([name=seen]) input[type=hidden]"))
        {
            var name = hidden.GetAttribute("name")!;
            content.Add(new StringContent(name == "__RequestVerificationToken" && token is not null ? token : hidden.GetAttribute("value")!), name);
        }

        if (second is not null)
        {
            var tile = form.QuerySelectorAll(".person-tile").Single(tile => tile.TextContent.Contains(DemoPeople.Chassis.Name, StringComparison.Ordinal));
            content.Add(new StringContent(tile.QuerySelector("input")!.GetAttribute("value")!), "second");
            content.Add(new StringContent(second), "second-pin");
        }

        foreach (var file in files)
        {
            var bytes = new ByteArrayContent(file.Bytes);
            bytes.Headers.ContentType = new MediaTypeHeaderValue("application/yaml");
            content.Add(bytes, "documents", file.Name);
        }

        using var client = shop.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false, HandleCookies = false });
        using var request = new HttpRequestMessage(HttpMethod.Post, Upload) { Content = content };
        request.Headers.Add("Cookie", string.Join("; ", browser.Cookies.Select(cookie => $"{cookie.Key}={cookie.Value}")));
        using var response = await client.SendAsync(request);
        return new Answer(response.StatusCode, response.Headers.Location?.ToString(), await response.Content.ReadAsStringAsync(), [], response.Headers);
    }

    private Task<string> InForceAsync() => shop.RowsAsync(rows => rows.JointRegisters.Where(row => row.Current).Select(row => row.Digest).SingleAsync());

    private Task<int> RowsAsync() =>
        shop.RowsAsync(async rows => await rows.JointRegisters.CountAsync() + await rows.Procedures.CountAsync());
}
