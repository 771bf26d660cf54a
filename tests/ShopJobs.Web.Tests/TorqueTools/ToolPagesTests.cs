using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor;
using MudBlazor.Services;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.TorqueTools;

namespace ShopJobs.Web.Tests.TorqueTools;

public sealed class ToolPagesTests : BunitContext, IAsyncLifetime
{
    private readonly ToolBench bench = new();

    public ToolPagesTests()
    {
        bench.Register(Services);
        Services.AddMudServices();
        JSInterop.Mode = JSRuntimeMode.Loose;
        SetRendererInfo(new RendererInfo("Server", true));
    }

    Task IAsyncLifetime.InitializeAsync() => bench.OpenAsync(Services);

    async Task IAsyncLifetime.DisposeAsync()
    {
        await DisposeAsync();
        bench.Dispose();
    }

    [Fact]
    public void Without_tools_the_list_says_how_one_gets_here()
    {
        Assert.Contains("No torque tool yet", Render<ToolsPage>().Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Each_tool_shows_word_and_shape_and_changes_while_it_is_looked_at()
    {
        var wrench = await bench.WrenchAsync();
        var page = Render<ToolsPage>();
        Assert.Equal("in date", page.Find(".tool-sign-words").TextContent.Trim());
        var shape = page.Find(".tool-sign svg").InnerHtml;

        await bench.Get<ToolShelf>().TakeOutAsync(wrench, new CommandId(Guid.NewGuid()), "Dropped");

        page.WaitForAssertion(() => Assert.Equal("out of use", page.Find(".tool-sign-words").TextContent.Trim()));
        Assert.NotEqual(shape, page.Find(".tool-sign svg").InnerHtml);
    }

    [Fact]
    public async Task Dropped_is_one_tap_for_anybody()
    {
        var wrench = await bench.WrenchAsync();
        await bench.SignInAsync(bench.Technician);
        var page = Render<ToolPage>(parameters => parameters.Add(tool => tool.Id, wrench.Value));
        Assert.DoesNotContain("Suspect", page.Markup, StringComparison.Ordinal);

        await page.FindAll("button").Single(button => button.TextContent == "DROPPED").ClickAsync(new());

        page.WaitForAssertion(() => Assert.Contains("W7 is out of use", page.Find("[role=status]").TextContent, StringComparison.Ordinal));
        Assert.True(bench.Get<ToolShelf>().Find(wrench)!.State.OutOfUseBy > 0);
    }

    [Fact]
    public async Task A_doubt_asks_for_a_reason()
    {
        var wrench = await bench.WrenchAsync();
        var page = Render<ToolPage>(parameters => parameters.Add(tool => tool.Id, wrench.Value));
        await page.FindAll("button").Single(button => button.TextContent == "Suspect").ClickAsync(new());

        await page.Find("form").SubmitAsync(new());
        Assert.Contains("Write the reason", page.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Empty(bench.Get<ToolShelf>().Find(wrench)!.State.Doubts);

        await page.Find("textarea").InputAsync(new ChangeEventArgs { Value = "Clicks late <b>" });
        await page.Find("form").SubmitAsync(new());

        page.WaitForAssertion(() => Assert.Contains("its work is in doubt", page.Find(".tool-sign-words").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public async Task What_was_typed_as_markup_is_shown_as_text()
    {
        var form = ToolBench.Form("<i>W7</i>", "<script>alert(1)</script>");
        await bench.Get<ToolShelf>().SaveAsync(form);

        var page = Render<ToolPage>(parameters => parameters.Add(tool => tool.Id, form.Id.Value));

        Assert.Equal("<i>W7</i>", page.Find("h1").TextContent);
        Assert.Empty(page.FindAll("script, i"));
    }

    [Fact]
    public async Task A_bad_reading_is_told_and_nothing_typed_is_lost()
    {
        var wrench = await bench.WrenchAsync();
        var page = Render<CalibrationPage>(parameters => parameters.Add(tool => tool.Id, wrench.Value));
        await page.Find("#certificate").InputAsync(new ChangeEventArgs { Value = "Bench 4, 13" });
        await page.Find("#left-0").InputAsync(new ChangeEventArgs { Value = "forty" });
        await page.Find("form").SubmitAsync(new());

        Assert.Contains("does not start with a number", page.Find($"#{page.Find("#left-0").GetAttribute("aria-describedby")}").TextContent, StringComparison.Ordinal);
        Assert.Equal("Bench 4, 13", page.Find("#certificate").GetAttribute("value"));
        Assert.Equal("forty", page.Find("#left-0").GetAttribute("value"));
        Assert.Single(bench.Get<ToolShelf>().Find(wrench)!.State.Calibrations);
    }

    [Fact]
    public async Task A_reading_says_at_once_what_the_tool_delivers_and_what_will_follow()
    {
        Render<MudPopoverProvider>();
        var dialogs = Render<MudDialogProvider>();
        var wrench = await bench.WrenchAsync();
        var page = Render<CalibrationPage>(parameters => parameters.Add(tool => tool.Id, wrench.Value));
        await page.Find("#certificate").InputAsync(new ChangeEventArgs { Value = "Bench 4, 13" });
        await page.Find("#found-0").InputAsync(new ChangeEventArgs { Value = "36,4" });

        Assert.Contains("+9.9 %: delivers too little", page.Markup, StringComparison.Ordinal);
        Assert.Contains("is in doubt, on every car", page.Find(".preview").TextContent, StringComparison.Ordinal);

        _ = page.Find("form").SubmitAsync(new());
        dialogs.WaitForElement("#sign-pin", TimeSpan.FromSeconds(30));
        await dialogs.Find("#sign-pin").InputAsync(new ChangeEventArgs { Value = ToolBench.Pin });
        await dialogs.Find("#sign-form").SubmitAsync(new());

        page.WaitForAssertion(() => Assert.True(bench.Get<ToolShelf>().Find(wrench)!.Standing.WorkInDoubt), TimeSpan.FromSeconds(30));
        Assert.EndsWith($"/tools/{wrench.Value}", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_wrench_that_measures_angle_is_entered_and_described_anew_on_the_same_form()
    {
        var page = Render<ToolFormPage>();
        Assert.Equal(Enum.GetNames<ToolKind>(), page.FindAll("#kind option").Select(option => option.GetAttribute("value")));
        foreach (var (field, value) in new[] { ("#name", "WA"), ("#serial", "S-9"), ("#kind", "Angle"), ("#lowest", "20"), ("#top", "200"), ("#graduation", "0.1") })
        {
            await page.Find(field).ChangeAsync(new ChangeEventArgs { Value = value });
        }

        await page.Find("form").SubmitAsync(new());
        var entered = Assert.Single(bench.Get<ToolShelf>().All());
        Assert.Equal((ToolKind.Angle, "WA"), (entered.Tool.Kind, entered.Tool.Name));

        var again = Render<ToolFormPage>(parameters => parameters.Add(form => form.Id, entered.Id.Value));
        Assert.Equal("Angle", again.Find("#kind").GetAttribute("value"));
        await again.Find("#top").ChangeAsync(new ChangeEventArgs { Value = "180" });
        await again.Find("form").SubmitAsync(new());
        Assert.Equal((ToolKind.Angle, 180m), (bench.Get<ToolShelf>().Find(entered.Id)!.Tool.Kind, bench.Get<ToolShelf>().Find(entered.Id)!.Tool.Top));
    }

    [Theory]
    [InlineData("320,5", "320.5 mm from hand to square")]
    [InlineData("", "not entered: no crowfoot or extension on it")]
    public async Task The_page_of_a_tool_shows_its_own_length_or_that_nobody_entered_it(string typed, string says)
    {
        var form = ToolBench.Form();
        form.Length = typed;
        Assert.True((await bench.Get<ToolShelf>().SaveAsync(form)).Recorded);

        var page = Render<ToolPage>(parameters => parameters.Add(tool => tool.Id, form.Id.Value));

        Assert.Contains(says, page.Find(".facts").TextContent, StringComparison.Ordinal);
        Assert.Equal(typed.Replace(',', '.'), ToolForm.Of(form.Id, bench.Get<ToolShelf>().Find(form.Id)!.Tool).Length);
    }

    [Theory]
    [InlineData(ToolKind.Angle, true)]
    [InlineData(ToolKind.Indicating, false)]
    public async Task The_page_of_a_wrench_that_measures_angle_says_that_its_angle_is_not_calibrated_here(ToolKind kind, bool says)
    {
        var form = ToolBench.Form("WA", "S-9");
        form.Kind = kind;
        Assert.True((await bench.Get<ToolShelf>().SaveAsync(form)).Recorded);

        var page = Render<ToolPage>(parameters => parameters.Add(tool => tool.Id, form.Id.Value));

        Assert.Equal(says, page.Find(".facts").TextContent.Contains("not calibrated here", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_refused_tool_keeps_its_form()
    {
        await bench.WrenchAsync();
        var page = Render<ToolFormPage>();
        foreach (var (field, value) in new[] { ("#name", "w7"), ("#serial", "S-8"), ("#lowest", "20"), ("#top", "100"), ("#graduation", "0,5") })
        {
            await page.Find(field).ChangeAsync(new ChangeEventArgs { Value = value });
        }

        await page.Find("form").SubmitAsync(new());

        page.WaitForAssertion(() => Assert.Contains("“w7” reads like W7, the name of another tool or instrument", page.Find("[role=alert]").TextContent, StringComparison.Ordinal));
        Assert.Equal("0,5", page.Find("#graduation").GetAttribute("value"));
    }
}
