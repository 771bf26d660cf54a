using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook.Scenarios;

/// <summary>A crowfoot was set by the length that the procedure states, on a wrench of another length.</summary>
public class AdapterScenarios
{
    private const string Left = TestRegister.Left;
    private readonly CarAtWork car = new();

    private JointPosition Clamp => car.Positions(TestRegister.StrutClamp, Left)[0];

    [Fact]
    public void A_crowfoot_is_reckoned_by_the_length_of_the_tool_in_hand()
    {
        var job = ClampNext(TestProcedures.StrutWithCrowfoot());

        // F7: the dial wrench is 360 mm long, the crowfoot 20 mm: 76 x 380/360 = 80.222. By the 300 mm of the procedure it would be 81.067.
        var pull = car.Pull(Tess, job, "clamp", Clamp, 1, 76, TestTools.Dial);

        Assert.Empty(pull.Problems);
        Assert.Equal(Math.Round(360m / 380, 12), Math.Round(pull.Spec.SettingRatio!.Value, 12));
        Assert.Equal(80.222m, pull.AtFastener!.Value.Value);
    }

    [Fact]
    public void A_longer_wrench_set_as_the_procedures_own_is_not_set_as_instructed()
    {
        var longer = TestTools.StrangeEntered with { LengthMm = 500 };
        Enter(longer);
        var job = ClampNext(TestProcedures.StrutWithCrowfoot());

        // 80 x 500/520 = 76.92 on this wrench; 75 is right on the 300 mm of the procedure, and is 78 at the fastener here.
        Assert.Equal([HoldReason.SettingNotInstructed], car.Pull(Tess, job, "clamp", Clamp, 1, 75, TestTools.Strange).Problems);
    }

    [Fact]
    public void A_pull_with_a_tool_whose_length_nobody_entered_is_recorded_and_does_not_count()
    {
        Enter(TestTools.StrangeEntered);
        var job = ClampNext(TestProcedures.StrutWithCrowfoot());
        Assert.Equal([HoldReason.ToolLengthMissing], Against(job, TestTools.Strange));
        Assert.Empty(Against(job, TestTools.Click));

        Assert.Equal([HoldReason.ToolLengthMissing], car.Pull(Tess, job, "clamp", Clamp, 1, 75, TestTools.Strange).Problems);

        Assert.Equal(PositionState.Held, car.Shows(Clamp));
    }

    [Fact]
    public void Once_its_length_is_entered_the_next_pull_with_it_counts_and_the_earlier_one_does_not()
    {
        Enter(TestTools.StrangeEntered);
        var job = ClampNext(TestProcedures.StrutWithCrowfoot());
        car.Pull(Tess, job, "clamp", Clamp, 1, 75, TestTools.Strange);

        car.TellTool(TestTools.Strange, TestTools.StrangeEntered with { LengthMm = 300 });

        Assert.Equal(PositionState.Held, car.Shows(Clamp));
        car.Do(Lee, CarWork.Decision(Clamp, Disposition.Rework));
        car.Open(Tess, job, Clamp);
        car.Do(Tess, CarWork.Sign(job, $"out@{Left}"));
        car.ByHand(Tess, job, "clamp", Clamp);
        Assert.Empty(car.Pull(Tess, job, "clamp", Clamp, 1, 75, TestTools.Strange).Problems);
    }

    [Fact]
    public void A_length_entered_anew_leaves_the_records_of_before()
    {
        var job = ClampNext(TestProcedures.StrutWithCrowfoot());
        car.Pull(Tess, job, "clamp", Clamp, 1, 75);

        car.TellTool(TestTools.Click, Entered(TestTools.Click) with { LengthMm = 600 });

        var pull = car.State.Of(Clamp).Last!;
        Assert.Equal((80m, 0), (pull.AtFastener!.Value.Value, pull.Problems.Count));
    }

    [Theory]
    [InlineData(90)]
    [InlineData(0)]
    public void A_tool_without_a_length_may_pull_where_no_length_is_asked(double angle)
    {
        Enter(TestTools.StrangeEntered);
        var strut = TestProcedures.Strut();
        var job = ClampNext(angle == 0 ? strut : strut with { Groups = [strut.Groups[0], strut.Groups[1] with { Adapter = TestProcedures.Crowfoot(300, 20, angle) }] });

        Assert.Empty(Against(job, TestTools.Strange));
        Assert.Empty(car.Pull(Tess, job, "clamp", Clamp, 1, 80, TestTools.Strange).Problems);
    }

    [Fact]
    public void A_tool_too_short_for_an_adapter_turned_back_is_not_known_either()
    {
        Enter(TestTools.StrangeEntered with { LengthMm = 20 });
        var strut = TestProcedures.Strut();
        var job = ClampNext(strut with { Groups = [strut.Groups[0], strut.Groups[1] with { Adapter = TestProcedures.Crowfoot(300, 20, 180) }] });

        Assert.Equal([HoldReason.ToolLengthMissing], Against(job, TestTools.Strange));
    }

    [Fact]
    public void No_tool_with_its_length_entered_is_a_missing_wrench()
    {
        Enter(TestTools.StrangeEntered);
        ClampNext(TestProcedures.StrutWithCrowfoot());

        Assert.Equal(Blocker.Wrench, car.State.NextStepOf(car.As(Lee), [car.Tool(TestTools.Strange)], (_, _) => true)!.Blocker);
        Assert.Null(car.State.NextStepOf(car.As(Lee), [car.Tool(TestTools.Strange), car.Tool(TestTools.Click)], (_, _) => true)!.Blocker);
    }

    private IReadOnlyList<HoldReason> Against(JobId job, ToolId tool)
    {
        var clamp = car.Placed(job).Group("clamp", Left)!;
        return car.State.Against(car.As(Tess), car.State.Jobs[job], clamp, clamp.Group.Final, tool);
    }

    // The strut's top nuts are at torque: the clamp is next.
    private JobId ClampNext(Procedure procedure)
    {
        var job = car.StartJob(procedure, Left);
        var tops = car.Positions(TestRegister.StrutTop, Left);
        car.Open(Tess, job, [Clamp, .. tops]);
        car.Do(Tess, CarWork.Sign(job, $"out@{Left}"));
        car.ByHand(Tess, job, "tops", tops);
        car.ByHand(Tess, job, "clamp", Clamp);
        car.PullStage(Tess, job, "tops", Left, 1);
        return job;
    }

    private void Enter(ToolEntered tool)
    {
        car.TellTool(tool.Tool, tool);
        car.TellTool(tool.Tool, TestTools.Good(car.Today, car.Today.AddDays(365)));
    }

    private static ToolEntered Entered(ToolId id) =>
        (ToolEntered)TestTools.Logbooks(CarAtWork.Start, DateOnly.FromDateTime(CarAtWork.Start))[id][0].Entry;
}
