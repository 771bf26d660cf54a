using Bunit;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.Step;

namespace ShopJobs.Web.Tests.Step;

public sealed class SignPanelTests : BunitContext
{
    private const string Faces = $"faces@{TestRegister.Left}";
    private readonly StepBench bench = StepBench.Wheel();

    [Fact]
    public void Signature_waits_with_the_first_three_reasons_large()
    {
        var panel = Draw("final", StepAnswers.None);

        Assert.Empty(panel.FindAll(".sign-button"));
        Assert.Equal(3, panel.FindAll(".hold-first li").Count);
    }

    [Fact]
    public void Reasons_beyond_the_third_are_on_demand()
    {
        var points = Enumerable.Range(1, 5).Select(number => new HoldPoint(HoldReason.TickMissing) { Name = $"Washer {number}" });

        var list = Render<HoldList>(parameters => parameters.Add(one => one.Reasons, bench.Car.As(TestPerson.Tess).InOrder(points)));

        Assert.Equal(3, list.FindAll(".hold-first li").Count);
        Assert.Equal("2 more", list.Find("summary").TextContent);
        Assert.Equal(2, list.FindAll("details li").Count);
    }

    [Fact]
    public void Five_nuts_with_one_reason_are_one_line()
    {
        bench.HandTight();

        var panel = Draw("seat", StepAnswers.None);

        var line = Assert.Single(panel.FindAll(".hold-first li"));
        Assert.StartsWith("wheel nut front-left 1 to 5: hand-tight", line.TextContent.Trim(), StringComparison.Ordinal);
    }

    [Fact]
    public void Tick_that_is_given_no_longer_holds_the_signature()
    {
        Assert.Contains("Not ticked", Draw("faces", StepAnswers.None).Find(".hold-first").TextContent, StringComparison.Ordinal);

        var ready = Draw("faces", new StepAnswers(["clean"], []));

        Assert.Empty(ready.FindAll(".hold-first li"));
        Assert.False(ready.Find(".sign-button").HasAttribute("disabled"));
    }

    [Fact]
    public void A_step_that_is_done_may_be_signed_later_where_its_work_goes_on()
    {
        Assert.Equal("“Faces and cones bare and dry”: so it is. DONE, go on: sign later", Draw("faces", StepAnswers.None).Find(".finish-button").TextContent);
        Assert.Single(Draw("faces", new StepAnswers(["clean"], [])).FindAll(".finish-button"));
    }

    [Fact]
    public void What_the_same_hand_has_finished_is_signed_with_the_step_after_it_and_named()
    {
        bench.Car.Do(TestPerson.Tess, CarWork.Finish(bench.Job, Faces, "clean"));

        var panel = Draw("seat", StepAnswers.None);

        Assert.DoesNotContain("is done and not signed", panel.Markup, StringComparison.Ordinal);
        bench.Car.Declare(TestRegister.WheelUp);
        bench.Car.Open(TestPerson.Tess, bench.Job, bench.Nuts);
        bench.Car.ByHand(TestPerson.Tess, bench.Job, "nuts", bench.Nuts);
        bench.Car.PullStage(TestPerson.Tess, bench.Job, "nuts", TestRegister.Left, 1);
        panel = Draw("seat", StepAnswers.None);
        Assert.Equal("SIGN 2 STEPS: done by me", panel.Find(".sign-button").TextContent);
        Assert.Contains("what you have finished before: faces", panel.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_signed_with_one_PIN_is_shown_step_by_step()
    {
        bench.Car.Do(TestPerson.Tess, CarWork.Finish(bench.Job, Faces, "clean"));

        var asked = StepDialogs.ToSign(bench.Scene("seat"), StepAnswers.None).Request;

        Assert.Equal("SIGN 2 STEPS: done by me", asked.Shown.Meaning);
        Assert.Equal("faces: ticked “Faces and cones bare and dry”", asked.Shown.Lines[1]);
        Assert.StartsWith("seat: ", asked.Shown.Lines[2], StringComparison.Ordinal);
        Assert.Equal(TestPerson.Tess.Id, asked.Only);
    }

    [Fact]
    public void Another_pair_of_hands_is_told_that_the_step_before_is_done_and_not_signed()
    {
        bench.Car.Do(TestPerson.Tess, CarWork.Finish(bench.Job, Faces, "clean"));

        Assert.Contains($"“faces, {TestRegister.Left}” is done and not signed", Draw("seat", StepAnswers.None, TestPerson.Theo).Markup, StringComparison.Ordinal);
        Assert.Single(bench.Scene("seat", TestPerson.Theo).Gate);
        Assert.Empty(bench.Scene("seat").Gate);
    }

    [Fact]
    public void Ticks_of_a_finished_step_stand_when_its_page_is_drawn_again()
    {
        bench.Car.Do(TestPerson.Tess, CarWork.Finish(bench.Job, Faces, "clean"));
        var draft = new StepAnswersDraft();

        draft.Start(bench.Scene("faces").Finished!.Fact);

        Assert.Equal(["clean"], draft.Of(bench.Scene("faces").Step).Ticks);
    }

    [Fact]
    public void The_final_torque_asks_for_the_signature_of_the_steps_before_it_first()
    {
        bench.HandTight();
        bench.Car.PullStage(TestPerson.Tess, bench.Job, "nuts", TestRegister.Left, 1);
        bench.Car.Do(TestPerson.Tess, CarWork.Finish(bench.Job, $"seat@{TestRegister.Left}"));

        var panel = Draw("final", StepAnswers.None);

        Assert.Equal("SIGN: done by me", panel.Find(".unsigned .button").TextContent);
        Assert.Contains("seat", panel.Find(".unsigned").TextContent, StringComparison.Ordinal);
        Assert.Empty(panel.FindAll(".sign-button"));
    }

    [Fact]
    public void Signed_step_is_a_record_to_read_and_no_form()
    {
        bench.Car.Do(TestPerson.Tess, CarWork.Sign(bench.Job, $"faces@{TestRegister.Left}", "clean"));
        var scene = bench.Scene("faces");

        var record = Render<SignedRecord>(parameters => parameters
            .Add(one => one.Scene, scene)
            .Add(one => one.Time, at => at.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture)));

        Assert.Equal(StepStanding.Signed, scene.Standing);
        Assert.Contains("Signed: done by Tess", record.Find("h2").TextContent, StringComparison.Ordinal);
        Assert.Contains("Faces and cones bare and dry", record.Markup, StringComparison.Ordinal);
        Assert.Empty(record.FindAll("button, input"));
    }

    [Fact]
    public void Worker_is_told_in_words_that_nobody_looks_at_their_own_work()
    {
        bench.Car.TightenWheel(TestPerson.Tess, bench.Job, TestRegister.Left);

        Assert.Contains("nobody witnesses their own work", Witness(TestPerson.Tess), StringComparison.Ordinal);
        Assert.DoesNotContain("nobody witnesses their own work", Witness(TestPerson.Theo), StringComparison.Ordinal);
        Assert.Contains("WITNESS: I checked", Witness(TestPerson.Theo), StringComparison.Ordinal);
    }

    [Fact]
    public async Task How_one_stage_was_looked_at_says_nothing_of_another()
    {
        int[] each = [1, 2, 3, 4, 5];
        var two = StepBench.With(new Procedure(
            "P5", "Fit the wheel", "1", true, [],
            [
                TestProcedures.Group("nuts", TestRegister.Nut) with
                {
                    Stages = [TestProcedures.Stage(1, 50, 45, 55, each) with { Witness = true }, TestProcedures.Stage(2, 110, 105, 115, each) with { Witness = true }],
                },
            ],
            [TestProcedures.Step("final", waitsFor: []) with { Places = [TestRegister.Left], Work = [new StepWork("nuts", [1, 2])] }]));
        two.Car.Open(TestPerson.Tess, two.Job, two.Nuts);
        two.Car.ByHand(TestPerson.Tess, two.Job, "nuts", two.Nuts);
        foreach (var (stage, torque) in new[] { (1, 50m), (2, 110m) })
        {
            foreach (var nut in two.Nuts)
            {
                two.Car.Pull(TestPerson.Tess, two.Job, "nuts", nut, stage, torque);
            }
        }

        List<WitnessAsked> asked = [];
        var panels = Render<WitnessPanel>(parameters => parameters
            .Add(panel => panel.Scene, two.Scene("final", TestPerson.Theo)).Add(panel => panel.OnWitness, asked.Add));
        Assert.Equal(2, panels.FindAll(".witness-panel").Count);

        Assert.Empty(panels.FindAll("input"));
        await panels.FindAll(".witness-panel")[0].QuerySelectorAll("button").Single(button => button.TextContent.Contains("I moved", StringComparison.Ordinal)).ClickAsync(new());
        await panels.FindAll(".witness-panel")[1].QuerySelector(".button-main")!.ClickAsync(new());

        Assert.Equal([(1, WitnessMethod.FirstMovement), (2, WitnessMethod.LookedAtMark)], asked.Select(one => (one.Awaited.Stage.Number, one.Method)));
    }

    private string Witness(TestPerson person) => Render<WitnessPanel>(parameters => parameters
        .Add(panel => panel.Scene, bench.Scene("final", person))).Markup;

    private IRenderedComponent<SignPanel> Draw(string step, StepAnswers answers, TestPerson? person = null) => Render<SignPanel>(parameters => parameters
        .Add(panel => panel.Scene, bench.Scene(step, person))
        .Add(panel => panel.Answers, answers)
        .Add(panel => panel.Time, _ => "08:00"));
}
