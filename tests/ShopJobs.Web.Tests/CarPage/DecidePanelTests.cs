using Bunit;
using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.CarPage;

namespace ShopJobs.Web.Tests.CarPage;

public sealed class DecidePanelTests : ScreenBench
{
    private static readonly JointPosition Held = new(TestRegister.Nut, TestRegister.Left, 1);
    private HoldDecision? decided;

    [Fact]
    public void Says_what_happened_with_value_limits_tool_and_person()
    {
        var happened = Show(Readings.WithHeldNut(), TestPerson.Lee).Find("ul").TextContent;

        Assert.Contains("Tess: over the permitted maximum", happened, StringComparison.Ordinal);
        Assert.Contains("clicked at 75 N·m, W7, stage 1 of 2; permitted 40 to 60 N·m", happened, StringComparison.Ordinal);
        Assert.Contains("class A, danger to life", happened, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Class_A_is_used_as_is_only_with_a_written_acceptance()
    {
        var panel = Show(Readings.WithStoppedNut(), TestPerson.Lee);
        await Option(panel, "USE AS IS").ClickAsync(new());
        await panel.Find("#decide-why").InputAsync(new ChangeEventArgs { Value = "Measured the thread, it is good" });
        await panel.Find("form").SubmitAsync(new());
        Assert.Null(decided);
        Assert.Contains("Nobody is named who accepts it", panel.Find("#decide-accepted-who-wrong").TextContent, StringComparison.Ordinal);

        await panel.Find("#decide-accepted-who").InputAsync(new ChangeEventArgs { Value = "Quillon, M. Arden" });
        await panel.Find("#decide-accepted-day").InputAsync(new ChangeEventArgs { Value = "2026-03-02" });
        await panel.FindAll(".acceptance .choice").Single(way => way.TextContent == "By telephone").ClickAsync(new());
        await panel.Find("#decide-accepted-words").InputAsync(new ChangeEventArgs { Value = "It may stay" });
        await panel.Find("form").SubmitAsync(new());
        Assert.Null(decided);
        Assert.Contains("only a written acceptance counts", panel.Find("#decide-accepted-how-wrong").TextContent, StringComparison.Ordinal);

        await panel.FindAll(".acceptance .choice").Single(way => way.TextContent == "In writing").ClickAsync(new());
        await panel.Find("#decide-accepted-kept").InputAsync(new ChangeEventArgs { Value = "mail folder" });
        await panel.Find("form").SubmitAsync(new());

        Assert.Equal((Disposition.UseAsIs, "Quillon, M. Arden"), (decided!.Disposition, decided.Acceptance!.Who));
        Assert.Equal(
            ["Decision: use as is", "Why: Measured the thread, it is good", "Acceptance: Quillon, M. Arden, 2026-03-02, in writing, kept: mail folder: “It may stay”"],
            decided.Shown.TakeLast(3));
    }

    [Fact]
    public async Task Nothing_is_decided_without_a_reason()
    {
        var panel = Show(Readings.WithHeldNut(), TestPerson.Lee);
        await Option(panel, "REPLACE").ClickAsync(new());

        await panel.Find("form").SubmitAsync(new());

        Assert.Null(decided);
        Assert.Equal("Write why in a few words.", panel.Find("#decide-why-wrong").TextContent.Trim());
        Assert.Contains("decide-why-wrong", panel.Find("#decide-why").GetAttribute("aria-describedby"), StringComparison.Ordinal);
    }

    [Fact]
    public void Who_did_the_work_is_told_to_ask_a_second_person()
    {
        var note = Show(Readings.WithHeldNut(), TestPerson.Tess).Find(".door-note").TextContent;

        Assert.Contains("nobody witnesses or decides their own work", note, StringComparison.Ordinal);
        Assert.Contains("You do not hold the right", note, StringComparison.Ordinal);
        Assert.Empty(Show(Readings.WithHeldNut(), TestPerson.Lee).FindAll(".door-note"));
    }

    [Fact]
    public void Rework_of_single_use_hardware_is_shut_with_its_reason()
    {
        var car = new CarAtWork(nuts: 1);
        var job = car.StartJob(TestProcedures.Studs(1), TestRegister.Left);
        var stud = new JointPosition(TestRegister.Stud, TestRegister.Left, 1);
        car.Open(TestPerson.Tess, job, stud);
        car.FitNew(TestPerson.Tess, job, "studs", stud);
        car.Do(TestPerson.Tess, new HoldPositions([stud], CarAtWork.Reason));

        var rework = Option(Show(car, TestPerson.Lee, stud), "REWORK");

        Assert.True(rework.HasAttribute("disabled"));
        Assert.Contains("single-use", rework.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Decided_hold_says_what_is_to_be_done_and_takes_no_second_decision()
    {
        var car = Readings.WithHeldNut();
        car.Do(TestPerson.Lee, CarWork.Decision(Held, Disposition.Replace));

        var panel = Show(car, TestPerson.Lee);

        Assert.Contains("Back it off, fit new hardware", panel.Find("[role=status]").TextContent, StringComparison.Ordinal);
        Assert.Empty(panel.FindAll("form"));
    }

    [Fact]
    public async Task What_was_typed_stays_when_somebody_else_decided_meanwhile()
    {
        var car = Readings.WithHeldNut();
        var panel = Show(car, TestPerson.Lee);
        await panel.Find("#decide-why").InputAsync(new ChangeEventArgs { Value = "Looked at the thread" });
        car.Do(TestPerson.Theo, CarWork.Decision(Held, Disposition.Rework));

        panel.Render(parameters => parameters.Add(one => one.Reading, Readings.Of(car, TestPerson.Lee)));

        Assert.Contains("Looked at the thread", panel.Find(".decide-lost").TextContent, StringComparison.Ordinal);
        Assert.Empty(panel.FindAll("form"));
    }

    private static AngleSharp.Dom.IElement Option(IRenderedComponent<DecidePanel> panel, string word) =>
        panel.FindAll(".decide-option").Single(option => option.TextContent.Contains(word, StringComparison.Ordinal));

    private IRenderedComponent<DecidePanel> Show(CarAtWork car, TestPerson who, JointPosition? position = null) => Render<DecidePanel>(parameters => parameters
        .Add(panel => panel.Reading, Readings.Of(car, who))
        .Add(panel => panel.Position, position ?? Held)
        .Add(panel => panel.Names, Readings.Names)
        .Add(panel => panel.OnDecide, (ValueTuple<HoldDecision, Covering> asked) => decided = asked.Item1));
}
