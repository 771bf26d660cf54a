using Bunit;
using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.Releases;
using ShopJobs.Web.Tests.CarPage;

namespace ShopJobs.Web.Tests.Releases;

public sealed class ReleaseCardTests : ScreenBench
{
    private AskedRelease? asked;

    [Fact]
    public void No_shows_the_first_three_reasons_and_all_on_demand()
    {
        var card = Show(Readings.WithHeldNut(), ReleaseKind.Road);

        Assert.Contains("to road NO", card.Find("h2").TextContent, StringComparison.Ordinal);
        var first = card.FindAll(".release-reasons > li");
        Assert.Equal(3, first.Count);
        Assert.Contains("held: over the permitted maximum", first[0].TextContent, StringComparison.Ordinal);
        Assert.EndsWith("/held/wheel.nut/front-left/1", first[0].QuerySelector("a")!.GetAttribute("href"), StringComparison.Ordinal);
        var held = Readings.Of(Readings.WithHeldNut(), TestPerson.Lee);
        Assert.Equal(held.Now.Gather(held.HoldsOn(ReleaseKind.Road)).Count, card.FindAll(".release-all li").Count);
        Assert.Empty(card.FindAll("button[type=submit]"));
    }

    [Fact]
    public async Task Road_needs_the_odometer_and_says_what_is_not_checked_and_when_it_lapses()
    {
        var car = new CarAtWork();
        car.FitLeftWheel();
        var card = Show(car, ReleaseKind.Road);
        await card.Find("form").SubmitAsync(new());
        Assert.Null(asked);
        Assert.NotEqual("", card.Find("#km-Road-wrong").TextContent.Trim());

        await card.Find("#km-Road").InputAsync(new ChangeEventArgs { Value = "48 210,5" });
        await card.TickClosingCheckAsync();

        var terms = card.Find(".release-terms").TextContent;
        Assert.Contains("9 joints not worked on: as the car came in.", terms, StringComparison.Ordinal);
        Assert.Contains("Expires at 48,310.5 km or after 16 Mar 2026", terms, StringComparison.Ordinal);
        Assert.Contains("Ends P5", terms, StringComparison.Ordinal);
        await card.Find("form").SubmitAsync(new());
        Assert.Equal((ReleaseKind.Road, (decimal?)48_210.5m), (asked!.Kind, asked.OdometerKm));
        Assert.Contains("9 joints not worked on: as the car came in.", asked.Shown);
    }

    [Fact]
    public async Task A_job_that_was_asked_for_and_is_not_begun_is_named_before_the_release_is_signed()
    {
        var car = new CarAtWork();
        car.FitLeftWheel();
        car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Right);
        var card = Show(car, ReleaseKind.Road);
        await card.Find("#km-Road").InputAsync(new ChangeEventArgs { Value = "48210" });
        await card.TickClosingCheckAsync();

        Assert.Contains("is not begun.", card.Find(".release-terms").TextContent, StringComparison.Ordinal);
        await card.Find("form").SubmitAsync(new());
        Assert.Contains(asked!.Shown, line => line.EndsWith("is not begun.", StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_road_waits_for_the_whole_closing_check_which_is_signed_with_it()
    {
        var car = new CarAtWork();
        car.FitLeftWheel();
        var card = Show(car, ReleaseKind.Road);
        await card.Find("#km-Road").InputAsync(new ChangeEventArgs { Value = "48210" });
        await card.TickClosingCheckAsync(but: ClosingItem.ToolsCounted);
        await card.Find("form").SubmitAsync(new());
        Assert.Null(asked);
        Assert.Contains("Look at the car, then tick what you saw.", card.Find("#closing-Road-wrong").TextContent, StringComparison.Ordinal);

        await card.Find("#closing-Road-ToolsCounted").ChangeAsync(new ChangeEventArgs { Value = true });
        await card.Find("form").SubmitAsync(new());

        Assert.Equal(ClosingCheck.All, asked!.Closing);
        Assert.Contains("Seen: Tools counted: every one is back", asked.Shown);
    }

    [Theory]
    [InlineData("")]
    [InlineData("abc")]
    [InlineData("-5")]
    [InlineData("1.2.3")]
    [InlineData("12,5")]
    public async Task Odometer_that_is_no_number_releases_nothing(string typed)
    {
        var car = new CarAtWork();
        car.FitLeftWheel();
        var card = Show(car, ReleaseKind.Road);

        await card.Find("#km-Road").InputAsync(new ChangeEventArgs { Value = typed });
        await card.TickClosingCheckAsync();
        await card.Find("form").SubmitAsync(new());

        Assert.Null(asked);
    }

    [Theory]
    [InlineData("50,200", 50_200)]
    [InlineData("61.000", 61_000)]
    [InlineData("50'200", 50_200)]
    public async Task A_thousands_mark_is_no_decimal_mark(string typed, double km)
    {
        var car = new CarAtWork();
        car.FitLeftWheel();
        var card = Show(car, ReleaseKind.Road);

        await card.Find(".odometer").InputAsync(new ChangeEventArgs { Value = typed });
        await card.TickClosingCheckAsync();
        await card.Find("form").SubmitAsync(new());

        Assert.Equal(new OdometerReading((decimal)km, DistanceUnit.Kilometre), asked!.Odometer);
        Assert.Contains($"Odometer {km:#,##0} km", asked.Shown);
    }

    [Fact]
    public async Task An_unclear_odometer_is_asked_back_at_its_field()
    {
        var car = new CarAtWork();
        car.FitLeftWheel();
        var card = Show(car, ReleaseKind.Road);

        await card.Find(".odometer").InputAsync(new ChangeEventArgs { Value = "12,5" });
        await card.TickClosingCheckAsync();
        await card.Find(".odometer").BlurAsync(new());

        Assert.Contains("can be read in two ways", card.Find("#km-Road-wrong").TextContent, StringComparison.Ordinal);
        Assert.Contains("km-Road-wrong", card.Find(".odometer").GetAttribute("aria-describedby"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Track_with_a_re_torque_due_waits_for_the_customers_written_acceptance()
    {
        var car = Readings.OnTheRoad();
        var reasons = Readings.Of(car, TestPerson.Lee).HoldsOn(ReleaseKind.Track, customerAccepted: true);
        Assert.DoesNotContain(reasons, point => point.Reason == HoldReason.ReTorqueDue);
        var card = Show(car, ReleaseKind.Track);
        Assert.Contains("re-torque after the first drive is not done", card.Markup, StringComparison.Ordinal);

        await card.Find("#accepted-Track-words").InputAsync(new ChangeEventArgs { Value = "x" });
        Assert.Contains("re-torque after the first drive is not done", card.Markup, StringComparison.Ordinal);
        await AcceptAsync(card, ReleaseKind.Track, "I do it myself");

        Assert.DoesNotContain("re-torque after the first drive is not done", card.Markup, StringComparison.Ordinal);
        Assert.NotEmpty(card.FindAll("textarea"));
    }

    [Fact]
    public void Release_that_ended_says_from_when_and_by_what()
    {
        var car = Readings.OnTheRoad();
        car.Open(TestPerson.Theo, null, car.Positions(TestRegister.Nut, TestRegister.Left));

        var card = Render<ReleaseCard>(parameters => parameters
            .Add(card => card.Reading, Readings.Of(car, TestPerson.Lee))
            .Add(card => card.Kind, ReleaseKind.Road)
            .Add(card => card.Ended, car.Book.ToDictionary(entry => entry.Number))
            .Add(card => card.Names, Readings.Names));

        Assert.Contains($"ended {car.Now:HH:mm}: joint opened: wheel nut front-left", card.Find(".release-stands").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_suspended_release_says_do_not_drive_and_why_and_offers_no_signature_before_that_is_put_right()
    {
        var car = Readings.OnTheRoad();
        car.Do(TestPerson.Tess, new HoldPositions([car.Positions(TestRegister.Nut, TestRegister.Left)[0]], CarAtWork.Reason));

        var card = Show(car, ReleaseKind.Road);

        Assert.Equal("Suspended: do not drive", card.Find(".release-stop").TextContent);
        Assert.Contains("wheel nut front-left 1", card.Find(".release-suspended").TextContent, StringComparison.Ordinal);
        Assert.Empty(card.FindAll(".release-suspended button"));
    }

    [Fact]
    public async Task A_release_whose_doubt_was_lifted_is_signed_to_stand_again()
    {
        var car = Readings.OnTheRoad();
        car.TellTool(TestTools.Click, new Doubted(CarAtWork.Reason));
        car.TellTool(TestTools.Click, new Cleared([car.Tool(TestTools.Click).Doubts[0].Number], CarAtWork.Reason));
        ReleaseKind? upheld = null;
        var card = Render<ReleaseCard>(parameters => parameters
            .Add(card => card.Reading, Readings.Of(car, TestPerson.Lee))
            .Add(card => card.Kind, ReleaseKind.Road)
            .Add(card => card.OnUphold, kind => upheld = kind));

        await card.Find(".release-suspended button").ClickAsync(new());

        Assert.Equal(ReleaseKind.Road, upheld);
    }

    [Fact]
    public async Task Taking_a_release_back_asks_whether_the_car_was_driven_and_why()
    {
        TakenBack? back = null;
        var card = Render<ReleaseCard>(parameters => parameters
            .Add(card => card.Reading, Readings.Of(Readings.OnTheRoad(), TestPerson.Lee))
            .Add(card => card.Kind, ReleaseKind.Road)
            .Add(card => card.OnTakeBack, asked => back = asked));
        var press = () => card.Find(".release-back .button-held").ClickAsync(new());

        await press();
        Assert.Contains("Say whether the car was driven", card.Find("#driven-Road-wrong").TextContent, StringComparison.Ordinal);
        await card.FindAll(".release-back .choice")[1].ClickAsync(new());
        await press();
        Assert.Contains("Write why", card.Find("#back-Road-wrong").TextContent, StringComparison.Ordinal);
        await card.Find("#back-Road").InputAsync(new ChangeEventArgs { Value = "wrong car" });
        await press();

        Assert.Equal(new TakenBack(ReleaseKind.Road, false, "wrong car"), back);
    }

    [Fact]
    public void A_car_that_was_never_released_has_nothing_to_take_back() =>
        Assert.Empty(Show(new CarAtWork(), ReleaseKind.Road).FindAll(".release-back"));

    [Fact]
    public async Task An_overdue_re_torque_refuses_the_road_until_the_customer_has_accepted_it_in_writing()
    {
        var card = Show(Readings.OnTheRoad(), ReleaseKind.Road);

        await card.Find("#km-Road").InputAsync(new ChangeEventArgs { Value = "48311" });
        await card.TickClosingCheckAsync();

        Assert.Contains("to road NO", card.Find("h2").TextContent, StringComparison.Ordinal);
        Assert.EndsWith("/re-torque", card.Find(".release-reasons a").GetAttribute("href"), StringComparison.Ordinal);
        Assert.Equal("48311", card.Find("#km-Road").GetAttribute("value"));
        await card.Find("form").SubmitAsync(new());
        Assert.Null(asked);
        Assert.Contains("Nobody is named", card.Find("#accepted-Road-who-wrong").TextContent, StringComparison.Ordinal);

        await AcceptAsync(card, ReleaseKind.Road, "I drive home first");
        await card.Find("form").SubmitAsync(new());

        Assert.Equal(("Rhea Quill", SaidHow.InWriting), (asked!.Acceptance!.Who, asked.Acceptance.How));
    }

    [Fact]
    public async Task An_odometer_below_the_last_asks_why()
    {
        var card = Show(Readings.OnTheRoad(), ReleaseKind.Road);

        await card.Find("#km-Road").InputAsync(new ChangeEventArgs { Value = "48000" });
        await card.TickClosingCheckAsync();
        await card.Find("form").SubmitAsync(new());
        Assert.Null(asked);
        Assert.Contains("write why it is lower", card.Find("#km-Road-wrong").TextContent, StringComparison.Ordinal);
        await card.Find("#km-Road-why").InputAsync(new ChangeEventArgs { Value = "new instrument" });
        await card.Find("form").SubmitAsync(new());

        Assert.Equal("new instrument", asked!.OdometerWhy);
    }

    private static async Task AcceptAsync(IRenderedComponent<ReleaseCard> card, ReleaseKind kind, string words)
    {
        await card.Find($"#accepted-{kind}-who").InputAsync(new ChangeEventArgs { Value = "Rhea Quill" });
        await card.Find($"#accepted-{kind}-day").InputAsync(new ChangeEventArgs { Value = "2026-03-01" });
        await card.FindAll(".acceptance .choice").Single(way => way.TextContent == "In writing").ClickAsync(new());
        await card.Find($"#accepted-{kind}-kept").InputAsync(new ChangeEventArgs { Value = "mail" });
        await card.Find($"#accepted-{kind}-words").InputAsync(new ChangeEventArgs { Value = words });
    }

    private IRenderedComponent<ReleaseCard> Show(CarAtWork car, ReleaseKind kind) => Render<ReleaseCard>(parameters => parameters
        .Add(card => card.Reading, Readings.Of(car, TestPerson.Lee))
        .Add(card => card.Kind, kind)
        .Add(card => card.Names, Readings.Names)
        .Add(card => card.OnRelease, release => asked = release));
}
