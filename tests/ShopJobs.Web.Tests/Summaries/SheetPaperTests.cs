using System.Text;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Summaries;
using ShopJobs.Web.Components.Summaries;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Tests.Summaries;

public sealed class SheetPaperTests
{
    private static readonly DateTime At = new(2026, 3, 2, 9, 30, 0, DateTimeKind.Utc);

    [Fact]
    public void Each_sheet_names_car_and_version_and_whether_it_is_out_of_date()
    {
        var css = Css(new SummaryStanding.Current());
        Assert.Contains("@top-left { content: \"Blue, Brennock 220, DEMO 220\"; }", css, StringComparison.Ordinal);
        Assert.Contains("@top-right { content: \"Ninth Bay: work summary, version 1, 2 Mar 2026\"; }", css, StringComparison.Ordinal);
        Assert.Contains("@bottom-left { content: \"\"; }", css, StringComparison.Ordinal);

        Assert.Contains("OUT OF DATE. Speak to us before you drive.", Css(new SummaryStanding.Replaced(2, At) { NoLonger = [ReleaseKind.Road] }), StringComparison.Ordinal);
        Assert.Contains("Replaced by a newer version.", Css(new SummaryStanding.Replaced(2, At)), StringComparison.Ordinal);
    }

    /// <summary>CSS Syntax 3, section 4.3.7: a backslash, hexadecimal digits and a blank are one character.</summary>
    [Theory]
    [InlineData("Blue", "\"Blue\"")]
    [InlineData("</style><script>", "\"\\3c \\2f style\\3e \\3c script\\3e \"")]
    [InlineData("\"; } *{}", "\"\\22 \\3b  \\7d  \\2a \\7b \\7d \"")]
    [InlineData("a\\b\nc", "\"a\\5c b\\a c\"")]
    [InlineData("Öl-Grün 🏁", "\"Öl\\2d Grün \\1f3c1 \"")]
    public void Nothing_typed_leaves_its_string(string text, string css) => Assert.Equal(css, SheetPaper.Quoted(text));

    [Fact]
    public void A_number_and_its_unit_stay_on_one_line() =>
        Assert.Equal("to 110\u00A0N·m by 48,310\u00A0km, 5 of 5 knuckles", SheetWords.Together("to 110 N·m by 48,310 km, 5 of 5 knuckles"));

    private static string Css(SummaryStanding standing) => SheetPaper.Css(new IssuedVersion(
        new SummaryBook(1, At, new SummaryIssued(1, null, ContentDigest.Of([1], Encoding.UTF8.GetBytes("page")), 0, "00")),
        standing, new StoredContent.Present(SummaryText.Write(SheetDriveTests.Page)), false));
}
