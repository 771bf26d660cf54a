using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Step;

namespace ShopJobs.Web.Tests.Step;

/// <summary>Where each fastener of a joint is drawn.</summary>
public sealed class PatternLayoutTests
{
    [Fact]
    public void Rows_of_the_register_are_drawn_from_the_left_with_their_gaps()
    {
        var cover = PatternLayout.For(11, new JointDrawing([[1, 2, 3, 4, 5], [0, 0, 11, 0, 0], [6, 7, 8, 9, 10]]));

        Assert.Equal(cover.Points[3].X, cover.Points[11].X);
        Assert.Equal(cover.Points[8].X, cover.Points[11].X);
        Assert.True(cover.Points[1].Y < cover.Points[11].Y && cover.Points[11].Y < cover.Points[6].Y);
        Assert.False(cover.IsRound);
    }

    [Fact]
    public void A_circle_of_the_register_begins_at_the_top_and_goes_its_way()
    {
        var clockwise = PatternLayout.For(4, new JointDrawing([]));
        var other = PatternLayout.For(4, new JointDrawing([]) { IsClockwise = false });

        Assert.True(clockwise.Points[1].Y < clockwise.Points[2].Y);
        Assert.True(clockwise.Points[2].X > clockwise.Points[4].X);
        Assert.True(other.Points[2].X < other.Points[4].X);
    }

    [Fact]
    public void A_drawing_of_another_count_is_left_aside()
    {
        var five = new JointDrawing([[1, 2], [3, 4]]);

        Assert.Equal(PatternLayout.For(5).Points[1], PatternLayout.For(5, five).Points[1]);
    }
}
