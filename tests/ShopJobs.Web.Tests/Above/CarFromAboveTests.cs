using Bunit;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.Above;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Tests.CarPage;

namespace ShopJobs.Web.Tests.Above;

public sealed class CarFromAboveTests : ScreenBench
{
    [Fact]
    public void It_says_how_many_fasteners_are_in_each_state_worst_first()
    {
        var picture = Show(Readings.WithHeldNut());

        Assert.Equal("The car from above, 28 fasteners: 1 held, 4 hand-tight, 23 as found.", Said(picture));
        Assert.Equal("img", picture.Find("svg.above-car").GetAttribute("role"));
    }

    [Fact]
    public void Every_fastener_is_drawn_and_only_what_was_touched_is_a_nut_in_full()
    {
        var picture = Show(Readings.WithHeldNut());

        Assert.Equal(23, picture.FindAll(".above-as-found").Count);
        Assert.Equal(5, picture.FindAll("svg.hexagon").Count);
        Assert.Single(picture.FindAll("svg.hexagon.is-held"));
    }

    [Fact]
    public void The_small_form_has_one_mark_for_each_part_of_the_car_and_says_each_place()
    {
        var picture = Show(Readings.WithHeldNut(), compact: true);

        Assert.Equal("The car from above: front-left 1 held, 4 hand-tight; 23 as found.", Said(picture));
        Assert.Equal((1, 2), (picture.FindAll("svg.hexagon").Count, picture.FindAll(".above-as-found").Count));
    }

    [Fact]
    public void Joints_at_a_place_nobody_can_draw_are_named_below_it()
    {
        JointSeen cage = new(new Joint("cage.foot", "roll cage"), "cage foot bolt", "body", [new(1, PositionState.Open, 0, 0, false), new(2, PositionState.AsFound, 0, 0, false)]);

        var picture = Render<CarFromAbove>(parameters => parameters.Add(above => above.Joints, [cage]));

        Assert.Equal("Not in the picture: cage foot bolt roll cage: 1 open", picture.Find("figcaption").TextContent);
        Assert.StartsWith("The car from above, 2 fasteners: 1 open", Said(picture), StringComparison.Ordinal);
    }

    [Fact]
    public void The_joint_that_is_looked_at_is_picked_out()
    {
        var joint = new Joint(TestRegister.Nut, TestRegister.Left);

        var picture = Render<CarFromAbove>(parameters => parameters.Add(above => above.Joints, Joints(Readings.WithHeldNut())).Add(above => above.Marked, joint));

        Assert.Equal(5, picture.FindAll(".above-marked").Count);
    }

    [Fact]
    public void Legend_explains_every_state_once()
    {
        var legend = Render<StateLegend>(parameters => parameters.Add(legend => legend.WithMeaning, true));

        Assert.Equal(Enum.GetValues<PositionState>().Length, legend.FindAll("dt svg.hexagon").Count);
        Assert.All(legend.FindAll("dd"), meaning => Assert.NotEmpty(meaning.TextContent));
    }

    private static string? Said(IRenderedComponent<CarFromAbove> picture) => picture.Find("svg.above-car").GetAttribute("aria-label");

    private static IReadOnlyList<JointSeen> Joints(CarAtWork car)
    {
        var reading = Readings.Of(car, TestPerson.Nobody);
        return JointsSeen.Of(reading.State, reading.Now);
    }

    private IRenderedComponent<CarFromAbove> Show(CarAtWork car, bool compact = false) =>
        Render<CarFromAbove>(parameters => parameters.Add(above => above.Joints, Joints(car)).Add(above => above.Compact, compact));
}
