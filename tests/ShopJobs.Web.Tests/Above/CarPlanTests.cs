using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Procedures.Documents;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.Above;
using ShopJobs.Web.Tests.CarPage;
using ShopJobs.Web.Tests.Procedures;

namespace ShopJobs.Web.Tests.Above;

public sealed class CarPlanTests
{
    private const double MiddleLine = CarPlan.Width / 2;

    [Theory]
    [InlineData("front-left", true, true)]
    [InlineData("front-right", false, true)]
    [InlineData("rear-left", true, false)]
    [InlineData("rear-right", false, false)]
    public void A_corners_joints_are_at_that_corner_nose_up(string place, bool left, bool front)
    {
        var plan = CarPlan.Of([Joint("wheel.nut", place, "wheels", 5), Joint("brake.carrier", place, "brakes", 2)]);

        Assert.Equal(7, plan.Points.Count);
        Assert.All(plan.Points, point => Assert.Equal((left, front), (point.X < MiddleLine, point.Y < CarPlan.Height / 2)));
    }

    [Fact]
    public void Nuts_of_a_wheel_lie_in_a_ring_on_it_the_first_at_the_top_and_on_clockwise()
    {
        var (x, y) = CarPlan.WheelAt(CarArea.FrontLeft);

        var points = CarPlan.Of([Joint("wheel.nut", "front-left", "wheels", 5)]).Points;

        Assert.Equal(x, points[0].X, 9);
        Assert.True(points[0].Y < y && points[1].X > x && points[4].X < x);
        Assert.All(points, point => Assert.True(Math.Sqrt(Math.Pow(point.X - x, 2) + Math.Pow(point.Y - y, 2)) < CarPlan.WheelRadius));
    }

    [Fact]
    public void Studs_lie_inside_the_nuts_that_ride_on_them()
    {
        var plan = CarPlan.Of([Joint("wheel.stud", "rear-left", "wheels", 5), Joint("wheel.nut", "rear-left", "wheels", 5)]);

        double FromHub(PlanPoint point) => Math.Sqrt(Math.Pow(point.X - CarPlan.WheelAt(CarArea.RearLeft).X, 2) + Math.Pow(point.Y - CarPlan.WheelAt(CarArea.RearLeft).Y, 2));
        Assert.True(plan.Points.Where(At("wheel.stud")).Max(FromHub) < plan.Points.Where(At("wheel.nut")).Min(FromHub));
    }

    [Fact]
    public void What_is_along_the_middle_stands_on_the_middle_line_with_its_word()
    {
        var plan = CarPlan.Of([Joint("seat.base", "driver", "seats", 4), Joint("engine.head", "engine", "engine", 10)]);

        Assert.Equal([CarArea.Engine, CarArea.Driver], plan.Labels.Select(label => label.Area));
        Assert.All(plan.Points, point => Assert.InRange(point.X, MiddleLine - 40, MiddleLine + 40));
    }

    [Fact]
    public void A_place_whose_word_says_nothing_of_where_it_is_is_listed_and_not_drawn()
    {
        var plan = CarPlan.Of([Joint("cage.foot", "roll cage", "body", 12), Joint("wheel.nut", "front-left", "wheels", 5)]);

        Assert.Equal(5, plan.Points.Count);
        Assert.Equal("roll cage", Assert.Single(plan.Elsewhere).Joint.Place);
    }

    [Fact]
    public void Every_joint_of_the_demo_register_is_drawn_once_inside_the_drawing_and_none_on_top_of_another()
    {
        var register = JointRegisterDocument.Load(Documents.Register.Bytes, "joint-register.yaml").Value!;
        var joints = register.Kinds.Values.Where(kind => !kind.Temporary)
            .SelectMany(kind => kind.Places.Select(place => Joint(kind.Key, place, kind.System, kind.PositionsAt(place)))).ToList();

        var plan = CarPlan.Of(joints);

        Assert.Empty(plan.Elsewhere);
        Assert.Equal(200, plan.Points.Count);
        Assert.All(plan.Points, point => Assert.True(point.X is > 0 and < CarPlan.Width && point.Y is > 0 and < CarPlan.Height));
        Assert.DoesNotContain(
            plan.Points.SelectMany((one, index) => plan.Points.Skip(index + 1), (one, other) => (one, other)),
            pair => Math.Abs(pair.one.X - pair.other.X) < 7 && Math.Abs(pair.one.Y - pair.other.Y) < 7);
    }

    [Fact]
    public void More_fasteners_than_have_room_are_drawn_closer_together_and_stay_in_their_part_of_the_car()
    {
        var plan = CarPlan.Of([.. Enumerable.Range(0, 12).Select(kind => Joint($"strut.{kind}", "front-left", "struts", 6))]);

        Assert.Equal(72, plan.Points.Count);
        Assert.All(plan.Points, point => Assert.InRange(point.Y, 90, 204));
    }

    [Fact]
    public void An_area_shows_the_worst_fastener_that_was_touched_and_how_many_are_so()
    {
        var joints = JointsSeen.Of(Readings.WithHeldNut().State, Readings.Of(Readings.WithHeldNut(), TestPerson.Nobody).Now);

        var left = AreaSeen.Of(joints).Single(area => area.Area == CarArea.FrontLeft);

        Assert.Equal((PositionState.Held, 1), (left.Shown.State, left.Count));
        Assert.True(AreaSeen.Of(joints).Single(area => area.Area == CarArea.FrontRight).IsAsFound);
    }

    private static Func<PlanPoint, bool> At(string key) => point => point.Joint.Joint.Key == key;

    private static JointSeen Joint(string key, string place, string system, int count) => new(
        new Joint(key, place), key, system, [.. Enumerable.Range(1, count).Select(number => new FastenerSeen(number, PositionState.AsFound, 0, 0, false))]);
}
