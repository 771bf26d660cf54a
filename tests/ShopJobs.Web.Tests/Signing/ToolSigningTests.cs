using Bunit;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.TorqueTools;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Tests.Signing;

/// <summary>Between the open dialog of a tool's page and the PIN the tool changes; and who may clear a tool.</summary>
public sealed class ToolSigningTests : DialogBench
{
    private ToolState Wrench => Services.GetRequiredService<ToolDesk>().ReadAll()[WorkSeed.WA];

    [Fact]
    public async Task A_tool_dropped_after_the_certificate_was_shown_refuses_the_calibration_and_the_readings_stay()
    {
        await SitDownAsync(DemoPeople.Lead);
        var page = Draw<CalibrationPage>(parameters => parameters.Add(calibration => calibration.Id, WorkSeed.WA.Value), "#certificate");
        await page.Find("#certificate").InputAsync(new() { Value = "Bench 4, 17" });
        foreach (var (index, reading) in new[] { "20.1", "120.2", "200.4" }.Select((reading, index) => (index, reading)))
        {
            await page.Find($"#left-{index}").InputAsync(new() { Value = reading });
        }

        await PressAsync(page, "Save");
        Assert.Contains(Shown, line => line.StartsWith("As left: shown 200, rig read 200.4 N·m", StringComparison.Ordinal));

        await DropAsync();
        await TypePinAsync(DemoPeople.Lead);

        Says(page, "Something changed after this was shown");
        Assert.Equal("200.4", page.Find("#left-2").GetAttribute("value"));
        Assert.Single(Wrench.Calibrations);
    }

    [Fact]
    public async Task A_doubt_raised_after_the_clearing_was_shown_refuses_it_and_the_reason_stays()
    {
        await DropAsync();
        await SitDownAsync(DemoPeople.Lead);
        var page = Draw<ToolPage>(parameters => parameters.Add(tool => tool.Id, WorkSeed.WA.Value), ".lead-actions");
        await page.FindAll("button").Single(button => button.TextContent == "Clear it").ClickAsync(new());
        await page.Find("textarea").InputAsync(new() { Value = "Checked on the rig" });
        await PressAsync(page, "CLEAR");

        await DropAsync();
        await TypePinAsync(DemoPeople.Lead);

        Says(page, "Something changed after this was shown");
        Assert.Equal("Checked on the rig", page.Find("textarea").GetAttribute("value"));
        Assert.NotEqual(0, Wrench.OutOfUseBy);
    }

    [Fact]
    public async Task Whoever_used_the_tool_in_the_time_in_doubt_is_told_why_it_is_not_for_him_to_clear()
    {
        await HandTightAsync();
        await ElsewhereAsync(DemoPeople.Lead, Pull(1, 1, 0, 50));
        await SitDownAsync(DemoPeople.Lead);
        var reason = NewContent.Of("Clicks late"u8);
        Assert.True((await Services.GetRequiredService<ToolDesk>().RunAsync(
            WorkSeed.WA, new CommandId(Guid.NewGuid()), (await Services.GetRequiredService<WhoIsHere>().ActingAsync())!, new RaiseDoubt(reason.Digest), [reason])).Recorded);

        var page = Draw<ToolPage>(parameters => parameters.Add(tool => tool.Id, WorkSeed.WA.Value), ".lead-actions");

        Assert.Contains("You used this tool in the time in doubt", page.Find(".door-note").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_lead_who_did_not_use_it_clears_it_with_a_signature()
    {
        await HandTightAsync();
        await ElsewhereAsync(DemoPeople.Chassis, Pull(1, 1, 0, 50));
        await SitDownAsync(DemoPeople.Lead);
        var reason = NewContent.Of("Clicks late"u8);
        await Services.GetRequiredService<ToolDesk>().RunAsync(
            WorkSeed.WA, new CommandId(Guid.NewGuid()), (await Services.GetRequiredService<WhoIsHere>().ActingAsync())!, new RaiseDoubt(reason.Digest), [reason]);
        var page = Draw<ToolPage>(parameters => parameters.Add(tool => tool.Id, WorkSeed.WA.Value), ".lead-actions");
        await page.FindAll("button").Single(button => button.TextContent == "Clear it").ClickAsync(new());
        await page.Find("textarea").InputAsync(new() { Value = "Checked on the rig" });
        await PressAsync(page, "CLEAR");
        Assert.Contains(Shown, line => line.StartsWith("Lifts the doubt of entry", StringComparison.Ordinal));

        await TypePinAsync(DemoPeople.Lead);

        Says(page, "WA is cleared.");
        Assert.Empty(Wrench.Doubts);
    }

    private async Task DropAsync()
    {
        await SitDownAsync(DemoPeople.Lead);
        var answer = await Services.GetRequiredService<ToolShelf>().TakeOutAsync(WorkSeed.WA, new CommandId(Guid.NewGuid()), "Dropped");
        Assert.True(answer.Recorded);
    }
}
