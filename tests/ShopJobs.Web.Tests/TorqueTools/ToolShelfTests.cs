using System.Text;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.TorqueTools;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Tests.TorqueTools;

public sealed class ToolShelfTests : IAsyncLifetime, IDisposable
{
    private readonly ToolBench bench = new();

    private ToolShelf Shelf => bench.Get<ToolShelf>();

    public Task InitializeAsync() => bench.OpenAsync();

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose() => bench.Dispose();

    [Fact]
    public async Task Entering_a_tool_writes_its_row_with_its_entry()
    {
        var form = ToolBench.Form();

        Assert.True((await Shelf.SaveAsync(form)).Recorded);

        var row = await bench.RowsAsync(shop => shop.Tools.SingleAsync());
        Assert.Equal((form.Id.Value, "W7", bench.Lead), (row.Id, row.Name, row.ChangedBy!.Value));
        Assert.Equal(ToolUse.NotCalibrated, Shelf.Find(form.Id)!.Standing.Use);
    }

    [Fact]
    public async Task Sending_the_form_twice_enters_one_tool()
    {
        var form = ToolBench.Form();

        await Shelf.SaveAsync(form);
        var again = await Shelf.SaveAsync(form);

        Assert.True(again.Repeated);
        Assert.Equal(1, Shelf.Find(form.Id)!.State.Number);
    }

    [Theory]
    [InlineData("w7", "S-99", "Another tool is called w7")]
    [InlineData("W8", "s-71", "W7 has the serial number")]
    public async Task Another_tools_name_or_serial_is_refused_and_nothing_is_entered(string name, string serial, string says)
    {
        await Shelf.SaveAsync(ToolBench.Form());

        var answer = await Shelf.SaveAsync(ToolBench.Form(name, serial));

        Assert.Contains(says, answer.NotSaved, StringComparison.Ordinal);
        Assert.Single(Shelf.All());
    }

    [Fact]
    public async Task A_tool_is_renamed_with_its_row()
    {
        var form = ToolBench.Form();
        await Shelf.SaveAsync(form);
        var anew = ToolForm.Of(form.Id, Shelf.Find(form.Id)!.Tool);
        anew.Name = "W7 long";

        Assert.True((await Shelf.SaveAsync(anew)).Recorded);

        Assert.Equal("W7 long", await bench.RowsAsync(shop => shop.Tools.Select(row => row.Name).SingleAsync()));
    }

    [Fact]
    public async Task Only_the_lead_enters_tools()
    {
        await bench.SignInAsync(bench.Technician);

        var answer = await Shelf.SaveAsync(ToolBench.Form());

        Assert.Equal(HoldReason.LeadKeepsTools, Assert.Single(answer.Reasons).Reason);
        Assert.Equal(0, await bench.RowsAsync(shop => shop.Tools.CountAsync()));
    }

    [Fact]
    public async Task Anybody_takes_a_tool_out_of_use_and_only_the_lead_clears_it()
    {
        var wrench = await bench.WrenchAsync();
        await bench.SignInAsync(bench.Technician);

        Assert.True((await Shelf.TakeOutAsync(wrench, new CommandId(Guid.NewGuid()), "Dropped")).Recorded);
        Assert.Equal(HoldReason.LeadKeepsTools, Assert.Single((await ClearAsync(wrench, bench.Technician, "Looks fine")).Reasons).Reason);
        Assert.Equal(ToolUse.OutOfUse, Shelf.Find(wrench)!.Standing.Use);

        Assert.True((await ClearAsync(wrench, bench.Lead, "Checked on the rig")).Recorded);
        Assert.True(Shelf.Find(wrench)!.Standing.MayBeUsed);
    }

    private Task<DeskAnswer> ClearAsync(ToolId wrench, PersonId signer, string how)
    {
        var reason = NewContent.Of(Encoding.UTF8.GetBytes(how));
        return bench.SignAsync(wrench, signer, (shown, asOf) => new ClearTool(reason.Digest, shown, asOf), reason);
    }

    [Fact]
    public async Task A_locked_tablet_saves_nothing_and_says_so()
    {
        bench.SignOut();

        Assert.Contains("locked", (await Shelf.SaveAsync(ToolBench.Form())).NotSaved, StringComparison.Ordinal);
        Assert.Empty(Shelf.All());
    }

    [Fact]
    public async Task A_calibrated_tools_unit_is_not_changed()
    {
        var wrench = await bench.WrenchAsync();
        var anew = ToolForm.Of(wrench, Shelf.Find(wrench)!.Tool);
        anew.Unit = TorqueUnit.PoundForceFoot;

        var answer = await Shelf.SaveAsync(anew);

        Assert.Contains("has calibrations in N·m", Assert.Single(answer.Reasons).Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Tools_stand_in_the_order_of_days_to_calibration()
    {
        await bench.WrenchAsync("W3", ToolBench.Today.AddDays(-10));
        await bench.WrenchAsync("W5", ToolBench.Today.AddDays(-400));
        await bench.WrenchAsync("W7", ToolBench.Today.AddDays(-350));
        await Shelf.SaveAsync(ToolBench.Form("W9", "S-W9"));

        Assert.Equal(
            [("W9", "not calibrated"), ("W5", "overdue by 35 days"), ("W7", "due in 15 days"), ("W3", "in date")],
            Shelf.All().Select(line => (line.Tool.Name, line.Standing.Words)));
    }
}
