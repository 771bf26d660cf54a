using System.Text;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Instruments;
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
    [InlineData("w7", "S-99", "“w7” reads like W7, the name of another tool or instrument")]
    [InlineData("W8", "s-71", "W7 has the serial number s-71")]
    public async Task Another_tools_name_or_serial_is_refused_and_nothing_is_entered(string name, string serial, string says)
    {
        await Shelf.SaveAsync(ToolBench.Form());

        var answer = await Shelf.SaveAsync(ToolBench.Form(name, serial));

        Assert.Contains(says, Assert.Single(answer.Reasons).Words, StringComparison.Ordinal);
        Assert.Single(Shelf.All());
    }

    [Theory]
    [InlineData("\uFF377")] // full width
    [InlineData("W\u0037 ")]
    [InlineData("\u051C7")] // Cyrillic we
    public async Task A_name_that_passes_for_another_tools_is_refused_for_tools_and_instruments(string name)
    {
        await Shelf.SaveAsync(ToolBench.Form());

        var tool = await Shelf.SaveAsync(ToolBench.Form(name, "S-99"));
        var gauge = await bench.Get<InstrumentShelf>().SaveAsync(new InstrumentForm { Name = name });

        Assert.Equal([HoldReason.NameTaken, HoldReason.NameTaken], tool.Reasons.Concat(gauge.Reasons).Select(reason => reason.Reason));
        Assert.Equal(1, await bench.RowsAsync(shop => shop.Tools.CountAsync()));
    }

    [Fact]
    public async Task Of_two_alike_entered_at_once_one_is_refused()
    {
        var answers = await Task.WhenAll(
            Task.Run(() => Shelf.SaveAsync(ToolBench.Form("W1", "S-1"))),
            Task.Run(() => Shelf.SaveAsync(ToolBench.Form("Wl", "S-2"))),
            Task.Run(() => Shelf.SaveAsync(ToolBench.Form("WI", "S-3"))));

        Assert.Single(answers, answer => answer.Recorded);
        Assert.Equal(2, answers.Count(answer => answer.Reasons is [{ Reason: HoldReason.NameTaken }]));
    }

    [Fact]
    public async Task A_character_that_nobody_sees_is_refused_past_the_form_too() => Assert.Contains(
        "nobody sees", (await Shelf.SaveAsync(ToolBench.Form("W\u200B7"))).NotSaved, StringComparison.Ordinal);

    [Fact]
    public async Task A_name_of_before_the_rule_stays_and_may_be_described_anew()
    {
        var one = await bench.WrenchAsync("W1");
        var other = await bench.WrenchAsync("W9");
        await bench.WriteAsync(Folders.LogbookOf(other), new ToolEntered(other, "Wl", "S-W9", ToolKind.Click, TorqueUnit.NewtonMetre, 40, 200, 1, null));
        var again = ToolForm.Of(other, Shelf.Find(other)!.Tool);
        again.Length = "320";

        Assert.True((await Shelf.SaveAsync(again)).Recorded);
        Assert.Equal("W1", Shelf.Find(one)!.Tool.Name);
    }

    [Fact]
    public async Task Retired_tool_is_brought_back_and_is_out_of_use_until_it_is_calibrated()
    {
        var wrench = await bench.WrenchAsync();

        Assert.True((await Shelf.RetireAsync(wrench, new CommandId(Guid.NewGuid()), "Worn out")).Recorded);
        Assert.Equal(ToolUse.Retired, Shelf.Find(wrench)!.Standing.Use);
        Assert.True((await Shelf.BringBackAsync(wrench, new CommandId(Guid.NewGuid()), "Overhauled")).Recorded);
        Assert.Equal(ToolUse.OutOfUse, Shelf.Find(wrench)!.Standing.Use);
        await bench.CalibrateAsync(wrench, ToolBench.Today, null, "40", "110", "200");

        Assert.Equal(ToolUse.InDate, Shelf.Find(wrench)!.Standing.Use);
    }

    [Fact]
    public async Task Withdrawn_calibration_is_signed_by_the_lead()
    {
        var wrench = await bench.WrenchAsync();
        var why = NewContent.Of("Of another wrench"u8.ToArray());

        var technician = await bench.SignAsync(wrench, bench.Technician, (shown, asOf) => new WithdrawCalibration(2, why.Digest, shown, asOf), why);
        var lead = await bench.SignAsync(wrench, bench.Lead, (shown, asOf) => new WithdrawCalibration(2, why.Digest, shown, asOf), why);

        Assert.Equal(HoldReason.LeadKeepsTools, Assert.Single(technician.Reasons).Reason);
        Assert.True(lead.Recorded);
        Assert.Equal((ToolUse.OutOfUse, true), (Shelf.Find(wrench)!.Standing.Use, Shelf.Find(wrench)!.Standing.WorkInDoubt));
    }

    [Fact]
    public async Task A_tool_is_renamed_with_its_row()
    {
        var form = ToolBench.Form();
        await Shelf.SaveAsync(form);
        var again = ToolForm.Of(form.Id, Shelf.Find(form.Id)!.Tool);
        again.Name = "W7 long";

        Assert.True((await Shelf.SaveAsync(again)).Recorded);

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
        var again = ToolForm.Of(wrench, Shelf.Find(wrench)!.Tool);
        again.Unit = TorqueUnit.PoundForceFoot;

        var answer = await Shelf.SaveAsync(again);

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
