using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>A tool's own logbook judges what was tightened with it, on every car.</summary>
public class ToolInDoubtTests
{
    private const string Left = TestRegister.Left;
    private readonly CarAtWork car = new();
    private readonly IReadOnlyList<JointPosition> nuts;

    public ToolInDoubtTests() => nuts = car.Positions(TestRegister.Nut, Left);

    [Fact]
    public void A_doubt_holds_every_nut_tightened_since_the_last_good_calibration_at_once()
    {
        var job = car.FitLeftWheel();
        var before = car.Last;
        car.TellTool(TestTools.Click, new Doubted(CarAtWork.Reason));
        Assert.Equal(before, car.Last);
        Assert.All(nuts, nut => Assert.Equal(PositionState.Doubted, car.Shows(nut)));
        Assert.Contains(HoldReason.ToolInDoubt, car.Refused(Lee, To(ReleaseKind.Road)));
        Assert.Equal([HoldReason.OwnWork], car.Refused(Tess with { Rights = Lee.Rights }, Decision(nuts[0], Disposition.Rework)));
        car.Do(Theo, Decision(nuts[0], Disposition.UseAsIs, accepted: true));
        Assert.Equal(PositionState.Checked, car.Shows(nuts[0]));
        car.Do(Theo, Decision(nuts[1], Disposition.Rework));
        Assert.Equal(PositionState.Held, car.Shows(nuts[1]));
        car.Open(Tess, job, nuts);
        Assert.Equal(PositionState.Open, car.Shows(nuts[1]));
    }

    [Fact]
    public void A_cleared_doubt_lets_go_of_the_nuts()
    {
        car.FitLeftWheel();
        car.TellTool(TestTools.Click, new Doubted(CarAtWork.Reason));
        car.TellTool(TestTools.Click, new Cleared([3], CarAtWork.Reason));
        Assert.All(nuts, nut => Assert.Equal(PositionState.Checked, car.Shows(nut)));
    }

    [Fact]
    public void A_bad_as_found_calibration_doubts_what_came_before_it_and_not_what_comes_after()
    {
        var job = car.FitLeftWheel();
        car.TellTool(TestTools.Click, new Calibrated(car.Today, car.Today.AddDays(365), "Rig sheet", [new(110, 100)], [new(100, 100)]));
        Assert.Equal(PositionState.Doubted, car.Shows(nuts[0]));
        car.Open(Tess, job, nuts);
        car.Do(Tess, CarWork.Sign(job, $"faces@{Left}", "clean"));
        car.Declare(TestRegister.WheelUp);
        car.ByHand(Tess, job, "nuts", nuts);
        car.PullStage(Tess, job, "nuts", Left, 1);
        Assert.Equal(PositionState.Staged, car.Shows(nuts[0]));
    }

    [Fact]
    public void A_pull_before_the_last_good_calibration_is_not_in_doubt()
    {
        car.FitLeftWheel();
        car.Wait(TimeSpan.FromDays(2));
        car.TellTool(TestTools.Click, TestTools.Good(car.Today.AddDays(-1), car.Today.AddDays(364)));
        car.TellTool(TestTools.Click, new Doubted(CarAtWork.Reason));
        Assert.Equal(PositionState.Checked, car.Shows(nuts[0]));
    }

    [Theory]
    [InlineData(3, HoldReason.ToolOverdue)]
    [InlineData(4, HoldReason.ToolOutOfRange)]
    [InlineData(9, HoldReason.ToolUnknown)]
    public void A_pull_with_the_wrong_tool_does_not_count(int tool, HoldReason problem)
    {
        var job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), Left);
        car.Do(Tess, Sign(job, $"faces@{Left}", "clean"));
        car.Declare(TestRegister.WheelUp);
        car.Open(Tess, job, nuts);
        car.ByHand(Tess, job, "nuts", nuts);
        Assert.Equal([problem], car.Pull(Tess, job, "nuts", nuts[0], 1, 50, new ToolId(new Guid(tool, 1, 0, new byte[8]))).Problems);
    }

    [Fact]
    public void A_quarantined_tool_counts_again_after_its_calibration()
    {
        var job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), Left);
        car.Do(Tess, Sign(job, $"faces@{Left}", "clean"));
        car.Declare(TestRegister.WheelUp);
        car.Open(Tess, job, nuts);
        car.ByHand(Tess, job, "nuts", nuts);
        car.TellTool(TestTools.Click, new Quarantined(CarAtWork.Reason));
        Assert.Equal([HoldReason.ToolQuarantined], car.Pull(Tess, job, "nuts", nuts[0], 1, 50).Problems);
        car.TellTool(TestTools.Click, TestTools.Good(car.Today, car.Today.AddDays(365)));
        car.Do(Theo, Decision(nuts[0], Disposition.Rework));
        car.Open(Tess, job, nuts);
        car.Do(Tess, Sign(job, $"faces@{Left}", "clean"));
        car.ByHand(Tess, job, "nuts", nuts);
        Assert.Empty(car.Pull(Tess, job, "nuts", nuts[0], 1, 50).Problems);
    }

    [Fact]
    public void A_calibration_is_good_to_the_end_of_its_last_day()
    {
        var tool = car.Tool(TestTools.Overdue);
        Assert.True(tool.IsCalibratedOn(car.Today.AddDays(-1)));
        Assert.False(tool.IsCalibratedOn(car.Today));
        Assert.True(tool.IsCalibratedOn(car.Today.AddDays(-366)));
        Assert.False(tool.IsCalibratedOn(car.Today.AddDays(-367)));
    }

    [Fact]
    public void A_wrench_that_shows_nothing_gives_no_reading()
    {
        var job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), Left);
        car.Do(Tess, Sign(job, $"faces@{Left}", "clean"));
        car.Declare(TestRegister.WheelUp);
        car.Open(Tess, job, nuts);
        car.ByHand(Tess, job, "nuts", nuts);
        var reading = new RecordTorque(job, "nuts", nuts[0], 1, 1, 0, TorqueKind.Reading, CarAtWork.NewtonMetres(50), TestTools.Click, []);
        Assert.Equal([HoldReason.EvidenceNotAllowed], ((TorqueRecorded)car.Do(Tess, reading)).Problems);
    }
}
