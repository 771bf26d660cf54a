using System.Text;
using Bunit;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.LogbookPages;
using ShopJobs.Web.Components.Procedures;
using ShopJobs.Web.Components.Step;
using UnitsNet;

namespace ShopJobs.Web.Tests.Step;

/// <summary>A stage that is turned by an angle, on the step's page and the procedure's: degrees throughout, never a torque.</summary>
public sealed class AngleStageTests : BunitContext
{
    [Fact]
    public void The_number_to_turn_by_is_in_degrees_with_its_range()
    {
        var panel = StepBench.Draw(this, Snug().Scene("turn"), TestTools.Angle);

        Assert.Equal("90°", panel.Find(".number-digits").TextContent);
        Assert.Equal("Stage 2 of 3. Turn on by", panel.Find(".number-what").TextContent);
        Assert.Contains("permitted 85 to 95°", panel.Find(".number-range").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("N·m", panel.Find(".number").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void The_keypad_takes_degrees_and_no_other_unit()
    {
        var pad = StepBench.Draw(this, Snug().Scene("turn"), TestTools.Angle).Find("[data-keypad]");

        Assert.Equal("°", pad.QuerySelector(".keypad-unit")!.TextContent);
        Assert.Equal("WA has turned", pad.QuerySelector("label")!.TextContent);
        Assert.Equal("reading", pad.GetAttribute("data-mode"));
        Assert.Equal("ENTER", pad.QuerySelector(".keypad-enter")!.TextContent);
        var guard = pad.GetAttribute("data-guard")!;
        Assert.Contains("\"least\":63.0,\"most\":117.0", guard, StringComparison.Ordinal);
        Assert.Contains("\"alike\":[]", guard, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("91.5", 91.5)]
    [InlineData("91,5", 91.5)]
    public async Task What_is_typed_is_reported_as_an_angle(string typed, double degrees)
    {
        var bench = Snug();
        var pad = PadOf(bench.Scene("turn"));

        var sent = await CellReport.ReadAsync(new MemoryStream(Encoding.UTF8.GetBytes(pad.Report)), default);
        var (command, problem) = (sent! with { Value = typed }).ToCommand();

        Assert.Null(problem);
        var pull = Assert.IsType<RecordTorque>(command);
        Assert.Equal((TorqueKind.AngleTurned, null, (decimal)degrees), (pull.Kind, pull.Value, pull.AngleDegrees));
        Assert.Empty(((TorqueRecorded)bench.Car.Do(TestPerson.Tess, pull)).Problems);
    }

    [Theory]
    [InlineData("")]
    [InlineData("-90")]
    [InlineData("9e1")]
    [InlineData("90 N·m")]
    [InlineData("1.100,5")]
    [InlineData("99999")]
    [InlineData("<b>90</b>")]
    public async Task What_is_no_angle_is_not_taken_and_says_so(string typed)
    {
        var sent = await CellReport.ReadAsync(new MemoryStream(Encoding.UTF8.GetBytes(PadOf(Snug().Scene("turn")).Report)), default);

        var (command, problem) = (sent! with { Value = typed }).ToCommand();

        Assert.Null(command);
        Assert.NotEmpty(problem!);
    }

    [Fact]
    public void Wrenches_without_an_angle_are_refused_with_their_reason()
    {
        var panel = StepBench.Draw(this, Snug().Scene("turn"));

        var refused = panel.FindAll(".tool-offer[disabled]").Select(offer => offer.TextContent).ToList();
        Assert.Equal(4, refused.Count);
        Assert.All(refused, text => Assert.Contains("it does not measure the angle turned", text, StringComparison.Ordinal));
        Assert.Contains("WA", Assert.Single(panel.FindAll(".tool-offer:not([disabled])")).TextContent, StringComparison.Ordinal);
        Assert.Empty(panel.FindAll("[data-keypad]"));
    }

    [Fact]
    public void Records_and_the_last_entry_say_degrees()
    {
        var bench = Snug();
        var bolt = bench.Car.Positions(TestRegister.StrutTop, TestRegister.Left)[0];
        bench.Car.Turn(TestPerson.Tess, bench.Job, "bolts", bolt, 2, 91.5m);

        Assert.Equal("turned 91.5°", RecordWords.Of(bench.Car.State.Of(bolt).Last!));
        var last = LastEntry.Of(bench.Scene("turn"))!;
        Assert.EndsWith("stage 2, 91.5°", last.Words, StringComparison.Ordinal);
        // An angle is never restated.
        Assert.Null(last.Unit);
    }

    [Fact]
    public void Undoing_an_angle_says_first_that_the_bolt_may_be_turned_already_and_then_holds_it()
    {
        var bench = Snug();
        var bolt = bench.Car.Positions(TestRegister.StrutTop, TestRegister.Left)[0];
        bench.Car.Turn(TestPerson.Tess, bench.Job, "bolts", bolt, 2, 90);

        var undo = StepDialogs.Undo(LastEntry.Of(bench.Scene("turn"))!);
        Assert.EndsWith("voiding its record holds it. Do not turn it again before the lead has decided.", undo.About, StringComparison.Ordinal);
        Assert.Equal("VOID AND HOLD IT", undo.Verb);

        bench.Car.Do(TestPerson.Tess, new VoidEntry(bench.Car.Last, true, CarAtWork.Reason));
        var held = Render<HeldPanel>(parameters => parameters.Add(panel => panel.Scene, bench.Scene("turn")));
        Assert.Contains("do not turn it again before it is decided", held.Find("li").TextContent, StringComparison.Ordinal);
        var work = StepBench.Draw(this, bench.Scene("turn"));
        Assert.Contains("is held", work.Markup, StringComparison.Ordinal);
        Assert.Empty(work.FindAll("[data-keypad], .number-digits"));
    }

    [Fact]
    public void Undoing_a_torque_says_nothing_of_turning()
    {
        var bench = Snug();
        var undo = StepDialogs.Undo(LastEntry.Of(bench.Scene("snug"))!);

        Assert.Equal("VOID IT", undo.Verb);
        Assert.DoesNotContain("turn", undo.About, StringComparison.Ordinal);
    }

    [Fact]
    public void Whoever_confirms_the_void_reads_what_that_says_of_the_bolt()
    {
        var bench = Snug();
        var bolt = bench.Car.Positions(TestRegister.StrutTop, TestRegister.Left)[0];
        bench.Car.Turn(TestPerson.Tess, bench.Job, "bolts", bolt, 2, 90);
        bench.Car.Do(TestPerson.Tess, new VoidEntry(bench.Car.Last, true, CarAtWork.Reason));
        var correction = bench.Car.State.Corrections[bench.Car.Last];

        Assert.StartsWith("Confirm it only where the bolt was never turned", CorrectionUse.AboutTurn(bench.Car.State, correction.Fact), StringComparison.Ordinal);
        Assert.Null(CorrectionUse.AboutTurn(bench.Car.State, new CorrectionConfirmed(correction.Number, CarAtWork.Reason)));
    }

    [Fact]
    public void The_procedure_shows_the_stages_with_their_ranges_and_what_the_angle_does()
    {
        var procedure = TestProcedures.Head();

        var panel = Render<GroupPanel>(parameters => parameters.Add(one => one.Procedure, procedure).Add(one => one.Group, procedure.Groups[0]));

        Assert.Contains("40 N·m, then +90°, then +90°", panel.Markup, StringComparison.Ordinal);
        Assert.Equal(
            ["1 of 3: 40 N·m", "2 of 3: +90°", "3 of 3, final: +90°"],
            panel.FindAll(".stage-table tbody tr").Select(row => $"{row.QuerySelector("th")!.TextContent}: {row.QuerySelector("[data-label=Target]")!.TextContent}"));
        Assert.Contains("85 to 95°", panel.FindAll("[data-label=Permitted]")[1].TextContent, StringComparison.Ordinal);
        Assert.Equal("one that reads the angle", panel.FindAll("[data-label=Tool]")[1].TextContent);
        Assert.Contains("Clamp load at 40 N·m, before it is turned", panel.Find("h4").TextContent, StringComparison.Ordinal);
        Assert.Contains("40 N·m only snugs the joint", panel.Markup, StringComparison.Ordinal);
        Assert.Equal(
            ["Set 40 N·m, permitted 38 to 42 N·m", "Turn +90°, permitted 85 to 95°", "Turn +90°, permitted 85 to 95°"],
            panel.FindAll("svg.torque-line").Select(line => line.GetAttribute("aria-label")));
    }

    [Fact]
    public void The_procedure_says_nut_thread_and_face_where_they_are_stated()
    {
        var group = TestProcedures.Head().Groups[0];

        Assert.Equal("", group.MatingWords());
        Assert.Equal(
            "Nut of class 10. Engaged over 12.5 mm, tensile strength 290 MPa. The face bears 220 MPa.",
            (group with
            {
                Nut = NutClass.Parse("10"),
                Engaged = new EngagedThread(Length.FromMillimeters(12.5), Pressure.FromMegapascals(290)),
                BearingLimit = Pressure.FromMegapascals(220),
            }).MatingWords());
    }

    [Fact]
    public void Who_witnesses_an_angle_looks_at_the_marks_and_puts_no_wrench_on()
    {
        var bench = Snug();
        foreach (var bolt in bench.Car.Positions(TestRegister.StrutTop, TestRegister.Left))
        {
            bench.Car.Turn(TestPerson.Tess, bench.Job, "bolts", bolt, 2, 90m);
        }

        Assert.Equal(["the paint marks, every one"], WaysToLook(bench.Scene("turn")));
    }

    [Fact]
    public void Who_witnesses_a_torque_that_may_be_pulled_again_may_look_at_the_first_movement_too()
    {
        var bench = StepBench.Wheel().HandTight();
        bench.Car.PullStage(TestPerson.Tess, bench.Job, "nuts", TestRegister.Left, 1);
        bench.Car.Do(TestPerson.Tess, CarWork.Sign(bench.Job, $"seat@{TestRegister.Left}"));
        bench.Car.Declare(TestRegister.WheelDown);
        bench.Car.PullStage(TestPerson.Tess, bench.Job, "nuts", TestRegister.Left, 2);

        Assert.Equal(["first movement with a wrench", "the paint marks, every one"], WaysToLook(bench.Scene("final")));
    }

    [Fact]
    public void Only_a_final_stage_reads_at_torque()
    {
        var bench = Snug();
        Assert.Equal("Stage 1 done", StepBench.Draw(this, bench.Scene("snug")).Find(".work-word").TextContent);

        var bar = StepBench.With(TestProcedures.Link(), TestRegister.Front);
        var link = bar.Car.Positions(TestRegister.BarLink, TestRegister.Front);
        bar.Car.Open(TestPerson.Tess, bar.Job, link);
        bar.Car.ByHand(TestPerson.Tess, bar.Job, "link", link);
        Assert.Equal("Run down by hand", StepBench.Draw(this, bar.Scene("by-hand", place: TestRegister.Front)).Find(".work-word").TextContent);
    }

    private List<string> WaysToLook(StepScene scene) => [.. Render<WitnessPanel>(parameters => parameters.Add(panel => panel.Scene, scene)).FindAll("small").Select(way => way.TextContent.Trim())];

    private static KeypadCell PadOf(StepScene scene) =>
        new(scene, ((NextAction.PullNow)scene.Next).Cell, StepBench.Offer(scene, TestTools.Angle));

    // Both bolts new, hand-tight and at 40 N·m: the first turn is next.
    private static StepBench Snug()
    {
        var bench = StepBench.With(TestProcedures.Head());
        var bolts = bench.Car.Positions(TestRegister.StrutTop, TestRegister.Left);
        bench.Car.Open(TestPerson.Tess, bench.Job, bolts);
        bench.Car.FitNew(TestPerson.Tess, bench.Job, "bolts", bolts);
        bench.Car.ByHand(TestPerson.Tess, bench.Job, "bolts", bolts);
        foreach (var bolt in bolts)
        {
            bench.Car.Pull(TestPerson.Tess, bench.Job, "bolts", bolt, 1, 40, TestTools.Dial);
        }

        bench.Car.Do(TestPerson.Tess, CarWork.Sign(bench.Job, $"snug@{TestRegister.Left}"));
        return bench;
    }
}
