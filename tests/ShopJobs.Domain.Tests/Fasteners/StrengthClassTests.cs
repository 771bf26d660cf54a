using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Fasteners;

public class StrengthClassTests
{
    [Theory]
    [InlineData("8.8", "8.8")]
    [InlineData("8,8", "8.8")]
    [InlineData(" class 10.9 ", "10.9")]
    [InlineData("SAE 8", "SAE 8")]
    [InlineData("grade 8", "SAE 8")]
    [InlineData("SAE J429 grade 5", "SAE 5")]
    public void Classes_and_grades_have_one_spelling(string text, string spelling) =>
        Assert.Equal(spelling, StrengthClass.Parse(text).ToString());

    [Theory]
    [InlineData("12.9-like")]
    [InlineData("~12.9")]
    [InlineData("12.9 like")]
    [InlineData("8")]
    [InlineData("SAE 3")]
    [InlineData("grade 10.9")]
    [InlineData("7.7")]
    [InlineData("")]
    [InlineData(null)]
    public void Anything_else_is_no_class_and_says_what_to_give(string? text)
    {
        Assert.False(StrengthClass.TryParse(text, out var value, out var problem));
        Assert.Null(value);
        Assert.Contains("by equivalence", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Class_8_8_changes_above_16_mm()
    {
        var strength = StrengthClass.Parse("8.8");

        Assert.Equal(580, strength.ProofStress(Length.FromMillimeters(16))!.Value.Megapascals, 1e-9);
        Assert.Equal(600, strength.ProofStress(Length.FromMillimeters(18))!.Value.Megapascals, 1e-9);
    }

    [Fact]
    public void Where_the_standard_has_no_value_there_is_none()
    {
        Assert.Null(StrengthClass.Parse("9.8").ProofStress(Length.FromMillimeters(18)));
        Assert.Null(StrengthClass.Parse("SAE 8").ProofStress(Length.FromInches(0.19)));
        Assert.Null(StrengthClass.Parse("10.9").ProofLoad(ThreadSize.Parse("1/2-20 UNF")));
        Assert.Null(StrengthClass.Parse("SAE 8").ProofLoad(ThreadSize.Parse("M12x1.5")));
    }

    [Fact]
    public void Grade_limits_hold_at_the_inch_sizes_themselves()
    {
        Assert.Equal(120, StrengthClass.Parse("SAE 8").ProofStress(ThreadSize.Parse("1/4-28").NominalDiameter)!.Value.KilopoundsForcePerSquareInch, 1e-6);
        Assert.Equal(85, StrengthClass.Parse("SAE 5").ProofStress(ThreadSize.Parse("1-8").NominalDiameter)!.Value.KilopoundsForcePerSquareInch, 1e-6);
        Assert.Equal(74, StrengthClass.Parse("SAE 5").ProofStress(ThreadSize.Parse("1 1/8-12").NominalDiameter)!.Value.KilopoundsForcePerSquareInch, 1e-6);
    }
}
