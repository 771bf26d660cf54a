using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Tests.Fasteners;

public class ThreadSizeTests
{
    [Theory]
    [InlineData("M12x1.5", "M12x1.5")]
    [InlineData("M12×1,5", "M12x1.5")]
    [InlineData("m12 x 1.5", "M12x1.5")]
    [InlineData("M12X1.50", "M12x1.5")]
    [InlineData("M12", "M12x1.75")]
    [InlineData("M6", "M6x1")]
    [InlineData("M1.6", "M1.6x0.35")]
    [InlineData("M10x1.0", "M10x1")]
    [InlineData("1/2-20 UNF", "1/2-20 UNF")]
    [InlineData("7/16-20", "7/16-20 UNF")]
    [InlineData("7/16 - 20 unf", "7/16-20 UNF")]
    [InlineData("1 1/8-12 UNF", "1 1/8-12 UNF")]
    [InlineData("1-1/8-12", "1 1/8-12 UNF")]
    [InlineData("1-8", "1-8 UNC")]
    [InlineData("1 1/8-8", "1 1/8-8")]
    [InlineData("#10-32", "#10-32 UNF")]
    [InlineData("#10-24", "#10-24 UNC")]
    public void What_people_write_has_one_spelling(string text, string spelling)
    {
        var size = ThreadSize.Parse(text);

        Assert.Equal(spelling, size.ToString());
        Assert.Equal(size, ThreadSize.Parse(spelling));
    }

    [Theory]
    [InlineData(null, "No thread given")]
    [InlineData("", "No thread given")]
    [InlineData("M", "not a thread size known here")]
    [InlineData("12x1.5", "not a thread size known here")]
    [InlineData("10-32", "not a thread size known here")]
    [InlineData("M12x1.4", "a pitch of 1.4 mm")]
    [InlineData("M13", "no coarse pitch")]
    [InlineData("M8x6", "not a bolt thread")]
    [InlineData("M0x1", "not a bolt thread")]
    [InlineData("1/2-20 UNC", "not a UNC size")]
    [InlineData("1/3-20", "no inch fraction")]
    [InlineData("11/8-12", "no inch fraction")]
    [InlineData("1/0-20", "no inch fraction")]
    [InlineData("1/2-02", "not a bolt thread")]
    [InlineData("M12x1.5M12x1.5M12x1.5M12x1.5M12x1.5M12x1.5", "too long")]
    public void Anything_else_is_refused_in_words(string? text, string words)
    {
        Assert.False(ThreadSize.TryParse(text, out var size, out var problem));
        Assert.Null(size);
        Assert.Contains(words, problem, StringComparison.Ordinal);
        Assert.Throws<FormatException>(() => ThreadSize.Parse(text));
    }

    /// <summary>As = pi/4 (d - 0.938194 P)^2, ISO 898-1; own computation to the printed digit.</summary>
    [Theory]
    [InlineData("M10x1.5", 58.0)]
    [InlineData("M12x1.5", 88.1)]
    [InlineData("M12x1.75", 84.3)]
    [InlineData("M14x1.5", 124.5)]
    [InlineData("M14x2", 115.4)]
    [InlineData("M8x1.25", 36.6)]
    public void Stress_area_in_square_millimetres(string thread, double area) =>
        Assert.Equal(area, ThreadSize.Parse(thread).StressArea.SquareMillimeters, 0.05);

    [Fact]
    public void Inch_minor_diameter_is_the_rounded_root_one_and_the_flat_root_one_is_named()
    {
        var thread = ThreadSize.Parse("1/2-20 UNF");

        Assert.Equal(0.5 - (1.190785 / 20), thread.MinorDiameter.Inches, 1e-9);
        Assert.Equal(0.5 - (1.226869 / 20), thread.FlatRootMinorDiameter.Inches, 1e-9);
    }
}
