using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Instruments;

namespace ShopJobs.Web.Tests.Instruments;

public sealed class CheckFormTests
{
    private static readonly DateOnly Today = new(2026, 11, 30);

    [Fact]
    public void An_empty_check_names_every_field()
    {
        var errors = new CheckFormValidator(Today).Validate(new CheckForm()).Errors.Select(error => error.PropertyName).Distinct();
        Assert.Equal(["Date", "Due", "Certificate", "Found", "Left"], errors);
    }

    [Theory]
    [InlineData("2026-12-01", "2027-12-01", "That day is still to come: read the certificate again.")]
    [InlineData("2021-11-29", "2022-12-01", "That is more than 5 years ago: read the certificate again.")]
    [InlineData("2026-11-30", "2029-12-01", "A check is good for at most 3 years here. Read both days again.")]
    [InlineData("2026-11-30", "2026-11-29", "It is not good until a day before its check.")]
    public void A_day_that_can_not_be_is_said(string date, string due, string words)
    {
        var form = Whole();
        (form.Date, form.Due) = (DateOnly.Parse(date, System.Globalization.CultureInfo.InvariantCulture), DateOnly.Parse(due, System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal([words], new CheckFormValidator(Today).Validate(form).Errors.Select(error => error.ErrorMessage));
    }

    [Fact]
    public void A_whole_check_is_what_was_said()
    {
        var form = Whole();
        Assert.Empty(new CheckFormValidator(Today).Validate(form).Errors);
        Assert.Equal(new InstrumentCheck(Today, Today.AddYears(1), "Bench 7", null, true), form.ToCheck());
    }

    private static CheckForm Whole() => new() { Date = Today, Due = Today.AddYears(1), Certificate = " Bench 7 ", Found = "not read", Left = "good" };
}
