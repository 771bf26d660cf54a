using System.Text;
using ShopJobs.Web.Components.PartsCatalogue;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Parts;

namespace ShopJobs.Web.Tests.PartsCatalogue;

/// <summary>An export is what RFC 4180 says, and nothing in it is run by a spreadsheet.</summary>
public sealed class PartsCsvTests
{
    private const string Headings = "Number,Maker,Name,Fills,Thread,Strength,Single use,Price,Currency,Out of use\r\n";

    [Fact]
    public void It_begins_with_the_mark_of_UTF_8_and_ends_each_row_with_CR_LF()
    {
        // The mark: RFC 3629, section 6. The end of a record: RFC 4180, section 2.
        var bytes = PartsCsv.Write([Part("Q4-1242", "Wheel stud")]);

        Assert.Equal([0xEF, 0xBB, 0xBF], bytes[..3]);
        Assert.Equal(Headings + "Q4-1242,Quillon,Wheel stud,,,,no,,,no\r\n", TextOf(bytes));
    }

    [Fact]
    public void An_empty_catalogue_is_the_headings_to_fill_in() => Assert.Equal(Headings, TextOf(PartsCsv.Write([])));

    [Theory]
    [InlineData("nut, cone", "\"nut, cone\"")] // RFC 4180, section 2, rule 6
    [InlineData("nut\r\ncone", "\"nut\r\ncone\"")] // RFC 4180, section 2, rule 6
    [InlineData("nut 1/2\" wide", "\"nut 1/2\"\" wide\"")] // RFC 4180, section 2, rule 7
    [InlineData("Übermaß · 縫", "Übermaß · 縫")]
    public void A_text_is_quoted_where_it_must_be(string name, string cell) =>
        Assert.Equal(Headings + $"1,Quillon,{cell},,,,no,,,no\r\n", TextOf(PartsCsv.Write([Part("1", name)])));

    [Theory]
    [InlineData("=1+1", "\"'=1+1\"")] // OWASP, CSV Injection, from memory; so are those below
    [InlineData("+49", "\"'+49\"")]
    [InlineData("-cmd", "\"'-cmd\"")]
    [InlineData("@SUM(A1)", "\"'@SUM(A1)\"")]
    [InlineData("\tx", "\"'\tx\"")]
    [InlineData("\rx", "\"'\rx\"")]
    [InlineData("=HYPERLINK(\"a\")", "\"'=HYPERLINK(\"\"a\"\")\"")]
    [InlineData("'=1+1", "\"''=1+1\"")]
    [InlineData("'s", "'s")]
    [InlineData("a=1", "a=1")]
    public void A_text_that_a_spreadsheet_would_run_is_made_harmless(string name, string cell) =>
        Assert.Equal(Headings + $"1,Quillon,{cell},,,,no,,,no\r\n", TextOf(PartsCsv.Write([Part("1", name)])));

    [Theory]
    [InlineData("=1")]
    [InlineData("+")]
    [InlineData("-5")]
    [InlineData("@x")]
    [InlineData("\tx")]
    [InlineData("\rx")]
    [InlineData("'=1")]
    [InlineData("''-1")]
    [InlineData("'")]
    [InlineData("'s")]
    [InlineData("")]
    [InlineData("plain")]
    public void Making_it_plain_again_gives_what_it_was(string text) => Assert.Equal(text, CsvCell.Plain(CsvCell.Harmless(text)));

    [Fact]
    public void Everything_of_a_part_is_in_its_row()
    {
        var part = Part("Q4-1242", "Wheel stud");
        (part.Fills, part.Thread, part.Strength, part.SingleUse) = ("wheel.stud", "M12x1.5", "12.9", true);
        (part.Price, part.Currency, part.RetiredAt) = (8.5m, "EUR", DateTime.UnixEpoch);

        Assert.Equal(Headings + "Q4-1242,Quillon,Wheel stud,wheel.stud,M12x1.5,12.9,yes,8.50,EUR,yes\r\n", TextOf(PartsCsv.Write([part])));
    }

    private static PartRow Part(string number, string name)
    {
        var part = new PartRow { Id = new PartId(Guid.NewGuid()), Name = name };
        part.Call("Quillon", number);
        return part;
    }

    private static string TextOf(byte[] bytes) => Encoding.UTF8.GetString(bytes.AsSpan(3));
}
