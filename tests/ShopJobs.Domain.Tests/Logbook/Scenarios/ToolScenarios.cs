using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook.Scenarios;

/// <summary>How a doubt of a tool is raised and lifted, and what it covers.</summary>
public class ToolScenarios
{
    private static readonly DateOnly Today = new(2026, 3, 2);
    private readonly ToolShelf shelf = new(CarAtWork.Start);

    private ToolState Tool => shelf.StateOf(TestTools.Click);

    [Fact]
    public void One_lead_alone_does_not_lift_a_doubt_that_readings_raised()
    {
        Calibrate(found: 110, left: null);
        Assert.Equal(HoldReason.NeedsReadings, Clear());
    }

    [Fact]
    public void Good_readings_as_found_lift_it_while_nobody_has_adjusted_the_tool()
    {
        Calibrate(found: 110, left: null);
        Calibrate(found: 100, left: null);
        Assert.Null(Clear(hasUsed: true));
    }

    [Fact]
    public void Readings_taken_after_the_rig_adjusted_the_wrench_lift_nothing()
    {
        Calibrate(found: 110, left: 100);
        Calibrate(found: 100, left: 100);
        Assert.Equal(HoldReason.NeedsReadings, Clear());
    }

    [Fact]
    public void A_doubt_by_word_is_not_lifted_by_whoever_used_the_tool()
    {
        shelf.Tell(TestTools.Click, new Doubted(CarAtWork.Reason), CarAtWork.Start);
        Assert.Equal(HoldReason.UsedTheTool, Clear(hasUsed: true));
        Assert.Null(Clear());
    }

    [Fact]
    public void A_calibration_that_came_in_after_the_lines_were_shown_asks_to_look_again()
    {
        var shown = Tool.Number;
        shelf.Tell(TestTools.Click, new Doubted(CarAtWork.Reason), CarAtWork.Start);
        Assert.Equal(HoldReason.LookAgain, Refused(new ClearTool(CarAtWork.Reason, CarAtWork.Shown, shown), false));
    }

    [Fact]
    public void A_clock_set_back_does_not_let_a_pull_escape_a_doubt()
    {
        var work = new ToolWork(TestTools.Click, Today, CarAtWork.Start.AddDays(2), Tool.Number);
        shelf.Tell(TestTools.Click, new Doubted(CarAtWork.Reason), CarAtWork.Start);
        Assert.Single(Tool.DoubtsOn(work));
        Assert.Empty(Tool.DoubtsOn(work with { ToolEntry = Tool.Number }));
    }

    private void Calibrate(decimal found, decimal? left) => shelf.Tell(
        TestTools.Click,
        new Calibrated(Today, Today.AddDays(365), "Rig sheet", [new(100, found)], left is { } read ? [new(100, read)] : []),
        CarAtWork.Start);

    private HoldReason? Clear(bool hasUsed = false) => Refused(new ClearTool(CarAtWork.Reason, CarAtWork.Shown, Tool.Number), hasUsed);

    private HoldReason? Refused(ToolCommand command, bool hasUsed) =>
        Tool.Decide(TestTools.Click, command, Lee.Rights, Today, _ => hasUsed) is Verdict.Refused refused ? refused.Reasons[0].Reason : null;
}
