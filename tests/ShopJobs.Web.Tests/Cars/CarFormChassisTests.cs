using ShopJobs.Domain.Cars;
using ShopJobs.Web.Components.Cars;

namespace ShopJobs.Web.Tests.Cars;

/// <summary>A chassis number as it is typed into a car's form.</summary>
public sealed class CarFormChassisTests
{
    [Theory]
    [InlineData("", true)]
    [InlineData("  ", true)]
    [InlineData("1g4ah59h4 5g118341", true)]
    [InlineData("1G4AH59H45G118342", true)]
    [InlineData("HC 12/77", true)]
    [InlineData("<script>", false)]
    [InlineData("1234567890123456789012345678901", false)]
    public void It_is_taken_or_refused_and_a_check_digit_that_fails_refuses_nothing(string typed, bool taken)
    {
        var form = new CarForm { Name = "Red", Model = "Lorrick 14", Customer = Guid.NewGuid().ToString(), Chassis = typed };

        var wrong = new CarFormValidator().Validate(form).Errors.Select(error => error.PropertyName);

        Assert.Equal(taken ? [] : [nameof(CarForm.Chassis)], wrong);
    }

    [Theory]
    [InlineData("1G4AH59H45G118341", "its check digit agrees")]
    [InlineData("1G4AH59H45G118342", "one character is wrong")]
    [InlineData("ZZ9DEM220BX000001", "asks no check digit")]
    [InlineData("HC12", "No VIN of 17 characters")]
    public void What_it_is_is_said_in_words(string typed, string said) =>
        Assert.Contains(said, ChassisWords.Of(ChassisNumber.Read(typed)!), StringComparison.Ordinal);
}
