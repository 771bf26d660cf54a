using ShopJobs.Web.Components.Bench;

namespace ShopJobs.Web.Tests.Bench;

public sealed class ShownFigureTests
{
    [Theory]
    [InlineData(101.538, "102")]
    [InlineData(98.26, "98.3")]
    [InlineData(81.0, "81")]
    [InlineData(0.2537, "0.254")]
    [InlineData(1234.5, "1230")]
    [InlineData(9.999, "10")]
    [InlineData(104.5, "105")]
    [InlineData(-0.62, "-0.62")]
    [InlineData(0, "0")]
    public void A_computed_value_has_three_significant_figures(double value, string shown) => Assert.Equal(shown, ShownFigure.Of(value));

    /// <summary>Rounded to three, 105.475 would read as the limit itself, and 104.996 as inside.</summary>
    [Theory]
    [InlineData(105.475, 105, "105.5")]
    [InlineData(105.475, 106, "105")]
    [InlineData(104.996, 105, "104.996")]
    [InlineData(105, 105, "105")]
    [InlineData(105.04, 105.4, "105")]
    [InlineData(105.36, 105.4, "105.36")]
    public void A_value_stands_to_its_limit_as_shown_as_it_does_in_truth(double value, double limit, string shown) =>
        Assert.Equal(shown, ShownFigure.Of((decimal)value, (decimal)limit));

    [Fact]
    public void A_range_is_rounded_so_that_it_never_permits_more()
    {
        Assert.Equal("62.6", ShownFigure.Inwards(62.51m, isLower: true));
        Assert.Equal("91.3", ShownFigure.Inwards(91.346m, isLower: false));
    }

    [Theory]
    [InlineData("At 110 N·m it may be off by 4 %: 106 to 114 N·m.", "At 110_N·m it may be off by 4_%: 106 to 114_N·m.")]
    [InlineData("M10 10.9 in a part", "M10 10.9 in a part")]
    [InlineData("engaged 12 in, 1 inch", "engaged 12_in, 1 inch")]
    public void A_figure_and_its_unit_stay_on_one_line(string words, string kept) => Assert.Equal(kept.Replace('_', '\u00a0'), Unbroken.In(words));
}
