using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using static ShopJobs.Domain.Tests.Logbook.ToolBook;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>A calibration entered by mistake, a tool out of use for good, and dates that are slips.</summary>
public class ToolWithdrawnTests
{
    private static readonly DateOnly January = new(2026, 1, 9);
    private static readonly DateOnly Today = DateOnly.FromDateTime(Noon);
    private static readonly ContentDigest Why = new(new string('a', 64));

    [Fact]
    public void Withdrawn_calibration_puts_the_tool_out_of_use_and_the_work_that_relied_on_it_in_doubt()
    {
        var tool = Tool(Calibrated(January, 0, 1), Withdrawn(2));

        Assert.Equal((ToolUse.OutOfUse, true), (tool.StandingOn(Today).Use, tool.StandingOn(Today).WorkInDoubt));
        Assert.Null(tool.LastGood);
        Assert.Null(tool.Tool!.Calibration);
        Assert.Equal(3, Assert.Single(tool.Calibrations).WithdrawnBy);
        Assert.NotEmpty(tool.DoubtsOn(new ToolWork(Wrench, January.AddDays(1), Noon.AddDays(-1), 2)));
        Assert.Empty(tool.DoubtsOn(new ToolWork(Wrench, January.AddDays(-1), Noon.AddDays(-80), 1)));
    }

    [Fact]
    public void The_calibration_before_is_in_force_again_and_the_next_one_puts_the_tool_in_use()
    {
        var earlier = new DateOnly(2025, 6, 1);
        var withdrawn = Tool(Calibrated(earlier, 0, 1), Calibrated(January, 0, 1), Withdrawn(3));
        var next = Tool(Calibrated(earlier, 0, 1), Calibrated(January, 0, 1), Withdrawn(3), Calibrated(Today, 1, 1));

        Assert.Equal((earlier, 2L, 4L), (withdrawn.LastGood!.Date, withdrawn.LastGoodBy, withdrawn.OutOfUseBy));
        Assert.Equal(ToolUse.InDate, next.StandingOn(Today).Use);
        Assert.IsType<Verdict.Accepted>(Decide(next, new ClearTool(Why, "", next.Number)));
    }

    [Fact]
    public void Withdrawn_readings_as_found_prove_nothing()
    {
        var doubted = Tool(Calibrated(January, 0, 1), Doubted(Noon), Calibrated(Today, 1, 1));
        var withdrawn = Tool(Calibrated(January, 0, 1), Doubted(Noon), Calibrated(Today, 1, 1), Withdrawn(4));

        Assert.True(doubted.WasFoundGoodSince(doubted.Doubts[0]));
        Assert.False(withdrawn.WasFoundGoodSince(withdrawn.Doubts[0]));
    }

    [Fact]
    public void One_that_was_not_left_good_brings_no_doubt_with_it() => Assert.Empty(Tool(Calibrated(January, 0, 2), Withdrawn(2)).Doubts);

    [Fact]
    public void Only_a_calibration_that_stands_is_withdrawn_and_only_by_the_lead()
    {
        var tool = Tool(Calibrated(January, 0, 1));
        var gone = Tool(Calibrated(January, 0, 1), Withdrawn(2));

        Assert.Equal(new CalibrationWithdrawn(2, Why), Assert.Single(Assert.IsType<Verdict.Accepted>(Decide(tool, new WithdrawCalibration(2, Why, "", 2))).Entries));
        Assert.Equal(HoldReason.NothingToWithdraw, Refused(tool, new WithdrawCalibration(1, Why, "", 2)));
        Assert.Equal(HoldReason.NothingToWithdraw, Refused(gone, new WithdrawCalibration(2, Why, "", 3)));
        Assert.Equal(HoldReason.LookAgain, Refused(tool, new WithdrawCalibration(2, Why, "", 1)));
        Assert.Equal(HoldReason.LeadKeepsTools, Refused(tool, new WithdrawCalibration(2, Why, "", 2), Right.Record));
    }

    [Fact]
    public void Retired_tool_is_out_of_use_for_good_until_it_is_brought_back_and_calibrated()
    {
        var retired = Tool(Calibrated(January, 0, 1), Retired);
        var back = Tool(Calibrated(January, 0, 1), Retired, Back);

        Assert.Equal((ToolUse.Retired, "out of use for good", false), (retired.StandingOn(Today).Use, retired.StandingOn(Today).Words, retired.StandingOn(Today).MayBeUsed));
        Assert.Equal(HoldReason.ToolRetired, Refused(retired, new Calibrate(Of(Today, Today.AddYears(1)), "", 3)));
        Assert.Equal(HoldReason.ToolRetired, Refused(retired, new ClearTool(Why, "", 3)));
        Assert.Equal(HoldReason.ToolRetired, Refused(retired, new RetireTool(Why)));
        Assert.Equal(new ToolBroughtBack(Why), Assert.Single(Assert.IsType<Verdict.Accepted>(Decide(retired, new BringToolBack(Why))).Entries));
        Assert.Equal(HoldReason.NotRetired, Refused(back, new BringToolBack(Why)));
        Assert.Equal(ToolUse.OutOfUse, back.StandingOn(Today).Use);
        Assert.Equal(ToolUse.InDate, Tool(Calibrated(January, 0, 1), Retired, Back, Calibrated(Today, 0, 1)).StandingOn(Today).Use);
    }

    [Fact]
    public void Recall_of_a_retired_tool_still_works()
    {
        var (car, entries) = Car(Noon, at => Pull(1, at));
        var retired = Tool(Calibrated(January, 0, 1), Retired, Doubted(Noon.AddDays(1)));

        Assert.True(Assert.Single(retired.Trace(Wrench, car, entries)).InDoubt);
        Assert.Equal(ToolUse.Retired, retired.StandingOn(Today).Use);
    }

    [Theory]
    [InlineData("1900-01-01", "2027-01-01", HoldReason.CalibrationTooOld)]
    [InlineData("2021-03-01", "2021-09-01", HoldReason.CalibrationTooOld)]
    [InlineData("2026-03-01", "2029-03-02", HoldReason.CalibrationTooLong)]
    [InlineData("2026-03-03", "2027-03-01", HoldReason.CalibrationAhead)]
    public void Slip_in_a_date_is_refused(string date, string due, HoldReason reason) =>
        Assert.Equal(reason, Refused(Tool(), new Calibrate(Of(Day(date), Day(due)), "", 1)));

    [Theory]
    [InlineData("2021-03-02", "2022-03-02")]
    [InlineData("2026-03-01", "2029-03-01")]
    [InlineData("2026-03-02", "2026-03-02")]
    public void Dates_at_the_edge_are_taken(string date, string due) =>
        Assert.IsType<Verdict.Accepted>(Decide(Tool(), new Calibrate(Of(Day(date), Day(due)), "", 1)));

    private static (DateTime At, Entry Entry) Retired => (Noon, new ToolRetired(Why));

    private static (DateTime At, Entry Entry) Back => (Noon.AddHours(1), new ToolBroughtBack(Why));

    private static (DateTime At, Entry Entry) Withdrawn(long number) => (Noon, new CalibrationWithdrawn(number, Why));

    private static DateOnly Day(string text) => DateOnly.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    private static Calibration Of(DateOnly date, DateOnly due) => new(date, due, "Lab 12", [], [new CalibrationPoint(110, 110)]);

    private static Verdict Decide(ToolState tool, ToolCommand command, Right right = Right.Lead) =>
        tool.Decide(Wrench, command, new HashSet<Right> { right }, Today, _ => false);

    private static HoldReason Refused(ToolState tool, ToolCommand command, Right right = Right.Lead) =>
        Assert.Single(Assert.IsType<Verdict.Refused>(Decide(tool, command, right)).Reasons).Reason;
}
