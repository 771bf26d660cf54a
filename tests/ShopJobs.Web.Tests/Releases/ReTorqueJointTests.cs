using Bunit;
using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.Releases;
using ShopJobs.Web.Tests.CarPage;

namespace ShopJobs.Web.Tests.Releases;

public sealed class ReTorqueJointTests : ScreenBench
{
    private readonly CarAtWork car = Readings.OnTheRoad();
    private RecordSettled? recorded;

    [Fact]
    public void Fasteners_stand_in_the_order_of_the_pattern_and_the_first_is_next()
    {
        var joint = Show();

        Assert.Equal(["1", "3", "5", "2", "4"], joint.FindAll(".nut text").Select(number => number.TextContent));
        Assert.Contains("is-next", joint.FindAll(".nut")[0].ClassName, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Not_moved_is_recorded_with_the_setting_as_typed()
    {
        var joint = Show();
        await ChooseAsync(joint, "110");

        await Button(joint, "NOT MOVED").ClickAsync(new());

        Assert.Equal((false, TorqueKind.SettingConfirmed, "110 N·m", 1), (recorded!.Moved, recorded.Kind, recorded.Value.ToString(), recorded.Positions[0].Number));
        car.Do(TestPerson.Tess, recorded);
        Assert.Contains("is-next", Show().FindAll(".nut")[1].ClassName, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Moved_asks_by_how_many_degrees()
    {
        var joint = Show();
        await ChooseAsync(joint, "110");

        await Button(joint, ": MOVED").ClickAsync(new());
        Assert.Null(recorded);
        Assert.Contains("how many degrees", joint.Find("[role=alert]").TextContent, StringComparison.Ordinal);

        await joint.FindAll("input")[1].InputAsync(new ChangeEventArgs { Value = "12,5" });
        await Button(joint, ": MOVED").ClickAsync(new());
        Assert.Equal((true, (decimal?)12.5m), (recorded!.Moved, recorded.AngleDegrees));
    }

    [Fact]
    public void Only_tools_in_date_that_cover_the_torque_are_offered()
    {
        Assert.Equal(["D1", "W7"], Show().FindAll(".choice").Select(tool => tool.TextContent));
    }

    private static AngleSharp.Dom.IElement Button(IRenderedComponent<ReTorqueJoint> joint, string words) =>
        joint.FindAll(".actions button").Single(button => button.TextContent.Contains(words, StringComparison.Ordinal));

    private static async Task ChooseAsync(IRenderedComponent<ReTorqueJoint> joint, string value)
    {
        await joint.FindAll(".choice").Single(tool => tool.TextContent == "W7").ClickAsync(new());
        await joint.FindAll("input")[0].InputAsync(new ChangeEventArgs { Value = value });
        await joint.FindAll("input")[2].InputAsync(new ChangeEventArgs { Value = "48310" });
    }

    private IRenderedComponent<ReTorqueJoint> Show()
    {
        var reading = Readings.Of(car, TestPerson.Tess);
        return Render<ReTorqueJoint>(parameters => parameters
            .Add(joint => joint.Reading, reading)
            .Add(joint => joint.Due, Assert.Single(DueJoint.Of(reading)))
            .Add(joint => joint.OnRecord, asked => recorded = (RecordSettled)asked.Command));
    }
}
