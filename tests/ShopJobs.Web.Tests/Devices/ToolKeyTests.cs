using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.EntityFrameworkCore;
using MudBlazor.Services;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Devices;
using ShopJobs.Web.Components.TorqueTools;
using ShopJobs.Web.Tests.TorqueTools;

namespace ShopJobs.Web.Tests.Devices;

/// <summary>A tool's key is made and ended by the lead, shown once, and kept as a hash alone.</summary>
public sealed class ToolKeyTests : BunitContext, IAsyncLifetime
{
    private readonly ToolBench bench = new();
    private ToolId tool;

    public ToolKeyTests()
    {
        bench.Register(Services);
        Services.AddMudServices();
        JSInterop.Mode = JSRuntimeMode.Loose;
        SetRendererInfo(new RendererInfo("Server", true));
    }

    async Task IAsyncLifetime.InitializeAsync()
    {
        await bench.OpenAsync(Services);
        var form = ToolBench.Form("D1", "S-D1");
        form.Kind = ToolKind.Indicating;
        Assert.True((await bench.Get<ToolShelf>().SaveAsync(form)).Recorded);
        tool = form.Id;
    }

    async Task IAsyncLifetime.DisposeAsync()
    {
        await DisposeAsync();
        bench.Dispose();
    }

    [Fact]
    public async Task The_lead_makes_a_key_that_is_shown_once_and_opens_its_tool()
    {
        var page = Page();
        await Button(page, "Make a key").ClickAsync(new());
        var key = page.WaitForElement(".tool-key-text").TextContent;

        Assert.Equal(tool, await bench.Get<ToolKeyDesk>().FindAsync(key));
        Assert.DoesNotContain(key, Page().Markup, StringComparison.Ordinal);
        Assert.DoesNotContain(await bench.RowsAsync(rows => rows.ToolKeys.Select(row => row.KeyHash).ToListAsync()), hash => hash.SequenceEqual(System.Text.Encoding.UTF8.GetBytes(key)));
    }

    [Fact]
    public async Task A_new_key_ends_the_one_before_it()
    {
        var first = (await bench.Get<ToolKeys>().MakeAsync(tool)).Key!;
        var second = (await bench.Get<ToolKeys>().MakeAsync(tool)).Key!;

        Assert.Null(await bench.Get<ToolKeyDesk>().FindAsync(first));
        Assert.Equal(tool, await bench.Get<ToolKeyDesk>().FindAsync(second));
    }

    [Fact]
    public async Task An_ended_key_opens_nothing_and_who_ended_it_is_kept()
    {
        var key = (await bench.Get<ToolKeys>().MakeAsync(tool)).Key!;

        await Button(Page(), "End the key").ClickAsync(new());

        Assert.Null(await bench.Get<ToolKeyDesk>().FindAsync(key));
        Assert.Equal(bench.Lead, (await bench.RowsAsync(rows => rows.ToolKeys.SingleAsync())).EndedBy);
        Assert.Equal("This tool has no key now.", await bench.Get<ToolKeys>().EndAsync(tool));
    }

    [Fact]
    public async Task A_technician_makes_and_ends_none()
    {
        await bench.Get<ToolKeys>().MakeAsync(tool);
        await bench.SignInAsync(bench.Technician);

        Assert.DoesNotContain("End the key", Page().Markup, StringComparison.Ordinal);
        Assert.Contains("the lead's to make", (await bench.Get<ToolKeys>().MakeAsync(tool)).Problem, StringComparison.Ordinal);
        Assert.Contains("the lead's to make", await bench.Get<ToolKeys>().EndAsync(tool), StringComparison.Ordinal);
        Assert.Single(await bench.RowsAsync(rows => rows.ToolKeys.Where(row => row.EndedAt == null).ToListAsync()));
    }

    [Fact]
    public async Task A_click_wrench_has_none_to_make()
    {
        var wrench = await bench.WrenchAsync();

        Assert.DoesNotContain("Make a key", Render<ToolPage>(parameters => parameters.Add(page => page.Id, wrench.Value)).Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_label_is_printed_for_one_tool_or_for_all_in_use()
    {
        await bench.WrenchAsync();

        var all = Render<ToolLabelsPage>();
        Assert.Equal(["D1", "W7"], all.FindAll(".tool-label strong").Select(name => name.TextContent));
        Assert.All(all.FindAll(".tool-label"), label => Assert.NotNull(label.QuerySelector("svg")));

        var one = Render<ToolLabelsPage>(parameters => parameters.Add(page => page.Id, tool.Value));
        Assert.Equal(ToolLabel.CodeOf(tool), Assert.Single(one.FindAll(".tool-label code")).TextContent);
    }

    private IRenderedComponent<ToolPage> Page() => Render<ToolPage>(parameters => parameters.Add(page => page.Id, tool.Value));

    private static AngleSharp.Dom.IElement Button(IRenderedComponent<ToolPage> page, string words) =>
        page.FindAll("button").Single(button => button.TextContent.Trim() == words);
}
