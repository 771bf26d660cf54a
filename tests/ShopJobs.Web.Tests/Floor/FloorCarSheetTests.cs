using Bunit;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.Floor;
using ShopJobs.Web.Tests.CarPage;

namespace ShopJobs.Web.Tests.Floor;

public sealed class FloorCarSheetTests : ScreenBench
{
    [Fact]
    public void A_car_with_nothing_going_on_takes_one_line()
    {
        var sheet = Show(new CarAtWork());

        Assert.Equal("Nothing going on. Move: YES", sheet.Find(".car-quiet").TextContent);
        Assert.Empty(sheet.FindAll(".count-chip, .above, .car-line, .car-move"));
    }

    [Fact]
    public void A_car_with_somebody_on_it_is_shown_in_full_though_nothing_was_touched()
    {
        var sheet = Show(new CarAtWork(), "Tess");

        Assert.Equal("Move: YES", sheet.Find(".car-move-word").TextContent);
        Assert.Equal("28", Count(sheet, "as found"));
        Assert.Contains("no work planned", sheet.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void Only_states_that_some_fastener_is_in_are_counted_and_as_found_is_last()
    {
        var words = Show(Readings.WithHeldNut()).FindAll(".count-chip .count-word").Select(word => word.TextContent);

        Assert.Equal(["hand-tight", "held", "as found"], words);
    }

    [Fact]
    public void The_car_is_drawn_from_above_with_what_was_touched_at_its_place()
    {
        var picture = Show(Readings.WithHeldNut()).Find(".above.is-compact svg.above-car");

        Assert.Equal("The car from above: front-left 1 held, 4 hand-tight; 23 as found.", picture.GetAttribute("aria-label"));
    }

    [Fact]
    public void Held_car_says_no_with_the_first_reason_the_counts_and_the_blocker()
    {
        var sheet = Show(Readings.WithHeldNut(), "Tess");

        Assert.Equal("Move: NO", sheet.Find(".car-move-word").TextContent);
        Assert.StartsWith("wheel nut front-left 1: held: over the permitted maximum", sheet.Find(".car-move-why").TextContent, StringComparison.Ordinal);
        Assert.Equal(("1", "4"), (Count(sheet, "held"), Count(sheet, "hand-tight")));
        Assert.Equal("HELD", sheet.Find(".blocker").TextContent);
        Assert.Equal("TE", sheet.Find(".initials").TextContent);
    }

    [Fact]
    public void Oldest_hand_tight_is_named_with_its_age()
    {
        var car = Readings.WithHeldNut();
        var sheet = Render<FloorCarSheet>(parameters => parameters
            .Add(sheet => sheet.Shown, Readings.OnFloor(car)).Add(sheet => sheet.At, car.Now.AddHours(3)));

        Assert.Contains("wheel nut front-left 2, 3 h", sheet.Find(".car-line").TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(8, "wheel nut front-left 2, 8 h")]
    [InlineData(9, "wheel nut front-left 2, 9 h: too long")]
    public void Hand_tight_for_more_than_the_shops_hours_is_too_long(int hours, string words)
    {
        var car = Readings.WithHeldNut();
        var sheet = Render<FloorCarSheet>(parameters => parameters
            .Add(sheet => sheet.Shown, Readings.OnFloor(car))
            .Add(sheet => sheet.At, Readings.OnFloor(car).Glance.OldestHandTight!.Value.Since!.Value.AddHours(hours)));

        Assert.EndsWith(words, sheet.Find(".car-line").TextContent.Trim(), StringComparison.Ordinal);
    }

    [Fact]
    public void Release_is_told_and_told_void_after_opening()
    {
        var car = Readings.OnTheRoad();
        Assert.Equal("released to road", Show(car).Find(".car-released").TextContent);
        Assert.Equal("5", Count(Show(car), "due"));

        car.Open(TestPerson.Theo, null, car.Positions(TestRegister.Nut, TestRegister.Left));

        Assert.Equal("release to road ended", Show(car).Find(".car-released").TextContent);
        Assert.Equal("5", Count(Show(car), "open"));
    }

    [Fact]
    public void A_release_that_lapsed_says_do_not_drive_and_not_released()
    {
        var car = Readings.OnTheRoad();
        car.Wait(TimeSpan.FromDays(31));

        var sheet = Show(car);

        Assert.Equal("Expired: do not drive", sheet.Find(".car-suspended strong").TextContent);
        Assert.EndsWith("/re-torque", sheet.Find(".car-suspended a").GetAttribute("href"), StringComparison.Ordinal);
        Assert.Empty(sheet.FindAll(".car-released"));
    }

    [Fact]
    public void A_suspended_release_says_do_not_drive_and_why_and_not_released()
    {
        var car = Readings.OnTheRoad();
        car.Do(TestPerson.Tess, new HoldPositions([car.Positions(TestRegister.Nut, TestRegister.Left)[0]], CarAtWork.Reason));

        var sheet = Show(car);

        Assert.Equal("Suspended: do not drive", sheet.Find(".car-suspended strong").TextContent);
        Assert.StartsWith("wheel nut front-left 1: held", sheet.Find(".car-suspended span").TextContent, StringComparison.Ordinal);
        Assert.EndsWith("/release", sheet.Find(".car-suspended a").GetAttribute("href"), StringComparison.Ordinal);
        Assert.Empty(sheet.FindAll(".car-released"));
    }

    [Fact]
    public void Every_state_has_a_word_and_a_drawing()
    {
        Assert.All(Show(Readings.WithHeldNut()).FindAll(".count-chip"), chip =>
        {
            Assert.NotEmpty(chip.QuerySelector(".count-word")!.TextContent);
            Assert.NotNull(chip.QuerySelector("svg.hexagon"));
        });
    }

    [Fact]
    public void Held_fasteners_of_one_joint_are_one_row_with_the_way_to_the_decision()
    {
        var car = Readings.WithHeldNut();
        car.Do(TestPerson.Lee, new HoldPositions([.. car.Positions(TestRegister.Nut, TestRegister.Right)], CarAtWork.Reason));
        var reading = new FloorScene([Readings.OnFloor(car)], [], car.Now, car.Today);

        var band = Render<HeldBand>(parameters => parameters.Add(band => band.Reading, reading));

        Assert.Equal("Held: 6", band.Find("h2").TextContent);
        Assert.Equal(2, band.FindAll("li").Count);
        Assert.Equal($"/cars/{Readings.Id.Value}/held/wheel.nut/front-left/1", band.Find("a").GetAttribute("href"));
        Assert.Contains("wheel nut front-right 1 to 5", band.FindAll("li")[1].TextContent, StringComparison.Ordinal);
    }

    private static string Count(IRenderedComponent<FloorCarSheet> sheet, string word) => sheet.FindAll(".count-chip")
        .Single(chip => chip.QuerySelector(".count-word")!.TextContent == word).QuerySelector(".count-number")!.TextContent;

    private IRenderedComponent<FloorCarSheet> Show(CarAtWork car, params string[] people) => Render<FloorCarSheet>(parameters => parameters
        .Add(sheet => sheet.Shown, Readings.OnFloor(car, people)).Add(sheet => sheet.At, car.Now));
}
