using Bunit;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.CarPage;
using ShopJobs.Web.Components.LogbookPages;
using ShopJobs.Web.Components.Releases;
using ShopJobs.Web.Components.Summaries;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Tests.Releases;
using ReleaseCommand = ShopJobs.Domain.Logbook.Release;

namespace ShopJobs.Web.Tests.Signing;

/// <summary>Between the open dialog of a car's page and the PIN the car changes: what was not shown is not signed.</summary>
public sealed class CarSigningTests : DialogBench
{
    [Fact]
    public async Task A_hold_that_comes_after_the_decision_was_shown_refuses_it_and_the_reason_stays()
    {
        await HandTightAsync();
        await ElsewhereAsync(DemoPeople.Chassis, Pull(1, 1, 0, 120));
        await SitDownAsync(DemoPeople.Lead);
        var page = Draw<HeldPage>(
            parameters => parameters.Add(held => held.Id, Car.Value).Add(held => held.Key, "wheel.nut").Add(held => held.Place, Place).Add(held => held.Number, 1),
            ".decide-option");
        await page.FindAll(".decide-option").Single(option => option.TextContent.Contains("REWORK", StringComparison.Ordinal)).ClickAsync(new());
        await page.Find("#decide-why").InputAsync(new() { Value = "Thread is good" });
        await PressAsync(page, "DECIDE: rework");

        await ElsewhereAsync(DemoPeople.Engines, new HoldPositions([Nuts[0]], ContentDigest.Of([1], "thread is damaged"u8)));
        await TypePinAsync(DemoPeople.Lead);

        Says(page, "wheel nut front-left 1 was held at 09:");
        Assert.Equal("Thread is good", page.Find("#decide-why").GetAttribute("value"));
        Assert.All(State.Of(Nuts[0]).Holds, hold => Assert.Null(hold.Decision));
    }

    [Fact]
    public async Task A_joint_opened_after_the_release_was_shown_refuses_it_and_the_odometer_stays()
    {
        await DoneAsync();
        await SitDownAsync(DemoPeople.Lead);
        var page = Draw<ReleasePage>(parameters => parameters.Add(release => release.Id, Car.Value), "#km-Road");
        await page.Find("#km-Road").InputAsync(new() { Value = "48210" });
        await page.TickClosingCheckAsync();
        await PressAsync(page, "RELEASE TO ROAD");

        await ElsewhereAsync(DemoPeople.Engines, new OpenPositions([new JointPosition("hub.nut", "rear-left", 1)], null, null));
        await TypePinAsync(DemoPeople.Lead);

        Says(page, "hub nut rear-left 1 was opened at 09:");
        Assert.Empty(State.Releases);
    }

    [Fact]
    public async Task A_second_correction_after_the_first_was_shown_is_not_confirmed_with_it_and_the_reason_stays()
    {
        await DoneAsync();
        await ElsewhereAsync(DemoPeople.Chassis, Restated(104));
        await SitDownAsync(DemoPeople.Lead);
        var page = Draw<OneCarPage>(parameters => parameters.Add(car => car.Id, Car.Value), ".corrections");
        Says(page, "May confirm it: Edda.");
        await page.Find(".corrections input").InputAsync(new() { Value = "I saw the display" });
        await PressAsync(page, "CONFIRM as second person");

        await ElsewhereAsync(DemoPeople.Chassis, Restated(110));
        await TypePinAsync(DemoPeople.Lead);

        Says(page, "was corrected after this was shown");
        Assert.DoesNotContain(State.Corrections.Values, correction => correction.Confirmed);
    }

    [Fact]
    public async Task A_pull_restated_after_the_figure_was_shown_is_not_restated_again_and_the_figure_stays()
    {
        await DoneAsync();
        await SitDownAsync(DemoPeople.Lead);
        var number = State.Of(Nuts[0]).Last!.Number;
        var page = Draw<LogbookPage>(parameters => parameters.Add(book => book.CarId, Car.Value), $"#entry-{number}");
        await page.Find($"#entry-{number} .entry-correct").ClickAsync(new());
        await page.FindAll($"#entry-{number} input[type=radio]")[1].ChangeAsync(new() { Value = "on" });
        await page.Find($"#value-{number}").InputAsync(new() { Value = "109" });
        await page.Find($"#why-{number}").InputAsync(new() { Value = "Typed wrong" });
        await PressAsync(page, "RESTATE ENTRY");

        await ElsewhereAsync(DemoPeople.Chassis, Restated(108));
        await TypePinAsync(DemoPeople.Lead);

        Says(page, "wheel nut front-left 1 was corrected after this was shown");
        Assert.Equal("109", page.Find($"#value-{number}").GetAttribute("value"));
        Assert.Single(State.Corrections);
    }

    [Fact]
    public async Task A_nut_opened_after_the_re_torque_was_shown_is_not_settled_and_the_figures_stay()
    {
        await DoneAsync();
        await ElsewhereAsync(DemoPeople.Lead, new ReleaseCommand(ReleaseKind.Road, 48_210, null, "") { Closing = ClosingCheck.All });
        await SitDownAsync(DemoPeople.Chassis);
        var page = Draw<ReTorquePage>(parameters => parameters.Add(due => due.Id, Car.Value), ".retorque");
        await page.FindAll(".choice").Single(tool => tool.TextContent == "WA").ClickAsync(new());
        await page.Find(".retorque .retorque-warning button").ClickAsync(new());
        await page.WaitForElement(".retorque input", Patience).InputAsync(new() { Value = "110" });
        await page.Find("#retorque-km").InputAsync(new() { Value = "48280" });
        await PressAsync(page, "1: NOT MOVED");

        await ElsewhereAsync(DemoPeople.Engines, new OpenPositions([Nuts[0]], null, null));
        await TypePinAsync(DemoPeople.Chassis);

        Says(page, "was opened at 09:");
        Assert.Equal(0, State.Of(Nuts[0]).SettledBy);
    }

    [Fact]
    public async Task An_entry_made_after_the_summary_was_shown_refuses_it()
    {
        await DoneAsync();
        await SitDownAsync(DemoPeople.Lead);
        var page = Draw<SummaryPage>(parameters => parameters.Add(summary => summary.Id, Car.Value), ".sheet");
        await page.Find("#contact").ChangeAsync(new() { Value = "01632 960110" });
        await PressAsync(page, "Issue");

        await ElsewhereAsync(DemoPeople.Engines, new OpenPositions([new JointPosition("hub.nut", "rear-left", 1)], null, null));
        await TypePinAsync(DemoPeople.Lead);

        Says(page, "More was recorded on this car since the summary was shown");
        Assert.Equal("01632 960110", page.Find("#contact").GetAttribute("value"));
        Assert.Empty(State.Summaries);
    }

    private Restate Restated(decimal newtonMetres) => new(
        State.Of(Nuts[0]).Last!.Number, new EnteredTorque(newtonMetres, TorqueUnit.NewtonMetre), ContentDigest.Of([1], "typed wrong"u8), "");
}
