using Bunit;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.Step;

namespace ShopJobs.Web.Tests.Step;

public sealed class PatternViewTests : BunitContext
{
    private readonly StepBench bench = StepBench.Wheel();

    [Fact]
    public void Every_position_is_a_hexagon_with_its_number_and_exactly_one_is_outlined()
    {
        bench.HandTight();
        bench.Car.Pull(TestPerson.Tess, bench.Job, "nuts", bench.Nuts[0], 1, 50);

        var drawing = Draw(bench.Scene("seat"));

        Assert.Equal(
            ["1: staged 1/2", "2: hand-tight", "3: hand-tight", "4: hand-tight", "5: hand-tight"],
            drawing.FindAll(".hexagon").Select(nut => nut.GetAttribute("aria-label")));
        Assert.Equal("3", Assert.Single(drawing.FindAll("[data-next]")).GetAttribute("data-next"));
    }

    [Fact]
    public void Lines_join_the_nuts_in_the_order_of_the_star()
    {
        var layout = PatternLayout.For(5);
        var stage = bench.Scene("seat").ShownStage!;

        var lines = layout.Lines(stage).ToList();

        Assert.Equal([1, 3, 5, 2], lines.Select(line => NumberAt(line.From)));
        Assert.Equal([3, 5, 2, 4], lines.Select(line => NumberAt(line.To)));

        int NumberAt((double X, double Y) point) => layout.Points.Single(at => at.Value == point).Key;
    }

    [Fact]
    public void Wheel_stands_on_a_circle_with_one_at_the_top_and_on_clockwise()
    {
        var layout = PatternLayout.For(5);

        Assert.True(layout.IsRound);
        Assert.Equal(layout.Width / 2, layout.Points[1].X, 6);
        Assert.True(layout.Points[1].Y < layout.Points[2].Y);
        Assert.True(layout.Points[2].X > layout.Points[1].X);
        var radii = layout.Points.Values.Select(at => Math.Round(Math.Pow(at.X - (layout.Width / 2), 2) + Math.Pow(at.Y - (layout.Height / 2), 2), 6));
        Assert.Single(radii.Distinct());
    }

    [Fact]
    public void Four_begin_at_the_top_left_as_a_seat_seen_from_above_does()
    {
        var points = PatternLayout.For(4).Points;

        Assert.True(points[1].X < points[2].X && points[1].X < points[3].X);
        Assert.True(points[1].Y < points[3].Y && points[1].Y < points[4].Y);
        Assert.Equal(points[1].Y, points[2].Y, 6);
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 1)]
    [InlineData(10, 2)]
    [InlineData(11, 3)]
    public void Other_counts_stand_in_rows_inside_the_drawing(int count, int rows)
    {
        var layout = PatternLayout.For(count);

        Assert.False(layout.IsRound);
        Assert.Equal(count, layout.Points.Count);
        Assert.Equal(rows, layout.Points.Values.Select(at => at.Y).Distinct().Count());
        Assert.All(layout.Points.Values, at => Assert.InRange(at.X, PatternLayout.Nut / 2, layout.Width - (PatternLayout.Nut / 2)));
        Assert.All(layout.Points.Values, at => Assert.InRange(at.Y, PatternLayout.Nut / 2, layout.Height - (PatternLayout.Nut / 2)));
    }

    private IRenderedComponent<PatternView> Draw(StepScene scene) => Render<PatternView>(parameters => parameters
        .Add(view => view.Reading, scene.Reading)
        .Add(view => view.Instance, scene.Shown!.Instance)
        .Add(view => view.Stage, scene.ShownStage!)
        .Add(view => view.Next, ((NextAction.PullNow)scene.Next).Cell.Position));
}
