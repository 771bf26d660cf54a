using ShopJobs.Domain.Logbook;
using static ShopJobs.Domain.Tests.Logbook.ToolBook;

namespace ShopJobs.Domain.Tests.Logbook;

public sealed class ToolStandingTests
{
    private static readonly DateOnly Made = new(2026, 1, 9);
    private static readonly DateOnly Due = new(2027, 1, 9);

    [Theory]
    [InlineData(-31, ToolUse.InDate, "in date")]
    [InlineData(-30, ToolUse.DueSoon, "due in 30 days")]
    [InlineData(-1, ToolUse.DueSoon, "due in 1 day")]
    [InlineData(0, ToolUse.DueSoon, "due today")]
    [InlineData(1, ToolUse.Overdue, "overdue by 1 day")]
    [InlineData(40, ToolUse.Overdue, "overdue by 40 days")]
    public void The_due_day_is_the_last_day_of_use(int fromDue, ToolUse use, string words)
    {
        var standing = Tool(Calibrated(Made, 0, 1)).StandingOn(Due.AddDays(fromDue));

        Assert.Equal((use, words), (standing.Use, standing.Words));
        Assert.Equal(fromDue <= 0, standing.MayBeUsed);
    }

    [Fact]
    public void A_tool_without_a_certificate_may_not_be_used()
    {
        var standing = Tool().StandingOn(Made);

        Assert.Equal((ToolUse.NotCalibrated, "not calibrated", false), (standing.Use, standing.Words, standing.MayBeUsed));
    }

    [Fact]
    public void A_dropped_tool_is_out_of_use_until_it_is_cleared()
    {
        var dropped = Tool(Calibrated(Made, 0, 1), Quarantined(Noon));
        var cleared = Tool(Calibrated(Made, 0, 1), Quarantined(Noon), Cleared(Noon.AddDays(1)));

        Assert.Equal(ToolUse.OutOfUse, dropped.StandingOn(Made.AddDays(80)).Use);
        Assert.Equal(ToolUse.InDate, cleared.StandingOn(Made.AddDays(80)).Use);
    }

    [Fact]
    public void A_tool_found_bad_and_left_good_may_be_used_while_its_earlier_work_is_in_doubt()
    {
        var standing = Tool(Calibrated(Made, 0, 1), Calibrated(new DateOnly(2026, 3, 5), 0.91m, 1)).StandingOn(new DateOnly(2026, 3, 6));

        Assert.True(standing.MayBeUsed);
        Assert.True(standing.WorkInDoubt);
    }

    // The tool's class is 4 %: (set - read)/read, with both ends inside.
    [Theory]
    [InlineData(1, true)]
    [InlineData(0.97, true)]
    [InlineData(0.96, false)]
    [InlineData(1.04, true)]
    [InlineData(1.05, false)]
    public void Good_means_every_point_within_the_class_of_the_tool(double factor, bool good)
    {
        var found = Assert.Single(Tool(Calibrated(Made, (decimal)factor, 1)).Calibrations);
        var left = Assert.Single(Tool(Calibrated(Made, 1, (decimal)factor)).Calibrations);

        Assert.Equal((good, true), (found.Found!.Value, found.Left!.Value));
        Assert.Equal((true, good), (left.Found!.Value, left.Left!.Value));
    }

    [Fact]
    public void One_bad_point_makes_a_certificate_bad() => Assert.False(Assert.Single(Tool((Noon, new Calibrated(
        Made, Due, "Lab 12", [], [new(40, 40), new(110, 110), new(200, 185)]))).Calibrations).Left);

    [Fact]
    public void Without_readings_nothing_is_said_of_the_tool_and_it_may_not_be_used()
    {
        var tool = Tool(Calibrated(Made, 0, 0));

        Assert.Equal((null, null), (tool.Calibrations[0].Found, tool.Calibrations[0].Left));
        Assert.False(tool.StandingOn(Made).MayBeUsed);
    }

    [Fact]
    public void A_tool_left_bad_is_out_of_use() =>
        Assert.Equal(ToolUse.OutOfUse, Tool(Calibrated(Made, 1, 0.9m)).StandingOn(Made).Use);
}
