using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Bench.Pictures;
using UnitsNet;

namespace ShopJobs.Web.Tests.Bench;

/// <summary>What a picture draws is where the figures say.</summary>
public sealed class BenchPictureTests
{
    [Fact]
    public void A_line_begins_at_zero_and_ends_beyond_all_that_it_shows()
    {
        var scale = LineScale.For(new NumberLine("kN", [new("expected", 50, "50 kN"), new("proof load", 100, "100 kN", LineMarkKind.Limit)]) { Span = new("band", 30, 70, "") });

        Assert.True(scale.BeginsAtZero);
        Assert.Equal([0, 20, 40, 60, 80, 100], scale.Marks);
        Assert.Equal("47.17%", scale.At(50));
        Assert.Equal("94.34%", scale.At(100));
        Assert.Equal("37.74%", scale.Wide(new("band", 30, 70, "")));
    }

    /// <summary>From 0 a band of 4 % would be a stroke: the line begins at a round figure below it and is drawn cut.</summary>
    [Fact]
    public void Values_close_together_are_drawn_large()
    {
        var line = new NumberLine("N·m", [new("set", 110, "110 N·m")]) { Span = new("given", 105.6, 114.4, "") };

        var scale = LineScale.For(line);

        Assert.False(scale.BeginsAtZero);
        Assert.InRange(scale.From, 90, 105);
        Assert.InRange(double.Parse(scale.Wide(line.Span!)[..^1], System.Globalization.CultureInfo.InvariantCulture), 30, 80);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(5)]
    public void One_value_alone_is_on_the_line(double value)
    {
        var scale = LineScale.For(new NumberLine("", [new("used", value, "")]));

        Assert.InRange(double.Parse(scale.At(value)[..^1], System.Globalization.CultureInfo.InvariantCulture), 0, 95);
        Assert.InRange(scale.Marks.Count(), 2, 8);
    }

    /// <summary>M12x1.5: d 12, d3 10.16 (ISO 724); a picture of 19 turns is 28.5 long.</summary>
    [Fact]
    public void A_thread_is_drawn_between_its_diameters()
    {
        var size = ThreadSize.Parse("M12x1.5");
        var points = ThreadDrawing.Outline(size).Trim('M', 'Z').Replace('L', ' ').Split(' ')
            .Select(point => point.Split(',').Select(number => double.Parse(number, System.Globalization.CultureInfo.InvariantCulture)).ToArray()).ToList();

        Assert.Equal(28.5, ThreadDrawing.LengthOf(size), 3);
        Assert.Equal(6, points.Max(point => Math.Abs(point[1])), 3);
        Assert.Equal(5.08, points.Min(point => Math.Abs(point[1])), 2);
        Assert.All(points, point => Assert.InRange(point[0], 0, 28.5));
    }

    /// <summary>480 and 40 mm: straight out the fastener lies beyond the drive, at 90° beside it, at 180° before it.</summary>
    [Theory]
    [InlineData(0, 480, 520, 0)]
    [InlineData(90, 480, 480, 40)]
    [InlineData(180, 480, 440, 0)]
    public void A_lever_is_drawn_to_scale(double angle, double drive, double fastener, double aside)
    {
        var drawing = LeverDrawing.Of(new AdapterSetting(Length.FromMillimeters(480), Length.FromMillimeters(40), Angle.FromDegrees(angle)));

        var scale = (drawing.Drive - drawing.Hand) / drive;
        Assert.Equal(fastener, (drawing.Fastener - drawing.Hand) / scale, 6);
        Assert.Equal(aside, drawing.Aside / scale, 6);
        Assert.InRange(Math.Max(drawing.Drive, drawing.Fastener), 900, 1000);
    }
}
