using ShopJobs.Domain.Cars;

namespace ShopJobs.Domain.Tests.Cars;

public class ChassisNumberTests
{
    /// <summary>
    /// The sample of 49 CFR 565 (Table V of the older, VI of the newer edition): products add up to 411, 411 mod 11 = 4. Read in a public
    /// reprint. The second is a worked example of the agency that issues maker's codes: sum 314, remainder 6.
    /// </summary>
    [Theory]
    [InlineData("1G4AH59H45G118341", '4')]
    [InlineData("1J9RP1A36A1644345", '6')]
    public void The_published_samples_have_their_check_digit(string vin, char digit)
    {
        Assert.Equal(digit, ChassisNumber.CheckDigit(vin));
        Assert.Equal(ChassisForm.Checked, ChassisNumber.Read(vin)!.Form);
    }

    /// <summary>By hand: 351 = 31 · 11 + 10, and ten is written X.</summary>
    [Fact]
    public void Ten_is_written_X() => Assert.Equal('X', ChassisNumber.CheckDigit("1M8GDM9AXKP042788"));

    /// <summary>No weight but that of the check digit itself is a multiple of 11, and 11 is prime: a wrong character is seen unless its value is the same.</summary>
    [Fact]
    public void One_wrong_digit_is_always_seen()
    {
        const string Vin = "1G4AH59H45G118341";
        foreach (var at in Enumerable.Range(0, Vin.Length).Where(at => char.IsAsciiDigit(Vin[at]) && at != 0))
        {
            foreach (var wrong in "0123456789".Where(digit => digit != Vin[at]))
            {
                Assert.Equal(ChassisForm.CheckFails, ChassisNumber.Read($"{Vin[..at]}{wrong}{Vin[(at + 1)..]}")!.Form);
            }
        }
    }

    [Theory]
    [InlineData("abc 2030-0471 A 123456", "ABC20300471A123456", ChassisForm.Other)]
    [InlineData("ZZ9BB05CF12345678", "ZZ9BB05CF12345678", ChassisForm.NoCheckAsked)]
    [InlineData("1g4ah59h4 5g118341", "1G4AH59H45G118341", ChassisForm.Checked)]
    [InlineData("1G4AH59H45G118342", "1G4AH59H45G118342", ChassisForm.CheckFails)]
    [InlineData("1G4AH59HO5G118341", "1G4AH59HO5G118341", ChassisForm.Other)]
    [InlineData("HC 12/77", "HC12/77", ChassisForm.Other)]
    [InlineData("DEMO 220", "DEMO220", ChassisForm.Other)]
    public void A_number_is_read_as_it_is_typed(string typed, string text, ChassisForm form) =>
        Assert.Equal(new ChassisNumber(text, form), ChassisNumber.Read(typed));

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("  - ")]
    [InlineData("<script>")]
    [InlineData("ÄÖÜ")]
    [InlineData("1234567890123456789012345678901")]
    public void What_is_no_number_is_not_taken(string? typed) => Assert.Null(ChassisNumber.Read(typed));

    [Fact]
    public void A_check_digit_is_only_asked_of_17_characters() => Assert.Throws<ArgumentException>(() => ChassisNumber.CheckDigit("1G4"));
}
