using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Tests.Logbook;

public class MeasuredValueTests
{
    [Theory]
    [InlineData("1", "pieces", "1 piece")]
    [InlineData("0", "pieces", "0 pieces")]
    [InlineData("1", "mm", "1 mm")]
    [InlineData("1.5", "turns", "1.5 turns")]
    [InlineData("1", "hours", "1 hour")]
    [InlineData("3", "", "3")]
    public void Amount_is_read_out_with_a_singular_for_one(string value, string unit, string words) =>
        Assert.Equal(words, new MeasuredValue("any", decimal.Parse(value, System.Globalization.CultureInfo.InvariantCulture), unit).Amount());
}
