using ShopJobs.Web.Components.Summaries;

namespace ShopJobs.Web.Tests.Summaries;

public sealed class TelephoneNumberTests
{
    [Theory]
    [InlineData("01632 960100", "01632 960100", "01632960100")]
    [InlineData("Ninth Bay, 01632 960100 (invented)", "01632 960100", "01632960100")]
    [InlineData("call +44 1632 960100, ask for Edda", "+44 1632 960100", "+441632960100")]
    [InlineData("Tel. 01632/960-100", "01632/960-100", "01632960100")]
    public void A_number_is_found_as_it_was_written_and_dialled_by_its_digits(string contact, string text, string dialled)
    {
        var number = TelephoneNumber.In(contact)!;

        Assert.Equal((text, dialled), (number.Text, number.Dialled));
        Assert.Equal(contact.IndexOf(text, StringComparison.Ordinal), number.At);
    }

    [Theory]
    [InlineData("")]
    [InlineData("edda@ninth.example")]
    [InlineData("Bay 9, gate 12")]
    public void A_text_without_one_has_none(string contact) => Assert.Null(TelephoneNumber.In(contact));
}
