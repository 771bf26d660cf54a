using Bunit;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.Step;

namespace ShopJobs.Web.Tests.Step;

public sealed class WorkPanelTests : BunitContext
{
    private readonly StepBench bench = StepBench.Wheel();

    [Fact]
    public void Nuts_as_found_are_opened_with_one_touch()
    {
        var panel = StepBench.Draw(this, bench.Scene("seat"));

        var button = panel.Find("button.report-main");
        Assert.Equal("OPEN all 5", button.TextContent.Trim());
        Assert.Contains("\"what\":\"Opened\"", button.GetAttribute("data-report"), StringComparison.Ordinal);
        Assert.Empty(panel.FindAll("[data-keypad]"));
    }

    [Fact]
    public void A_report_carries_the_cycle_that_is_on_the_screen()
    {
        bench.Car.Open(TestPerson.Tess, bench.Job, bench.Nuts);

        var report = StepBench.Draw(this, bench.Scene("seat")).Find("button.report-main").GetAttribute("data-report");

        Assert.Contains("\"number\":1,\"cycle\":1", report, StringComparison.Ordinal);
    }

    [Fact]
    public void Ticks_of_an_earlier_cycle_are_forgotten_when_the_joint_was_opened_again()
    {
        bench.HandTight();
        var draft = new StepAnswersDraft();
        var scene = bench.Scene("final");
        draft.For(scene.Redone);
        var tick = Assert.Single(bench.Scene("faces").Step.Step.Ticks);
        draft.Set(StepAnswersDraft.NameOf(tick), "yes");
        draft.For(bench.Scene("final").Redone);
        Assert.True(draft.IsTicked(tick));

        bench.Car.Open(TestPerson.Tess, bench.Job, bench.Nuts);
        draft.For(bench.Scene("final").Redone);

        Assert.NotEqual(scene.Redone, bench.Scene("final").Redone);
        Assert.False(draft.IsTicked(tick));
    }

    [Fact]
    public void Opened_nuts_are_hand_tight_with_one_touch_or_chosen()
    {
        bench.Car.Open(TestPerson.Tess, bench.Job, bench.Nuts);

        var panel = StepBench.Draw(this, bench.Scene("seat"));

        Assert.Equal("HAND-TIGHT all 5", panel.Find("button.report-main").TextContent.Trim());
        Assert.Equal(["1", "2", "3", "4", "5"], panel.FindAll(".choice input").Select(box => box.GetAttribute("value")));
        Assert.NotNull(panel.Find("button[data-chosen]"));
    }

    [Fact]
    public void First_pull_shows_number_unit_stage_condition_and_range()
    {
        var panel = StepBench.Draw(this, bench.HandTight().Scene("seat"), TestTools.Click);

        Assert.Equal("50", panel.Find(".number-digits").TextContent);
        Assert.Equal("N·m", panel.Find(".number-unit").TextContent);
        Assert.Contains("Stage 1 of 2", panel.Find(".number-what").TextContent, StringComparison.Ordinal);
        Assert.StartsWith("DRY", panel.Find(".number-condition").TextContent.Trim(), StringComparison.Ordinal);
        Assert.Contains("40 to 60 N·m", panel.Find(".number-range").TextContent, StringComparison.Ordinal);
        Assert.Contains("Test instruction, rev. 1, p. 1: stated", panel.Find(".number-source").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Click_tool_asks_for_its_setting_and_never_fills_it_in()
    {
        var panel = StepBench.Draw(this, bench.HandTight().Scene("seat"), TestTools.Click);

        var keypad = panel.Find("[data-keypad]");
        Assert.Equal("setting", keypad.GetAttribute("data-mode"));
        Assert.Equal("", panel.Find("[data-keypad-click]").TextContent);
        Assert.Null(panel.Find("[data-keypad-field]").GetAttribute("value"));
        Assert.DoesNotContain("\"value\"", keypad.GetAttribute("data-report"), StringComparison.Ordinal);
        Assert.Contains("\"kind\":\"SettingConfirmed\"", keypad.GetAttribute("data-report"), StringComparison.Ordinal);
    }

    [Fact]
    public void Indicating_tool_takes_a_reading_of_each_nut()
    {
        var panel = StepBench.Draw(this, bench.HandTight().Scene("seat"), TestTools.Dial);

        Assert.Equal("reading", panel.Find("[data-keypad]").GetAttribute("data-mode"));
        Assert.Equal("ENTER", panel.Find("[data-key=enter]").TextContent);
        Assert.Empty(panel.FindAll("[data-keypad-click]"));
        Assert.Contains("\"kind\":\"Reading\"", panel.Find("[data-keypad]").GetAttribute("data-report"), StringComparison.Ordinal);
    }

    [Fact]
    public void Setting_is_kept_for_the_stage_and_asked_anew_when_stage_or_cycle_changes()
    {
        var first = KeyOf(bench.HandTight());
        bench.Car.Pull(TestPerson.Tess, bench.Job, "nuts", bench.Nuts[0], 1, 50);
        Assert.Equal(first, KeyOf(bench));

        bench.Car.Open(TestPerson.Tess, bench.Job, bench.Nuts);
        bench.Car.ByHand(TestPerson.Tess, bench.Job, "nuts", bench.Nuts);
        Assert.NotEqual(first, KeyOf(bench));

        string KeyOf(StepBench on)
        {
            var scene = on.Scene("seat");
            return new KeypadCell(scene, ((NextAction.PullNow)scene.Next).Cell, StepBench.Offer(scene, TestTools.Click)).SettingKey;
        }
    }

    [Fact]
    public void Keypad_stays_shut_until_the_car_stands_as_it_must()
    {
        bench.HandTight();
        bench.Car.Declare(TestRegister.WheelDown);

        var panel = StepBench.Draw(this, bench.Scene("seat"), TestTools.Click);

        Assert.Empty(panel.FindAll("[data-keypad]"));
        Assert.Contains("Last said: down, Tess, ", panel.Find(".condition-asked").TextContent, StringComparison.Ordinal);
        Assert.Contains("\"value\":\"up\"", panel.Find(".condition-asked button").GetAttribute("data-report"), StringComparison.Ordinal);
    }

    [Fact]
    public void Work_that_waits_for_what_it_sits_on_says_so_and_leads_to_the_step_that_closes_it()
    {
        bench.HandTight();
        var studs = bench.Car.StartJob(TestProcedures.Studs(1, 2, 3, 4, 5), TestRegister.Left);
        bench.Car.Open(TestPerson.Tess, studs, bench.Car.Positions(TestRegister.Stud, TestRegister.Left));

        var panel = StepBench.Draw(this, bench.Scene("seat"));

        Assert.Contains("wheel nut front-left 1 waits for what it sits on: wheel stud front-left 1: ", panel.Markup, StringComparison.Ordinal);
        Assert.Contains($"/jobs/{studs.Value}/steps/", panel.Find(".work-next a.button").GetAttribute("href"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_wheel_waits_for_what_is_open_behind_it_and_leads_to_the_step_that_closes_it()
    {
        PutClampBehindWheel(bench);
        bench.HandTight();
        var strut = bench.Car.StartJob(TestProcedures.Strut(), TestRegister.Left);
        bench.Car.Open(TestPerson.Tess, strut, bench.Car.Positions(TestRegister.StrutClamp, TestRegister.Left));

        var panel = StepBench.Draw(this, bench.Scene("seat"));

        Assert.Contains("wheel nut front-left 1 waits for what is behind it: strut clamp bolt front-left 1: open.", panel.Markup, StringComparison.Ordinal);
        Assert.Contains($"/jobs/{strut.Value}/steps/", panel.Find(".work-next a.button").GetAttribute("href"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_behind_a_wheel_waits_for_it_to_come_off_and_leads_to_its_nuts()
    {
        var strut = StepBench.With(TestProcedures.Strut());
        PutClampBehindWheel(strut);
        var tops = strut.Car.Positions(TestRegister.StrutTop, TestRegister.Left);
        strut.Car.Open(TestPerson.Tess, strut.Job, [.. tops, .. strut.Car.Positions(TestRegister.StrutClamp, TestRegister.Left)]);
        strut.Car.Do(TestPerson.Tess, CarWork.Sign(strut.Job, $"out@{TestRegister.Left}"));
        strut.Car.ByHand(TestPerson.Tess, strut.Job, "tops", tops);
        strut.Car.PullStage(TestPerson.Tess, strut.Job, "tops", TestRegister.Left, 1);

        var panel = StepBench.Draw(this, strut.Scene("in"));

        Assert.Contains("strut clamp bolt front-left 1: it is behind wheel nut front-left, which is still on in the book", panel.Markup, StringComparison.Ordinal);
        Assert.Contains("?joint=wheel.nut&place=front-left", panel.Find(".work-next a.button").GetAttribute("href"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_later_stage_that_no_tool_may_pull_is_said_before_the_first()
    {
        Assert.DoesNotContain("No tool of the shop may pull", StepBench.Draw(this, bench.HandTight().Scene("seat")).Markup, StringComparison.Ordinal);
        foreach (var id in new[] { TestTools.Click, TestTools.Dial, TestTools.Angle })
        {
            var entered = bench.Car.Tool(id).Tool!;
            bench.Car.TellTool(id, new ToolEntered(id, entered.Name, entered.Serial, entered.Kind, entered.Unit, 10, 60, entered.Graduation, null));
        }

        var panel = StepBench.Draw(this, bench.Scene("seat"));

        Assert.Contains("No tool of the shop may pull 110 N·m, stage 2 of 2.", panel.Find(".tool-used").TextContent, StringComparison.Ordinal);
        Assert.Contains("would be left half tightened", panel.Find(".tool-used").TextContent, StringComparison.Ordinal);
    }

    private static void PutClampBehindWheel(StepBench at) => at.Car.TakeIn(at.Car.Register with
    {
        Kinds = at.Car.Register.Kinds.Values.ToDictionary(kind => kind.Key, kind => kind.Key == TestRegister.StrutClamp ? kind with { Behind = TestRegister.Nut } : kind),
    });

    [Fact]
    public void Keypad_stays_shut_until_a_tool_is_chosen_and_tools_that_cannot_say_why()
    {
        var panel = StepBench.Draw(this, bench.HandTight().Scene("seat"));

        Assert.Empty(panel.FindAll("[data-keypad]"));
        var offers = panel.FindAll(".tool-offer");
        Assert.Equal(["D1", "W7", "WA", "W3", "W5"], offers.Select(offer => offer.QuerySelector(".tool-name")!.TextContent));
        Assert.False(offers[0].HasAttribute("disabled"));
        Assert.True(offers[3].HasAttribute("disabled"));
        Assert.Contains("outside the tool's range", offers[3].TextContent, StringComparison.Ordinal);
        Assert.Contains("past its calibration", offers[4].TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Position_over_its_maximum_stops_the_joint()
    {
        bench.HandTight();
        bench.Car.Pull(TestPerson.Tess, bench.Job, "nuts", bench.Nuts[0], 1, 70, TestTools.Dial);

        var scene = bench.Scene("seat");

        Assert.Contains("Stop.", StepBench.Draw(this, scene).Find(".work-word").TextContent, StringComparison.Ordinal);
        var held = Render<HeldPanel>(parameters => parameters.Add(panel => panel.Scene, scene));
        Assert.Contains("wheel nut front-left 1: over the permitted maximum", held.Find("li").TextContent, StringComparison.Ordinal);
        Assert.Contains("call the lead", held.Find("li").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Short_reading_asks_to_back_off_the_joint()
    {
        bench.HandTight();
        bench.Car.Pull(TestPerson.Tess, bench.Job, "nuts", bench.Nuts[0], 1, 30, TestTools.Dial);

        var panel = StepBench.Draw(this, bench.Scene("seat"));

        Assert.Contains("the last pull was short: back off, inspect and start again", panel.Find("legend").TextContent, StringComparison.Ordinal);
        Assert.Equal("BACKED OFF all 5", panel.Find("button.report-main .report-once").TextContent.Trim());
        Assert.NotNull(panel.Find("button.report-main").GetAttribute("data-twice"));
    }

    [Fact]
    public void Tool_last_used_on_the_stage_is_in_hand_again_after_a_reload()
    {
        bench.HandTight();
        bench.Car.Pull(TestPerson.Tess, bench.Job, "nuts", bench.Nuts[0], 1, 50, TestTools.Dial);
        var scene = bench.Scene("seat");

        var picked = ToolOffer.Pick(
            StepBench.Offers(scene), null, scene.State, bench.Job, ((NextAction.PullNow)scene.Next).Cell, TestPerson.Tess.Id);

        Assert.Equal(TestTools.Dial, picked?.Id);
    }
}
