using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Logbook;

public sealed class ToolRefusalTests
{
    private static readonly DateOnly Today = new(2026, 6, 1);
    private static readonly DateOnly Spring = new(2026, 3, 1);

    [Fact]
    public void Tool_that_nobody_entered_takes_no_calibration() =>
        Assert.Equal("This tool is not entered yet: enter its range and graduation first", Said(ToolState.Empty, Calibration(Spring)));

    [Fact]
    public void Tools_are_the_leads_to_keep() => Assert.Equal(
        "Only the lead enters tools, calibrations and doubts: ask the lead", Said(ToolBook.Tool(), new RaiseDoubt(CarAtWork.Reason), TestPerson.Tess));

    [Fact]
    public void Tool_with_calibrations_keeps_its_unit() => Assert.Equal(
        "W7 has calibrations in N·m: enter a tool in another unit as a new tool",
        Said(Calibrated(), new EnterTool(new TorqueTool(null, "W7", "S-71", ToolKind.Click, TorqueUnit.PoundForceFoot, 30, 150, 1, 4))));

    [Fact]
    public void Tool_that_is_in_use_and_not_in_doubt_has_nothing_to_clear() =>
        Assert.Equal("This tool is neither in doubt nor out of use: use it", Said(Calibrated(), new ClearTool(CarAtWork.Reason, CarAtWork.Shown, 0)));

    [Fact]
    public void Calibration_of_tomorrow_is_not_entered() => Assert.Equal(
        "The calibration is dated 2 Jun 2026, after today: read the certificate's date again", Said(Calibrated(), Calibration(Today.AddDays(1))));

    [Fact]
    public void Calibration_before_the_last_good_one_is_not_entered() => Assert.Equal(
        "A calibration of 1 Mar 2026 is entered already: enter the newest certificate", Said(Calibrated(), Calibration(Spring.AddDays(-1))));

    private static ToolState Calibrated() => ToolBook.Tool(ToolBook.Calibrated(Spring, 1, 1));

    private static Calibrate Calibration(DateOnly date) => new(new Calibration(date, date.AddYears(1), "Lab 12", [], [new(110, 110)]), CarAtWork.Shown, 0);

    private static string Said(ToolState tool, ToolCommand command, TestPerson? person = null)
    {
        var asked = command is SignedToolCommand signed ? signed with { AsOf = tool.Number } : command;
        var verdict = tool.Decide(ToolBook.Wrench, asked, (person ?? TestPerson.Lee).Rights, Today, _ => false);
        return HoldWords.Say(Assert.Single(Assert.IsType<Verdict.Refused>(verdict).Reasons), HoldNames.Plain).ToString();
    }
}
