using System.Net;
using System.Net.Http.Headers;
using System.Text;
using AngleSharp.Dom;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Tests.Parts;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.PartsCatalogue;

/// <summary>Who gets which page of the catalogue from the running program, and a file taken in by a browser without script.</summary>
public sealed class PartImportPageTests(OpenPartsDemo demo) : IClassFixture<OpenPartsDemo>, IAsyncLifetime
{
    private const string Import = "/parts/import";
    private const string Script = "<script>alert(1)</script>";
    private const string File = "Nr.;Maker;Name;Price\nX-1;Tarnwick;Rear damper;618,00\nX-2;Tarnwick;Rear spring;96,50\n";

    private readonly OpenShop shop = demo.Shop;
    private readonly Browser lead = demo.Tablet;
    private int before;

    // What an earlier test took in or left behind is taken away.
    public async Task InitializeAsync()
    {
        await lead.SignInAsync(DemoPeople.Lead.Name, DemoPeople.Lead.Pin);
        await shop.RowsAsync(async rows => await rows.Parts.Where(part => part.Number.StartsWith("X-")).ExecuteDeleteAsync() + await rows.PartImportDrafts.ExecuteDeleteAsync());
        before = await CountAsync();
    }

    public Task DisposeAsync() => Task.CompletedTask;

    [Fact]
    public async Task A_file_is_looked_at_its_columns_are_picked_and_it_is_taken_in()
    {
        var sent = await SendAsync(File);
        Assert.Equal(HttpStatusCode.Redirect, sent.Status);
        var looked = await lead.GetAsync(sent.Path!);
        Assert.Equal("Pick the column of the number: without it no row can be read.", looked.Page.QuerySelector("#col-number-wrong")!.TextContent);
        Assert.Equal("1", looked.Page.QuerySelector("#col-maker option[selected]")!.GetAttribute("value"));
        Assert.Equal(["Nr.not read", "Makerread as maker", "Nameread as name", "Priceread as price"], looked.Page.QuerySelectorAll("thead th").Skip(1).Select(head => head.TextContent));
        Assert.Equal("X-1", looked.Page.QuerySelector("tbody td")!.TextContent);
        Assert.Null(looked.Page.QuerySelector("input[name=seen]"));

        var picked = $"{sent.Path}&col-number=0&col-maker=1&col-name=2&col-price=3&currency=chf";
        looked = await lead.GetAsync(picked);
        Assert.Equal("2 new, 0 changed, 0 the same", looked.Page.QuerySelector("#counts-title")!.TextContent);
        Assert.Equal(before, await CountAsync());
        Assert.Equal(looked.Page.QuerySelector("input[name=seen]")!.GetAttribute("value"), (await lead.GetAsync(picked)).Page.QuerySelector("input[name=seen]")!.GetAttribute("value"));

        var taken = await SendAsync((byte[]?)null, looked.Page, picked);

        Assert.Equal("Taken in. 2 new, 0 changed, 0 the same, in one piece.", taken.Page.QuerySelector(".door-note")!.TextContent);
        Assert.Equal(before + 2, await CountAsync());
        var damper = await shop.RowsAsync(rows => rows.Parts.SingleAsync(part => part.Number == "X-1"));
        Assert.Equal(("Tarnwick", "Rear damper", 618m, "CHF"), (damper.Maker, damper.Name, damper.Price!.Value, damper.Currency));

        var again = await SendAsync((byte[]?)null, looked.Page, picked);
        Assert.Equal("This file was taken in already, or is not kept any more. Upload it again.", again.Alert);
        Assert.Equal(before + 2, await CountAsync());
    }

    [Fact]
    public async Task A_file_that_was_looked_at_is_still_there_after_a_reload_and_gone_after_an_hour()
    {
        var sent = await SendAsync(File.Replace("Nr.", "Number", StringComparison.Ordinal));
        Assert.Equal("2 new, 0 changed, 0 the same", (await lead.GetAsync(sent.Path!)).Page.QuerySelector("#counts-title")!.TextContent);
        Assert.Equal("2 new, 0 changed, 0 the same", (await lead.GetAsync(sent.Path!)).Page.QuerySelector("#counts-title")!.TextContent);

        shop.Time.Advance(TimeSpan.FromMinutes(61));
        await lead.SignInAsync(DemoPeople.Lead.Name, DemoPeople.Lead.Pin);

        Assert.Contains("is not kept any more", (await lead.GetAsync(sent.Path!)).Alert, StringComparison.Ordinal);
        Assert.NotNull((await lead.GetAsync(sent.Path!)).Page.QuerySelector("#parts-file"));
    }

    [Fact]
    public async Task Every_cell_that_is_wrong_is_listed_with_the_total_and_nothing_can_be_taken_in()
    {
        var rows = string.Concat(Enumerable.Range(1, 120).Select(row => $"Q{row},Quillon,{Script},{Script}\n"));
        var sent = await SendAsync("Number,Maker,Name,Price\n" + rows, name: Script + ".csv");

        var looked = await lead.GetAsync(sent.Path!);

        Assert.Equal("120 cells are wrong", looked.Page.QuerySelector("#problems-title")!.TextContent);
        var lines = looked.Page.QuerySelectorAll(".reasons li").Select(line => line.TextContent).ToList();
        Assert.Equal(100, lines.Count);
        Assert.StartsWith($"Row 2, price: “{Script}” is no price", lines[0], StringComparison.Ordinal);
        Assert.Contains("Only the first 100 are shown.", looked.Text, StringComparison.Ordinal);
        Assert.Null(looked.Page.QuerySelector("input[name=seen]"));
        Assert.DoesNotContain(looked.Page.Scripts, script => script.TextContent.Contains("alert", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("", "The file is empty")]
    [InlineData("Number,Maker\n", "no part under them")]
    [InlineData("Number,Maker\n\"Q4,Quillon\n", "quotation mark that is not closed")]
    public async Task A_file_that_cannot_be_read_says_what_to_do_at_its_field(string file, string said)
    {
        var answer = await SendAsync(file);

        Assert.Contains(said, answer.Page.QuerySelector("#parts-file-wrong")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(0, await shop.RowsAsync(rows => rows.PartImportDrafts.CountAsync()));
    }

    [Fact]
    public async Task Another_encoding_no_file_and_a_file_too_large_are_refused()
    {
        Assert.Contains("another encoding than UTF-8", (await SendAsync(Encoding.Latin1.GetBytes("Number;Maker\nÜ1;Quillon\n"))).Alert, StringComparison.Ordinal);
        Assert.Contains("No file was chosen", (await SendAsync((byte[]?)null)).Alert, StringComparison.Ordinal);
        Assert.Contains("larger than 5 MB", (await SendAsync(new byte[5_000_001])).Alert, StringComparison.Ordinal);

        var turnedAway = await SendAsync(new byte[5_200_000]);

        Assert.Equal($"{Import}?tooLarge=true", turnedAway.Path);
        Assert.Contains("larger than 5 MB", (await lead.GetAsync(turnedAway.Path!)).Alert, StringComparison.Ordinal);
        Assert.Equal(0, await shop.RowsAsync(rows => rows.PartImportDrafts.CountAsync()));
    }

    [Fact]
    public async Task A_currency_that_is_none_is_refused_at_its_field_and_keeps_what_was_typed()
    {
        var sent = await SendAsync(File.Replace("Nr.", "Number", StringComparison.Ordinal));

        var page = (await lead.GetAsync($"{sent.Path}&currency=%3Cb%3E")).Page;

        Assert.Contains("Write the currency in three letters", page.QuerySelector("#import-currency-wrong")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("<B>", page.QuerySelector("#import-currency")!.GetAttribute("value"));
        Assert.Null(page.QuerySelector("input[name=seen]"));
    }

    [Theory]
    [InlineData("/parts/new")]
    [InlineData("/parts/import")]
    public async Task Writing_is_the_leads(string address)
    {
        await lead.SignInAsync(DemoPeople.Chassis.Name, DemoPeople.Chassis.Pin);

        var answer = await lead.GetAsync(address);

        Assert.Contains("right you do not have", answer.Status == HttpStatusCode.OK ? answer.Text : (await lead.GetAsync(answer.Path!)).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_the_leads_right_or_the_forms_token_no_file_is_taken()
    {
        var page = (await lead.GetAsync(Import)).Page;
        Assert.Equal(HttpStatusCode.BadRequest, (await SendAsync(Encoding.UTF8.GetBytes(File), page, token: "made up")).Status);
        await lead.SignInAsync(DemoPeople.Chassis.Name, DemoPeople.Chassis.Pin);

        var refused = await SendAsync(Encoding.UTF8.GetBytes(File), page);

        Assert.NotEqual(HttpStatusCode.OK, refused.Status);
        Assert.Equal(0, await shop.RowsAsync(rows => rows.PartImportDrafts.CountAsync()));
    }

    [Fact]
    public async Task Whoever_is_signed_in_reads_the_catalogue_and_takes_it_as_a_file_and_nobody_else()
    {
        await lead.SignInAsync(DemoPeople.Chassis.Name, DemoPeople.Chassis.Pin);
        var page = await lead.GetAsync("/parts");
        var file = await lead.GetAsync("/parts/parts.csv");
        var stranger = shop.NewBrowser();

        Assert.Equal("Parts", page.Heading);
        Assert.Equal("11 parts.", page.Page.QuerySelector("main p[role=status]")!.TextContent);
        Assert.Contains(page.Page.QuerySelectorAll("#more-nav a"), link => link.GetAttribute("href") == "/parts");
        Assert.Equal(HttpStatusCode.OK, file.Status);
        Assert.StartsWith("Number,Maker,Name,Fills", file.Text.TrimStart('\uFEFF'), StringComparison.Ordinal);
        Assert.Equal(13, file.Text.Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Length);
        Assert.NotEqual(HttpStatusCode.OK, (await stranger.GetAsync("/parts/parts.csv")).Status);
        Assert.NotEqual(HttpStatusCode.OK, (await stranger.GetAsync("/parts")).Status);
    }

    private Task<Answer> SendAsync(string? file, IDocument? form = null, string address = Import, string name = "parts.csv") =>
        SendAsync(file is null ? null : Encoding.UTF8.GetBytes(file), form, address, name);

    private async Task<Answer> SendAsync(byte[]? file, IDocument? form = null, string address = Import, string name = "parts.csv", string? token = null)
    {
        form ??= (await lead.GetAsync(address)).Page;
        using var content = new MultipartFormDataContent();
        foreach (var hidden in form.QuerySelectorAll("main form[method=post] input[type=hidden]"))
        {
            var field = hidden.GetAttribute("name")!;
            content.Add(new StringContent(field == "__RequestVerificationToken" && token is not null ? token : hidden.GetAttribute("value")!), field);
        }

        if (file is not null)
        {
            var bytes = new ByteArrayContent(file);
            bytes.Headers.ContentType = new MediaTypeHeaderValue("text/csv");
            content.Add(bytes, "parts", name);
        }

        using var client = shop.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false, HandleCookies = false });
        using var request = new HttpRequestMessage(HttpMethod.Post, address) { Content = content };
        request.Headers.Add("Cookie", string.Join("; ", lead.Cookies.Select(cookie => $"{cookie.Key}={cookie.Value}")));
        using var response = await client.SendAsync(request);
        return new Answer(response.StatusCode, response.Headers.Location?.ToString(), await response.Content.ReadAsStringAsync(), [], response.Headers);
    }

    private Task<int> CountAsync() => shop.RowsAsync(rows => rows.Parts.CountAsync());
}
