using System.Text;
using Bunit;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Step;

namespace ShopJobs.Web.Tests.Step;

/// <summary>The number to set where an adapter or a run-down torque stands between it and the instruction.</summary>
public sealed class SettingOnTheToolTests : BunitContext
{
    [Fact]
    public void Crowfoot_changes_the_number_to_set_and_says_for_what()
    {
        var panel = StepBench.Draw(this, Clamp().Scene("in"), TestTools.Click);

        // F7: 80 x 300/320 = 75.
        Assert.Equal("75", panel.Find(".number-digits").TextContent);
        Assert.Contains("permitted at the fastener 75 to 85 N·m", panel.Find(".number-range").TextContent, StringComparison.Ordinal);
        Assert.Contains(
            "for 80 N·m at the fastener: crowfoot, 20 mm straight out, on W7 of 300 mm with the hand at its mark",
            panel.Find(".number").TextContent,
            StringComparison.Ordinal);
        Assert.Contains("\"instructed\":75.0", panel.Find("[data-keypad]").GetAttribute("data-guard"), StringComparison.Ordinal);
    }

    [Fact]
    public void That_the_tool_is_set_as_shown_is_one_touch()
    {
        var panel = StepBench.Draw(this, Clamp().Scene("in"), TestTools.Click);

        Assert.Equal(("75", "W7 is set to 75 N·m"), (panel.Find("[data-keypad-set]").GetAttribute("data-keypad-set"), panel.Find("[data-keypad-set]").TextContent));
    }

    [Fact]
    public void A_tool_that_shows_its_reading_is_read_and_not_set() =>
        Assert.Empty(StepBench.Draw(this, StepBench.Wheel().HandTight().Scene("seat"), TestTools.Dial).FindAll("[data-keypad-set]"));

    [Fact]
    public void The_number_to_set_is_by_the_length_of_the_tool_in_hand()
    {
        var bench = Clamp();
        bench.Car.TellTool(TestTools.Click, TestTools.StrangeEntered with { Tool = TestTools.Click, Name = "W7", LengthMm = 500 });

        var panel = StepBench.Draw(this, bench.Scene("in"), TestTools.Click);

        // F7: 80 x 500/520 = 76.92, to the graduation of one.
        Assert.Equal("77", panel.Find(".number-digits").TextContent);
        Assert.Contains("on W7 of 500 mm", panel.Find(".number").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tool_whose_length_nobody_entered_is_not_offered_and_says_why()
    {
        var bench = Clamp();
        bench.Car.TellTool(TestTools.Click, TestTools.StrangeEntered with { Tool = TestTools.Click, Name = "W7" });

        var panel = StepBench.Draw(this, bench.Scene("in"), null);

        var offer = panel.FindAll(".tool-offer").Single(tool => tool.QuerySelector(".tool-name")!.TextContent == "W7");
        Assert.True(offer.HasAttribute("disabled"));
        Assert.Contains("the tool's own length is not entered", offer.QuerySelector(".tool-why")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Choose the tool first", panel.Find(".number").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Record_through_a_crowfoot_keeps_both_numbers()
    {
        var bench = Clamp();
        bench.Car.Pull(TestPerson.Tess, bench.Job, "clamp", bench.Car.Positions(TestRegister.StrutClamp, TestRegister.Left)[0], 1, 75);

        var pull = bench.Car.State.Of(bench.Car.Positions(TestRegister.StrutClamp, TestRegister.Left)[0]).Last!;
        Assert.Equal("clicked at 75 N·m, 80 N·m at the fastener", RecordWords.Of(pull));
    }

    [Fact]
    public void Run_down_torque_is_asked_for_before_there_is_a_number_to_type()
    {
        var panel = StepBench.Draw(this, Link().Scene("torque", place: TestRegister.Front), TestTools.Dial);

        Assert.Empty(panel.FindAll("[data-keypad]"));
        Assert.Contains("Run-down torque of bar link front 1", panel.Find(".run-down label").TextContent, StringComparison.Ordinal);
        Assert.Empty(panel.FindAll(".number-digits"));
        Assert.Contains("Read the run-down torque first", panel.Find(".number").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_down_torque_outside_its_range_is_not_taken_and_says_what_to_do()
    {
        RunDownTyped? read = null;
        var panel = RunDown(Link(), typed => read = typed);

        panel.Find("#run-down").Input("12");
        panel.Find("form").Submit();

        Assert.Null(read);
        Assert.Contains("12 N·m is above the permitted 2 to 10 N·m", panel.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Contains("HOLD, CALL LEAD", panel.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        // A message that is bare text in its place is taken for none and not shown.
        Assert.NotEmpty(panel.FindAll("#run-down-wrong > *"));
    }

    [Fact]
    public async Task Run_down_torque_read_is_in_the_number_and_in_the_report()
    {
        RunDownTyped? read = null;
        var bench = Link();
        var panel = RunDown(bench, typed => read = typed);
        panel.Find("#run-down").Input("4,2");
        panel.Find("form").Submit();

        Assert.Equal(read, RunDownTyped.Read(read!.Text));
        var scene = bench.Scene("torque", place: TestRegister.Front);
        var pad = new KeypadCell(scene, CellOf(scene), StepBench.Offer(scene, TestTools.Dial), read);
        // 42 + 4.2, to the wrench's graduation of one.
        Assert.Equal(46m, pad.ToSet.NewtonMetres);
        Assert.Contains("\"runDown\":\"4.2\"", pad.Report, StringComparison.Ordinal);
        var sent = await CellReport.ReadAsync(new MemoryStream(Encoding.UTF8.GetBytes(pad.Report)), default);
        var (command, problem) = (sent! with { Value = "46.2" }).ToCommand();
        Assert.Null(problem);
        Assert.Equal(new EnteredTorque(4.2m, TorqueUnit.NewtonMetre), ((RecordTorque)command!).RunDown);
        Assert.Empty(((TorqueRecorded)bench.Car.Do(TestPerson.Tess, command)).Problems);
    }

    [Fact]
    public void Run_down_torque_that_is_recorded_is_not_asked_for_again()
    {
        var bench = Link();
        bench.Car.Do(TestPerson.Tess, Pulled(bench));

        var scene = bench.Scene("torque", place: TestRegister.Front);
        var pad = new KeypadCell(scene, CellOf(scene), StepBench.Offer(scene, TestTools.Dial));

        Assert.Equal((2, false, 65m), (pad.Cell.Stage.Number, pad.WaitsForRunDown, pad.ToSet.NewtonMetres));
        Assert.DoesNotContain("runDown", pad.Report, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_self_locking_nut_has_its_own_setting()
    {
        var scene = Link().Scene("torque", place: TestRegister.Front);
        Assert.Contains("/front/1/1/1/", new KeypadCell(scene, CellOf(scene), StepBench.Offer(scene, TestTools.Dial)).SettingKey, StringComparison.Ordinal);
    }

    private static Cell CellOf(StepScene scene) => ((NextAction.PullNow)scene.Next).Cell;

    private static RecordTorque Pulled(StepBench bench) => new(
        bench.Job, "link", new JointPosition(TestRegister.BarLink, TestRegister.Front, 1), 1, 1, 0, TorqueKind.Reading, CarAtWork.NewtonMetres(47), TestTools.Dial, [])
    { RunDown = CarAtWork.NewtonMetres(5) };

    // The strut's top nuts are at torque: the clamp is next.
    private static StepBench Clamp()
    {
        var bench = StepBench.With(TestProcedures.StrutWithCrowfoot());
        var (tops, clamp) = (bench.Car.Positions(TestRegister.StrutTop, TestRegister.Left), bench.Car.Positions(TestRegister.StrutClamp, TestRegister.Left));
        bench.Car.Open(TestPerson.Tess, bench.Job, [.. clamp, .. tops]);
        bench.Car.Do(TestPerson.Tess, CarWork.Sign(bench.Job, $"out@{TestRegister.Left}"));
        bench.Car.ByHand(TestPerson.Tess, bench.Job, "tops", tops);
        bench.Car.ByHand(TestPerson.Tess, bench.Job, "clamp", clamp);
        bench.Car.PullStage(TestPerson.Tess, bench.Job, "tops", TestRegister.Left, 1);
        return bench;
    }

    private static StepBench Link()
    {
        var bench = StepBench.With(TestProcedures.LinkWithRunDown(), TestRegister.Front);
        var link = bench.Car.Positions(TestRegister.BarLink, TestRegister.Front);
        bench.Car.Open(TestPerson.Tess, bench.Job, link);
        bench.Car.ByHand(TestPerson.Tess, bench.Job, "link", link);
        bench.Car.Do(TestPerson.Tess, CarWork.Sign(bench.Job, $"by-hand@{TestRegister.Front}"));
        return bench;
    }

    private IRenderedComponent<RunDownPanel> RunDown(StepBench bench, Action<RunDownTyped> read) => Render<RunDownPanel>(parameters => parameters
        .Add(panel => panel.Cell, CellOf(bench.Scene("torque", place: TestRegister.Front)))
        .Add(panel => panel.Name, "bar link front 1")
        .Add(panel => panel.OnRead, read));
}
