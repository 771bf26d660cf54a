using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.EntityFrameworkCore;
using MudBlazor.Services;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Parts;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.CarPage;
using ShopJobs.Web.Components.Layout;
using ShopJobs.Web.Components.Parts;
using ShopJobs.Web.Data.Parts;

namespace ShopJobs.Web.Tests.Parts;

public sealed class OptionsPageTests : BunitContext, IAsyncLifetime
{
    private readonly PartsBench bench = new();

    public OptionsPageTests()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        bench.Register(Services);
        Services.AddMudServices();
        SetRendererInfo(new RendererInfo("Server", isInteractive: true));
    }

    Task IAsyncLifetime.InitializeAsync() => bench.OpenAsync(Services);

    async Task IAsyncLifetime.DisposeAsync()
    {
        await DisposeAsync();
        bench.Dispose();
    }

    [Fact]
    public void Without_options_the_page_says_how_one_gets_here()
    {
        var page = Page();

        Assert.Contains("No option yet", page.Markup, StringComparison.Ordinal);
        Assert.Contains("Nothing is chosen yet", page.Find("#chosen-title").TextContent, StringComparison.Ordinal);
        Assert.Contains("No wheel stack of this car yet", page.Markup, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("table"));
    }

    [Fact]
    public async Task Only_lines_that_differ_are_shown_until_all_are_asked_for()
    {
        await bench.AddAsync("Q4");
        await bench.AddAsync("Q5", length: "44 mm");
        var page = Page();

        Assert.Equal(["Length from its face"], RowNames(page));

        await Button(page, "All lines").ClickAsync(new());

        Assert.Equal("Length from its face", RowNames(page)[0]);
        Assert.Equal("Thread", RowNames(page)[1]);
        Assert.Contains("Price for this job", RowNames(page));
    }

    [Fact]
    public async Task Each_option_is_drawn_on_the_wheel_stack_and_one_whose_length_is_not_stated_is_not()
    {
        await bench.StackAsync();
        await bench.AddAsync("Q4", length: "42 mm");
        await bench.AddAsync("Q4 long", length: "48 mm");
        var unknown = PartsBench.Kit("Q2");
        (unknown.Values[OptionProperty.Length].Text, unknown.Values[OptionProperty.Length].NotStated) = ("", true);
        Assert.Null(await bench.Shop.Get<PartDesk>().SaveAsync(bench.Studs, unknown));

        var page = Page();

        Assert.Equal(
            [
                "disc hat 7.0 mm, wheel 14.0 mm; stud 42.0 mm; engaged in the nut 20.0 mm",
                "disc hat 7.0 mm, wheel 14.0 mm; stud 48.0 mm; engaged in the nut 20.0 mm; the stud bottoms in the nut",
            ],
            page.FindAll(".option-notes svg").Select(picture => picture.GetAttribute("aria-label")!).Order());
    }

    [Fact]
    public async Task What_the_maker_does_not_state_stands_there_as_such()
    {
        await bench.AddAsync("Q4");
        await bench.AddAsync("Q5", strength: null);
        var page = Page();

        var strength = Row(page, "Strength class");

        Assert.Contains("12.9, marked on the part", strength[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("Leaflet, rev. 3, side 1", strength[0].TextContent, StringComparison.Ordinal);
        Assert.Equal("not stated by the maker", strength[1].TextContent.Trim());
        Assert.Contains("the strength is not stated", Row(page, "Proof load")[1].TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_worst_number_of_each_column_is_marked_in_its_line()
    {
        await bench.StackAsync();
        await bench.AddAsync("Q4");
        await bench.AddAsync("Q4 long", length: "48 mm");
        var page = Page();

        // Own arithmetic: 21 of 24 mm of the nut are taken, and 27 of 24.
        Assert.Equal(["88 %", "113 %"], page.FindAll(".option-worst strong").Select(worst => worst.TextContent));
        Assert.All(Row(page, "End of the stud in the nut, front"), cell => Assert.Contains("is-worst", cell.ClassName!, StringComparison.Ordinal));
        Assert.Equal(2, page.FindAll("td.is-worst").Count);
    }

    [Fact]
    public async Task A_kit_that_does_not_fit_says_why_and_has_no_button_to_choose_it()
    {
        await bench.StackAsync();
        await bench.AddAsync("Q4 long", length: "48 mm");
        var page = Page();

        Assert.Contains("does not fit", page.Find(".option-verdict").TextContent, StringComparison.Ordinal);
        Assert.Contains("The stud bottoms in the closed nut by 3 mm", page.Find(".notes-out-list").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(page.FindAll("button"), button => button.TextContent.StartsWith("Choose", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_choice_asks_for_its_reason_and_shows_it_with_who()
    {
        await bench.AddAsync("Q4");
        var page = Page();
        await Button(page, "Choose Quillon Q4").ClickAsync(new());

        await page.Find("#choose form").SubmitAsync(new());
        Assert.Contains("Write the reason", page.Find("#choose [role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Empty((await bench.ReadAsync()).Choices);

        await page.Find("#choose-reason").InputAsync(new ChangeEventArgs { Value = "Fits <i>front</i>." });
        await page.Find("#choose form").SubmitAsync(new());

        page.WaitForAssertion(() => Assert.Equal("Chosen: Quillon Q4", page.Find("#chosen-title").TextContent));
        Assert.Equal("Fits <i>front</i>.", page.Find(".chosen-panel blockquote").TextContent);
        Assert.Contains("Edda", page.Find(".chosen-panel .quiet").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("i, #choose"));
    }

    [Fact]
    public async Task An_earlier_choice_stays_to_be_read()
    {
        var first = await bench.AddAsync("Q4");
        var second = await bench.AddAsync("Q5");
        Assert.Null(await bench.ChooseAsync(first, "Fits."));
        Assert.Null(await bench.ChooseAsync(second, "The first is out of stock."));

        var history = Page().FindAll(".choice-history > li");

        Assert.Equal(2, history.Count);
        Assert.Contains("Quillon Q5, counts.", history[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("Quillon Q4, replaced by a later choice.", history[1].TextContent, StringComparison.Ordinal);
        Assert.Contains("Fits.", history[1].TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_choice_whose_kit_fits_no_more_says_so()
    {
        await bench.StackAsync();
        var option = await bench.AddAsync("Q4");
        Assert.Null(await bench.ChooseAsync(option, "Fits."));
        bench.Shop.Time.Advance(TimeSpan.FromMinutes(5));
        var form = StackForm.Of((await bench.ReadAsync()).Stacks.Single());
        form.Spacer = "10";
        Assert.Null(await bench.Shop.Get<StackDesk>().SaveAsync(bench.Studs.Car, form));

        var page = Page();

        Assert.StartsWith("It does not fit any more", page.Find(".chosen-panel .door-refusal").TextContent, StringComparison.Ordinal);
        Assert.Equal("chosen, and does not fit any more", page.Find(".option-verdict").TextContent);
    }

    [Theory]
    [InlineData("changed")]
    [InlineData("added")]
    [InlineData("removed")]
    public async Task A_choice_says_that_a_wheel_stack_is_not_the_one_it_was_made_on(string since)
    {
        await bench.StackAsync();
        var option = await bench.AddAsync("Q4");
        Assert.Null(await bench.ChooseAsync(option, "Fits."));
        Assert.Empty(Page().FindAll(".chosen-panel .door-refusal"));

        await bench.MeanwhileAsync(since);

        Assert.Contains("a wheel stack was changed, added or removed, since it was chosen", Page().Find(".chosen-panel .door-refusal").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_choice_without_a_mark_says_that_nobody_knows_what_it_rests_on()
    {
        var option = await bench.AddAsync("Q4");
        Assert.Null(await bench.ChooseAsync(option, "Fits."));
        await bench.Shop.RowsAsync(shop => shop.PartChoices.ExecuteUpdateAsync(set => set.SetProperty(choice => choice.Mark, (string?)null)));

        Assert.StartsWith("It is not written down on which values and wheel stacks", Page().Find(".chosen-panel .door-refusal").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_stack_changed_after_the_page_was_read_is_shown_before_the_choice_is_taken()
    {
        await bench.StackAsync();
        await bench.AddAsync("Q4");
        var page = Page();
        await Button(page, "Choose Quillon Q4").ClickAsync(new());
        await page.Find("#choose-reason").InputAsync(new ChangeEventArgs { Value = "Fits front." });
        await bench.MeanwhileAsync("changed");

        await page.Find("#choose form").SubmitAsync(new());

        Assert.Contains("The wheel stacks changed meanwhile", page.Find("#choose [role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Equal("1 mm", page.Find(".stack-table td[data-label=Washer]").TextContent);
        Assert.Equal("Fits front.", page.Find("#choose-reason").GetAttribute("value"));
        Assert.Empty((await bench.ReadAsync()).Choices);

        await page.Find("#choose form").SubmitAsync(new());

        page.WaitForAssertion(() => Assert.Equal("Chosen: Quillon Q4", page.Find("#chosen-title").TextContent));
        Assert.Empty(page.FindAll(".chosen-panel .door-refusal, #choose"));
    }

    [Fact]
    public async Task On_a_job_that_has_ended_a_choice_whose_stack_changed_asks_for_a_look_and_for_no_choice()
    {
        await bench.StackAsync();
        var option = await bench.AddAsync("Q4");
        Assert.Null(await bench.ChooseAsync(option, "Fits."));
        await bench.Shop.WriteAsync(
            new LogbookId(LogbookKind.Car, bench.Studs.Car.Value), new Released(ReleaseKind.Road, [bench.Studs.Job], 0, 48_210, null, null, null, ""));
        await bench.MeanwhileAsync("changed");

        var page = Page();
        Assert.Contains("The figures follow the wheel stacks of the car as they are now", page.Find(".door-note:not(:has(strong))").TextContent, StringComparison.Ordinal);
        Assert.NotEmpty(page.FindAll(".stack-table a.button"));
        Assert.EndsWith("This job has ended: look again before it is fitted.", page.Find(".chosen-panel .door-refusal").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Removing_a_wheel_stack_asks_once_more()
    {
        await bench.StackAsync();
        var page = Page();

        await Button(page, "Remove front").ClickAsync(new());
        Assert.Single((await bench.ReadAsync()).Stacks);
        await Button(page, "Yes, remove front").ClickAsync(new());

        page.WaitForAssertion(() => Assert.Contains("No wheel stack of this car yet", page.Markup, StringComparison.Ordinal));
        Assert.Empty((await bench.ReadAsync()).Stacks);
    }

    [Fact]
    public async Task The_technician_sees_the_comparison_and_the_choice_and_changes_nothing()
    {
        await bench.StackAsync();
        var option = await bench.AddAsync("Q4");
        Assert.Null(await bench.ChooseAsync(option, "Fits."));
        await bench.Shop.SignInAsync(bench.Shop.Technician);

        var page = Page();

        Assert.Contains("Fits.", page.Find(".chosen-panel").TextContent, StringComparison.Ordinal);
        Assert.NotEmpty(RowNames(page));
        Assert.DoesNotContain(
            page.FindAll("button, a.button").Select(control => control.TextContent.Split(' ')[0]),
            word => word is "Choose" or "Change" or "Remove" or "Add");
    }

    [Fact]
    public async Task Names_typed_as_markup_are_shown_as_text()
    {
        await bench.AddAsync("<script>x</script>");
        var page = Page();

        Assert.Contains("<script>x</script>", page.Find(".option-name").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("script"));
    }

    [Fact]
    public async Task Removing_asks_once_more()
    {
        await bench.AddAsync("Q4");
        var page = Page();

        await Button(page, "Remove Quillon Q4").ClickAsync(new());
        Assert.Single((await bench.ReadAsync()).Options);
        await Button(page, "Yes, remove Quillon Q4").ClickAsync(new());

        page.WaitForAssertion(() => Assert.Contains("No option yet", page.Markup, StringComparison.Ordinal));
        Assert.Empty((await bench.ReadAsync()).Options);
    }

    [Fact]
    public void A_group_that_is_not_there_is_told()
    {
        var page = Render<OptionsPage>(parameters => parameters
            .Add(one => one.Id, bench.Studs.Car.Value).Add(one => one.Job, bench.Studs.Job.Value).Add(one => one.Group, "jam-pair"));

        Assert.Contains("There is nothing to compare here", page.Find("[role=alert]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_cars_page_shows_the_choice_at_its_job()
    {
        var option = await bench.AddAsync("Q4");
        Assert.Null(await bench.ChooseAsync(option, "Fits both axles."));

        var page = Render<OneCarPage>(parameters => parameters.Add(one => one.Id, bench.Studs.Car.Value));

        var chosen = page.Find(".job-chosen");
        Assert.Equal(Links.Options(bench.Studs.Car, bench.Studs.Job, "stud"), chosen.QuerySelector("a")!.GetAttribute("href"));
        Assert.Contains("Quillon Q4", chosen.TextContent, StringComparison.Ordinal);
        Assert.Contains("Fits both axles.", chosen.TextContent, StringComparison.Ordinal);
        Assert.Contains("chosen by Edda", chosen.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Before_a_choice_the_cars_page_leads_to_the_comparison()
    {
        var page = Render<OneCarPage>(parameters => parameters.Add(one => one.Id, bench.Studs.Car.Value));

        Assert.Equal("Compare options: Wheel stud", page.Find($"a[href='{Links.Options(bench.Studs.Car, bench.Studs.Job, "stud")}']").TextContent);
    }

    private IRenderedComponent<OptionsPage> Page() => Render<OptionsPage>(parameters => parameters
        .Add(page => page.Id, bench.Studs.Car.Value).Add(page => page.Job, bench.Studs.Job.Value).Add(page => page.Group, bench.Studs.Group));

    private static List<string> RowNames(IRenderedComponent<OptionsPage> page) =>
        [.. page.FindAll(".options-table tbody th[scope=row]").Select(name => name.TextContent)];

    private static List<IElement> Row(IRenderedComponent<OptionsPage> page, string name) =>
        [.. page.FindAll(".options-table tbody tr").Single(row => row.QuerySelector("th")?.TextContent == name).QuerySelectorAll("td")];

    private static IElement Button(IRenderedComponent<OptionsPage> page, string text) =>
        page.FindAll("button").Single(button => button.TextContent == text);
}
