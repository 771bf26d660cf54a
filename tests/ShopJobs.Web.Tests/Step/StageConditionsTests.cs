using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Step;
using ShopJobs.Web.Desk;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Web.Tests.Step;

/// <summary>How the car must stand, where each wheel is said by itself and opening its nuts ends it.</summary>
public sealed class StageConditionsTests : BunitContext
{
    private readonly CarAtWork car = new(register: TestRegister.With(5) with
    {
        Aspects = new Dictionary<string, ConditionAspect> { ["wheel"] = new(true, 4, [TestRegister.Nut]), ["hub"] = new(true, 4, []) },
    });

    private static readonly CarCondition HubHeld = new("hub", "held");
    private readonly JobId job;

    public StageConditionsTests() => job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Left, TestRegister.Right);

    [Fact]
    public void What_was_said_is_shown_with_the_place_who_and_when()
    {
        Say(TestRegister.WheelUp);

        Assert.Equal($"wheel up, front left: Tess, {car.Now:HH:mm}", Draw(TestRegister.Left).Find(".condition-ok").TextContent.Trim());
    }

    [Fact]
    public void What_was_said_of_one_place_is_asked_at_the_other()
    {
        Say(TestRegister.WheelUp);

        var asked = Draw(TestRegister.Right).Find(".condition-asked");

        Assert.Contains("Must be: wheel up, front right.", asked.TextContent, StringComparison.Ordinal);
        Assert.Contains("\"places\":[\"front-right\"]", asked.QuerySelector("button")!.GetAttribute("data-report"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_ended_by_an_opening_says_so_and_is_asked_again_in_one_touch()
    {
        Say(TestRegister.WheelUp);
        car.Open(Tess, job, car.Positions(TestRegister.Nut, TestRegister.Left));

        var asked = Draw(TestRegister.Left).Find(".condition-asked");

        Assert.Contains("Last said: up, Tess, ", asked.TextContent, StringComparison.Ordinal);
        Assert.Contains("; ended: wheel nut front-left was opened since.", asked.TextContent, StringComparison.Ordinal);
        Assert.Equal("It is: up", asked.QuerySelector("button")!.TextContent.Trim());
    }

    [Fact]
    public void What_is_asked_of_the_same_place_is_said_in_one_touch()
    {
        var asked = Assert.Single(Draw(TestRegister.Left, HubHeld).FindAll(".condition-asked"));

        Assert.Contains("Must be: wheel up and hub held, front left.", asked.TextContent, StringComparison.Ordinal);
        Assert.Equal("It is: wheel up and hub held", asked.QuerySelector("button")!.TextContent.Trim());
        Assert.Contains("\"aspect\":\"hub\"", asked.QuerySelector("button")!.GetAttribute("data-report"), StringComparison.Ordinal);
        Assert.Contains("\"aspect\":\"wheel\"", asked.QuerySelector("button")!.GetAttribute("data-report"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_said_already_is_not_asked_with_the_rest()
    {
        Say(TestRegister.WheelUp);

        var asked = Assert.Single(Draw(TestRegister.Left, HubHeld).FindAll(".condition-asked"));

        Assert.Equal("It is: held", asked.QuerySelector("button")!.TextContent.Trim());
    }

    [Fact]
    public void What_ended_by_a_release_says_so()
    {
        Say(TestRegister.WheelUp);
        car.Do(Lee, CarWork.To(ReleaseKind.Move, null));

        Assert.Contains("; ended: the car was released to move since.", Draw(TestRegister.Left).Find(".condition-asked").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_too_old_says_how_long_it_lasts()
    {
        Say(TestRegister.WheelUp);
        car.Wait(TimeSpan.FromHours(4.1));

        Assert.Contains("; ended: it lasts 4 h.", Draw(TestRegister.Left).Find(".condition-asked").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void It_is_otherwise_now_is_said_of_this_place_alone()
    {
        Say(TestRegister.WheelUp);

        var other = Draw(TestRegister.Left).Find("details button");

        Assert.Equal("wheel down, front left", other.TextContent.Trim());
        Assert.Contains("\"places\":[\"front-left\"]", other.GetAttribute("data-report"), StringComparison.Ordinal);
    }

    private void Say(CarCondition condition) => car.Do(Tess, new DeclareCondition([condition]) { Places = [TestRegister.Left] });

    private IRenderedComponent<IComponent> Draw(string place, params CarCondition[] more)
    {
        var reading = new CarReading(StepBench.Row.Id, car.State, car.As(Tess), new Dictionary<ToolId, ToolState>(), "");
        var here = new Present(Tess.Id, Tess.Name, "TT", default, default, Tess.Rights);
        var step = car.Placed(job).Step($"seat@{place}")!;
        var instance = step.Work[^1].Instance;
        var conditions = new StageConditions(
            new StepScene(StepBench.Row, reading, car.State.Jobs[job], step, here, TestPerson.All.ToDictionary(one => one.Id, one => one.Name)),
            instance.Group.Stages[0] with { Conditions = [.. instance.Group.Stages[0].Conditions, .. more] },
            instance);
        return Render(builder =>
        {
            builder.OpenComponent<ConditionAsked>(0);
            builder.AddComponentParameter(1, nameof(ConditionAsked.Conditions), conditions);
            builder.CloseComponent();
            builder.OpenComponent<ConditionsSaid>(2);
            builder.AddComponentParameter(3, nameof(ConditionsSaid.Conditions), conditions);
            builder.CloseComponent();
        });
    }
}
