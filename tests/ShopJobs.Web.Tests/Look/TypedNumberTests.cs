using ShopJobs.Web.Components.Look;

namespace ShopJobs.Web.Tests.Look;

/// <summary>A number is read in one way wherever somebody types one.</summary>
public class TypedNumberTests
{
    [Theory]
    [InlineData("15", 15)]
    [InlineData(" 1,5 ", 1.5)]
    [InlineData("0.25", 0.25)]
    [InlineData("15°", 15)]
    [InlineData("15 °", 15)]
    public void One_clear_number_is_taken_with_either_mark_and_its_own_unit(string typed, double number) =>
        Assert.Equal((decimal)number, TypedNumber.Alone(typed, "°"));

    [Theory]
    [InlineData("")]
    [InlineData(null)]
    [InlineData("-1")]
    [InlineData("1 5")]
    [InlineData("1.000,5")]
    [InlineData(".5")]
    [InlineData("1e3")]
    [InlineData("15 mm")]
    [InlineData("1234567890")]
    public void Anything_else_is_no_number(string? typed) => Assert.Null(TypedNumber.Alone(typed, "°"));

    [Theory]
    [InlineData("-1,5", -1.5)]
    [InlineData("−0.5", -0.5)]
    [InlineData("2", 2)]
    public void A_measure_may_be_below_zero(string typed, double number) => Assert.Equal((decimal)number, TypedNumber.Signed(typed));

    [Theory]
    [InlineData("--1")]
    [InlineData("+1")]
    [InlineData("-")]
    public void A_plus_two_signs_or_a_sign_alone_are_no_number(string typed) => Assert.Null(TypedNumber.Signed(typed));
}
