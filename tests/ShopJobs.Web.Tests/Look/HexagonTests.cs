using Bunit;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Look;

namespace ShopJobs.Web.Tests.Look;

public sealed class HexagonTests : BunitContext
{
    public static TheoryData<PositionState> States => new(Enum.GetValues<PositionState>());

    [Theory]
    [MemberData(nameof(States))]
    public void Every_state_has_a_word(PositionState state)
    {
        var label = Draw(state).GetAttribute("aria-label");

        Assert.Equal(PositionWords.Of(state), label);
        Assert.NotEqual("", label);
    }

    [Fact]
    public void No_two_states_look_the_same_without_colour()
    {
        var drawings = Enum.GetValues<PositionState>().Select(state => Draw(state, stage: 1, stages: 2).InnerHtml).ToList();

        Assert.Equal(drawings.Count, drawings.Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(States))]
    public void No_state_is_drawn_as_a_circle(PositionState state)
    {
        var svg = Draw(state);

        Assert.NotNull(state is PositionState.NotFitted ? svg.QuerySelector("rect") : svg.QuerySelector("polygon"));
    }

    [Fact]
    public void Checked_has_one_line_across_and_settled_two()
    {
        Assert.Equal(1, Strokes(PositionState.Checked));
        Assert.Equal(2, Strokes(PositionState.Settled));
        Assert.Equal(0, Strokes(PositionState.AtTorque));
    }

    [Fact]
    public void Held_stands_in_a_square_frame()
    {
        Assert.NotNull(Draw(PositionState.Held).QuerySelector("rect.hexagon-frame"));
        Assert.Null(Draw(PositionState.Open).QuerySelector("rect"));
    }

    [Fact]
    public void Number_and_state_are_said_together()
    {
        var svg = Render<Hexagon>(drawn => drawn.Add(nut => nut.State, PositionState.Staged).Add(nut => nut.Stage, 1).Add(nut => nut.Stages, 3).Add(nut => nut.Number, 4)).Find("svg");

        Assert.Equal("4: staged 1/3", svg.GetAttribute("aria-label"));
        Assert.Equal("4", svg.QuerySelector("text")!.TextContent);
    }

    [Fact]
    public void Void_record_is_struck_and_said_so()
    {
        var svg = Render<Hexagon>(drawn => drawn.Add(nut => nut.State, PositionState.AtTorque).Add(nut => nut.Void, true)).Find("svg");

        Assert.NotNull(svg.QuerySelector("path.hexagon-strike"));
        Assert.Equal("at torque, void", svg.GetAttribute("aria-label"));
    }

    [Theory]
    [InlineData(0, "24,43 24,43 24,43")]
    [InlineData(0.5, "7.5,24 40.5,24 40.5,33.5 24,43 7.5,33.5")]
    [InlineData(1, "24,5 24,5 40.5,14.5 40.5,33.5 24,43 7.5,33.5 7.5,14.5")]
    public void Staged_fills_from_below(double fraction, string points)
    {
        Assert.Equal(points, HexagonShape.FilledFromBelow(fraction));
    }

    private int Strokes(PositionState state) =>
        Draw(state).QuerySelectorAll("path.hexagon-paint").Sum(path => path.GetAttribute("d")!.Count(letter => letter == 'M'));

    private AngleSharp.Dom.IElement Draw(PositionState state, int stage = 0, int stages = 0) =>
        Render<Hexagon>(drawn => drawn.Add(nut => nut.State, state).Add(nut => nut.Stage, stage).Add(nut => nut.Stages, stages)).Find("svg");
}
