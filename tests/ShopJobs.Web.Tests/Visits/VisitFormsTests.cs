using Bunit;
using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.Visits;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Tests.CarPage;

namespace ShopJobs.Web.Tests.Visits;

/// <summary>The forms of a visit say beside each field what is missing, and lose nothing that was typed.</summary>
public sealed class VisitFormsTests : ScreenBench
{
    private readonly List<(Report Command, string Place, int Texts)> run = [];

    [Fact]
    public async Task Pressed_empty_each_field_of_a_car_that_comes_in_says_what_it_needs()
    {
        var form = ComeInForm(new CarAtWork());

        await form.Find("form").SubmitAsync(new());

        Assert.Equal(
            ["Type what the odometer shows, for example 50200.", "Write why it comes: the job, the noise, the re-torque.", "Pick the place."],
            form.FindAll(".form-wrong p").Select(problem => problem.TextContent));
        Assert.Empty(run);
    }

    [Fact]
    public async Task A_car_comes_in_with_its_odometer_as_it_was_typed()
    {
        var form = ComeInForm(new CarAtWork());
        await form.Find("#come-in-km").InputAsync(new ChangeEventArgs { Value = "31,000 mi" });
        Assert.Equal("Read as 31,000 mi.", form.Find("#come-in-km-read").TextContent);
        await form.Find("#come-in-why").InputAsync(new ChangeEventArgs { Value = "It knocks" });
        await PressAsync(form, "Lift A");

        await form.Find("form").SubmitAsync(new());

        var (command, place, texts) = Assert.Single(run);
        Assert.Equal((new OdometerReading(31000, DistanceUnit.Mile), "LiftA", 1), (((ComeIn)command).Odometer!.Value, place, texts));
    }

    [Fact]
    public async Task A_warranty_case_names_its_joints_and_asks_for_them_beside_the_choice()
    {
        var car = new CarAtWork();
        Assert.DoesNotContain("warranty", ComeInForm(car).Markup, StringComparison.OrdinalIgnoreCase);
        car.FitLeftWheel();
        var form = ComeInForm(car);
        await form.Find("#come-in-km").InputAsync(new ChangeEventArgs { Value = "48300" });
        await form.Find("#come-in-why").InputAsync(new ChangeEventArgs { Value = "It knocks" });
        await PressAsync(form, "Lift A");
        await PressAsync(form, "It is a warranty case");
        await form.Find("form").SubmitAsync(new());
        Assert.Equal(["Pick the joints the case is about, or say that it is none."], form.FindAll("#come-in-warranty-wrong p").Select(problem => problem.TextContent));
        Assert.Empty(run);

        await PressAsync(form, "wheel nut front-left");
        await form.Find("form").SubmitAsync(new());

        Assert.Equal([new Joint("wheel.nut", "front-left")], ((ComeIn)Assert.Single(run).Command).Warranty);
        await PressAsync(form, "It is a warranty case");
        await form.Find("form").SubmitAsync(new());
        Assert.Null(((ComeIn)run[^1].Command).Warranty);
    }

    [Fact]
    public async Task An_odometer_that_can_not_be_read_asks_why()
    {
        var form = ComeInForm(new CarAtWork());
        await PressAsync(form, "can't be read");
        await form.Find("#come-in-why").InputAsync(new ChangeEventArgs { Value = "It knocks" });
        await PressAsync(form, "Floor space");
        await form.Find("form").SubmitAsync(new());
        Assert.Empty(run);

        await form.Find("#come-in-unread").InputAsync(new ChangeEventArgs { Value = "The instrument is out" });
        await form.Find("form").SubmitAsync(new());

        Assert.Null(((ComeIn)Assert.Single(run).Command).Odometer);
        Assert.Equal(2, run[0].Texts);
    }

    [Fact]
    public void A_lift_that_another_car_stands_on_is_named_with_it() =>
        Assert.Contains("Orange is there", ComeInForm(new CarAtWork()).FindAll(".choice").Single(choice => choice.TextContent.Contains("Lift B", StringComparison.Ordinal)).TextContent, StringComparison.Ordinal);

    [Fact]
    public void The_places_are_offered_by_their_names_in_the_shops_order_and_none_that_is_out_of_use()
    {
        var car = new CarAtWork { Places = new([new("x2", "Rig lift", PlaceKind.Lift), new("x3", "Paint booth", PlaceKind.Floor, InUse: false), new("x1", "Yard", PlaceKind.Outside)]) };

        Assert.Equal(["Rig lift", "Yard"], ComeInForm(car).FindAll("fieldset .choice").Select(choice => choice.TextContent.Trim()));
    }

    [Fact]
    public async Task A_car_that_is_not_to_be_moved_says_what_is_loose_and_takes_what_has_happened_with_why()
    {
        var car = Readings.WithStoppedNut();
        var panel = Render<MovePanel>(parameters => parameters
            .Add(move => move.Reading, Readings.Of(car, TestPerson.Tess)).Add(move => move.Place, "LiftA").Add(move => move.OnRun, RunAsync));
        Assert.Contains("Move: NO", panel.Find(".car-move-word").TextContent, StringComparison.Ordinal);
        Assert.Contains("wheel nut front-left", panel.Find(".release-reasons").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(panel.FindAll(".choice"), choice => choice.TextContent.Contains("Lift A", StringComparison.Ordinal));

        await PressAsync(panel, "Outside");
        await panel.FindAll("form")[0].SubmitAsync(new());
        Assert.Equal(new MoveCar("LiftA", "Outside"), Assert.Single(run).Command);
        Assert.Contains("Refused. Orange is there.", panel.Find("#move-refused").TextContent, StringComparison.Ordinal);

        await panel.FindAll("form")[1].SubmitAsync(new());
        Assert.Equal("Write why it was moved all the same.", panel.Find("#moved-why-wrong").TextContent.Trim());
        await panel.Find("#moved-why").InputAsync(new ChangeEventArgs { Value = "Fire alarm" });
        await panel.FindAll("form")[1].SubmitAsync(new());
        Assert.IsType<ReportMoved>(run[1].Command);
    }

    [Fact]
    public async Task A_car_without_a_release_to_road_leaves_only_as_what_has_happened()
    {
        var panel = Render<LeavePanel>(parameters => parameters
            .Add(leave => leave.Reading, Readings.Of(new CarAtWork(), TestPerson.Tess)).Add(leave => leave.OnRun, RunAsync));
        await panel.Find("form").SubmitAsync(new());
        Assert.Equal(["Pick how it leaves.", "Write who takes the car."], panel.FindAll(".form-wrong p").Select(problem => problem.TextContent));

        await PressAsync(panel, "Driven");
        await panel.Find("#taken-by").InputAsync(new ChangeEventArgs { Value = "The owner" });
        Assert.Contains("It goes under no release to road", panel.Markup, StringComparison.Ordinal);
        await panel.Find("#gone-why").InputAsync(new ChangeEventArgs { Value = "He took the key" });
        await panel.FindAll("form")[1].SubmitAsync(new());

        Assert.Equal((WayOut.Driven, 2), (((ReportGone)Assert.Single(run).Command).Way, run[0].Texts));
    }

    [Fact]
    public void A_car_that_may_leave_on_a_trailer_is_offered_no_way_around()
    {
        var panel = Render<LeavePanel>(parameters => parameters
            .Add(leave => leave.Reading, Readings.Of(Readings.OnTheRoad(), TestPerson.Tess)).Add(leave => leave.OnRun, RunAsync));
        Assert.Single(panel.FindAll("form"));
    }

    private IRenderedComponent<ComeInForm> ComeInForm(CarAtWork car) => Render<ComeInForm>(parameters => parameters
        .Add(form => form.Reading, Readings.Of(car, TestPerson.Tess)).Add(form => form.OnRun, RunAsync));

    private Task<DeskAnswer> RunAsync(Report command, string place, IReadOnlyList<NewContent?> contents)
    {
        run.Add((command, place, contents.OfType<NewContent>().Count()));
        return Task.FromResult(DeskAnswer.Refused([new HoldPoint(HoldReason.PlaceTaken) { Name = "Orange" }], HoldNames.Plain));
    }

    private static Task PressAsync<T>(IRenderedComponent<T> on, string words)
        where T : IComponent =>
        on.FindAll(".choice").First(choice => choice.TextContent.Contains(words, StringComparison.Ordinal)).ClickAsync(new());
}
