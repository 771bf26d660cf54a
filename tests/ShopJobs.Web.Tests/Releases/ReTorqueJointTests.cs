using Bunit;
using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Components.Releases;
using ShopJobs.Web.Tests.CarPage;

namespace ShopJobs.Web.Tests.Releases;

public sealed class ReTorqueJointTests : ScreenBench
{
    private readonly CarAtWork car = Readings.OnTheRoad();
    private RecordSettled? recorded;
    private ExtendReTorque? extended;
    private DeclareCondition? declared;
    private Right? needs;
    private string shown = "";

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
        Assert.Contains("how many degrees", joint.FindAll("[role=alert]")[1].TextContent, StringComparison.Ordinal);

        await joint.FindAll("input.figures")[1].InputAsync(new ChangeEventArgs { Value = "12,5" });
        await Button(joint, ": MOVED").ClickAsync(new());
        Assert.Equal((true, (decimal?)12.5m), (recorded!.Moved, recorded.AngleDegrees));
    }

    [Fact]
    public void Only_tools_in_date_that_cover_the_torque_are_offered()
    {
        Assert.Equal(["D1", "W7"], Show().FindAll(".choice").Select(tool => tool.TextContent));
    }

    [Fact]
    public async Task Through_a_crowfoot_the_setting_is_by_the_length_of_the_tool_and_one_without_is_not_offered()
    {
        car.TellTool(TestTools.Dial, TestTools.StrangeEntered with { Tool = TestTools.Dial, Name = "D1" });

        var joint = Show(adapter: TestProcedures.Crowfoot(400, 20));

        Assert.Equal(["W7"], joint.FindAll(".choice").Select(tool => tool.TextContent));
        Assert.Contains("Not offered, because its own length is not entered: D1.", joint.Markup, StringComparison.Ordinal);
        Assert.Contains("choose the tool for what it is set to", joint.Markup, StringComparison.Ordinal);
        await ChooseAsync(joint, "103");
        // F7: 110 x 300/320 = 103.125 on the 300 mm of W7.
        Assert.Contains("103.1 N·m on the tool for 110 N·m with the crowfoot", joint.Markup, StringComparison.Ordinal);
    }

    private static AngleSharp.Dom.IElement Button(IRenderedComponent<ReTorqueJoint> joint, string words) =>
        joint.FindAll(".actions button").Single(button => button.TextContent.Contains(words, StringComparison.Ordinal));

    private static async Task ChooseAsync(IRenderedComponent<ReTorqueJoint> joint, string value)
    {
        await joint.FindAll(".choice").Single(tool => tool.TextContent == "W7").ClickAsync(new());
        await joint.FindAll("input.figures")[0].InputAsync(new ChangeEventArgs { Value = value });
    }

    [Fact]
    public async Task Without_the_odometer_nothing_is_signed()
    {
        var joint = Show(km: null);
        await ChooseAsync(joint, "110");

        await Button(joint, "NOT MOVED").ClickAsync(new());

        Assert.Null(recorded);
        Assert.Contains("odometer", joint.Find("[role=alert]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Too_early_is_said_before_it_is_signed_and_settles_nothing()
    {
        var joint = Show(km: 48_240);
        await ChooseAsync(joint, "110");

        Assert.Equal("Too early: 20 km more. It is recorded and does not settle the joint.", joint.Find(".retorque-warning").TextContent);
        await Button(joint, "NOT MOVED").ClickAsync(new());
        car.Declare(TestRegister.WheelDown);
        car.Do(TestPerson.Tess, recorded!);

        Assert.Equal(5, Assert.Single(DueJoint.Of(Readings.Of(car, TestPerson.Tess))).Due.Count);
        Assert.Contains("Too early", shown, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Moved_too_far_is_said_before_it_is_signed_and_is_held()
    {
        var joint = Show();
        await ChooseAsync(joint, "110");
        await joint.FindAll("input.figures")[1].InputAsync(new ChangeEventArgs { Value = "31" });
        Assert.Contains("it was loose", joint.Find(".retorque-warning").TextContent, StringComparison.Ordinal);

        await Button(joint, ": MOVED").ClickAsync(new());
        car.Declare(TestRegister.WheelDown);
        car.Do(TestPerson.Tess, recorded!);

        Assert.Equal(PositionState.Held, car.Shows(recorded!.Positions[0]));
        var due = Assert.Single(DueJoint.Of(Readings.Of(car, TestPerson.Tess)));
        Assert.Equal([recorded.Positions[0]], due.Stopped);
    }

    [Fact]
    public void A_joint_whose_tool_is_in_doubt_stays_and_says_so()
    {
        car.TellTool(TestTools.Click, new Doubted(CarAtWork.Reason));

        var joint = Show();

        Assert.Equal(5, joint.FindAll(".retorque-stopped").Count);
        Assert.Contains("its tool is in doubt", joint.Find(".retorque-stopped").TextContent, StringComparison.Ordinal);
        Assert.Empty(joint.FindAll(".actions button"));
    }

    [Fact]
    public async Task All_of_a_joint_that_did_not_move_are_signed_at_once()
    {
        var joint = Show();
        await ChooseAsync(joint, "110");

        await Button(joint, "ALL 5").ClickAsync(new());

        Assert.Equal([1, 3, 5, 2, 4], recorded!.Positions.Select(position => position.Number));
        Assert.False(recorded.Moved);
        Assert.Contains("Each was pulled, in the pattern; none moved", shown, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_overdue_says_so() =>
        Assert.Contains("OVERDUE: was due from 48,260 to 48,310 km, by 16 Mar 2026", Show(km: 48_311).Markup, StringComparison.Ordinal);

    [Fact]
    public async Task On_its_last_day_a_trailered_car_is_settled_early_by_the_leads_signature_alone()
    {
        car.Wait(TimeSpan.FromDays(14));
        var joint = Show(km: 48_230);
        Assert.Contains("Its last day is reached.", joint.Find(".last-day").TextContent, StringComparison.Ordinal);
        await ChooseAsync(joint, "110");

        await Button(joint, "NOT MOVED").ClickAsync(new());

        Assert.Equal(Right.Lead, needs);
        Assert.Contains("settled early by the lead's signature alone", shown, StringComparison.Ordinal);
        car.Declare(TestRegister.WheelDown);
        car.Do(TestPerson.Lee, recorded!);
        Assert.Equal(PositionState.Settled, car.Shows(recorded!.Positions[0]));
    }

    [Fact]
    public async Task On_its_last_day_it_gets_one_new_interval_with_a_reason()
    {
        car.Wait(TimeSpan.FromDays(15));
        var joint = Show(km: 48_210);
        var button = joint.FindAll(".last-day button").Single();

        await button.ClickAsync(new());
        Assert.Null(extended);
        Assert.Equal("Write why it gets a new interval.", joint.Find(".last-day .form-wrong").TextContent.Trim());

        await joint.Find(".last-day input").InputAsync(new ChangeEventArgs { Value = "On its trailer since" });
        await joint.FindAll(".last-day button").Single().ClickAsync(new());
        Assert.Equal((Right.Lead, 5, "48210 km"), (needs, extended!.Positions.Count, extended.Odometer.ToString()));
        car.Do(TestPerson.Lee, extended);

        Assert.Empty(Show(km: 48_210).FindAll(".last-day"));
        car.Wait(TimeSpan.FromDays(15));
        Assert.Empty(Show(km: 48_210).FindAll(".last-day button"));
    }

    [Fact]
    public async Task An_odometer_below_the_last_is_not_signed_without_a_word()
    {
        var joint = Show(km: 48_000);
        await ChooseAsync(joint, "110");

        await Button(joint, "NOT MOVED").ClickAsync(new());

        Assert.Null(recorded);
        Assert.Contains("It was at 48,210 km before", joint.Find("[role=alert]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_is_recorded_before_somebody_has_said_how_the_car_stands()
    {
        var joint = Show(stands: null);
        await joint.FindAll(".choice").Single(tool => tool.TextContent == "W7").ClickAsync(new());
        Assert.Empty(joint.FindAll("input.figures"));
        Assert.Contains("First confirm the car's condition.", joint.Find(".retorque-warning").TextContent, StringComparison.Ordinal);

        await Button(joint, "IT IS SO").ClickAsync(new());

        Assert.Equal(TestRegister.WheelDown, Assert.Single(declared!.Conditions));
        car.Do(TestPerson.Tess, declared);
        joint = Show(stands: null);
        await ChooseAsync(joint, "110");
        Assert.Empty(joint.FindAll(".retorque-warning"));
        await Button(joint, "ALL 5").ClickAsync(new());
        car.Do(TestPerson.Tess, recorded!);
        Assert.All(recorded!.Positions, position => Assert.Equal(PositionState.Settled, car.Shows(position)));
    }

    [Fact]
    public async Task A_car_that_stands_otherwise_is_said_before_it_is_signed_and_holds()
    {
        var joint = Show(stands: TestRegister.WheelUp);
        await ChooseAsync(joint, "110");

        Assert.StartsWith("The car is not in the condition asked (up): it is recorded, holds the fastener", joint.Find(".retorque-warning").TextContent, StringComparison.Ordinal);
        await Button(joint, "NOT MOVED").ClickAsync(new());
        car.Do(TestPerson.Tess, recorded!);
        Assert.Equal(PositionState.Held, car.Shows(recorded!.Positions[0]));
    }

    private IRenderedComponent<ReTorqueJoint> Show(decimal? km = 48_310, Domain.Procedures.Adapter? adapter = null) => Show(TestRegister.WheelDown, km, adapter);

    private IRenderedComponent<ReTorqueJoint> Show(Domain.Procedures.CarCondition? stands, decimal? km = 48_310, Domain.Procedures.Adapter? adapter = null)
    {
        if (stands is { } said)
        {
            car.Declare(said);
        }

        var reading = Readings.Of(car, TestPerson.Tess);
        var due = Assert.Single(DueJoint.Of(reading));
        var odometer = new OdometerEntry { Text = km?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "" };
        odometer.Know(reading);
        return Render<ReTorqueJoint>(parameters => parameters
            .Add(joint => joint.Reading, reading)
            .Add(joint => joint.Due, due with { Instance = due.Instance with { Group = due.Instance.Group with { Adapter = adapter } } })
            .Add(joint => joint.Odometer, odometer)
            .Add(joint => joint.OnDeclare, asked => declared = asked)
            .Add(joint => joint.OnRecord, asked =>
            {
                recorded = asked.Command as RecordSettled;
                extended = asked.Command as ExtendReTorque;
                needs = asked.Request.Needs;
                shown = string.Join("; ", asked.Request.Shown.Lines);
                return Task.FromResult(true);
            }));
    }
}
