using ShopJobs.Web.Components.Parts;
using ShopJobs.Web.Data.Parts;

namespace ShopJobs.Web.Tests.Parts;

public sealed class PartTextTests
{
    [Theory]
    [InlineData("60..95 N·m", "60 to 95 N·m")]
    [InlineData("60-95 Nm", "60 to 95 N·m")]
    [InlineData("60 – 95 Nm", "60 to 95 N·m")]
    [InlineData("60 to 95 Nm", "60 to 95 N·m")]
    [InlineData("60 N·m..95 N·m", "60 to 95 N·m")]
    [InlineData("45,5..70 lbf·ft", "45.5 to 70 lbf·ft")]
    public void A_range_is_read_as_instructions_write_it(string text, string read)
    {
        Assert.True(PartText.TorqueRange(text, out var range, out var problem), problem);
        Assert.Equal(read, range.ToString());
    }

    [Fact]
    public void One_value_is_a_range_of_itself()
    {
        Assert.True(PartText.TorqueRange("80 N·m", out var range, out _));
        Assert.True(range.IsOneValue);
    }

    [Theory]
    [InlineData(OptionProperty.Torque, "60..95", "has no unit")]
    [InlineData(OptionProperty.Torque, "95..60 N·m", "is above the greatest")]
    [InlineData(OptionProperty.Torque, "-60..95 N·m", "has a sign")]
    [InlineData(OptionProperty.Torque, "60..95 mm", "no unit known here")]
    [InlineData(OptionProperty.Torque, "0 N·m", "above 0")]
    [InlineData(OptionProperty.Torque, "0..95 N·m", "above 0")]
    [InlineData(OptionProperty.Torque, "50000 N·m", "more than any hand tool reaches")]
    [InlineData(OptionProperty.Jam, "90", "has no unit")]
    [InlineData(OptionProperty.Length, "0", "above 0")]
    [InlineData(OptionProperty.Length, "-42 mm", "has a sign")]
    [InlineData(OptionProperty.Length, "42 N·m", "no length known here")]
    [InlineData(OptionProperty.Length, "4200 mm", "longer than anything in a wheel")]
    [InlineData(OptionProperty.Length, "<script>", "does not start with a number")]
    [InlineData(OptionProperty.Thread, "M12x9", "read the thread again")]
    [InlineData(OptionProperty.Strength, "very strong", "is not a strength class")]
    [InlineData(OptionProperty.Seat, "round", "no seat known here")]
    [InlineData(OptionProperty.Seat, "cone", "no seat known here")]
    [InlineData(OptionProperty.Seat, "cone 5", "from 30 to 170")]
    [InlineData(OptionProperty.Seat, "ball R0", "above 0")]
    [InlineData(OptionProperty.Seat, "flat 60", "no seat known here")]
    [InlineData(OptionProperty.NutEnd, "deep", "Write open")]
    [InlineData(OptionProperty.NutEnd, "0", "above 0")]
    [InlineData(OptionProperty.NutClass, "11", "no nut class")]
    [InlineData(OptionProperty.Condition, "7", "Pick the condition")]
    [InlineData(OptionProperty.Condition, "wet", "Pick the condition")]
    [InlineData(OptionProperty.Pieces, "0", "from 1 to")]
    [InlineData(OptionProperty.Pieces, "9.5", "no count")]
    [InlineData(OptionProperty.Pieces, "10 mm", "no count")]
    [InlineData(OptionProperty.Price, "84.50", "three letters")]
    [InlineData(OptionProperty.Price, "84.50 €", "three letters")]
    [InlineData(OptionProperty.Price, "0 EUR", "above 0")]
    [InlineData(OptionProperty.Price, "84.505 EUR", "two decimals")]
    [InlineData(OptionProperty.Price, "999999999 EUR", "Read it again")]
    [InlineData(OptionProperty.Price, "1.234,50 EUR", "more than one decimal mark")]
    public void What_cannot_be_is_told_in_words(OptionProperty property, string text, string words) =>
        Assert.Contains(words, OptionField.Of(property).ProblemOf(text), StringComparison.Ordinal);

    [Theory]
    [InlineData("flat", "flat")]
    [InlineData("Cone 60", "cone 60°")]
    [InlineData("cone 60°", "cone 60°")]
    [InlineData("60 deg cone", "cone 60°")]
    [InlineData("ball R14", "ball R14")]
    [InlineData("ball 13.5 mm", "ball R13.5")]
    public void Seats_are_read_and_what_is_said_of_them_reads_again(string text, string said)
    {
        Assert.True(PartText.Seat(text, out var seat, out _));
        Assert.Equal(said, seat.ToString());
        Assert.True(PartText.Seat(said, out var again, out _));
        Assert.Equal(seat, again);
    }

    [Theory]
    [InlineData("84.50 eur", "84.50 EUR")]
    [InlineData("84,5 EUR", "84.50 EUR")]
    [InlineData("120 GBP", "120.00 GBP")]
    public void A_price_keeps_its_currency(string text, string said)
    {
        Assert.True(PartText.Price(text, out var price, out _));
        Assert.Equal(said, price.ToString());
    }

    [Theory]
    [InlineData("open", null)]
    [InlineData("24", 24.0)]
    [InlineData("closed, 24 mm", 24.0)]
    public void A_nut_is_open_or_closed_at_a_depth(string text, double? depth)
    {
        Assert.True(PartText.NutEnd(text, out var end, out _));
        Assert.Equal(depth, end.ClosedDepth?.Millimeters);
    }
}
