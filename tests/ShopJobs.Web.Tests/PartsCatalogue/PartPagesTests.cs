using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Web.Components.PartsCatalogue;
using ShopJobs.Web.Components.Procedures;
using ShopJobs.Web.Data.Parts;
using ShopJobs.Web.Tests.TorqueTools;

namespace ShopJobs.Web.Tests.PartsCatalogue;

/// <summary>The pages of the catalogue say what is there, what is wrong and what comes next, and lose nothing that was typed.</summary>
public sealed class PartPagesTests : BunitContext, IAsyncLifetime
{
    private const string Script = "<script>alert(1)</script>";
    private readonly ToolBench bench = new();

    public PartPagesTests() => bench.Register(Services);

    Task IAsyncLifetime.InitializeAsync() => bench.OpenAsync(Services);

    async Task IAsyncLifetime.DisposeAsync()
    {
        await DisposeAsync();
        bench.Dispose();
    }

    [Fact]
    public async Task An_empty_catalogue_says_what_comes_next_to_the_lead_and_who_does_it_to_others()
    {
        var lead = Render<PartsPage>();
        Assert.Contains("Enter the first one, or import a list as CSV", lead.Find(".notice").TextContent, StringComparison.Ordinal);
        Assert.Equal(["/parts/parts.csv", "/parts/import", "/parts/new", "/parts/new"], lead.FindAll("a").Select(link => link.GetAttribute("href")));

        await bench.SignInAsync(bench.Technician);
        var technician = Render<PartsPage>();
        Assert.Contains("The lead enters the parts", technician.Find(".notice").TextContent, StringComparison.Ordinal);
        Assert.Equal(["/parts/parts.csv"], technician.FindAll("a").Select(link => link.GetAttribute("href")));
    }

    [Fact]
    public async Task The_list_shows_each_part_and_a_search_narrows_it_down()
    {
        await TakeRegisterAsync();
        await EnterAsync(PartShop.Stud(), new PartForm { Maker = "Tarnwick", Number = "T-220F", Name = "Front damper" });
        var page = Render<PartsPage>();
        Assert.Equal("2 parts.", Said(page));
        var row = page.FindAll("tbody tr")[0];
        Assert.Equal("Q4-1242 Quillon", row.QuerySelector("th")!.TextContent.Trim());
        Assert.Equal(["Wheel stud 42 mm, single use", "wheel stud", "M12x1.5 12.9", "8.45 EUR"], row.QuerySelectorAll("td").Take(4).Select(cell => cell.TextContent.Trim()));

        await page.Find("#part-search").ChangeAsync(new ChangeEventArgs { Value = "damper tarn" });

        page.WaitForAssertion(() => Assert.Equal("1 part.", Said(page)));
        Assert.Equal("T-220F Tarnwick", page.Find("tbody th").TextContent.Trim());

        await page.Find("#part-search").ChangeAsync(new ChangeEventArgs { Value = "nothing" });

        page.WaitForAssertion(() => Assert.Equal("No part has all these words. Take one away, or read the number again.", Said(page)));
        Assert.Equal("nothing", page.Find("#part-search").GetAttribute("value"));
        Assert.Empty(page.FindAll("table"));
    }

    [Fact]
    public async Task A_long_list_says_that_it_is_the_first_of_many()
    {
        await bench.RowsAsync(async shop =>
        {
            foreach (var number in Enumerable.Range(1, PartCatalogueShelf.Most + 1))
            {
                var part = new PartRow { Id = new(Guid.NewGuid()), Name = "stud" };
                part.Call("Quillon", $"Q{number}");
                part.Touch(bench.Lead, ToolBench.Noon.UtcDateTime);
                shop.Parts.Add(part);
            }

            return await shop.SaveChangesAsync();
        });

        var page = Render<PartsPage>();

        Assert.Equal("The first 200 of 201 parts. Search for the one you want.", Said(page));
        Assert.Equal(200, page.FindAll("tbody tr").Count);
    }

    [Fact]
    public async Task Pressed_empty_each_field_says_what_it_needs_and_is_described_by_it()
    {
        var page = Render<NewPartPage>();
        Assert.Equal("EUR", page.Find("#part-currency").GetAttribute("value"));

        await page.Find("form").SubmitAsync(new());

        Assert.Equal("Write the maker's number of the part, for example Q4-1215.", Wrong(page, "part-number"));
        Assert.Equal("Write who makes it.", Wrong(page, "part-maker"));
        Assert.Equal("Write what the shop calls it, for example wheel stud 42 mm.", Wrong(page, "part-name"));
        Assert.All(
            ["part-number", "part-maker", "part-name", "part-fills", "part-thread", "part-strength", "part-price", "part-currency"],
            id => Assert.Contains($"{id}-wrong", page.Find($"#{id}").GetAttribute("aria-describedby")!, StringComparison.Ordinal));
        Assert.Empty(await AllAsync());
    }

    [Fact]
    public async Task A_part_that_is_there_already_is_refused_at_its_number_and_what_was_typed_stays()
    {
        await TakeRegisterAsync();
        await EnterAsync(PartShop.Stud());
        var page = Render<NewPartPage>();
        await TypeAsync(page, ("part-maker", "quillon"), ("part-number", "q4-1242"), ("part-name", "Stud"), ("part-fills", "wheel.stud"), ("part-thread", "m12"), ("part-price", "9,5"));

        await page.Find("form").SubmitAsync(new());

        page.WaitForAssertion(() => Assert.StartsWith("Quillon Q4-1242 is in the catalogue already.", Wrong(page, "part-number"), StringComparison.Ordinal));
        Assert.Equal(["quillon", "q4-1242", "Stud", "m12", "9,5"], new[] { "part-maker", "part-number", "part-name", "part-thread", "part-price" }.Select(id => page.Find($"#{id}").GetAttribute("value")));

        await TypeAsync(page, ("part-number", "Q4-1248"));
        await page.Find("form").SubmitAsync(new());

        page.WaitForAssertion(() => Assert.EndsWith("/parts", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal));
        var added = (await AllAsync())[1];
        Assert.Equal(("Q4-1248", "wheel.stud", "M12x1.75", 9.5m, "EUR"), (added.Number, added.Fills, added.Thread, added.Price!.Value, added.Currency));
    }

    [Theory]
    [InlineData("part-price", "1e30", "“1e30” is no price")]
    [InlineData("part-price", "-4", "“-4” is no price")]
    [InlineData("part-thread", Script, "is not a thread size known here")]
    [InlineData("part-strength", Script, "is too long for a strength class")]
    public async Task A_field_says_what_is_wrong_when_it_is_left(string id, string typed, string said)
    {
        var page = Render<NewPartPage>();

        await TypeAsync(page, (id, typed));

        Assert.Contains(said, Wrong(page, id), StringComparison.Ordinal);
        Assert.Equal(typed, page.Find($"#{id}").GetAttribute("value"));
        Assert.Empty(page.FindAll("script"));
    }

    [Fact]
    public async Task A_script_is_shown_as_text()
    {
        await EnterAsync(new PartForm { Maker = Script, Number = Script, Name = Script });
        var id = (await AllAsync())[0].Id.Value;
        await bench.SignInAsync(bench.Technician);

        var (list, page) = (Render<PartsPage>(), Render<PartPage>(parameters => parameters.Add(one => one.Id, id)));

        Assert.Empty(list.FindAll("script"));
        Assert.Empty(page.FindAll("script"));
        Assert.Contains(Script, list.Find("tbody").TextContent, StringComparison.Ordinal);
        Assert.Equal(Script, page.Find("td").TextContent);
        Assert.Contains(Script, page.Find("h1").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_technician_reads_a_part_with_who_changed_it_and_has_nothing_to_press()
    {
        await TakeRegisterAsync();
        await EnterAsync(PartShop.Stud());
        await bench.SignInAsync(bench.Technician);

        var page = Render<PartPage>(parameters => parameters.Add(one => one.Id, Id()));

        Assert.Equal(
            ["Wheel stud 42 mm", "wheel stud", "M12x1.5", "12.9", "yes: fitted once, never again", "8.45 EUR", "yes"],
            page.FindAll("td").Select(cell => cell.TextContent));
        Assert.Equal("Last changed 2 Mar 2026, 12:00 by Edda.", page.FindAll("p.quiet")[^1].TextContent);
        Assert.Empty(page.FindAll("button, input, form"));
    }

    [Fact]
    public async Task The_lead_edits_a_part_takes_it_out_of_use_and_brings_it_back_and_what_is_typed_stays()
    {
        await TakeRegisterAsync();
        await EnterAsync(PartShop.Stud());
        var page = Render<PartPage>(parameters => parameters.Add(one => one.Id, Id()));
        await TypeAsync(page, ("part-price", "9.10"));

        await PressAsync(page, "Take it out of use");
        Assert.Null((await AllAsync())[0].RetiredAt);
        await PressAsync(page, "Take Q4-1242 out of use now");

        page.WaitForAssertion(() => Assert.Contains(page.FindAll("button"), button => button.TextContent == "Bring it back"));
        Assert.NotNull((await AllAsync())[0].RetiredAt);
        Assert.Equal("Every part is out of use. Tick the box to see them.", Said(Render<PartsPage>()));
        Assert.Equal("9.10", page.Find("#part-price").GetAttribute("value"));
        await page.Find("form").SubmitAsync(new());
        Assert.Equal(9.10m, (await AllAsync())[0].Price);

        page = Render<PartPage>(parameters => parameters.Add(one => one.Id, Id()));
        await PressAsync(page, "Bring it back");
        page.WaitForAssertion(() => Assert.Contains(page.FindAll("button"), button => button.TextContent == "Take it out of use"));
        Assert.Null((await AllAsync())[0].RetiredAt);
    }

    [Fact]
    public async Task A_part_that_was_changed_meanwhile_is_not_taken_out_of_use_and_says_why()
    {
        await TakeRegisterAsync();
        await EnterAsync(PartShop.Stud());
        var page = Render<PartPage>(parameters => parameters.Add(one => one.Id, Id()));
        var meanwhile = PartForm.Of((await AllAsync())[0]);
        meanwhile.Name = "Stud";
        await EnterAsync(meanwhile);

        await PressAsync(page, "Take it out of use");
        await PressAsync(page, "Take Q4-1242 out of use now");

        page.WaitForAssertion(() => Assert.StartsWith("Somebody changed this meanwhile.", page.Find("#retire-part-wrong").TextContent, StringComparison.Ordinal));
        Assert.Null((await AllAsync())[0].RetiredAt);
    }

    [Fact]
    public void A_link_to_no_part_says_so() => Assert.Contains(
        "This part is not in the catalogue", Render<PartPage>(parameters => parameters.Add(one => one.Id, Guid.NewGuid())).Markup, StringComparison.Ordinal);

    [Fact]
    public void A_shop_without_a_register_says_where_joints_come_from() =>
        Assert.Equal("The shop has no joint register yet: import one under Procedures.", Render<NewPartPage>().Find("#part-fills-hint").TextContent);

    private static string Said(IRenderedComponent<PartsPage> page) => page.Find("p[role=status]").TextContent;

    private static string Wrong<T>(IRenderedComponent<T> page, string field)
        where T : IComponent => page.Find($"#{field}-wrong").TextContent.Trim();

    private static async Task TypeAsync<T>(IRenderedComponent<T> page, params (string Id, string Text)[] fields)
        where T : IComponent
    {
        foreach (var (id, text) in fields)
        {
            await page.Find($"#{id}").ChangeAsync(new ChangeEventArgs { Value = text });
        }
    }

    private static Task PressAsync<T>(IRenderedComponent<T> page, string button)
        where T : IComponent => page.FindAll("button").Single(found => found.TextContent == button).ClickAsync(new());

    private async Task TakeRegisterAsync() => Assert.True((await bench.Get<ProcedureImport>().ImportAsync(SeedDocuments.All, by: null)).IsTaken);

    private async Task EnterAsync(params PartForm[] forms)
    {
        foreach (var form in forms)
        {
            Assert.Null(await bench.Get<PartCatalogueDesk>().SaveAsync(form));
        }
    }

    private Task<List<PartRow>> AllAsync() => bench.RowsAsync(shop => shop.Parts.AsNoTracking().OrderBy(part => part.Key).ToListAsync());

    private Guid Id()
    {
        using var shop = bench.Get<IDbContextFactory<Web.Data.ShopDbContext>>().CreateDbContext();
        return shop.Parts.Single().Id.Value;
    }
}
