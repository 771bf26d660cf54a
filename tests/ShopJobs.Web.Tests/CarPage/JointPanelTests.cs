using Bunit;
using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.CarPage;

namespace ShopJobs.Web.Tests.CarPage;

public sealed class JointPanelTests : ScreenBench
{
    private static readonly Joint Nuts = new(TestRegister.Nut, TestRegister.Left);
    private (IReadOnlyList<JointPosition> Positions, string Why)? opened;

    [Fact]
    public void What_open_does_stands_beside_it_before_it_is_pressed()
    {
        var told = Show(Readings.OnTheRoad(), Nuts).Find(".open-tells").TextContent;

        Assert.Contains("opens wheel nut front-left 1 to 5", told, StringComparison.Ordinal);
        Assert.Contains("10 torque records are void from now", told, StringComparison.Ordinal);
        Assert.Contains("the release to road is void from now", told, StringComparison.Ordinal);
    }

    [Fact]
    public void A_held_nut_is_to_be_decided_until_it_is()
    {
        var car = Readings.WithHeldNut();
        Assert.Equal("Decide wheel nut front-left 1", Show(car, Nuts).Find("a.button-held").TextContent);

        car.Do(TestPerson.Theo, CarWork.Decision(new JointPosition(TestRegister.Nut, TestRegister.Left, 1), Disposition.Rework));

        Assert.Equal("What is decided: wheel nut front-left 1", Show(car, Nuts).Find("a.button-held").TextContent);
    }

    [Fact]
    public async Task Released_joint_is_opened_with_a_second_touch_and_the_reason_typed()
    {
        var panel = Show(Readings.OnTheRoad(), Nuts);
        await panel.Find("#open-why").ChangeAsync(new ChangeEventArgs { Value = " knocks " });

        await panel.Find(".open-button").ClickAsync(new());
        Assert.Null(opened);
        await panel.Find(".open-sure").ClickAsync(new());

        Assert.Equal("knocks", opened!.Value.Why);
        Assert.Equal([1, 2, 3, 4, 5], opened.Value.Positions.Select(position => position.Number));
    }

    [Fact]
    public async Task One_fastener_alone_is_chosen_by_pressing_it()
    {
        var car = new CarAtWork();
        var panel = Show(car, new Joint(TestRegister.StrutTop, TestRegister.Left));

        await panel.FindAll("button.nut")[1].ClickAsync(new());

        Assert.Equal("OPEN strut top nut front-left 2", panel.Find(".open-button").TextContent.Trim());
        await panel.Find(".open-button").ClickAsync(new());
        Assert.Equal([2], opened!.Value.Positions.Select(position => position.Number));
    }

    [Fact]
    public void Open_joint_offers_no_open()
    {
        var car = Readings.OnTheRoad();
        car.Open(TestPerson.Theo, null, car.Positions(TestRegister.Nut, TestRegister.Left));

        Assert.Empty(Show(car, Nuts).FindAll(".open-button"));
    }

    [Fact]
    public void An_open_joint_says_whether_a_running_job_closes_it()
    {
        var car = Readings.OnTheRoad();
        car.Open(TestPerson.Theo, null, car.Positions(TestRegister.Nut, TestRegister.Left));
        Assert.Contains("Open. No job on the car closes it: start one that does.", Show(car, Nuts).Markup, StringComparison.Ordinal);

        car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Left);

        Assert.Contains("Open. Closed by: ", Show(car, Nuts).Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void Void_records_are_struck_and_stay_readable_with_value_tool_person_and_time()
    {
        var car = Readings.OnTheRoad();
        car.Open(TestPerson.Theo, null, car.Positions(TestRegister.Nut, TestRegister.Left));

        var panel = Show(car, Nuts);

        Assert.Equal(12, panel.FindAll("tr.is-void").Count);
        var pull = panel.FindAll("tr.is-void").First(row => row.TextContent.Contains("110 N·m", StringComparison.Ordinal));
        Assert.Contains("W7", pull.TextContent, StringComparison.Ordinal);
        Assert.Contains("Tess", pull.TextContent, StringComparison.Ordinal);
        Assert.Contains($"void from {car.Now:HH:mm}", pull.TextContent, StringComparison.Ordinal);
    }

    private IRenderedComponent<JointPanel> Show(CarAtWork car, Joint joint) => Render<JointPanel>(parameters => parameters
        .Add(panel => panel.Reading, Readings.Of(car, TestPerson.Lee))
        .Add(panel => panel.Joint, joint)
        .Add(panel => panel.History, JointHistory.Of(car.Book, joint))
        .Add(panel => panel.Names, Readings.Names)
        .Add(panel => panel.OnOpen, open => opened = open));
}
